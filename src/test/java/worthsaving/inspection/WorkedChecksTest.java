package worthsaving.inspection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static worthsaving.quantity.Money.usd;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import worthsaving.deal.PriceTerms;
import worthsaving.deal.SaleLedger;
import worthsaving.deal.Scenario;
import worthsaving.deal.ScenarioDeal;

/** Checks of invented cars, figures worked by hand. */
class WorkedChecksTest {

    private static final Offset<Double> CENT = within(0.005);
    private static final PriceTerms SIX_PERCENT = PriceTerms.taxed(0.06, usd(0));

    /** Cutting the oil filter of a turbo engine that needs a timing chain, buyer wants 1,000. */
    @Test
    void oil_filter_before_buying() {
        ScenarioDeal deal = new ScenarioDeal(SaleLedger.of(usd(5_363)), SIX_PERCENT, usd(35), List.of(
                Scenario.mend("chain", .55, usd(650), 14),
                Scenario.mend("bent valves", .30, usd(1_450), 28),
                Scenario.mend("bearings", .15, usd(2_900), 24)));
        DecisionProblem problem = buyOrWalk(deal.probabilities(), deal.profits(usd(2_300)), 1_000);
        double[] metal = {.10, .12, .85};
        assertThat(problem.value()).isCloseTo(8, CENT);
        assertThat(problem.valueWithSignal(new double[][] {metal, DecisionProblem.complement(metal)}))
                .isCloseTo(214.42, CENT);
        assertThat(problem.expectedValueOfFinding(metal)).isCloseTo(206.42, CENT);
        assertThat(problem.bestActionAfter(metal)).as("walk").isEqualTo(1);
    }

    /** An isolation scan of a hybrid: either tree says buy, so the scan changes nothing. */
    @Test
    void isolation_scan_is_worth_nothing() {
        double[] battery = {5_994 - 1_440 - 2_120, 5_994 - 265 - 2_120, 5_994 - 237.5 - 2_120, 5_994 - 1_030 - 2_120};
        double[] isolation = {5_994 - 1_650 - 2_120, 5_994 - 355 - 2_120, 5_994 - 1_440 - 2_120};
        double[] chanceBattery = {.70, .15, .05, .10};
        double[] chanceIsolation = {.5, .3, .2};
        for (double code : new double[] {.05, .3, .8}) {
            double[] prior = DoubleStream.concat(
                    Arrays.stream(chanceBattery).map(p -> p * (1 - code)),
                    Arrays.stream(chanceIsolation).map(p -> p * code)).toArray();
            double[] profits = DoubleStream.concat(Arrays.stream(battery), Arrays.stream(isolation)).toArray();
            DecisionProblem problem = buyOrWalk(prior, profits, 1_200);
            assertThat(problem.expectedValueOfFinding(new double[] {0, 0, 0, 0, 1, 1, 1})).isCloseTo(0, CENT);
        }
    }

    /** Two rod caps off with the pan: finish or sell the roller, in each state of the bearings. */
    @Test
    void cap_inspection_during_the_teardown() {
        DecisionProblem problem = new DecisionProblem(
                new double[] {.60, .25, .15}, new double[][] {{4_526, 3_671, 476}, {1_050, 1_050, 1_050}});
        assertThat(problem.value()).isCloseTo(3_704.75, CENT);
        double[][] seen = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
        assertThat(problem.expectedValueOfSignal(seen)).isCloseTo(86.10, CENT);
        assertThat(problem.expectedValueOfSignal(seen) - 45).isCloseTo(41.10, CENT);
        assertThat(problem.valueWithSignal(seen) - 45).isCloseTo(3_745.85, CENT);
    }

    private static DecisionProblem buyOrWalk(double[] prior, double[] profits, double target) {
        double[] buy = Arrays.stream(profits).map(p -> p - target).toArray();
        return new DecisionProblem(prior, new double[][] {buy, new double[buy.length]});
    }
}
