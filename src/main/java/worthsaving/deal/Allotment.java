package worthsaving.deal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import worthsaving.diagnosis.FailurePatterns;

/**
 * Which points of the sequence stand for which failure pattern.
 *
 * <p>Drawn patterns have a point each. Enumerated ones get runs of consecutive points in proportion to
 * their weight: any run of a Sobol sequence is well spread, and the weight of a run is the exact
 * probability of its pattern. Patterns lighter than one point are represented by every so many-th of
 * them (systematic sampling), which together carry the exact weight of all the light ones.
 *
 * @param weights of each point, adding up to 1
 */
record Allotment(List<Run> runs, double[] weights) {

    private static final int MOST_ROUNDS = 100;
    private static final double FITTED = 1e-9;

    /** Points from (inclusive) to (exclusive) that stand for one pattern. */
    record Run(BitSet pattern, int from, int to) {}

    static Allotment of(FailurePatterns patterns, int points) {
        return patterns.drawn() ? drawn(patterns) : enumerated(patterns, points);
    }

    /**
     * Weights at which the items have these chances, every pattern keeping its weight among those alike in
     * them: Jeffrey's rule, for several items by proportional fitting in turn. Sources: Jeffrey (1965), The
     * Logic of Decision; Deming and Stephan (1940), Annals of Mathematical Statistics 11:427. Where the
     * chances cannot all hold together, the alphabetically last ones do.
     */
    Allotment withChances(List<String> items, Map<String, Double> chances) {
        double[] fitted = weights.clone();
        double off = 1;
        for (int round = 0; round < MOST_ROUNDS && off > FITTED; round++) {
            off = 0;
            for (Map.Entry<String, Double> wanted : new TreeMap<>(chances).entrySet()) {
                int item = items.indexOf(wanted.getKey());
                double now = chance(item, fitted);
                if (now > 0 && now < 1) {
                    off = Math.max(off, Math.abs(now - wanted.getValue()));
                    fit(fitted, item, wanted.getValue() / now, (1 - wanted.getValue()) / (1 - now));
                }
            }
        }
        return new Allotment(runs, normalised(fitted));
    }

    private void fit(double[] fitted, int item, double failed, double sound) {
        for (Run run : runs) {
            double factor = run.pattern().get(item) ? failed : sound;
            for (int i = run.from(); i < run.to(); i++) {
                fitted[i] *= factor;
            }
        }
    }

    /** Probability of the patterns that hold an item; zero for an unknown one, whose number is negative. */
    double chance(int item) {
        return chance(item, weights);
    }

    private double chance(int item, double[] weights) {
        double sum = 0;
        for (Run run : runs) {
            for (int i = run.from(); i < run.to() && item >= 0 && run.pattern().get(item); i++) {
                sum += weights[i];
            }
        }
        return Math.min(1, sum);
    }

    private static Allotment drawn(FailurePatterns patterns) {
        int n = patterns.patterns().size();
        List<Run> runs = new ArrayList<>(n);
        double[] weights = new double[n];
        for (int i = 0; i < n; i++) {
            runs.add(new Run(patterns.patterns().get(i), i, i + 1));
            weights[i] = 1.0 / n;
        }
        return new Allotment(runs, weights);
    }

    private static Allotment enumerated(FailurePatterns patterns, int points) {
        double[] w = patterns.weights();
        double total = 0;
        double light = 0;
        for (double x : w) {
            total += x;
        }
        List<Run> runs = new ArrayList<>();
        List<Run> lightRuns = new ArrayList<>();
        double[] weights = new double[points];
        double sum = 0;
        int from = 0;
        for (int k = 0; k < w.length; k++) {
            double share = w[k] / total;
            sum += share;
            int to = k == w.length - 1 ? points : Math.min(points, (int) Math.round(points * sum));
            boolean isLight = share * points < 1;
            light += isLight ? share : 0;
            if (to > from) {
                Run run = new Run(patterns.patterns().get(k), from, to);
                (isLight ? lightRuns : runs).add(run);
                Arrays.fill(weights, from, to, share / (to - from));
            }
            from = to;
        }
        int lightPoints = lightRuns.stream().mapToInt(r -> r.to() - r.from()).sum();
        for (Run run : lightRuns) {
            Arrays.fill(weights, run.from(), run.to(), light / lightPoints);
        }
        runs.addAll(lightRuns);
        return new Allotment(runs, normalised(weights));
    }

    private static double[] normalised(double[] weights) {
        double sum = 0;
        for (double x : weights) {
            sum += x;
        }
        double[] out = new double[weights.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = weights[i] / sum;
        }
        return out;
    }
}
