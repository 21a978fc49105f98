package worthsaving.diagnosis;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import worthsaving.diagnosis.inference.BestStates;
import worthsaving.diagnosis.inference.BucketTree;
import worthsaving.diagnosis.inference.Calibrated;
import worthsaving.diagnosis.inference.Factors;
import worthsaving.diagnosis.inference.JointDraw;
import worthsaving.diagnosis.inference.NoisyOr;
import worthsaving.diagnosis.inference.TableList;

/** Model and evidence as a calibrated bucket tree. */
final class ExactPosterior implements Posterior {

    private final FailureModel model;
    private final TableList written;
    private final Factors factors;
    private final BucketTree tree;
    private final Calibrated chain;

    private ExactPosterior(FailureModel model, TableList written, Factors factors, BucketTree tree) {
        this.model = model;
        this.written = written;
        this.factors = factors;
        this.tree = tree;
        this.chain = tree.calibrate(factors.tables());
    }

    /** @return empty when the width guard refuses */
    static Optional<ExactPosterior> of(FailureModel model, Evidence evidence, int fanIn, int guard) {
        TableList written = EvidenceTables.of(model, evidence, fanIn);
        Factors factors = written.factors();
        return BucketTree.compile(factors, new int[factors.variables()], guard)
                .map(tree -> new ExactPosterior(model, written, factors, tree));
    }

    @Override
    public double logWeight() {
        return chain.logPartition() + written.logConstant();
    }

    @Override
    public double marginal(int item) {
        return chain.marginal(item);
    }

    /** By one upward pass with the finding absent. */
    @Override
    public double chance(String finding) {
        NoisyOr or = model.finding(finding);
        double absent = tree.logPartition(EvidenceTables.withAbsent(factors.tables(), or)) - chain.logPartition();
        double chance = 1 - (1 - or.leak()) * Math.exp(absent);
        return Math.max(0, Math.min(1, chance));
    }

    @Override
    public double[] joint(int[] items) {
        Calibrated first = chainOf(v -> Arrays.stream(items).anyMatch(i -> i == v))
                .orElseThrow(() -> new IllegalArgumentException(
                        "the joint of " + items.length + " items needs too large a table; ask for fewer"));
        double[] joint = new double[1 << items.length];
        for (int s = 0; s < joint.length; s++) {
            long[] state = new long[(first.variables() + 63) >> 6];
            double p = 1;
            for (int rank = 0; rank < items.length; rank++) {
                int variable = first.variableAt(rank);
                double yes = first.conditional(rank, state);
                boolean on = holds(items, s, variable);
                p *= on ? yes : 1 - yes;
                state[0] |= on ? 1L << rank : 0;
            }
            joint[s] = p;
        }
        return joint;
    }

    private static boolean holds(int[] items, int state, int item) {
        for (int k = 0; k < items.length; k++) {
            if (items[k] == item) {
                return (state >> k & 1) == 1;
            }
        }
        throw new IllegalStateException("variable " + item + " was not asked for");
    }

    /** With items and bits ahead of all hidden variables, so that a draw uses no hidden numbers. */
    @Override
    public JointStates states() {
        Optional<Calibrated> itemsFirst = chainOf(v -> v < model.itemCount() + model.bits());
        return new JointStates() {
            @Override
            public Optional<List<BestStates.State>> covering(int cap, double mass) {
                return model.bits() > 0 ? Optional.empty()
                        : itemsFirst.flatMap(c -> BestStates.covering(c, model.itemCount(), cap, mass));
            }

            @Override
            public Function<PatternPoints, BitSet> draws() {
                return ExactPosterior.this.draws(itemsFirst.orElse(chain));
            }
        };
    }

    private Function<PatternPoints, BitSet> draws(Calibrated source) {
        int named = model.itemCount() + model.bits();
        JointDraw draw = new JointDraw(
                source, named, v -> v < named ? model.coordinate(v) : written.hiddenLabel(v));
        int[] coordinates = IntStream.range(0, named).map(model::coordinate).toArray();
        return points -> draw.draw(new JointDraw.Uniforms() {
                    @Override
                    public double forVariable(int variable) {
                        return points.at(coordinates[variable]);
                    }

                    @Override
                    public double forHidden(long label) {
                        return points.hidden(label);
                    }
                })
                .get(0, model.itemCount());
    }

    private Optional<Calibrated> chainOf(IntPredicate first) {
        int[] stage = new int[factors.variables()];
        Arrays.setAll(stage, v -> first.test(v) ? 1 : 0);
        return BucketTree.compile(factors, stage, BucketTree.WIDTH_GUARD)
                .map(t -> t.calibrate(factors.tables()));
    }

    @Override
    public double error() {
        return 0;
    }
}
