package worthsaving.repair;

import static org.assertj.core.api.Assertions.assertThat;

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
        return Groups.split(all, Groups.neighbours(table)).stream()
                .map(group -> group.stream().mapToObj(i -> table.items[i].id()).collect(Collectors.toSet()))
                .collect(Collectors.toSet());
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
        for (BitSet group : Groups.split(failed, Groups.neighbours(table))) {
            Set<String> ids = group.stream().mapToObj(i -> table.items[i].id()).collect(Collectors.toSet());
            all.addAll(ids);
            apart += planner.plan(ids).expectedCost().amount();
        }

        assertThat(all).hasSize(failed.cardinality());
        assertThat(new RepairPlanner(trade.catalogue(), trade.workshop()).plan(all).expectedCost().amount())
                .isBetween(apart - 1e-7, apart + 1e-7);
    }
}
