package worthsaving.repair;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.PartSource;
import worthsaving.catalog.ShippedCatalogue;
import worthsaving.quantity.Money;
import worthsaving.repair.PlanResult.Planned;
import worthsaving.repair.RepairPlan.Job;
import worthsaving.repair.RepairPlan.PaidStep;

/** Plans from the catalogue of the project, whose figures are guesses: no sum is pinned, only what must hold. */
class ShippedPlansTest {

    private static final Catalogue CATALOGUE = ShippedCatalogue.load();
    private static final RepairPlanner OWN = new RepairPlanner(CATALOGUE, Workshop.ownHands(Money.usd(35)));
    private static final RepairPlanner SHOP = new RepairPlanner(CATALOGUE, Workshop.independent(Money.usd(130)));

    static Stream<String> items() {
        return CATALOGUE.items().stream().map(FailureItem::id);
    }

    @ParameterizedTest
    @MethodSource("items")
    void every_item_can_be_mended_when_nothing_is_ruled_out(String item) {
        assertThat(OWN.find(Set.of(item))).isInstanceOf(Planned.class);
    }

    @Test
    void a_starved_engine_is_swapped_and_then_nothing_else_is_opened() {
        Set<String> starved = Set.of("ROD_BEARING", "MAIN_THRUST", "OIL_PICKUP", "TIM_CHAIN_WORN", "PISTON_LAND");

        RepairPlan plan = SHOP.plan(starved);

        assertThat(plan.jobs()).filteredOn(Job::wholeUnit).singleElement()
                .satisfies(unit -> assertThat(unit.closes()).containsAll(starved));
        assertThat(plan.jobs()).hasSize(1);
        assertThat(plan.access()).extracting(PaidStep::id).contains("ENGINE_OUT").doesNotContain("HEAD_OFF");
    }

    @Test
    void a_whole_unit_can_be_ruled_out() {
        RepairPlanner repairOnly = new RepairPlanner(CATALOGUE, Workshop.independent(Money.usd(130))
                .withOnly(Set.of(PartSource.AFTERMARKET)));

        assertThat(repairOnly.plan(Set.of("ROD_BEARING", "OIL_PICKUP", "TIM_CHAIN_WORN")).jobs())
                .noneMatch(Job::wholeUnit);
    }

    @Test
    void mending_at_random_sets_together_never_costs_more_than_one_by_one() {
        Random random = new Random(7);
        List<String> deck = new ArrayList<>(items().toList());
        for (int n = 0; n < 300; n++) {
            Collections.shuffle(deck, random);
            Set<String> failed = new TreeSet<>(deck.subList(0, 1 + n % 20));
            double separate = failed.stream()
                    .mapToDouble(item -> OWN.plan(Set.of(item)).expectedCost().amount())
                    .sum();

            RepairPlan plan = OWN.plan(failed);

            assertThat(plan.expectedCost().amount()).isLessThanOrEqualTo(separate + 1e-6);
            assertThat(plan.jobs()).flatExtracting(Job::closes).containsAll(failed);
        }
    }

    @Test
    void access_steps_come_after_what_they_require() {
        List<String> order = OWN.plan(Set.of("HEAD_GASKET")).access().stream().map(PaidStep::id).toList();

        CATALOGUE.accessSteps().stream().filter(step -> order.contains(step.id())).forEach(step ->
                step.requires().forEach(required ->
                        assertThat(order.indexOf(required)).isBetween(0, order.indexOf(step.id()) - 1)));
        assertThat(order).contains("HEAD_OFF");
    }
}
