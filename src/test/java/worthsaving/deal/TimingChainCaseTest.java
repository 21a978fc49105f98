package worthsaving.deal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static worthsaving.quantity.Money.usd;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import worthsaving.quantity.Money;

/** Figures worked by hand and by an independent script; invented inputs. */
class TimingChainCaseTest {

    private static final Offset<Double> CENT = within(0.005);
    private static final Money ASK = usd(2_300);

    private final ScenarioDeal deal = TradeCases.timingChain();

    @Test
    void profit_scenario_by_scenario() {
        assertThat(deal.ledger().net().amount()).isCloseTo(5_363, CENT);
        assertThat(deal.expectedRepair().amount()).isCloseTo(1_917, CENT);
        assertThat(deal.profits(ASK)).containsExactly(new double[] {1_785, 495, -815}, CENT);
        assertThat(deal.expectedProfit(ASK).amount()).isCloseTo(1_008, CENT);
        assertThat(deal.chanceOfLoss(ASK)).isEqualTo(.15);
        assertThat(deal.worst(ASK).amount()).isCloseTo(-815, CENT);
    }

    @Test
    void most_to_pay_and_break_even_of_the_worst() {
        assertThat(deal.mostToPay(usd(1_000)).amount()).isCloseTo(2_307.55, CENT);
        assertThat(deal.breakEvenPrice(deal.scenarios().get(2)).amount()).isCloseTo(1_531.13, CENT);
    }

    @Test
    void metal_in_the_oil_filter() {
        assertThat(deal.chanceOf(.10, .12, .85)).isCloseTo(.2185, within(1e-12));
        ScenarioDeal metal = deal.given(.10, .12, .85);
        assertThat(metal.probabilities()).containsExactly(new double[] {.2517, .1648, .5835}, within(5e-5));
        assertThat(metal.expectedRepair().amount()).isCloseTo(2_869.70, CENT);
        assertThat(metal.expectedProfit(ASK).amount()).isCloseTo(55.30, CENT);
        assertThat(metal.mostToPay(usd(1_000)).amount()).isCloseTo(1_408.77, CENT);
    }

    @Test
    void clean_oil_filter() {
        ScenarioDeal clean = deal.given(.90, .88, .15);
        assertThat(clean.probabilities()[2]).isCloseTo(.0288, within(5e-5));
        assertThat(clean.expectedRepair().amount()).isCloseTo(1_650.63, CENT);
        assertThat(clean.expectedProfit(ASK).amount()).isCloseTo(1_274.37, CENT);
        assertThat(clean.mostToPay(usd(1_000)).amount()).isCloseTo(2_558.84, CENT);
        assertThat(clean.chanceOfLoss(ASK)).isCloseTo(.029, within(5e-4));
    }

    @Test
    void ten_per_cent_of_value_moves_profit_by_the_value_less_the_reserve() {
        double up = deal.withSaleValue(usd(6_820)).expectedProfit(ASK).amount();
        double down = deal.withSaleValue(usd(5_580)).expectedProfit(ASK).amount();
        assertThat(up - 1_008).isCloseTo(607.60, CENT);
        assertThat(down - 1_008).isCloseTo(-607.60, CENT);
    }
}
