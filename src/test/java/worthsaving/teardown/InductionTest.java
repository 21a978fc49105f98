package worthsaving.teardown;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import worthsaving.deal.DecisionTree;
import worthsaving.quantity.Money;
import worthsaving.teardown.Prospect.End;
import worthsaving.teardown.Prospect.Look;

class InductionTest {

    private static final Offset<Double> CENT = within(0.005);
    private static final double[][] NO_STEPS = {};

    static IntStream seeds() {
        return IntStream.range(0, 150);
    }

    /**
     * An invented worked case of a weekend workshop, arithmetic by hand: oil pan off, guide plastic in the pickup.
     * Two rod caps off cost 45 and tell the state of the bearings.
     */
    @Test
    void two_rod_caps_first() {
        Look caps = new Look("caps", "pull two rod caps", 45, 0, List.of("good", "marginal", "scored"),
                new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}});
        Prospect prospect = new Prospect(new double[] {.60, .25, .15}, new double[0],
                List.of(End.stop("roller", "sell the roller", 1_050, 3), finish(4_526, 3_671, 476)), List.of(caps));
        Move best = new Induction(prospect, Money.USD).best();
        assertThat(best.kind()).isEqualTo(Move.Kind.LOOK);
        assertThat(best.worth().amount()).isCloseTo(3_745.85, CENT);
        assertThat(best.cost().amount()).isCloseTo(45, CENT);
        assertThat(best.results()).extracting(r -> r.then().kind())
                .containsExactly(Move.Kind.FINISH, Move.Kind.FINISH, Move.Kind.STOP);
        Move blind = new Induction(prospect.with(List.of()), Money.USD).best();
        assertThat(blind.worth().amount()).isCloseTo(3_704.75, CENT);
        assertThat(best.worth().minus(blind.worth()).amount()).as("worth of looking, net").isCloseTo(41.10, CENT);
        assertThat(best.worth().minus(blind.worth()).amount() + 45).as("gross").isCloseTo(86.10, CENT);
        assertThat(new Induction(prospect, Money.USD).options()).filteredOn(o -> o.move().id().equals("caps"))
                .allSatisfy(o -> assertThat(o.chanceOfChange()).isCloseTo(.15, within(1e-12)));
        Prospect scored = new Prospect(new double[] {1}, new double[0],
                List.of(End.stop("roller", "sell the roller", 1_050, 1), finish(476)), List.of());
        assertThat(new Induction(scored, Money.USD).best().kind()).isEqualTo(Move.Kind.STOP);
        assertThat(new Induction(scored, Money.USD).best().worth().amount() - 476).isCloseTo(574, CENT);
    }

    @Test
    void opening_is_paid_once_and_comes_back_where_the_plan_needs_it() {
        double[][] after = {{100}, {-50}};
        End finish = new End(Move.Kind.FINISH, "finish", "finish", new double[] {1_000, 600}, after);
        Look inside = new Look("a", "a", 10, 1, List.of("bad", "good"), new double[][] {{1, 0}, {0, 1}});
        Look beside = new Look("b", "b", 10, 1, List.of("yes", "no"), new double[][] {{.5, .5}, {.5, .5}});
        Prospect prospect = new Prospect(new double[] {.5, .5}, new double[] {100},
                List.of(finish, End.stop("stop", "stop", 590, 2)), List.of(inside, beside));
        // Looking inside: -110 + .5 (1000 + 100) + .5 max(600 - 50, 590) = 735; blind 800.
        assertThat(new Induction(prospect, Money.USD).best().worth().amount()).isCloseTo(800, CENT);
        Move look = new Induction(prospect, Money.USD).options().stream().map(Induction.Option::move)
                .filter(m -> m.id().equals("a")).findFirst().orElseThrow();
        assertThat(look.worth().amount()).isCloseTo(735, CENT);
        assertThat(look.cost().amount()).isCloseTo(110, CENT);
    }

    /** Against the whole tree of looks in every order, written out and solved by another route. */
    @ParameterizedTest
    @MethodSource("seeds")
    void equals_the_written_out_tree(int seed) {
        Prospect prospect = random(new SplittableRandom(seed));
        double tree = tree(prospect, prospect.weights(), 0, 0).value();
        Move best = new Induction(prospect, Money.USD).best();
        assertThat(best.worth().amount()).isCloseTo(tree, within(1e-6));
        assertThat(followed(best)).as("the moves bring what they promise").isCloseTo(tree, within(1e-6));
        assertThat(new Induction(prospect, Money.USD).options().get(0).move().worth().amount())
                .isCloseTo(tree, within(1e-6));
    }

    private static double followed(Move move) {
        return move.results().isEmpty() ? move.worth().amount()
                : move.results().stream().mapToDouble(r -> r.chance() * followed(r.then())).sum()
                        - move.cost().amount();
    }

    private static DecisionTree tree(Prospect prospect, double[] weights, long opened, int seen) {
        double total = Arrays.stream(weights).sum();
        List<DecisionTree.Option> options = new ArrayList<>();
        for (End end : prospect.ends()) {
            double money = 0;
            for (int p = 0; p < weights.length; p++) {
                money += weights[p] / total * end.at(p, opened);
            }
            options.add(DecisionTree.option(end.name(), 0, DecisionTree.end(end.name(), money)));
        }
        for (int l = 0; l < prospect.looks().size(); l++) {
            Look look = prospect.looks().get(l);
            if ((seen >> l & 1) == 0) {
                List<DecisionTree.Branch> branches = new ArrayList<>();
                for (double[] likelihood : look.likelihood()) {
                    double[] then = new double[weights.length];
                    for (int p = 0; p < then.length; p++) {
                        then[p] = weights[p] * likelihood[p];
                    }
                    double chance = Arrays.stream(then).sum() / total;
                    if (chance > 0) {
                        branches.add(DecisionTree.branch("", chance,
                                tree(prospect, then, opened | look.opens(), seen | 1 << l)));
                    }
                }
                options.add(DecisionTree.option(look.name(),
                        look.cost() + prospect.price(look.opens() & ~opened),
                        new DecisionTree.Chance(look.name(), branches)));
            }
        }
        return new DecisionTree.Choice("", options);
    }

    private static Prospect random(SplittableRandom random) {
        int patterns = 2 + random.nextInt(5);
        double[] weights = random.doubles(patterns).map(w -> w + .01).toArray();
        double sum = Arrays.stream(weights).sum();
        Arrays.setAll(weights, p -> weights[p] / sum);
        double[] opening = {100 * random.nextDouble(), 100 * random.nextDouble()};
        List<End> ends = new ArrayList<>();
        ends.add(End.stop("stop", "stop", 1_000 * random.nextDouble(), patterns));
        for (int e = 0; e < 1 + random.nextInt(2); e++) {
            double[] money = random.doubles(patterns, -1_000, 3_000).toArray();
            double[][] after = new double[patterns][2];
            for (double[] row : after) {
                for (int s = 0; s < 2; s++) {
                    row[s] = random.nextBoolean() ? opening[s] : -60 * random.nextDouble();
                }
            }
            ends.add(new End(Move.Kind.FINISH, "finish " + e, "finish " + e, money, after));
        }
        List<Look> looks = new ArrayList<>();
        for (int l = 0; l < 3; l++) {
            double[] present = random.nextBoolean() ? random.doubles(patterns).toArray()
                    : random.ints(patterns, 0, 2).asDoubleStream().toArray();
            double[] absent = Arrays.stream(present).map(x -> 1 - x).toArray();
            looks.add(new Look("look " + l, "look " + l, 80 * random.nextDouble(), random.nextInt(4),
                    List.of("present", "absent"), new double[][] {present, absent}));
        }
        return new Prospect(weights, opening, ends, looks);
    }

    private static End finish(double... money) {
        return new End(Move.Kind.FINISH, "finish", "finish", money, NO_STEPS);
    }
}
