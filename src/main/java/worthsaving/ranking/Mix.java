package worthsaving.ranking;

import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Several orders at once, each with a weight of the user's.
 *
 * <p>Score = sum of weight x rank / sum of weights, smallest first. Ranks are counted from 1 for each order by
 * itself among the listings worth buying, equal ones at the mean of their ranks, so that dollars, dollars an
 * hour and chances can be added without any scale of their own. It is Borda's count (1781) with weights, and
 * shares its flaw: a listing added or taken away may turn the order of two others.
 *
 * @param weights each zero or more, not all zero
 */
public record Mix(Map<Order, Double> weights) implements Ordering {

    /** Short names as typed by the user. */
    private static final Map<String, Order> NAMES = Map.of("profit", Order.EXPECTED_PROFIT, "hour",
            Order.PROFIT_PER_HOUR, "loss", Order.CHANCE_OF_LOSS, "room", Order.ROOM);

    public Mix {
        weights = Map.copyOf(new EnumMap<>(weights));
        double sum = 0;
        for (double w : weights.values()) {
            if (!(w >= 0) || Double.isInfinite(w)) {
                throw new IllegalArgumentException("a weight must be zero or more, not " + w);
            }
            sum += w;
        }
        if (!(sum > 0)) {
            throw new IllegalArgumentException("at least one weight must be above zero");
        }
    }

    /**
     * @param text such as {@code profit=1,hour=0.5,loss=2}; names are profit, hour, loss and room
     * @throws IllegalArgumentException saying what cannot be read
     */
    public static Mix parse(String text) {
        Map<Order, Double> weights = new EnumMap<>(Order.class);
        for (String part : text.split(",")) {
            String[] pair = part.split("=", 2);
            Order order = NAMES.get(pair[0].trim().toLowerCase(Locale.ROOT));
            if (order == null || pair.length < 2) {
                throw new IllegalArgumentException("'" + part.trim() + "' is no weight; write profit=1,hour=0.5,loss=2"
                        + " with any of profit, hour, loss and room");
            }
            if (weights.putIfAbsent(order, number(pair[1].trim(), part.trim())) != null) {
                throw new IllegalArgumentException("'" + pair[0].trim() + "' has two weights");
            }
        }
        return new Mix(weights);
    }

    private static double number(String text, String part) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("'" + part + "': '" + text + "' is no number; write one such as 0.5", e);
        }
    }

    @Override
    public Comparator<Standing> among(Collection<Standing> lot) {
        Map<String, Double> scores = scores(lot);
        return Order.best(s -> scores.getOrDefault(s.listing().id(), Double.MAX_VALUE));
    }

    /** Mean rank by listing id; only listings worth buying have one. */
    Map<String, Double> scores(Collection<Standing> lot) {
        List<Standing> worthBuying = lot.stream().filter(Order::worthBuying).toList();
        double sum = weights.values().stream().mapToDouble(Double::doubleValue).sum();
        Map<String, Double> scores = new HashMap<>();
        for (Order order : Order.values()) {
            double weight = weights.getOrDefault(order, 0.0) / sum;
            double[] keys = worthBuying.stream().mapToDouble(order::key).toArray();
            for (int i = 0; i < keys.length; i++) {
                scores.merge(worthBuying.get(i).listing().id(), weight * rank(keys, keys[i]), Double::sum);
            }
        }
        return scores;
    }

    private static double rank(double[] keys, double of) {
        int before = 0;
        int same = 0;
        for (double key : keys) {
            before += key < of ? 1 : 0;
            same += key == of ? 1 : 0;
        }
        return before + (same + 1) / 2.0;
    }
}
