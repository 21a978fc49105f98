package worthsaving.deal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static worthsaving.quantity.Money.usd;

import java.util.List;
import java.util.stream.Collectors;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import worthsaving.quantity.Money;
import worthsaving.quantity.Probability;

/** The lines between the inputs and the results of the worked cases, to the cent. Invented inputs. */
class CaseLinesTest {

    private static final Offset<Double> CENT = within(0.005);
    private static final Money OWN = usd(35);

    @Test
    void timing_chain() {
        ScenarioDeal deal = TradeCases.timingChain();
        figures(deal.scenarios().stream().map(s -> s.hours().at(OWN)).toList(), 490, 980, 840);
        figures(deal.scenarios().stream().map(s -> s.costOnce(OWN)).toList(), 1_140, 2_430, 3_740);
        figures(weighted(deal), 627, 729, 561);
        assertThat(lines(deal)).contains("holding 140.00", "tow 230.00", "comeback reserve 124.00");
        assertThat(deal.priceTerms().costOf(usd(2_300)).amount()).isCloseTo(2_438, CENT);
        assertThat(deal.mostToPay(usd(1_000)).amount() * deal.priceTerms().perUnit()).isCloseTo(2_446, CENT);
        assertThat(5_000 * DealTerms.usual(Money.USD).with(Term.CAPITAL_RATE, 10).mean(Term.CAPITAL_RATE) / 100 * 35
                / 365).isCloseTo(47.95, CENT);
    }

    @Test
    void teardown() {
        Scenario good = Scenario.mend("good", .60, usd(650 + 120), 12);
        Scenario marginal = Scenario.mend("marginal", .25, usd(650 + 120 + 180), 12 + 5).withRepeat(.20, usd(2_500));
        Scenario damaged = Scenario.mend("damaged", .15, usd(3_900 + 500), 24);
        ScenarioDeal deal = new ScenarioDeal(SaleLedger.of(usd(6_200)).less("selling", usd(200))
                .less("holding", usd(120)).less("capital", usd(40)).lessShare("comeback reserve", 0.02),
                TradeCases.SIX_PERCENT, OWN, List.of(good, marginal, damaged));
        figures(deal.scenarios().stream().map(s -> s.expectedCost(OWN)).toList(), 1_190, 2_045, 5_240);
        figures(deal.scenarios().stream().map(s -> deal.beforePrice(s).times(s.probability().value())).toList(),
                2_715.60, 917.75, 71.40);
        assertThat(lines(deal)).contains("comeback reserve 124.00");
    }

    @Test
    void hybrid() {
        figures(weighted(TradeCases.hybridBattery()), 1_008, 39.75, 11.875, 103);
        figures(weighted(TradeCases.hybridIsolation()), 825, 106.50, 288);
        assertThat(lines(TradeCases.hybridBattery())).contains("comeback reserve 136.00");
    }

    @Test
    void salvage() {
        ScenarioDeal deal = TradeCases.salvage(11_200);
        figures(deal.scenarios().subList(0, 2).stream().map(s -> s.costOnce(OWN)).toList(), 7_675, 9_225);
        figures(deal.scenarios().stream().map(s -> deal.beforePrice(s).times(s.probability().value())).toList(),
                902, 88.90, 219);
        assertThat(deal.priceTerms().perUnit()).isCloseTo(1.166, within(1e-12));
        assertThat(lines(deal)).contains("comeback reserve 336.00", "holding 300.00");
        assertThat(deal.withSaleValue(usd(16_000)).ledger().net().minus(deal.ledger().net()).amount())
                .isCloseTo(4_656, CENT);
    }

    @Test
    void turbo_and_keeper() {
        assertThat(TradeCases.turboLedger().net().amount()).isCloseTo(7_225, CENT);
        assertThat(new Scenario.Repeat(Probability.of(.12), usd(2_600)).expected().amount())
                .isCloseTo(312, CENT);
        assertThat(PriceTerms.taxed(.065, usd(250)).costOf(usd(12_500)).amount()).isCloseTo(12_500 + 812.50 + 250, CENT);
        assertThat(RulesOfThumb.repairExceeds(usd(4_300), .716, usd(6_000))).isTrue();
        assertThat(RulesOfThumb.repairExceeds(usd(4_300), .717, usd(6_000))).isFalse();
    }

    private static List<Money> weighted(ScenarioDeal deal) {
        return deal.scenarios().stream().map(s -> s.expectedCost(OWN).times(s.probability().value())).toList();
    }

    private static String lines(ScenarioDeal deal) {
        return deal.ledger().lines().stream().map(l -> l.name() + " " + l.amount().toString().substring(4))
                .collect(Collectors.joining("; "));
    }

    private static void figures(List<Money> found, double... expected) {
        assertThat(found.stream().mapToDouble(Money::amount).toArray()).containsExactly(expected, CENT);
    }
}
