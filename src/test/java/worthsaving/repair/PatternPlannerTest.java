package worthsaving.repair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.catalog.FailureItem;
import worthsaving.quantity.Money;

class PatternPlannerTest {

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 5, 8, 13, 21, 34, 55, 89, 144, 233})
    void work_by_position_is_the_plan_by_name(int number) {
        RandomTrade trade = RandomTrade.numbered(number);
        RepairPlanner planner = new RepairPlanner(trade.catalogue(), trade.workshop());
        List<String> items = List.copyOf(trade.failed());
        BitSet all = new BitSet();
        all.set(0, items.size());

        Optional<RepairWork> work = planner.over(items).work(all);

        Optional<RepairPlan> plan = planner.find(trade.failed()).found();
        assertThat(work.map(RepairWork::jobs)).isEqualTo(plan.map(RepairPlan::jobs));
        assertThat(work.map(RepairWork::access)).isEqualTo(plan.map(RepairPlan::access));
        assertThat(work.map(RepairWork::toolsToBuy)).isEqualTo(plan.map(RepairPlan::toolsToBuy));
        assertThat(work.map(RepairWork::cost)).isEqualTo(plan.map(p -> p.meanCost().amount()));
        assertThat(work.map(RepairWork::hours)).isEqualTo(plan.map(p -> p.meanHours().value()));
        assertThat(work.map(RepairWork::separateHours)).isEqualTo(plan.map(p -> p.separateHours().value()));
        assertThat(work.map(RepairWork::reserve)).isEqualTo(plan.map(p -> p.comebackReserve().amount()));
    }

    @Test
    void two_plans_name_the_same_parts() {
        Trade trade = new Trade()
                .step("PAN", 2)
                .item("PUMP", 1, 10, "PAN")
                .item("PICKUP", 1, 10, "PAN");
        PatternPlanner planner =
                new RepairPlanner(trade.catalogue(), Workshop.ownHands(Money.usd(40))).over(List.of("PICKUP", "PUMP"));
        BitSet pump = BitSet.valueOf(new long[] {2});
        BitSet both = BitSet.valueOf(new long[] {3});

        RepairWork one = planner.work(pump).orElseThrow();
        RepairWork two = planner.work(both).orElseThrow();

        assertThat(two.parts()).isSameAs(one.parts());
        assertThat(one.accessCount()).isEqualTo(1);
        assertThat(two.access(0)).isEqualTo(one.access(0));
        assertThat(two.job(1)).isEqualTo(one.job(0));
    }

    @Test
    void nothing_failed_needs_no_work() {
        RepairWork work = new RepairPlanner(new Trade().item("PUMP", 1, 10).catalogue(), Workshop.ownHands(Money.usd(40)))
                .over(List.of("PUMP"))
                .work(new BitSet())
                .orElseThrow();

        assertThat(work.jobs()).isEmpty();
        assertThat(work.access()).isEmpty();
        assertThat(work.toolsToBuy()).isEmpty();
        assertThat(work.expectedCost()).isZero();
    }

    @Test
    void what_was_planned_before_leaves_no_trace() {
        int compared = 0;
        for (int n = 0; n < 200; n++) {
            RandomTrade trade = RandomTrade.numbered(4_000 + n);
            RepairPlanner planner = new RepairPlanner(trade.catalogue(), trade.workshop());
            List<String> items = trade.catalogue().items().stream().map(FailureItem::id).toList();
            PatternPlanner used = planner.over(items);
            for (int pattern = 1; pattern < 1 << Math.min(6, items.size()); pattern++) {
                BitSet failed = BitSet.valueOf(new long[] {pattern});
                Optional<RepairWork> fresh = planner.over(items).work(failed);

                assertThat(used.work(failed).map(RepairWork::expectedCost)).isEqualTo(fresh.map(RepairWork::expectedCost));
                compared += fresh.isPresent() ? 1 : 0;
            }
        }
        assertThat(compared).isGreaterThan(2_000);
    }

    @Test
    void an_unknown_item_is_named() {
        RepairPlanner planner =
                new RepairPlanner(new Trade().item("PUMP", 1, 10).catalogue(), Workshop.ownHands(Money.usd(40)));

        assertThatThrownBy(() -> planner.over(List.of("PUMP", "HUM")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("HUM");
    }
}
