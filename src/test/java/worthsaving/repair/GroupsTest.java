package worthsaving.repair;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import worthsaving.catalog.PartSource;
import worthsaving.quantity.Money;

class GroupsTest {

    private static final Workshop OWN = Workshop.ownHands(Money.usd(40));

    private static Set<Set<String>> split(Trade trade, Workshop shop) {
        JobTable table = new JobTable(trade.catalogue(), shop);
        BitSet all = new BitSet();
        all.set(0, table.items.length);
        return Set.copyOf(split(table, all));
    }

    private static List<Set<String>> split(JobTable table, BitSet failed) {
        Groups groups = new Groups(table);
        long[] left = Bits.of(failed, table.items.length);
        int[] group = new int[table.items.length];
        List<Set<String>> all = new ArrayList<>();
        for (int size = groups.take(left, group); size > 0; size = groups.take(left, group)) {
            all.add(IntStream.of(group).limit(size).mapToObj(i -> table.items[i].id()).collect(Collectors.toSet()));
        }
        return all;
    }

    @Test
    void a_shared_requirement_joins_and_nothing_shared_parts() {
        Trade trade = new Trade()
                .step("STANDS", 1)
                .step("PAN", 2, "STANDS")
                .step("BOX", 2, "STANDS")
                .step("DASH", 5)
                .item("PUMP", 1, 10, "PAN")
                .item("CLUTCH", 1, 10, "BOX")
                .item("HEATER", 1, 10, "DASH")
                .item("BULB", 1, 10);

        assertThat(split(trade, OWN)).containsExactlyInAnyOrder(
                Set.of("PUMP", "CLUTCH"), Set.of("HEATER"), Set.of("BULB"));
    }

    @Test
    void a_tool_joins_only_while_it_has_to_be_bought() {
        Trade trade = new Trade()
                .tool("PRESS", 100)
                .item("A", 1, Map.of(PartSource.MAKER, 1.0), 0, List.of("PRESS"), Set.of())
                .item("B", 1, Map.of(PartSource.MAKER, 1.0), 0, List.of("PRESS"), Set.of());

        assertThat(split(trade, OWN)).containsExactly(Set.of("A", "B"));
        assertThat(split(trade, OWN.withTools(Set.of("PRESS")))).containsExactlyInAnyOrder(Set.of("A"), Set.of("B"));
    }

    @Test
    void a_step_that_could_ease_both_joins() {
        Trade trade = new Trade()
                .step("OUT", 5)
                .step("LEFT", 8, Map.of("OUT", 0.5))
                .step("RIGHT", 8, Map.of("OUT", 0.5))
                .item("A", 1, 10, "LEFT")
                .item("B", 1, 10, "RIGHT");

        assertThat(split(trade, OWN)).containsExactly(Set.of("A", "B"));
    }

    static IntStream trades() {
        return IntStream.range(7_000, 7_100);
    }

    @ParameterizedTest
    @MethodSource("trades")
    void groups_cost_together_what_they_cost_apart(int number) {
        RandomTrade trade = RandomTrade.numbered(number);
        RepairPlanner planner = new RepairPlanner(trade.catalogue(), trade.workshop());
        JobTable table = new JobTable(trade.catalogue(), trade.workshop());
        BitSet failed = new BitSet();
        trade.failed().stream().filter(id -> planner.find(Set.of(id)).found().isPresent())
                .forEach(id -> failed.set(table.itemIndex.get(id)));
        Set<String> all = new TreeSet<>();
        double apart = 0;
        for (Set<String> ids : split(table, failed)) {
            all.addAll(ids);
            apart += planner.plan(ids).expectedCost().amount();
        }

        assertThat(all).hasSize(failed.cardinality());
        assertThat(new RepairPlanner(trade.catalogue(), trade.workshop()).plan(all).expectedCost().amount())
                .isBetween(apart - 1e-7, apart + 1e-7);
    }
}
