package worthsaving.diagnosis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.function.Function;
import worthsaving.diagnosis.inference.BestStates;

/**
 * Sets of items failed together: all that matter while they are few, else draws from the exact
 * posterior by inverse transform, one coordinate of the sequence per item.
 */
final class PatternSearch {

    private PatternSearch() {}

    static FailurePatterns patterns(FailureNetwork network, Posterior posterior, PatternSettings settings) {
        JointStates states = posterior.states();
        return states
                .covering(settings.cap(), settings.mass())
                .map(likeliest -> enumerated(network.items(), likeliest))
                .orElseGet(() -> drawn(network, states.draws(), settings));
    }

    private static FailurePatterns enumerated(List<String> items, List<BestStates.State> states) {
        double held = 0;
        for (BestStates.State state : states) {
            held += state.probability();
        }
        double[] weights = new double[states.size()];
        List<BitSet> patterns = new ArrayList<>();
        for (int k = 0; k < weights.length; k++) {
            weights[k] = states.get(k).probability() / held;
            patterns.add(states.get(k).yes());
        }
        return new FailurePatterns(items, patterns, weights, Math.min(1, held), false);
    }

    private static FailurePatterns drawn(
            FailureNetwork network, Function<PatternPoints, BitSet> draws, PatternSettings settings) {
        double[] weights = new double[settings.points()];
        Arrays.fill(weights, 1.0 / weights.length);
        PatternPoints points = new PatternPoints(network.coordinates(), settings.seed());
        List<BitSet> patterns = new ArrayList<>();
        for (int j = 0; j < weights.length; j++) {
            points.next();
            patterns.add(draws.apply(points));
        }
        return new FailurePatterns(network.items(), patterns, weights, 1, true);
    }
}
