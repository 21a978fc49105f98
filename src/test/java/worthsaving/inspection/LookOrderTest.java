package worthsaving.inspection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import worthsaving.inspection.LookOrder.Plan;
import worthsaving.inspection.LookOrder.Suspect;

class LookOrderTest {

    private static final Offset<Double> TOLERANCE = within(1e-9);
    private static final List<Suspect> FOUR = List.of(
            suspect("0", .45, 10), suspect("1", .30, 4), suspect("2", .15, 3), suspect("3", .10, 1));

    static IntStream seeds() {
        return IntStream.range(0, 120);
    }

    /** Row DTT-PC: rule of Heckerman, Breese and Rommelse (1995), CACM 38(3):49; all 24 orders run independently. */
    @Test
    void one_fault_and_nothing_shared() {
        Plan plan = new LookOrder(Map.of()).best(FOUR);
        assertThat(ids(plan.order())).containsExactly("3", "1", "2", "0");
        assertThat(ids(LookOrder.byRatio(FOUR))).containsExactly("3", "1", "2", "0");
        assertThat(plan.expectedCost()).isCloseTo(10.9, TOLERANCE);
        assertThat(plan.exact()).isTrue();
        assertThat(orders(FOUR).stream().mapToDouble(new LookOrder(Map.of())::expectedCost).max().orElseThrow())
                .isCloseTo(13.35, TOLERANCE);
        assertThat(FOUR.stream().mapToDouble(s -> s.probability() / s.cost()).toArray())
                .containsExactly(new double[] {.045, .075, .05, .1}, TOLERANCE);
    }

    /** Row DTT-OBSREP: a repair is paid once the fault is found, in whatever order it was found. */
    @Test
    void repair_costs_do_not_move_the_order() {
        double repairs = .45 * 500 + .30 * 20 + .15 * 300 + .10 * 80;
        Plan plan = new LookOrder(Map.of()).best(FOUR);
        assertThat(ids(plan.order())).containsExactly("3", "1", "2", "0");
        assertThat(plan.expectedCost() + repairs).isCloseTo(294.9, TOLERANCE);
    }

    /** Row DTT-CLUSTER1: cost clusters, Ottosen and Jensen (2010), arXiv 1203.3502; all 24 orders run independently. */
    @Test
    void a_shared_opening_makes_the_plain_order_wrong() {
        Set<String> inside = Set.of("cover");
        List<Suspect> suspects = List.of(suspect("a", .30, 4), suspect("b", .20, 4),
                new Suspect("c", .30, 2, inside), new Suspect("d", .20, 2, inside));
        LookOrder order = new LookOrder(Map.of("cover", 10.0));
        Plan plan = order.best(suspects);
        assertThat(ids(plan.order())).containsExactly("a", "b", "c", "d");
        assertThat(plan.expectedCost()).isCloseTo(13.2, TOLERANCE);
        List<Suspect> plain = LookOrder.byRatio(suspects);
        assertThat(ids(plain)).containsExactly("c", "d", "a", "b");
        assertThat(order.expectedCost(plain)).isCloseTo(16.2, TOLERANCE);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void probability_over_cost_is_the_best_of_all_orders_when_nothing_is_shared(int seed) {
        List<Suspect> suspects = random(new SplittableRandom(seed), 2 + seed % 6, 0);
        LookOrder order = new LookOrder(Map.of());
        double brute = orders(suspects).stream().mapToDouble(order::expectedCost).min().orElseThrow();
        assertThat(order.expectedCost(LookOrder.byRatio(suspects))).isCloseTo(brute, TOLERANCE);
        assertThat(order.best(suspects).expectedCost()).isCloseTo(brute, TOLERANCE);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void nested_and_crossing_openings_are_solved_exactly(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Suspect> suspects = random(random, 2 + seed % 6, 4);
        Map<String, Double> openings = Map.of("0", 20 * random.nextDouble(), "1", 20 * random.nextDouble(), "2",
                20 * random.nextDouble(), "3", 20 * random.nextDouble());
        LookOrder order = new LookOrder(openings);
        double brute = orders(suspects).stream().mapToDouble(order::expectedCost).min().orElseThrow();
        Plan plan = order.best(suspects);
        assertThat(plan.expectedCost()).isCloseTo(brute, TOLERANCE);
        assertThat(plan.order()).containsExactlyInAnyOrderElementsOf(suspects);
    }

    @Test
    void many_suspects_are_ordered_and_said_to_be_inexact() {
        List<Suspect> many = random(new SplittableRandom(1), 25, 2);
        Plan plan = new LookOrder(Map.of("0", 5.0, "1", 9.0)).best(many);
        assertThat(plan.exact()).isFalse();
        assertThat(plan.order()).containsExactlyInAnyOrderElementsOf(many);
        assertThat(plan.expectedCost()).isPositive();
    }

    @Test
    void what_is_no_distribution_is_refused() {
        assertThatThrownBy(() -> new LookOrder(Map.of()).best(List.of(suspect("a", .5, 1))))
                .hasMessageContaining("add up to 1");
        assertThatThrownBy(() -> suspect("a", .5, -1)).hasMessageContaining("zero or more");
        assertThat(new LookOrder(Map.of()).best(List.of()).order()).isEmpty();
    }

    private static Suspect suspect(String id, double probability, double cost) {
        return new Suspect(id, probability, cost, Set.of());
    }

    private static List<Suspect> random(SplittableRandom random, int n, int steps) {
        double[] p = random.doubles(n).toArray();
        double sum = Arrays.stream(p).sum();
        List<Suspect> out = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Set<String> behind = new HashSet<>();
            for (int s = 0; s < steps; s++) {
                if (random.nextInt(3) == 0) {
                    behind.add(String.valueOf(s));
                }
            }
            out.add(new Suspect("s" + i, p[i] / sum, 10 * random.nextDouble(), behind));
        }
        return out;
    }

    private static List<List<Suspect>> orders(List<Suspect> suspects) {
        if (suspects.isEmpty()) {
            return List.of(List.of());
        }
        List<List<Suspect>> all = new ArrayList<>();
        for (Suspect first : suspects) {
            List<Suspect> rest = new ArrayList<>(suspects);
            rest.remove(first);
            for (List<Suspect> order : orders(rest)) {
                List<Suspect> whole = new ArrayList<>(List.of(first));
                whole.addAll(order);
                all.add(whole);
            }
        }
        return all;
    }

    private static List<String> ids(List<Suspect> suspects) {
        return suspects.stream().map(Suspect::id).toList();
    }
}
