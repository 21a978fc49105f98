package worthsaving.ranking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DominanceTest {

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void finds_what_comparing_all_pairs_finds(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] scale = {4_000, 1, 40, 9_000};
        List<double[]> points = Stream.generate(() -> random.doubles(4).toArray()).limit(600).map(u -> {
            double quality = random.nextDouble();
            double[] x = new double[4];
            for (int d = 0; d < 4; d++) {
                double rough = random.nextInt(4) == 0 ? Math.round(u[d] * 4) / 4.0 : u[d];
                x[d] = scale[d] * (0.5 * rough + 0.5 * quality) - (d == 0 ? 2_000 : 0);
            }
            return x;
        }).toList();
        Dominance dominance = new Dominance(points);
        int dominated = 0;
        for (double[] point : points) {
            OptionalInt expected = IntStream.range(0, points.size())
                    .filter(i -> dominates(points.get(i), point)).findFirst();
            assertThat(dominance.firstOver(point)).isEqualTo(expected);
            dominated += expected.isPresent() ? 1 : 0;
        }
        assertThat(dominated).isBetween(50, 599);
    }

    @Test
    void hundredths_do_not_count_and_nothing_dominates_itself() {
        Dominance two = new Dominance(List.of(new double[] {100, 1}, new double[] {99.5, 1}));
        assertThat(two.firstOver(new double[] {100, 1})).isEmpty();
        assertThat(two.firstOver(new double[] {102, 1})).hasValue(0);
        assertThat(new Dominance(List.of()).firstOver(new double[] {1, 1})).isEmpty();
    }

    private static boolean dominates(double[] mine, double[] theirs) {
        boolean better = false;
        for (int d = 0; d < mine.length; d++) {
            double slack = 0.01 * Math.max(Math.abs(mine[d]), Math.abs(theirs[d]));
            if (mine[d] > theirs[d] + slack) {
                return false;
            }
            better |= mine[d] < theirs[d] - slack;
        }
        return better;
    }
}
