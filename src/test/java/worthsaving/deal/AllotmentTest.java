package worthsaving.deal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static worthsaving.deal.SampleDeals.bits;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.deal.Allotment.Run;
import worthsaving.diagnosis.FailurePatterns;

class AllotmentTest {

    @Test
    void a_run_carries_the_exact_probability_of_its_pattern() {
        FailurePatterns patterns = SampleDeals.enumerated(
                List.of("A", "B"), List.of(bits(), bits(0), bits(1)), .613, .3001, .0869);
        Allotment allotment = Allotment.of(patterns, 64);
        assertThat(allotment.runs()).hasSize(3);
        assertThat(allotment.runs().stream().mapToDouble(r -> weight(allotment, r)).toArray())
                .containsExactly(new double[] {.613, .3001, .0869}, within(1e-12));
        assertThat(allotment.runs().get(0).from()).isZero();
        assertThat(allotment.runs().get(2).to()).isEqualTo(64);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void more_patterns_than_points_keep_the_weight_of_the_light_ones(long seed) {
        double[] weights = new SplittableRandom(seed).doubles(5_000).map(u -> Math.pow(u, 60)).toArray();
        double sum = Arrays.stream(weights).sum();
        double[] sorted = Arrays.stream(weights).map(w -> w / sum).sorted().toArray();
        double[] descending = IntStream.range(0, sorted.length)
                .mapToDouble(i -> sorted[sorted.length - 1 - i]).toArray();
        List<BitSet> sets = IntStream.range(0, descending.length)
                .mapToObj(i -> BitSet.valueOf(new long[] {i})).toList();
        Allotment allotment = Allotment.of(
                new FailurePatterns(IntStream.range(0, 13).mapToObj(i -> "I" + i).toList(), sets, descending, 1, false),
                1_024);
        assertThat(Arrays.stream(allotment.weights()).sum()).isCloseTo(1, within(1e-9));
        assertThat(allotment.weights()).doesNotContain(0);
        for (Run run : allotment.runs()) {
            double exact = descending[(int) (run.pattern().isEmpty() ? 0 : run.pattern().toLongArray()[0])];
            if (exact >= 1.0 / 1_024) {
                assertThat(weight(allotment, run)).isCloseTo(exact, within(1e-6));
            }
        }
        double light = Arrays.stream(descending).filter(w -> w < 1.0 / 1_024).sum();
        double drawnLight = allotment.runs().stream()
                .filter(r -> !r.pattern().isEmpty() && descending[(int) r.pattern().toLongArray()[0]] < 1.0 / 1_024)
                .mapToDouble(r -> weight(allotment, r)).sum();
        assertThat(drawnLight).isCloseTo(light, within(1e-6));
    }

    @Test
    void drawn_patterns_have_a_point_each() {
        FailurePatterns drawn = new FailurePatterns(List.of("A"), List.of(bits(), bits(0), bits(), bits()),
                new double[] {.25, .25, .25, .25}, 1, true);
        Allotment allotment = Allotment.of(drawn, 4_096);
        assertThat(allotment.weights()).containsExactly(.25, .25, .25, .25);
        assertThat(allotment.runs().get(1).pattern()).isEqualTo(bits(0));
    }

    private static double weight(Allotment allotment, Run run) {
        return Arrays.stream(allotment.weights(), run.from(), run.to()).sum();
    }
}
