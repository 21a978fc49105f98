package worthsaving.repair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import worthsaving.catalog.AccessStep;
import worthsaving.catalog.FailureItem;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;

/** A car that is partly open. Hours invented, sums by hand. */
class OpenAccessTest {

    private static final Offset<Double> EXACT = within(1e-9);
    private static final Workshop HANDS = Workshop.ownHands(Money.usd(100));

    private static final Trade ENGINE = new Trade()
            .step("MOUNT", 1.5)
            .step("COVER", 3.0, "MOUNT")
            .step("HEAD", 4.0, Map.of("ENGINE_OUT", 0.5, "MOUNT", 0.8), "COVER")
            .step("PAN", 2.0)
            .step("ENGINE_OUT", 7.0, "PAN")
            .item("CHAIN", 2.0, 300, "COVER")
            .item("GASKET", 1.0, 200, "HEAD")
            .item("PICKUP", 0.5, 50, "PAN");

    static Stream<Integer> trades() {
        return IntStream.range(7_000, 7_150).boxed();
    }

    private static RepairPlan plan(Set<String> open, String... failed) {
        return new RepairPlanner(ENGINE.catalogue(), HANDS, open).plan(Set.of(failed));
    }

    @Test
    void what_is_open_costs_no_hours_more_with_all_it_requires() {
        assertThat(plan(Set.of(), "CHAIN").meanHours().value()).isCloseTo(6.5, EXACT);
        assertThat(plan(Set.of("MOUNT"), "CHAIN").meanHours().value()).isCloseTo(5, EXACT);
        assertThat(plan(Set.of("COVER"), "CHAIN").meanHours().value()).isCloseTo(2, EXACT);
        assertThat(plan(Set.of("COVER"), "CHAIN", "PICKUP").meanHours().value()).isCloseTo(4.5, EXACT);
        assertThat(plan(Set.of("PAN"), "CHAIN").meanHours().value()).isCloseTo(6.5, EXACT);
        assertThat(plan(Set.of("COVER"), "CHAIN").meanCost().amount()).isCloseTo(500, EXACT);
    }

    @Test
    void an_open_step_still_eases_the_others() {
        assertThat(plan(Set.of("COVER"), "GASKET").meanHours().value()).isCloseTo(4 * .8 + 1, EXACT);
        assertThat(plan(Set.of("COVER", "ENGINE_OUT"), "GASKET").meanHours().value()).isCloseTo(4 * .5 + 1, EXACT);
    }

    @Test
    void doing_a_job_again_means_opening_again() {
        RepairPlan plan = plan(Set.of("COVER"), "CHAIN");
        assertThat(plan.access()).extracting(RepairPlan.PaidStep::id).containsExactlyInAnyOrder("MOUNT", "COVER");
        assertThat(plan.access()).allMatch(s -> s.hours().mean().equals(Hours.NONE));
        assertThat(plan.access().stream().mapToDouble(s -> s.again().mean().value()).sum()).isCloseTo(4.5, EXACT);
        assertThat(plan.comebackReserve()).isEqualTo(plan(Set.of(), "CHAIN").comebackReserve());
    }

    @Test
    void says_what_is_still_to_be_opened() {
        RepairPlanner planner = new RepairPlanner(ENGINE.catalogue(), HANDS, Set.of("MOUNT"));
        Map<String, Hours> still = planner.stillToOpen(Set.of("HEAD"));
        assertThat(still).containsOnlyKeys("COVER", "HEAD");
        assertThat(still.get("COVER").value()).isCloseTo(3, EXACT);
        assertThat(still.get("HEAD").value()).isCloseTo(4 * .8, EXACT);
        assertThat(planner.stillToOpen(Set.of("MOUNT"))).isEmpty();
        assertThatThrownBy(() -> planner.stillToOpen(Set.of("ROOF"))).hasMessageContaining("no access step ROOF");
        assertThatThrownBy(() -> plan(Set.of("ROOF"), "CHAIN")).hasMessageContaining("no access step ROOF");
    }

    @ParameterizedTest
    @MethodSource("trades")
    void opening_saves_between_nothing_and_the_hours_of_what_is_open(int number) {
        RandomTrade trade = RandomTrade.numbered(number);
        SplittableRandom random = new SplittableRandom(number);
        List<AccessStep> steps = trade.catalogue().accessSteps();
        Set<String> open = OpenAccess.closure(steps, steps.stream().map(AccessStep::id)
                .filter(s -> random.nextInt(3) == 0).collect(Collectors.toSet()));
        RepairPlanner closed = new RepairPlanner(trade.catalogue(), trade.workshop());
        RepairPlanner opened = new RepairPlanner(trade.catalogue(), trade.workshop(), open);
        Set<String> failed = new LinkedHashSet<>();
        for (FailureItem item : trade.catalogue().items()) {
            if (closed.find(Set.of(item.id())).found().isPresent()) {
                failed.add(item.id());
            }
        }
        double before = closed.plan(failed).expectedCost().amount();
        double after = opened.plan(failed).expectedCost().amount();
        double rate = trade.workshop().worker().hourly().amount();
        double most = steps.stream().filter(s -> open.contains(s.id()))
                .mapToDouble(s -> s.hours().mean().value() * trade.workshop().worker().factor(s.id())).sum() * rate;
        assertThat(after).isBetween(before - most - 1e-7, before + 1e-7);
    }

    @ParameterizedTest
    @MethodSource("trades")
    void with_everything_open_only_the_jobs_are_left(int number) {
        RandomTrade trade = RandomTrade.numbered(number);
        Set<String> all = trade.catalogue().accessSteps().stream().map(AccessStep::id).collect(Collectors.toSet());
        RepairPlanner opened = new RepairPlanner(trade.catalogue(), trade.workshop(), new HashSet<>(all));
        for (FailureItem item : trade.catalogue().items()) {
            opened.find(Set.of(item.id())).found().ifPresent(plan -> assertThat(plan.meanHours().value())
                    .isCloseTo(plan.jobs().stream().mapToDouble(j -> j.hours().mean().value()
                            * trade.workshop().worker().factor(j.id())).sum(), within(1e-7)));
        }
    }
}
