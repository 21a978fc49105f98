package worthsaving.diagnosis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import worthsaving.diagnosis.inference.BestStates;
import worthsaving.diagnosis.inference.BucketTree;
import worthsaving.diagnosis.inference.Calibrated;
import worthsaving.diagnosis.inference.JointDraw;

/**
 * Sets of items failed together: all that matter while they are few, else draws from the exact
 * posterior by inverse transform, one coordinate of the sequence per item.
 */
final class PatternSearch {

    private final FailureModel model;
    private final ExactPosterior posterior;
    private final PatternSettings settings;

    PatternSearch(FailureModel model, ExactPosterior posterior, PatternSettings settings) {
        this.model = model;
        this.posterior = posterior;
        this.settings = settings;
    }

    FailurePatterns patterns() {
        int named = model.itemCount() + model.bits();
        Optional<Calibrated> chain = posterior.chainOf(v -> v < named, BucketTree.WIDTH_GUARD);
        return chain.filter(c -> model.bits() == 0)
                .flatMap(c -> BestStates.covering(c, named, settings.cap(), settings.mass()))
                .map(this::enumerated)
                .orElseGet(() -> drawn(chain.orElseGet(posterior::chain), named));
    }

    private FailurePatterns enumerated(List<BestStates.State> states) {
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
        return new FailurePatterns(model.items(), patterns, weights, Math.min(1, held), false);
    }

    private FailurePatterns drawn(Calibrated chain, int named) {
        double[] weights = new double[settings.points()];
        Arrays.fill(weights, 1.0 / weights.length);
        PatternPoints points = new PatternPoints(model, settings.seed());
        JointDraw draw = new JointDraw(
                chain, named, v -> v < named ? model.coordinate(v) : posterior.hiddenLabel(v));
        List<BitSet> patterns = new ArrayList<>();
        for (int j = 0; j < weights.length; j++) {
            points.next();
            patterns.add(draw.draw(points).get(0, model.itemCount()));
        }
        return new FailurePatterns(model.items(), patterns, weights, 1, true);
    }
}
