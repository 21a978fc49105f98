package worthsaving.inspection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import worthsaving.inspection.TwoStep.Check;
import worthsaving.inspection.TwoStep.Plan;

class TwoStepTest {

    /** With few tried, the plan is that of trying all of those that tell most and no others. */
    @Test
    void tries_the_checks_that_tell_most() {
        int narrowed = 0;
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            DecisionProblem problem = problem(random);
            List<Check> checks = new ArrayList<>();
            for (int c = 0; c < 6; c++) {
                double likely = random.nextDouble();
                double told = random.nextDouble();
                checks.add(new Check("c" + c, new double[] {likely, told * random.nextDouble(), random.nextDouble() * 0.2},
                        2 * random.nextDouble()));
            }
            List<Check> most = checks.stream()
                    .sorted(Comparator.comparingDouble((Check c) -> -tells(problem, c)).thenComparing(Check::id))
                    .limit(2).toList();
            Optional<Plan> plan = new TwoStep(problem, checks, 2).best();

            assertThat(plan).isEqualTo(new TwoStep(problem, most, 2).best());
            narrowed += plan.equals(new TwoStep(problem, checks, 6).best()) ? 0 : 1;
        }
        assertThat(narrowed).as("problems in which the choice of checks matters").isGreaterThan(20);
    }

    private static DecisionProblem problem(Random random) {
        double a = 0.2 + 0.4 * random.nextDouble();
        double b = (1 - a) * random.nextDouble();
        double[][] payoffs = new double[3][3];
        for (int action = 1; action < 3; action++) {
            for (int s = 0; s < 3; s++) {
                payoffs[action][s] = 100 * random.nextGaussian();
            }
        }
        return new DecisionProblem(new double[] {a, b, 1 - a - b}, payoffs);
    }

    /** Greatest difference in an action's expected money between the two results, times the result's deviation. */
    private static double tells(DecisionProblem problem, Check check) {
        double p = 0;
        for (int s = 0; s < 3; s++) {
            p += problem.prior()[s] * check.present()[s];
        }
        double most = 0;
        for (double[] action : problem.payoffs()) {
            double with = 0;
            double without = 0;
            for (int s = 0; s < 3; s++) {
                with += problem.prior()[s] * check.present()[s] * action[s] / p;
                without += problem.prior()[s] * (1 - check.present()[s]) * action[s] / (1 - p);
            }
            most = Math.max(most, Math.abs(with - without));
        }
        return most * Math.sqrt(p * (1 - p));
    }

    @Test
    void a_check_that_always_says_the_same_tells_nothing() {
        DecisionProblem problem = new DecisionProblem(new double[] {0.5, 0.5}, new double[][] {{0, 0}, {100, -120}});
        Check never = new Check("a never", new double[] {0, 0}, 0);
        Check always = new Check("b always", new double[] {1, 1}, 0);
        Check useful = new Check("c useful", new double[] {1, 0}, 5);
        Plan plan = new TwoStep(problem, List.of(never, always, useful), 1).best().orElseThrow();

        assertThat(plan.first()).isEqualTo("c useful");
        assertThat(plan.ifPresent()).isEmpty();
        assertThat(plan.ifAbsent()).isEmpty();
        assertThat(plan.net()).isCloseTo(45, within(1e-9));
    }

    @Test
    void a_check_worth_just_its_cost_is_no_plan() {
        DecisionProblem problem = new DecisionProblem(new double[] {0.5, 0.5}, new double[][] {{0, 0}, {100, -120}});

        assertThat(new TwoStep(problem, List.of(new Check("c", new double[] {1, 0}, 50)), 1).best()).isEmpty();
        assertThat(new TwoStep(problem, List.of(new Check("c", new double[] {1, 0}, 49)), 1).best()).isPresent();
    }
}
