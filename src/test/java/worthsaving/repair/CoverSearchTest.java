package worthsaving.repair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import worthsaving.repair.PlanResult.Infeasible;
import worthsaving.repair.PlanResult.Planned;

class CoverSearchTest {

    private static final int INSTANCES = 1_000;

    @Test
    void equals_brute_force_on_a_thousand_random_instances() {
        int planned = 0;
        int withRemedy = 0;
        int withEasing = 0;
        int withTools = 0;
        int withExtraStep = 0;
        for (int n = 0; n < INSTANCES; n++) {
            RandomTrade trade = RandomTrade.numbered(n);
            OptionalDouble least =
                    new BruteForce(trade.catalogue(), trade.workshop(), trade.failed()).leastExpectedCost();
            RepairPlanner planner = new RepairPlanner(trade.catalogue(), trade.workshop());
            PlanResult result = planner.find(trade.failed());

            assertThat(result instanceof Planned).as("instance %d is feasible", n).isEqualTo(least.isPresent());
            if (result instanceof Planned p) {
                RepairPlan plan = p.plan();
                assertThat(plan.expectedCost().amount())
                        .as("instance %d", n)
                        .isEqualTo(least.getAsDouble(), within(1e-9 * Math.max(1, least.getAsDouble())));
                Set<String> closed = new HashSet<>();
                plan.jobs().forEach(job -> closed.addAll(job.closes()));
                assertThat(closed).as("instance %d", n).containsAll(trade.failed());
                planned++;
                withRemedy += plan.jobs().stream().anyMatch(j -> j.id().startsWith("R")) ? 1 : 0;
                withEasing += trade.catalogue().accessSteps().stream().anyMatch(s -> !s.easedBy().isEmpty()) ? 1 : 0;
                withExtraStep += planner.quote(plan).lines().stream().anyMatch(l -> l.neededBy().isEmpty()) ? 1 : 0;
                withTools += plan.toolsToBuy().isEmpty() ? 0 : 1;
            } else {
                assertThat(((Infeasible) result).items()).isNotEmpty();
            }
        }
        // The comparison means something only if every feature took part often.
        assertThat(planned).isBetween(500, INSTANCES - 50);
        assertThat(withRemedy).isGreaterThan(150);
        assertThat(withEasing).isGreaterThan(300);
        assertThat(withTools).isGreaterThan(150);
        assertThat(withExtraStep).isGreaterThan(10);
    }
}
