package worthsaving.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import worthsaving.quantity.Probability;

/**
 * The most probable joint states of the items that the evidence moved most, by Kullback-Leibler
 * divergence of the posterior from the prior; all other items are summed out.
 */
final class StorySearch {

    private static final int MOST_ITEMS = 6;

    /** Divergence, in nats, below which an item is not worth a word. */
    private static final double LEAST_MOVE = 1e-3;

    private StorySearch() {}

    static List<Story> stories(List<String> items, Posterior prior, Posterior posterior, int count) {
        int[] moved = IntStream.range(0, items.size())
                .boxed()
                .filter(i -> move(prior, posterior, i) >= LEAST_MOVE)
                .sorted(Comparator.comparingDouble(i -> -move(prior, posterior, i)))
                .limit(MOST_ITEMS)
                .mapToInt(Integer::intValue)
                .toArray();
        if (moved.length == 0) {
            return List.of();
        }
        double[] joint = posterior.joint(moved);
        return IntStream.range(0, joint.length)
                .boxed()
                .filter(s -> joint[s] > 0)
                .sorted(Comparator.comparingDouble(s -> -joint[s]))
                .limit(count)
                .map(s -> story(items, moved, s, joint[s]))
                .toList();
    }

    private static double move(Posterior prior, Posterior posterior, int item) {
        double p = posterior.marginal(item);
        double q = prior.marginal(item);
        return term(p, q) + term(1 - p, 1 - q);
    }

    private static double term(double p, double q) {
        return p == 0 ? 0 : p * Math.log(p / q);
    }

    private static Story story(List<String> items, int[] moved, int state, double probability) {
        List<String> failed = new ArrayList<>();
        List<String> sound = new ArrayList<>();
        for (int k = 0; k < moved.length; k++) {
            ((state >> k & 1) == 1 ? failed : sound).add(items.get(moved[k]));
        }
        return new Story(failed, sound, Probability.of(Math.min(1, probability)));
    }
}
