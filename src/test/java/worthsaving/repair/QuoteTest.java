package worthsaving.repair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import worthsaving.catalog.PartSource;
import worthsaving.quantity.HoursRange;
import worthsaving.quantity.Money;
import worthsaving.quantity.MoneyRange;
import worthsaving.quantity.Range;
import worthsaving.repair.Quote.Line;
import worthsaving.repair.Quote.Stage;
import worthsaving.repair.Worker.OwnHands;

class QuoteTest {

    private static final Trade TRADE = new Trade()
            .tool("LOCK", 90)
            .step("STANDS", 0.4)
            .step("A_PAN", 3, "STANDS")
            .item("PICKUP", HoursRange.of(0.6, 0.8, 1.3), Map.of(PartSource.AFTERMARKET, MoneyRange.usd(15, 35, 80)),
                    Trade.usd(60), List.of(), Set.of(), "A_PAN")
            .item("PUMP", 1.6, Map.of(PartSource.AFTERMARKET, 200.0), 0, List.of("LOCK"), Set.of(), "A_PAN");

    @Test
    void lines_follow_the_order_of_the_work() {
        RepairPlanner planner = new RepairPlanner(TRADE.catalogue(), Workshop.ownHands(Money.usd(50)));

        Quote quote = planner.quote(planner.plan(Set.of("PICKUP", "PUMP")));

        assertThat(quote.lines()).extracting(l -> l.stage() + " " + l.id() + " " + l.neededBy()).containsExactly(
                "ACCESS STANDS [PICKUP, PUMP]",
                "ACCESS A_PAN [PICKUP, PUMP]",
                "JOB PICKUP [PICKUP]",
                "JOB PUMP [PUMP]",
                "PART PICKUP [PICKUP]",
                "PART PUMP [PUMP]",
                "CONSUMABLES PICKUP [PICKUP]",
                "TOOL LOCK [PUMP]");
        assertThat(quote.total(Stage.ACCESS).mean().amount()).isEqualTo(3.4 * 50, within(1e-9));
        assertThat(quote.hoursSaved().value()).isEqualTo(3.4, within(1e-9));
    }

    @Test
    void the_range_adds_all_lines_end_to_end() {
        RepairPlanner planner = new RepairPlanner(TRADE.catalogue(), Workshop.independent(Money.usd(100)));

        MoneyRange total = planner.quote(planner.plan(Set.of("PICKUP"))).total();

        // Access 3.4 h; job 0.6, 0.8 or 1.3 h; part 15, 35 or 80; sealant and oil 60.
        assertRange(total.amount(), new Range(340 + 60 + 15 + 60, 340 + 80 + 35 + 60, 340 + 130 + 80 + 60));
    }

    @Test
    void own_speed_shows_in_hours_and_amounts() {
        Workshop slow = Workshop.of(new OwnHands(Money.usd(20), 1.5, 2, Set.of("STANDS", "A_PAN")));
        RepairPlanner planner = new RepairPlanner(TRADE.catalogue(), slow);

        Line job = planner.quote(planner.plan(Set.of("PUMP"))).lines().stream()
                .filter(line -> line.stage() == Stage.JOB).findFirst().orElseThrow();

        assertRange(job.hours(), Range.exactly(1.6 * 1.5 * 2));
        assertRange(job.amount().amount(), Range.exactly(1.6 * 1.5 * 2 * 20));
    }

    static Stream<Integer> trades() {
        return IntStream.range(9_000, 9_200).boxed();
    }

    @ParameterizedTest
    @MethodSource("trades")
    void the_lines_add_up_to_the_plan(int number) {
        RandomTrade trade = RandomTrade.numbered(number);
        RepairPlanner planner = new RepairPlanner(trade.catalogue(), trade.workshop());
        planner.find(trade.failed()).found().ifPresent(plan -> {
            Quote quote = planner.quote(plan);
            double hours = quote.lines().stream().mapToDouble(line -> line.hours().mean()).sum();

            assertThat(quote.mean().amount()).isEqualTo(plan.meanCost().amount(), within(1e-7));
            assertThat(hours).isEqualTo(plan.meanHours().value(), within(1e-7));
            assertThat(quote.lines()).filteredOn(line -> line.stage() == Stage.PART).hasSize(plan.jobs().size());
        });
    }

    @Test
    void a_plan_from_elsewhere_is_refused() {
        RepairPlanner used = new RepairPlanner(
                new Trade().item("OTHER", 1, 10).catalogue(), Workshop.ownHands(Money.usd(50)));
        RepairPlanner planner = new RepairPlanner(TRADE.catalogue(), Workshop.ownHands(Money.usd(50)));

        assertThatThrownBy(() -> planner.quote(used.plan(Set.of("OTHER"))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no job OTHER");
    }

    private static void assertRange(Range range, Range expected) {
        assertThat(range.low()).isEqualTo(expected.low(), within(1e-9));
        assertThat(range.mode()).isEqualTo(expected.mode(), within(1e-9));
        assertThat(range.high()).isEqualTo(expected.high(), within(1e-9));
    }
}
