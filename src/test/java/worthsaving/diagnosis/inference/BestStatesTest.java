package worthsaving.diagnosis.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class BestStatesTest {

    private static final int VARIABLES = 9;

    private static List<Table> tables(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Table> tables = new ArrayList<>();
        for (int v = 0; v < VARIABLES; v++) {
            tables.add(Table.of(v, random.nextDouble(), random.nextDouble()));
            int other = random.nextInt(VARIABLES);
            if (other != v) {
                tables.add(new Table(new int[] {v, other}, random.doubles(4).toArray()));
            }
        }
        return tables;
    }

    private static double product(List<Table> tables, int state) {
        double product = 1;
        for (Table table : tables) {
            int index = 0;
            for (int k = 0; k < table.scope().length; k++) {
                index |= (state >> table.scope()[k] & 1) << k;
            }
            product *= table.values()[index];
        }
        return product;
    }

    private static Calibrated solve(List<Table> tables) {
        return BucketTree.compile(Factors.of(VARIABLES, tables)).orElseThrow().calibrate(tables);
    }

    @Test
    void states_come_in_order_of_probability() {
        for (long seed = 0; seed < 30; seed++) {
            List<Table> tables = tables(seed);
            List<Double> products = IntStream.range(0, 1 << VARIABLES)
                    .mapToObj(s -> product(tables, s))
                    .sorted(Comparator.reverseOrder())
                    .toList();
            double total = products.stream().mapToDouble(Double::doubleValue).sum();

            List<BestStates.State> states =
                    BestStates.covering(solve(tables), VARIABLES, 1 << VARIABLES, 0.99).orElseThrow();

            assertThat(new HashSet<>(states.stream().map(BestStates.State::yes).toList())).hasSameSizeAs(states);
            double held = 0;
            for (int k = 0; k < states.size(); k++) {
                assertThat(states.get(k).probability()).isCloseTo(products.get(k) / total, within(1e-12));
                assertThat(held).isLessThan(0.99);
                held += states.get(k).probability();
            }
            assertThat(held).isGreaterThanOrEqualTo(0.99 - 1e-9);
        }
    }

    @Test
    void gives_up_when_the_cap_cannot_hold_the_mass() {
        List<Table> even = IntStream.range(0, VARIABLES).mapToObj(v -> Table.of(v, 0.5, 0.5)).toList();

        assertThat(BestStates.covering(solve(even), VARIABLES, 500, 0.99)).isEmpty();
        assertThat(BestStates.covering(solve(even), VARIABLES, 507, 0.99)).get().satisfies(states ->
                assertThat(states).hasSize(507));
        assertThat(BestStates.covering(solve(even), 3, 8, 1)).get().satisfies(states ->
                assertThat(states).hasSize(8));
    }
}
