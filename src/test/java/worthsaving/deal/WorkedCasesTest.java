package worthsaving.deal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static worthsaving.deal.DecisionTree.branch;
import static worthsaving.deal.DecisionTree.end;
import static worthsaving.quantity.Money.usd;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Hybrid battery, branded title and root cause, to the cent. Invented inputs. */
class WorkedCasesTest {

    private static final Offset<Double> CENT = within(0.005);

    @Test
    void hybrid_with_a_battery_warning() {
        ScenarioDeal deal = TradeCases.hybridBattery();
        assertThat(deal.ledger().net().amount()).isCloseTo(5_994, CENT);
        assertThat(deal.scenarios()).extracting(s -> s.expectedCost(usd(35)).amount())
                .usingElementComparator((a, b) -> Math.abs(a - b) < 0.005 ? 0 : Double.compare(a, b))
                .containsExactly(1_440.0, 265.0, 237.5, 1_030.0);
        assertThat(deal.expectedRepair().amount()).isCloseTo(1_162.625, within(1e-9));
        assertThat(deal.expectedProfit(usd(2_000)).amount()).isCloseTo(2_711.375, within(1e-9));
        assertThat(deal.worst(usd(2_000)).amount()).isCloseTo(2_434, CENT);
        assertThat(deal.chanceOfLoss(usd(2_000))).isZero();
        assertThat(deal.mostToPay(usd(1_200)).amount()).isCloseTo(3_425.83, CENT);
    }

    @Test
    void hybrid_with_an_isolation_code() {
        ScenarioDeal deal = TradeCases.hybridIsolation();
        assertThat(deal.expectedRepair().amount()).isCloseTo(1_219.50, CENT);
        assertThat(deal.expectedProfit(usd(2_000)).amount()).isCloseTo(2_654.50, CENT);
        assertThat(deal.mostToPay(usd(1_200)).amount()).isCloseTo(3_372.17, CENT);
    }

    @Test
    void new_cells_sell_dearer_but_cost_more_than_that() {
        Scenario newCells = Scenario.mend("new-cell pack", 1, usd(2_100), 5);
        ScenarioDeal dearer = TradeCases.hybridBattery().withScenarios(List.of(newCells));
        double net = dearer.expectedRepair().minus(usd(500)).amount();
        assertThat(net).isCloseTo(1_775, CENT);
    }

    @Test
    void salvage_title_at_its_own_value() {
        ScenarioDeal deal = TradeCases.salvage(11_200);
        assertThat(deal.ledger().net().amount()).isCloseTo(9_479, CENT);
        assertThat(deal.scenarios().stream().mapToDouble(s -> deal.beforePrice(s).amount()).toArray())
                .containsExactly(new double[] {1_804, 254, 1_460}, CENT);
        assertThat(deal.expectedBeforePrice().amount()).isCloseTo(1_209.90, CENT);
        assertThat(deal.priceTerms().costOf(usd(5_400)).amount()).isCloseTo(6_446.40, CENT);
        assertThat(deal.expectedProfit(usd(5_400)).amount()).isCloseTo(-5_236.50, CENT);
        assertThat(deal.chanceOfLoss(usd(5_400))).isCloseTo(1, within(1e-12));
        assertThat(deal.mostToPay(usd(0)).amount()).isCloseTo(909.01, CENT);
        assertThat(deal.mostToPay(usd(1_500)).amount()).as("no bid reaches the target").isNegative();
    }

    @Test
    void salvage_title_taken_for_clean() {
        ScenarioDeal branded = TradeCases.salvage(11_200);
        ScenarioDeal clean = branded.withSaleValue(usd(16_000));
        assertThat(clean.expectedBeforePrice().minus(branded.expectedBeforePrice()).amount())
                .isCloseTo(3_957.60, CENT);
        assertThat(clean.mostToPay(usd(0)).amount()).isCloseTo(4_303.17, CENT);
        assertThat(clean.mostToPay(usd(0)).minus(branded.mostToPay(usd(0))).amount()).isCloseTo(3_394.17, CENT);
    }

    @Test
    void root_cause_parts_pay_for_themselves() {
        Scenario naive = Scenario.mend("turbo only", 1, usd(900), 4.5).withRepeat(.35, usd(1_485));
        assertThat(naive.costOnce(usd(130)).amount()).isCloseTo(1_485, CENT);
        assertThat(naive.expectedCost(usd(130)).amount()).isCloseTo(2_004.75, CENT);
        Scenario whole = withLines(1);
        assertThat(whole.costOnce(usd(130)).amount()).isCloseTo(1_773, CENT);
        assertThat(whole.expectedCost(usd(130)).amount()).isCloseTo(1_847.25, CENT);
        assertThat(naive.expectedCost(usd(130)).minus(whole.expectedCost(usd(130))).amount()).isCloseTo(157.50, CENT);
    }

    @Test
    void diagnosing_first_saves_more() {
        DecisionTree diagnosed = new DecisionTree.Chance("shaft play", List.of(
                branch("in limits: line and valve", .20,
                        end("line", -Scenario.mend("line", 1, usd(160), 1.5).expectedCost(usd(130)).amount())),
                branch("out of limits: turbo", .80, end("turbo", -withLines(1).expectedCost(usd(130)).amount()))));
        double expected = DecisionTree.option("diagnose", 0.5 * 130, diagnosed).value();
        assertThat(-expected).isCloseTo(1_613.80, CENT);
        assertThat(2_004.75 + expected).isCloseTo(390.95, CENT);

        ScenarioDeal deal = turbo(Scenario.mend("line", .20, usd(160), 1.5), withLines(.80));
        assertThat(deal.expectedRepair().plus(usd(65)).amount()).isCloseTo(-expected, CENT);
        assertThat(deal.expectedProfit(usd(3_000)).amount()).isCloseTo(2_431.20, CENT);
        assertThat(deal.mostToPay(usd(1_000)).amount()).isCloseTo(4_350.19, CENT);
        assertThat(deal.outcome(usd(3_000)).chanceOfLoss()).isZero();
        assertThat(deal.outcome(usd(3_000)).least()).as("the turbo repeats").isCloseTo(722, CENT);
    }

    @Test
    void missing_compressor_blades() {
        Scenario more = Scenario.mend("turbo and intercooler", .80, usd(900 + 288 + 510), 4.5)
                .withRepeat(.05, usd(1_485));
        Scenario engine = Scenario.mend("engine hurt too", .20, usd(900 + 288 + 510 + 4_500), 4.5)
                .withRepeat(.05, usd(1_485));
        ScenarioDeal deal = turbo(more, engine);
        assertThat(deal.expectedRepair().plus(usd(65)).amount()).isCloseTo(3_322.25, CENT);
        assertThat(deal.expectedProfit(usd(3_000)).amount()).isCloseTo(722.75, CENT);
        assertThat(deal.mostToPay(usd(1_000)).amount()).isCloseTo(2_738.44, CENT);
        assertThat(deal.chanceOfLoss(usd(3_000))).isCloseTo(.20, within(1e-12));
        double withoutRepeat = deal.ledger().net().minus(engine.costOnce(usd(130))).minus(usd(3_180)).amount();
        assertThat(withoutRepeat).isCloseTo(-2_803, CENT);
    }

    private static Scenario withLines(double probability) {
        return Scenario.mend("turbo with lines, oil and filter", probability, usd(900 + 288), 4.5)
                .withRepeat(.05, usd(1_485));
    }

    private static ScenarioDeal turbo(Scenario... scenarios) {
        SaleLedger ledger = TradeCases.turboLedger().less("diagnosis", usd(0.5 * 130));
        return new ScenarioDeal(ledger, TradeCases.SIX_PERCENT, usd(130), List.of(scenarios));
    }
}
