package worthsaving.inspection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ValueOfInformationTest {

    private static final Offset<Double> EXACT = within(1e-9);

    /** SAS/OR user's guide, DTREE procedure, getting started: the oil wildcatter. */
    @Test
    void wildcatter_with_uncertain_cost_and_return() {
        double[] cost = {150_000, 300_000, 500_000};
        double[] costChance = {.2, .6, .2};
        double[] oil = {0, 700_000, 1_200_000};
        double[] oilChance = {.5, .3, .2};
        double[] prior = new double[9];
        double[] drill = new double[9];
        double[][] seesOil = new double[3][9];
        double[][] seesCost = new double[3][9];
        for (int s = 0; s < 9; s++) {
            prior[s] = costChance[s / 3] * oilChance[s % 3];
            drill[s] = oil[s % 3] - cost[s / 3];
            seesOil[s % 3][s] = 1;
            seesCost[s / 3][s] = 1;
        }
        DecisionProblem problem = new DecisionProblem(prior, new double[][] {drill, new double[9]});
        assertThat(problem.value()).isCloseTo(140_000, EXACT);
        assertThat(problem.valueWithSignal(seesOil)).isCloseTo(295_000, EXACT);
        assertThat(problem.expectedValueOfSignal(seesOil)).isCloseTo(155_000, EXACT);
        assertThat(problem.valueWithSignal(seesCost)).isCloseTo(150_000, EXACT);
        assertThat(problem.expectedValueOfSignal(seesCost)).isCloseTo(10_000, EXACT);
    }

    /** Raiffa (1968), Decision Analysis, oil drilling with a seismic test; likelihoods as widely printed. */
    @Test
    void oil_drilling_with_a_seismic_test() {
        DecisionProblem problem = new DecisionProblem(
                new double[] {.5, .3, .2}, new double[][] {{-70, 50, 200}, {0, 0, 0}});
        double[][] seismic = {{.6, .3, .1}, {.3, .4, .4}, {.1, .3, .5}};
        assertThat(problem.value()).isCloseTo(20, within(1e-12));
        assertThat(problem.expectedValueOfPerfectInformation()).isCloseTo(35, within(1e-12));
        assertThat(problem.expectedValueOfSignal(seismic)).isCloseTo(12.5, within(1e-12));
        assertThat(problem.valueWithSignal(seismic) - 10).isCloseTo(22.5, within(1e-12));
    }

    @Test
    void a_car_and_a_test_of_known_sensitivity() {
        DecisionProblem problem = new DecisionProblem(
                new double[] {.7, .3}, new double[][] {{2_000, -3_000}, {0, 0}});
        double[] positive = {.15, .90};
        assertThat(problem.value()).isCloseTo(500, within(1e-12));
        assertThat(problem.expectedValueOfPerfectInformation()).isCloseTo(900, within(1e-12));
        assertThat(problem.chance(positive)).isCloseTo(.375, within(1e-12));
        assertThat(problem.joint(positive)[1] / problem.chance(positive)).isCloseTo(.72, within(1e-12));
        double[] negative = DecisionProblem.complement(positive);
        assertThat(problem.joint(negative)[1] / problem.chance(negative)).isCloseTo(.048, within(1e-12));
        assertThat(problem.expectedValueOfFinding(positive)).isCloseTo(600, within(1e-12 * 600));
        assertThat(problem.expectedValueOfFinding(positive) - 60).as("net").isCloseTo(540, within(1e-9));
        assertThat(problem.expectedValueOfFinding(positive) / 60).as("per dollar").isCloseTo(10, within(1e-12 * 10));
        assertThat(problem.bestActionAfter(positive)).isEqualTo(1);
        assertThat(problem.bestActionAfter(negative)).isZero();
    }

    /** Raiffa and Schlaifer (1961), table of the unit normal linear loss; values run independently. */
    @ParameterizedTest
    @CsvSource({"0, 0.3989422804014327", ".5, 0.19779655740130603", "1, 0.08331547058768629",
        "2, 0.008490702616829632"})
    void unit_normal_loss(double u, double expected) {
        assertThat(NormalLoss.unitLoss(u)).isCloseTo(expected, within(1e-12));
    }

    /** EVPI = s G(|m|/s) and one observation with an error of 600; Raiffa and Schlaifer (1961). */
    @Test
    void normal_gain_with_one_observation() {
        assertThat(NormalLoss.perfectInformation(300, 800)).isCloseTo(191.3350050976323, EXACT);
        assertThat(NormalLoss.oneObservation(300, 800, 600)).isCloseTo(132.87113415736857, EXACT);
    }

    @Test
    void what_cannot_be_a_decision_is_refused() {
        assertThatThrownBy(() -> new DecisionProblem(new double[] {.5, .4}, new double[][] {{1, 2}}))
                .hasMessageContaining("add up to 1");
        assertThatThrownBy(() -> new DecisionProblem(new double[] {.5, .5}, new double[][] {{1}}))
                .hasMessageContaining("2 states");
        DecisionProblem fine = new DecisionProblem(new double[] {.5, .5}, new double[][] {{1, 2}});
        assertThatThrownBy(() -> fine.valueWithSignal(new double[][] {{.5, .5}, {.4, .5}}))
                .hasMessageContaining("signals of each state");
    }
}
