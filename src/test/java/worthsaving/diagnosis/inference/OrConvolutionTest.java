package worthsaving.diagnosis.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OrConvolutionTest {

    private static double[] random(SplittableRandom random, int size) {
        return random.doubles(size).toArray();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 5})
    void sums_all_pairs_that_give_each_outcome(int bits) {
        SplittableRandom random = new SplittableRandom(bits);
        int size = 1 << bits;
        double[] a = random(random, size);
        double[] b = random(random, size);
        double[] expected = new double[size];
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                expected[i | j] += a[i] * b[j];
            }
        }
        double[] c = new double[size];

        new OrConvolution(bits).add(a, b, c);

        assertThat(c).containsExactly(expected, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 5})
    void derivative_is_the_chain_rule(int bits) {
        SplittableRandom random = new SplittableRandom(100 + bits);
        int size = 1 << bits;
        double[] a = random(random, size);
        double[] b = random(random, size);
        double[] dc = random(random, size);
        double[] expectedA = new double[size];
        double[] expectedB = new double[size];
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                expectedA[i] += b[j] * dc[i | j];
                expectedB[j] += a[i] * dc[i | j];
            }
        }
        double[] da = new double[size];
        double[] db = new double[size];

        new OrConvolution(bits).addDerivative(a, b, dc, da, db);

        assertThat(da).containsExactly(expectedA, within(1e-12));
        assertThat(db).containsExactly(expectedB, within(1e-12));
    }
}
