package worthsaving.diagnosis;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Map;
import java.util.SplittableRandom;
import worthsaving.diagnosis.inference.NoisyOr;
import worthsaving.quantity.Seed;

/**
 * Likelihood weighting, for evidence that needs larger tables than the width guard allows: items are
 * drawn cause before effect, each draw weighs what the evidence says of it. Source: Fung and Chang
 * (1990), UAI 5:209; Shachter and Peot (1990), UAI 5:221. The error is that of a ratio estimator.
 */
final class SampledPosterior implements Posterior {

    private static final int RESAMPLING_COORDINATE = 0;
    private static final double NORMAL_975 = 1.959963984540054;

    private final FailureModel model;
    private final BitSet[] draws;
    private final double[] weights;
    private final double logWeight;

    private SampledPosterior(FailureModel model, BitSet[] draws, double[] logWeights) {
        this.model = model;
        this.draws = draws;
        double largest = Arrays.stream(logWeights).max().orElseThrow();
        weights = new double[logWeights.length];
        double sum = 0;
        for (int j = 0; j < weights.length; j++) {
            weights[j] = largest == Double.NEGATIVE_INFINITY ? 0 : Math.exp(logWeights[j] - largest);
            sum += weights[j];
        }
        for (int j = 0; j < weights.length; j++) {
            weights[j] /= sum;
        }
        logWeight = largest + Math.log(sum / weights.length);
    }

    static SampledPosterior of(FailureModel model, Evidence evidence, int points, Seed seed) {
        SplittableRandom random = seed.derive("likelihood weighting").generator();
        BitSet[] draws = new BitSet[points];
        double[] logWeights = new double[points];
        int[] order = model.causesFirst();
        for (int j = 0; j < points; j++) {
            draws[j] = new BitSet(model.itemCount());
            logWeights[j] = draw(model, evidence, order, random, draws[j]);
        }
        return new SampledPosterior(model, draws, logWeights);
    }

    /**
     * Fills {@code state}.
     *
     * @return logarithm of its weight
     */
    private static double draw(
            FailureModel model, Evidence evidence, int[] order, SplittableRandom random, BitSet state) {
        BitSet bits = model.drawBits(random);
        double log = 0;
        for (int item : order) {
            double unhindered = model.exists(item, bits) ? chance(model.failures().get(item), state) : 0;
            boolean excluded = model.excluded(item, state);
            double chance = excluded ? 0 : unhindered;
            Likelihood seen = evidence.items().getOrDefault(model.items().get(item), Likelihood.NOTHING);
            double yes = chance * seen.ifTrue();
            double either = yes + (1 - chance) * seen.ifFalse();
            log += Math.log(either);
            state.set(item, random.nextDouble() * either < yes);
            log += excluded ? Math.log1p(-unhindered) : 0;
        }
        for (Map.Entry<String, Likelihood> seen : evidence.findings().entrySet()) {
            double chance = chance(model.finding(seen.getKey()), state);
            log += Math.log(seen.getValue().ifTrue() * chance + seen.getValue().ifFalse() * (1 - chance));
        }
        for (NoisyOr told : model.silences()) {
            log += Math.log1p(-chance(told, state));
        }
        for (Map.Entry<String, Likelihood> seen : evidence.items().entrySet()) {
            log += model.indexOf().containsKey(seen.getKey()) ? 0 : Math.log(seen.getValue().ifFalse());
        }
        return log;
    }

    private static double chance(NoisyOr or, BitSet state) {
        return or.chance(state::get);
    }

    @Override
    public double logWeight() {
        return logWeight;
    }

    @Override
    public double marginal(int item) {
        double sum = 0;
        for (int j = 0; j < weights.length; j++) {
            sum += draws[j].get(item) ? weights[j] : 0;
        }
        return Math.min(1, sum);
    }

    @Override
    public double chance(String finding) {
        NoisyOr or = model.finding(finding);
        double sum = 0;
        for (int j = 0; j < weights.length; j++) {
            sum += weights[j] * chance(or, draws[j]);
        }
        return Math.min(1, sum);
    }

    @Override
    public double[] joint(int[] items) {
        double[] joint = new double[1 << items.length];
        for (int j = 0; j < weights.length; j++) {
            int state = 0;
            for (int k = 0; k < items.length; k++) {
                state |= draws[j].get(items[k]) ? 1 << k : 0;
            }
            joint[state] += weights[j];
        }
        return joint;
    }

    @Override
    public JointStates states() {
        double[] upTo = weights.clone();
        Arrays.parallelPrefix(upTo, Double::sum);
        return JointStates.drawnOnly(points -> {
            int at = Arrays.binarySearch(upTo, points.at(RESAMPLING_COORDINATE) * upTo[upTo.length - 1]);
            return (BitSet) draws[Math.min(at < 0 ? ~at : at + 1, draws.length - 1)].clone();
        });
    }

    /** The largest standard error over the items, times the normal quantile. */
    @Override
    public double error() {
        double largest = 0;
        for (int item = 0; item < model.itemCount(); item++) {
            double p = marginal(item);
            double sum = 0;
            for (int j = 0; j < weights.length; j++) {
                double off = weights[j] * ((draws[j].get(item) ? 1 : 0) - p);
                sum += off * off;
            }
            largest = Math.max(largest, sum);
        }
        return NORMAL_975 * Math.sqrt(largest);
    }
}
