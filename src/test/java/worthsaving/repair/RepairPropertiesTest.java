package worthsaving.repair;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.PartSource;
import worthsaving.catalog.Tool;
import worthsaving.repair.PlanResult.Planned;

/** What must hold for every catalogue, shown on seeded random ones. */
class RepairPropertiesTest {

    private static final double CENT = 1e-7;

    static Stream<Integer> trades() {
        return IntStream.range(5_000, 5_250).boxed();
    }

    @ParameterizedTest
    @MethodSource("trades")
    void together_is_never_dearer_than_separate_nor_cheaper_than_the_dearest_alone(int number) {
        RandomTrade trade = RandomTrade.numbered(number);
        RepairPlanner planner = new RepairPlanner(trade.catalogue(), trade.workshop());
        Set<String> mendable = mendable(planner, trade.catalogue());
        double sum = 0;
        double dearest = 0;
        for (String item : mendable) {
            double alone = planner.plan(Set.of(item)).expectedCost().amount();
            sum += alone;
            dearest = Math.max(dearest, alone);
        }

        RepairPlan together = planner.plan(mendable);

        assertThat(together.expectedCost().amount()).isBetween(dearest - CENT, sum + CENT);
        assertThat(together.meanHours().value()).isLessThanOrEqualTo(together.separateHours().value() + CENT);
    }

    @ParameterizedTest
    @MethodSource("trades")
    void one_more_failure_never_makes_it_cheaper(int number) {
        RandomTrade trade = RandomTrade.numbered(number);
        RepairPlanner planner = new RepairPlanner(trade.catalogue(), trade.workshop());
        Set<String> failed = new HashSet<>();
        double before = 0;
        for (String item : mendable(planner, trade.catalogue())) {
            failed.add(item);
            double now = planner.plan(failed).expectedCost().amount();
            assertThat(now).isGreaterThanOrEqualTo(before - CENT);
            before = now;
        }
    }

    @ParameterizedTest
    @MethodSource("trades")
    void neither_order_of_items_nor_of_the_catalogue_matters(int number) {
        RandomTrade trade = RandomTrade.numbered(number);
        Catalogue c = trade.catalogue();
        RepairPlanner planner = new RepairPlanner(c, trade.workshop());
        RepairPlanner shuffled = new RepairPlanner(
                new Catalogue(c.version(), shuffle(c.items(), number), c.damage(), c.findings(), c.findingLinks(),
                        shuffle(c.accessSteps(), number), shuffle(c.remedies(), number), shuffle(c.tools(), number),
                        c.moneyLines()),
                trade.workshop());
        Set<String> mendable = mendable(planner, c);

        RepairPlan plan = planner.plan(mendable);

        assertThat(planner.plan(new LinkedHashSet<>(shuffle(List.copyOf(mendable), number)))).isEqualTo(plan);
        assertThat(shuffled.plan(mendable)).isEqualTo(plan);
    }

    @ParameterizedTest
    @MethodSource("trades")
    void owning_one_more_tool_never_makes_it_dearer(int number) {
        RandomTrade trade = RandomTrade.numbered(number);
        Set<String> mendable = mendable(new RepairPlanner(trade.catalogue(), trade.workshop()), trade.catalogue());
        double before = cost(trade.catalogue(), trade.workshop(), mendable);
        Set<String> owned = new HashSet<>(trade.workshop().ownedTools());
        for (Tool tool : trade.catalogue().tools()) {
            owned.add(tool.id());
            double now = cost(trade.catalogue(), trade.workshop().withTools(owned), mendable);
            assertThat(now).isLessThanOrEqualTo(before + CENT);
            before = now;
        }
    }

    @ParameterizedTest
    @MethodSource("trades")
    void one_more_allowed_source_never_makes_it_dearer(int number) {
        RandomTrade trade = RandomTrade.numbered(number);
        Set<PartSource> allowed = EnumSet.of(PartSource.AFTERMARKET);
        Workshop narrow = trade.workshop().withOnly(allowed);
        Set<String> mendable = mendable(new RepairPlanner(trade.catalogue(), narrow), trade.catalogue());
        double before = cost(trade.catalogue(), narrow, mendable);
        for (PartSource source : List.of(PartSource.USED, PartSource.MAKER, PartSource.REBUILT)) {
            allowed.add(source);
            double now = cost(trade.catalogue(), narrow.withOnly(allowed), mendable);
            assertThat(now).isLessThanOrEqualTo(before + CENT);
            before = now;
        }
        assertThat(cost(trade.catalogue(), narrow.withOnly(allowed).withUsedUnits(true), mendable))
                .isLessThanOrEqualTo(before + CENT);
    }

    private static double cost(Catalogue catalogue, Workshop shop, Set<String> failed) {
        return new RepairPlanner(catalogue, shop).plan(failed).expectedCost().amount();
    }

    private static Set<String> mendable(RepairPlanner planner, Catalogue catalogue) {
        Set<String> ids = new LinkedHashSet<>();
        catalogue.items().stream()
                .map(FailureItem::id)
                .filter(id -> planner.find(Set.of(id)) instanceof Planned)
                .forEach(ids::add);
        return ids;
    }

    private static <T> List<T> shuffle(List<T> list, int seed) {
        List<T> copy = new ArrayList<>(list);
        Collections.shuffle(copy, new Random(seed));
        return copy;
    }
}
