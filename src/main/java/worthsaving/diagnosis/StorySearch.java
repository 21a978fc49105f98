package worthsaving.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import worthsaving.diagnosis.inference.BestStates;
import worthsaving.diagnosis.inference.BucketTree;
import worthsaving.diagnosis.inference.Calibrated;
import worthsaving.quantity.Probability;

/**
 * The most probable joint states of the items that the evidence moved most, by Kullback-Leibler
 * divergence of the posterior from the prior; all other items are summed out.
 */
final class StorySearch {

    private static final int MOST_ITEMS = 12;

    /** Divergence, in nats, below which an item is not worth a word. */
    private static final double LEAST_MOVE = 1e-3;

    private StorySearch() {}

    static List<Story> stories(FailureModel model, ExactPosterior prior, ExactPosterior posterior, int count) {
        List<Integer> moved = IntStream.range(0, model.itemCount())
                .boxed()
                .filter(i -> move(prior, posterior, i) >= LEAST_MOVE)
                .sorted(Comparator.comparingDouble(i -> -move(prior, posterior, i)))
                .limit(MOST_ITEMS)
                .toList();
        for (int kept = moved.size(); kept > 0; kept--) {
            Set<Integer> key = Set.copyOf(moved.subList(0, kept));
            Optional<Calibrated> chain = posterior.chainOf(key::contains, BucketTree.WIDTH_GUARD);
            if (chain.isPresent()) {
                List<Integer> named = moved.subList(0, kept);
                return BestStates.best(chain.get(), kept, count).stream()
                        .map(state -> story(model, named, state))
                        .toList();
            }
        }
        return List.of();
    }

    private static double move(ExactPosterior prior, ExactPosterior posterior, int item) {
        double p = posterior.marginal(item);
        double q = prior.marginal(item);
        return term(p, q) + term(1 - p, 1 - q);
    }

    private static double term(double p, double q) {
        return p == 0 ? 0 : p * Math.log(p / q);
    }

    private static Story story(FailureModel model, List<Integer> named, BestStates.State state) {
        List<String> failed = new ArrayList<>();
        List<String> sound = new ArrayList<>();
        for (int item : named) {
            (state.yes().get(item) ? failed : sound).add(model.items().get(item));
        }
        return new Story(failed, sound, Probability.of(Math.min(1, state.probability())));
    }
}
