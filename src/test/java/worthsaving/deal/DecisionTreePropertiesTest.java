package worthsaving.deal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static worthsaving.deal.DecisionTree.branch;
import static worthsaving.deal.DecisionTree.end;
import static worthsaving.deal.DecisionTree.option;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import worthsaving.deal.DecisionTree.Branch;
import worthsaving.deal.DecisionTree.Chance;
import worthsaving.deal.DecisionTree.Choice;
import worthsaving.deal.DecisionTree.End;
import worthsaving.deal.DecisionTree.Option;

/** Backward induction against every strategy written out, over random small trees. */
class DecisionTreePropertiesTest {

    static IntStream seeds() {
        return IntStream.range(0, 200);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void backward_induction_is_the_best_of_all_strategies(int seed) {
        DecisionTree tree = random(new SplittableRandom(seed), 4);
        List<Double> strategies = strategies(tree);
        double best = strategies.stream().mapToDouble(x -> x).max().orElseThrow();
        assertThat(tree.value()).isCloseTo(best, within(1e-9));
        assertThat(tree.outcome().mean()).as("mean of its outcome").isCloseTo(best, within(1e-9));
    }

    @Test
    void a_tree_that_cannot_be_is_refused() {
        assertThatThrownBy(() -> new Choice("empty", List.of())).hasMessageContaining("no options");
        assertThatThrownBy(() -> new Chance("half", List.of(branch("a", .5, end("a", 1)))))
                .hasMessageContaining("add up to 1");
    }

    /** Expected money of each way to settle all choices beforehand. */
    private static List<Double> strategies(DecisionTree tree) {
        if (tree instanceof End end) {
            return List.of(end.money());
        }
        List<Double> all = new ArrayList<>();
        if (tree instanceof Choice choice) {
            for (Option option : choice.options()) {
                strategies(option.next()).forEach(v -> all.add(v - option.cost()));
            }
            return all;
        }
        all.add(0.0);
        for (Branch b : ((Chance) tree).branches()) {
            List<Double> longer = new ArrayList<>();
            for (double v : strategies(b.next())) {
                all.forEach(sum -> longer.add(sum + b.probability() * v));
            }
            all.clear();
            all.addAll(longer);
        }
        return all;
    }

    private static DecisionTree random(SplittableRandom random, int depth) {
        if (depth == 0 || random.nextInt(5) == 0) {
            return end("end", 1_000 * (random.nextDouble() - .5));
        }
        if (random.nextBoolean()) {
            List<Option> options = new ArrayList<>();
            for (int o = 0; o < 2 + random.nextInt(2); o++) {
                options.add(option("option " + o, 50 * random.nextDouble(), random(random, depth - 1)));
            }
            return new Choice("choice", options);
        }
        double p = random.nextDouble();
        return new Chance("chance", List.of(
                branch("yes", p, random(random, depth - 1)), branch("no", 1 - p, random(random, depth - 1))));
    }
}
