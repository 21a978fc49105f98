package worthsaving.diagnosis;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/** A mixture over kinds of engine, each weighed by how well it explains the evidence. */
final class MixedPosterior implements Posterior {

    /**
     * One kind of engine.
     *
     * @param share its prior probability
     * @param own by item of the whole network: its number here, -1 when this engine does not have it
     */
    record Part(double share, int[] own, Posterior posterior) {}

    private static final int ENGINE_COORDINATE = 0;

    private final List<Part> parts;
    private final double[] weights;
    private final double logWeight;

    MixedPosterior(List<Part> parts) {
        this.parts = parts;
        weights = parts.stream()
                .mapToDouble(p -> Math.log(p.share()) + p.posterior().logWeight())
                .toArray();
        double largest = IntStream.range(0, weights.length).mapToDouble(k -> weights[k]).max().orElseThrow();
        double sum = 0;
        for (int k = 0; k < weights.length; k++) {
            weights[k] = largest == Double.NEGATIVE_INFINITY ? 0 : Math.exp(weights[k] - largest);
            sum += weights[k];
        }
        for (int k = 0; k < weights.length; k++) {
            weights[k] /= sum;
        }
        logWeight = largest + Math.log(sum);
    }

    @Override
    public double logWeight() {
        return logWeight;
    }

    @Override
    public double marginal(int item) {
        double sum = 0;
        for (int k = 0; k < weights.length; k++) {
            int own = parts.get(k).own()[item];
            if (own >= 0 && weights[k] > 0) {
                sum += weights[k] * parts.get(k).posterior().marginal(own);
            }
        }
        return Math.min(1, sum);
    }

    @Override
    public double chance(String finding) {
        double sum = 0;
        for (int k = 0; k < weights.length; k++) {
            if (weights[k] > 0) {
                sum += weights[k] * parts.get(k).posterior().chance(finding);
            }
        }
        return Math.min(1, sum);
    }

    @Override
    public double[] joint(int[] items) {
        double[] sum = new double[1 << items.length];
        for (int k = 0; k < weights.length; k++) {
            if (weights[k] > 0) {
                addJoint(sum, items, parts.get(k), weights[k]);
            }
        }
        return sum;
    }

    private static void addJoint(double[] sum, int[] items, Part part, double weight) {
        int[] here = IntStream.range(0, items.length).filter(k -> part.own()[items[k]] >= 0).toArray();
        double[] joint = part.posterior()
                .joint(IntStream.of(here).map(k -> part.own()[items[k]]).toArray());
        for (int s = 0; s < joint.length; s++) {
            int at = 0;
            for (int k = 0; k < here.length; k++) {
                at |= (s >> k & 1) << here[k];
            }
            sum[at] += weight * joint[s];
        }
    }

    /** A pattern's probability is a sum over the parts, so that their own orders do not help. */
    @Override
    public JointStates states() {
        return JointStates.drawnOnly(draws());
    }

    private Function<PatternPoints, BitSet> draws() {
        List<Optional<Function<PatternPoints, BitSet>>> draws = IntStream.range(0, weights.length)
                .mapToObj(k -> weights[k] > 0
                        ? Optional.of(parts.get(k).posterior().states().draws())
                        : Optional.<Function<PatternPoints, BitSet>>empty())
                .toList();
        return points -> {
            int part = pick(points.at(ENGINE_COORDINATE));
            BitSet own = draws.get(part).orElseThrow().apply(points);
            BitSet pattern = new BitSet();
            int[] numbers = parts.get(part).own();
            for (int i = 0; i < numbers.length; i++) {
                pattern.set(i, numbers[i] >= 0 && own.get(numbers[i]));
            }
            return pattern;
        };
    }

    private int pick(double uniform) {
        double left = uniform;
        int last = 0;
        for (int k = 0; k < weights.length; k++) {
            if (weights[k] > 0) {
                last = k;
                left -= weights[k];
                if (left < 0) {
                    return k;
                }
            }
        }
        return last;
    }

    @Override
    public double error() {
        return parts.stream().mapToDouble(p -> p.posterior().error()).max().orElse(0);
    }
}
