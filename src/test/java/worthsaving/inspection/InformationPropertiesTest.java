package worthsaving.inspection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import worthsaving.inspection.TwoStep.Check;

/** Laws that hold for every decision, over random ones. */
class InformationPropertiesTest {

    static IntStream seeds() {
        return IntStream.range(0, 200);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void information_is_worth_something_between_nothing_and_perfection(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        DecisionProblem problem = problem(random);
        double[] finding = finding(random, problem.prior().length);
        assertThat(problem.expectedValueOfFinding(finding))
                .isBetween(0.0, problem.expectedValueOfPerfectInformation() + 1e-9);
        double[] useless = new double[finding.length];
        Arrays.fill(useless, random.nextDouble());
        assertThat(problem.expectedValueOfFinding(useless)).isCloseTo(0, within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void blurring_a_finding_never_makes_it_worth_more(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        DecisionProblem problem = problem(random);
        double[] sharp = finding(random, problem.prior().length);
        double error = random.nextDouble();
        double[] blurred = sharp.clone();
        for (int s = 0; s < blurred.length; s++) {
            blurred[s] = sharp[s] * (1 - error) + (1 - sharp[s]) * error;
        }
        assertThat(problem.expectedValueOfFinding(blurred))
                .isLessThanOrEqualTo(problem.expectedValueOfFinding(sharp) + 1e-9);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void two_steps_equal_every_plan_tried_by_hand(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        DecisionProblem problem = problem(random);
        List<Check> checks = new ArrayList<>();
        for (int c = 0; c < 4; c++) {
            checks.add(new Check("check " + c, finding(random, problem.prior().length), 60 * random.nextDouble()));
        }
        Optional<TwoStep.Plan> plan = new TwoStep(problem, checks, 4).best();
        double brute = bruteForce(problem, checks);
        assertThat(plan.map(TwoStep.Plan::net).orElse(0.0)).isCloseTo(Math.max(0, brute), within(1e-6));
    }

    @Test
    void two_checks_pay_together_where_neither_pays_alone() {
        double[] prior = {.25, .25, .25, .25};
        DecisionProblem problem = new DecisionProblem(
                prior, new double[][] {{100, -100, -100, 100}, {0, 0, 0, 0}});
        Check first = new Check("first bit", new double[] {1, 1, 0, 0}, 1);
        Check second = new Check("second bit", new double[] {1, 0, 1, 0}, 1);
        assertThat(problem.expectedValueOfFinding(first.present())).isZero();
        assertThat(problem.expectedValueOfFinding(second.present())).isZero();
        TwoStep.Plan plan = new TwoStep(problem, List.of(first, second), 2).best().orElseThrow();
        assertThat(plan.net()).isCloseTo(50 - 2, within(1e-9));
        assertThat(plan.ifPresent()).isPresent();
        assertThat(plan.ifAbsent()).isPresent();
    }

    /** Every first check with every continuation after each result, state by state. */
    private static double bruteForce(DecisionProblem problem, List<Check> checks) {
        double best = 0;
        for (Check first : checks) {
            for (int afterPresent = -1; afterPresent < checks.size(); afterPresent++) {
                for (int afterAbsent = -1; afterAbsent < checks.size(); afterAbsent++) {
                    double value = -first.cost() - money(problem, new double[][] {ones(problem)})
                            + branch(problem, checks, first, true, afterPresent)
                            + branch(problem, checks, first, false, afterAbsent);
                    best = Math.max(best, value);
                }
            }
        }
        return best;
    }

    private static double branch(DecisionProblem problem, List<Check> checks, Check first, boolean present, int next) {
        double[] result = new double[problem.prior().length];
        double chance = 0;
        for (int s = 0; s < result.length; s++) {
            result[s] = present ? first.present()[s] : 1 - first.present()[s];
            chance += problem.prior()[s] * result[s];
        }
        if (next < 0 || checks.get(next) == first) {
            return money(problem, new double[][] {result});
        }
        double[] yes = new double[result.length];
        double[] no = new double[result.length];
        for (int s = 0; s < result.length; s++) {
            yes[s] = result[s] * checks.get(next).present()[s];
            no[s] = result[s] - yes[s];
        }
        return money(problem, new double[][] {yes, no}) - chance * checks.get(next).cost();
    }

    private static double money(DecisionProblem problem, double[][] results) {
        double total = 0;
        for (double[] result : results) {
            double best = Double.NEGATIVE_INFINITY;
            for (double[] action : problem.payoffs()) {
                double sum = 0;
                for (int s = 0; s < result.length; s++) {
                    sum += problem.prior()[s] * result[s] * action[s];
                }
                best = Math.max(best, sum);
            }
            total += best;
        }
        return total;
    }

    private static double[] ones(DecisionProblem problem) {
        double[] ones = new double[problem.prior().length];
        Arrays.fill(ones, 1);
        return ones;
    }

    private static DecisionProblem problem(SplittableRandom random) {
        int states = 2 + random.nextInt(6);
        double[] prior = random.doubles(states).toArray();
        double sum = Arrays.stream(prior).sum();
        for (int s = 0; s < states; s++) {
            prior[s] /= sum;
        }
        double[][] payoffs = new double[2 + random.nextInt(2)][states];
        for (int a = 1; a < payoffs.length; a++) {
            for (int s = 0; s < states; s++) {
                payoffs[a][s] = -1_000 + 2_000 * random.nextDouble();
            }
        }
        return new DecisionProblem(prior, payoffs);
    }

    private static double[] finding(SplittableRandom random, int states) {
        return random.doubles(states).toArray();
    }
}
