package worthsaving.diagnosis.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class BucketTreeTest {

    /** Many causes of several seen noisy-ORs, so that ORs meet in the same buckets. */
    private static TableList wide(int fanIn, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int items = 10;
        TableList list = new TableList(items, fanIn);
        for (int i = 0; i < items; i++) {
            double p = random.nextDouble() * 0.5;
            list.weigh(i, p, 1 - p);
        }
        for (int i = 0; i + 1 < items; i += 2) {
            list.add(Table.conditional(i + 1, new int[] {i}, random.nextDouble(), random.nextDouble()));
        }
        for (int f = 0; f < 4; f++) {
            int[] causes = random.ints(0, items).distinct().limit(7).toArray();
            double[] chances = random.doubles(7).toArray();
            list.owner("finding " + f);
            list.seen(new NoisyOr(random.nextDouble() * 0.1, causes, chances), random.nextDouble(), f % 2 * 0.3);
        }
        return list;
    }

    private static Calibrated solve(TableList list) {
        Factors factors = list.factors();
        return BucketTree.compile(factors).orElseThrow().calibrate(factors.tables());
    }

    @Test
    void splitting_and_or_variables_change_nothing() {
        for (long seed = 0; seed < 50; seed++) {
            TableList whole = wide(7, seed);
            Calibrated expected = solve(whole);
            for (int fanIn = 2; fanIn < 7; fanIn++) {
                TableList split = wide(fanIn, seed);
                Calibrated solved = solve(split);
                assertThat(split.factors().ors().cardinality()).isEqualTo(4);
                assertThat(solved.logPartition() + split.logConstant())
                        .isCloseTo(expected.logPartition() + whole.logConstant(), within(1e-12));
                for (int i = 0; i < 10; i++) {
                    assertThat(solved.marginal(i)).isCloseTo(expected.marginal(i), within(1e-12));
                }
            }
        }
    }

    @Test
    void draws_follow_the_joint_through_or_variables() {
        Calibrated exact = solve(wide(7, 3));
        Calibrated split = solve(wide(2, 3));
        SplittableRandom random = new SplittableRandom(5);
        JointDraw draw = new JointDraw(split, 10, v -> v);
        int draws = 40_000;
        int[] yes = new int[10];
        int[] pair = new int[9];
        for (int j = 0; j < draws; j++) {
            BitSet state = draw.draw(new JointDraw.Uniforms() {
                @Override
                public double forVariable(int variable) {
                    return random.nextDouble();
                }

                @Override
                public double forHidden(long label) {
                    return random.nextDouble();
                }
            });
            for (int i = 0; i < 10; i++) {
                yes[i] += state.get(i) ? 1 : 0;
            }
            for (int i = 0; i < 9; i++) {
                pair[i] += state.get(i) && state.get(i + 1) ? 1 : 0;
            }
        }
        double fourStandardErrors = 4 * 0.5 / Math.sqrt(draws);
        for (int i = 0; i < 10; i++) {
            assertThat(yes[i] / (double) draws).isCloseTo(exact.marginal(i), within(fourStandardErrors));
        }
        for (int i = 0; i < 9; i++) {
            assertThat(pair[i] / (double) draws).isCloseTo(pairOf(i), within(fourStandardErrors));
        }
    }

    /** P(i and i + 1), by hard evidence on both. */
    private static double pairOf(int i) {
        TableList both = wide(7, 3);
        both.weigh(i, 1, 0);
        both.weigh(i + 1, 1, 0);
        return Math.exp(solve(both).logPartition() - solve(wide(7, 3)).logPartition());
    }

    @Test
    void guard_refuses_what_is_too_wide() {
        List<Table> tables = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            for (int j = 0; j < i; j++) {
                tables.add(new Table(new int[] {i, j}, new double[] {1, 2, 3, 4}));
            }
        }
        Factors clique = Factors.of(12, tables);

        assertThat(BucketTree.compile(clique, new int[12], 12)).isEmpty();
        assertThat(BucketTree.compile(clique, new int[12], 13)).get().satisfies(tree ->
                assertThat(tree.entries()).isEqualTo((1 << 13) - 2));
    }

    @Test
    void stage_decides_which_variables_come_first() {
        List<Table> chain = IntStream.range(0, 8)
                .mapToObj(i -> Table.conditional(i + 1, new int[] {i}, 0.1 + 0.05 * i, 0.9))
                .toList();
        int[] stage = new int[9];
        Arrays.fill(stage, 2, 5, 1);
        Factors factors = Factors.of(9, chain);
        Calibrated solved = BucketTree.compile(factors, stage, 22).orElseThrow().calibrate(chain);

        assertThat(IntStream.range(0, 3).map(solved::variableAt).toArray()).containsExactlyInAnyOrder(2, 3, 4);
    }

    @Test
    void at_most_one_of_many() {
        TableList list = new TableList(9, 3);
        for (int i = 0; i < 9; i++) {
            list.weigh(i, 0.5, 0.5);
        }
        list.atMostOne(IntStream.range(0, 9).toArray());
        Calibrated solved = solve(list);

        assertThat(Math.exp(solved.logPartition())).isCloseTo(10 / 512.0, within(1e-15));
        assertThat(solved.marginal(4)).isCloseTo(0.1, within(1e-15));
    }

    @Test
    void contradiction_has_no_weight() {
        List<Table> tables = List.of(Table.of(0, 1, 0), Table.of(0, 0, 1));
        Calibrated solved = BucketTree.compile(Factors.of(1, tables)).orElseThrow().calibrate(tables);

        assertThat(solved.possible()).isFalse();
        assertThat(solved.logPartition()).isEqualTo(Double.NEGATIVE_INFINITY);
    }

    @Test
    void table_refuses_what_is_no_weight() {
        assertThatThrownBy(() -> Table.of(0, -0.1, 1)).hasMessageContaining("zero or more");
        assertThatThrownBy(() -> new Table(new int[] {0, 1}, new double[2])).hasMessageContaining("4 values");
    }
}
