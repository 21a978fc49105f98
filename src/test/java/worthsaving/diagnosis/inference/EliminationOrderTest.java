package worthsaving.diagnosis.inference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class EliminationOrderTest {

    private static Table edge(int a, int b) {
        return new Table(new int[] {a, b}, new double[] {1, 1, 1, 1});
    }

    @Test
    void a_tree_needs_tables_of_two_variables() {
        List<Table> star = IntStream.range(1, 70).mapToObj(leaf -> edge(0, leaf)).toList();

        int[] order = EliminationOrder.minFill(70, star, new int[70]);

        assertThat(order).containsExactlyInAnyOrder(IntStream.range(0, 70).toArray());
        assertThat(IntStream.range(0, 68).map(k -> order[k]).toArray()).doesNotContain(0);
        assertThat(BucketTree.compile(Factors.of(70, star))).get().satisfies(tree ->
                assertThat(tree.entries()).isEqualTo(69 * 4 + 2));
    }

    /** A ring has width two, a grid of 4 by 4 width four (known treewidths), so bags of 3 and of 5 at most. */
    @Test
    void rings_and_grids_reach_their_treewidth() {
        List<Table> ring = IntStream.range(0, 20).mapToObj(i -> edge(i, (i + 1) % 20)).toList();
        List<Table> grid = new ArrayList<>();
        for (int i = 0; i < 16; i++) {
            if (i % 4 < 3) {
                grid.add(edge(i, i + 1));
            }
            if (i < 12) {
                grid.add(edge(i, i + 4));
            }
        }

        assertThat(widest(20, ring)).isEqualTo(3);
        assertThat(widest(16, grid)).isEqualTo(5);
    }

    private static int widest(int variables, List<Table> tables) {
        BucketTree tree = BucketTree.compile(Factors.of(variables, tables)).orElseThrow();
        return IntStream.range(0, variables)
                .map(k -> tree.bucket(k).separator().length + 1)
                .max()
                .orElseThrow();
    }

    @Test
    void stages_come_before_fill() {
        List<Table> star = IntStream.range(1, 6).mapToObj(leaf -> edge(0, leaf)).toList();

        assertThat(EliminationOrder.minFill(6, star, new int[] {0, 1, 1, 1, 1, 1})[0]).isZero();
    }
}
