package worthsaving.ranking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.deal.Outcome;
import worthsaving.deal.ToolNeed;
import worthsaving.quantity.Money;
import worthsaving.quantity.Probability;

/** All cars, tools and amounts are invented. */
class SetChoiceTest {

    private static final Offset<Double> CENT = within(0.005);

    private static Candidate car(String id, double profit, double cash, double hours, ToolNeed... tools) {
        return new Candidate(id, profit, cash, hours, 1, Outcome.equallyLikely(profit), profit + cash, List.of(tools));
    }

    private static ToolNeed tool(String id, double price, double chance) {
        return new ToolNeed(id, id, Money.usd(price), Probability.of(chance));
    }

    private static List<String> ids(ChosenSet set) {
        return set.cars().stream().map(Candidate::id).toList();
    }

    /**
     * Trade notes, story 19: by expected profit C comes before A and A before B, C and B together lay out 7,908,
     * and a limit of 7,000 rules the pair out. The notes give no more of this case, so how the 7,908 split is
     * invented.
     */
    @ParameterizedTest
    @CsvSource({"7908, B C", "7907.99, A C", "7000, A C", "6500, C"})
    void a_cash_limit_blocks_a_pair(double cash, String expected) {
        List<Candidate> lot = List.of(car("A", 900, 2_600, 30), car("B", 950, 3_908, 12), car("C", 1_500, 4_000, 20));

        assertThat(ids(SetChoice.best(lot, Budget.NONE.withCash(cash)))).containsExactly(expected.split(" "));
    }

    @Test
    void bays_and_hours_bind_and_no_limit_takes_all_that_pays() {
        List<Candidate> lot = List.of(car("A", 900, 2_000, 30), car("B", 800, 2_000, 12), car("C", 700, 2_000, 20),
                car("D", -10, 100, 1));

        assertThat(ids(SetChoice.best(lot, Budget.NONE))).containsExactly("A", "B", "C");
        assertThat(ids(SetChoice.best(lot, Budget.NONE.withBays(1)))).containsExactly("A");
        assertThat(ids(SetChoice.best(lot, Budget.NONE.withHours(40)))).containsExactly("B", "C");
        assertThat(ids(SetChoice.best(lot, Budget.NONE.withBays(0)))).isEmpty();
        assertThat(SetChoice.best(List.of(), Budget.NONE).profit()).isZero();
    }

    @Test
    void a_car_that_takes_no_bay_fits_a_full_workshop() {
        Candidate resold = new Candidate("R", 300, 1_000, 1, 0, Outcome.equallyLikely(300), 1_300, List.of());

        assertThat(ids(SetChoice.best(List.of(car("A", 900, 2_000, 30), resold), Budget.NONE.withBays(1))))
                .containsExactly("A", "R");
    }

    /** Neither car pays for the welder alone (600 - 700), both together do (2 x 600 - 700). */
    @Test
    void a_tool_is_bought_once_for_all_that_need_it() {
        ToolNeed welder = tool("WELDER", 700, 1);
        List<Candidate> lot = List.of(car("A", -100, 1_700, 10, welder), car("B", -100, 1_700, 10, welder));
        ChosenSet both = SetChoice.best(lot, Budget.NONE);

        assertThat(ids(both)).containsExactly("A", "B");
        assertThat(both.profit()).isCloseTo(500, CENT);
        assertThat(both.cash()).isCloseTo(2_700, CENT);
        assertThat(both.toolsShared()).isCloseTo(700, CENT);
        assertThat(ids(SetChoice.best(lot, Budget.NONE.withCash(2_700)))).hasSize(2);
        assertThat(ids(SetChoice.best(lot, Budget.NONE.withCash(2_699)))).isEmpty();
    }

    /** P(at least one needs it) = 1 - .5 x .8 = .6: 60 of the 100, against 50 + 20 apart. */
    @Test
    void a_tool_that_may_be_needed_costs_its_price_at_the_chance_that_any_car_needs_it() {
        List<Candidate> lot = List.of(car("A", 500, 0, 0, tool("PULLER", 100, .5)),
                car("B", 500, 0, 0, tool("PULLER", 100, .2)));
        ChosenSet set = SetChoice.best(lot, Budget.NONE);

        assertThat(set.tools()).singleElement().satisfies(t -> assertThat(t.chance().value()).isCloseTo(.6, CENT));
        assertThat(set.profit()).isCloseTo(1_000 + 10, CENT);
    }

    @Test
    void equals_brute_force_on_a_thousand_random_lots() {
        SplittableRandom random = new SplittableRandom(5);
        int binding = 0;
        for (int k = 0; k < 1_000; k++) {
            List<Candidate> lot = randomLot(random, 1 + random.nextInt(15));
            Budget budget = randomBudget(random, lot);
            ChosenSet set = SetChoice.best(lot, budget);
            double brute = BruteSets.best(lot, budget);

            assertThat(set.profit()).as("lot %d", k).isCloseTo(brute, within(1e-6));
            assertThat(BruteSets.profit(set.cars())).isCloseTo(set.profit(), within(1e-6));
            assertThat(BruteSets.allowed(set.cars(), budget)).as("lot %d", k).isTrue();
            binding += set.cars().size() < lot.size() ? 1 : 0;
        }
        assertThat(binding).isBetween(600, 999);
    }

    @Test
    void with_a_car_forced_in_equals_brute_force_over_the_sets_that_hold_it() {
        SplittableRandom random = new SplittableRandom(6);
        for (int k = 0; k < 200; k++) {
            List<Candidate> lot = randomLot(random, 2 + random.nextInt(8));
            Budget budget = randomBudget(random, lot);
            String id = lot.get(0).id();

            assertThat(SetChoice.bestWith(id, lot, budget).map(ChosenSet::profit).orElse(Double.NEGATIVE_INFINITY))
                    .as("lot %d", k).isCloseTo(BruteSets.bestWith(id, lot, budget), within(1e-6));
        }
    }

    @Test
    void the_order_of_the_candidates_does_not_matter() {
        SplittableRandom random = new SplittableRandom(7);
        List<Candidate> lot = new ArrayList<>(randomLot(random, 40));
        Budget budget = randomBudget(random, lot);
        ChosenSet set = SetChoice.best(lot, budget);
        Collections.shuffle(lot, new Random(8));

        assertThat(SetChoice.best(lot, budget)).isEqualTo(set);
    }

    /** Counting nodes, not seconds: a limit that says the bounds do their work on lots of forty. */
    @Test
    void forty_listings_take_few_nodes() {
        SplittableRandom random = new SplittableRandom(9);
        long most = 0;
        for (int k = 0; k < 100; k++) {
            List<Candidate> lot = randomLot(random, 40);
            most = Math.max(most, SetChoice.nodes(lot, randomBudget(random, lot)));
        }
        assertThat(most).isLessThan(2_000_000);
    }

    @Test
    void bad_input_is_refused() {
        assertThatThrownBy(() -> car("A", 1, -1, 0)).hasMessageContaining("candidate A");
        assertThatThrownBy(() -> Budget.NONE.withCash(-1)).hasMessageContaining("zero or more");
        assertThatThrownBy(() -> SetChoice.best(List.of(car("A", 1, 1, 1), car("A", 1, 1, 1)), Budget.NONE))
                .hasMessageContaining("two candidates are called A");
    }

    static List<Candidate> randomLot(SplittableRandom random, int n) {
        List<Candidate> lot = new ArrayList<>();
        double[] prices = random.doubles(4, 50, 900).toArray();
        for (int i = 0; i < n; i++) {
            List<ToolNeed> tools = new ArrayList<>();
            for (int t = 0; t < prices.length; t++) {
                if (random.nextInt(4) == 0) {
                    tools.add(tool("T" + t, prices[t], random.nextBoolean() ? 1 : random.nextDouble()));
                }
            }
            double own = tools.stream().mapToDouble(t -> t.expected().amount()).sum();
            double cash = random.nextDouble(500, 6_000);
            lot.add(car("L" + i, random.nextDouble(-300, 2_500) - own, cash + own, random.nextDouble(2, 60),
                    tools.toArray(ToolNeed[]::new)));
        }
        return lot;
    }

    static Budget randomBudget(SplittableRandom random, List<Candidate> lot) {
        double cash = lot.stream().mapToDouble(Candidate::cash).sum();
        double hours = lot.stream().mapToDouble(Candidate::hours).sum();
        Budget budget = Budget.NONE;
        budget = random.nextInt(5) == 0 ? budget : budget.withCash(cash * random.nextDouble(.1, .9));
        budget = random.nextInt(5) == 0 ? budget : budget.withHours(hours * random.nextDouble(.1, .9));
        return random.nextInt(3) == 0 ? budget : budget.withBays(1 + random.nextInt(lot.size()));
    }
}
