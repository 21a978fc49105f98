package worthsaving.repair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
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

        assertThat(work).isEqualTo(planner.find(trade.failed()).found().map(RepairPlan::work));
    }

    @Test
    void two_plans_share_the_objects_they_have_in_common() {
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

        assertThat(two.access().get(0)).isSameAs(one.access().get(0));
        assertThat(two.jobs()).anyMatch(job -> job == one.jobs().get(0));
    }

    @Test
    void nothing_failed_needs_no_work() {
        RepairWork work = new RepairPlanner(new Trade().item("PUMP", 1, 10).catalogue(), Workshop.ownHands(Money.usd(40)))
                .over(List.of("PUMP"))
                .work(new BitSet())
                .orElseThrow();

        assertThat(work).isEqualTo(new RepairWork(List.of(), List.of(), List.of(), 0, 0, 0, 0));
        assertThat(work.expectedCost()).isZero();
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
