package worthsaving.inspection;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * The order in which to look at suspects of which exactly one is at fault, looking until it is found, at the
 * least expected cost. What must be opened first is paid once for all suspects behind it (cost clusters:
 * Langseth and Jensen 2001, Reliability Engineering and System Safety 73:81; Ottosen and Jensen 2010,
 * arXiv 1203.3502).
 *
 * <p>Where nothing is shared, descending probability over cost is optimal (Heckerman, Breese and Rommelse
 * 1995, Communications of the ACM 38(3):49; Kadane and Simon 1977, Annals of Statistics 5:237). With openings
 * shared it is not, and the order is found exactly by dynamic programming over the sets already looked at,
 * V(S) = min over i of P(fault not in S) cost(i | S) + V(S with i) (Held and Karp 1962, Journal of SIAM
 * 10:196): what is open depends only on S, so any nesting of openings is handled.
 */
public final class LookOrder {

    /** Suspects put in order exactly; 2^18 sets take a few hundred milliseconds. */
    public static final int MOST_EXACT = 18;

    private final Map<String, Double> openings;

    /**
     * @param probability that this is the one at fault; those of all suspects add up to 1
     * @param cost of looking once it is reached
     * @param behind ids of everything that must be open, requirements included
     */
    public record Suspect(String id, double probability, double cost, Set<String> behind) {

        public Suspect {
            Objects.requireNonNull(id, "id");
            behind = Set.copyOf(behind);
            if (!(probability >= 0 && probability <= 1) || !(cost >= 0)) {
                throw new IllegalArgumentException(id + " needs a probability and a cost of zero or more, not "
                        + probability + " and " + cost);
            }
        }
    }

    /**
     * @param order best first
     * @param expectedCost of looking in that order until the fault is found
     * @param exact false when there were more than {@link #MOST_EXACT} suspects: the likeliest are in their
     *     best order and the others follow by probability over cost
     */
    public record Plan(List<Suspect> order, double expectedCost, boolean exact) {

        public Plan {
            order = List.copyOf(order);
        }
    }

    /** @param openings cost of opening, by id; what is not named is open already */
    public LookOrder(Map<String, Double> openings) {
        this.openings = Map.copyOf(openings);
    }

    public Plan best(List<Suspect> suspects) {
        double sum = suspects.stream().mapToDouble(Suspect::probability).sum();
        if (!suspects.isEmpty() && Math.abs(sum - 1) > 1e-9) {
            throw new IllegalArgumentException("the suspects' probabilities must add up to 1, not " + sum);
        }
        List<Suspect> likeliest = suspects.stream()
                .sorted(Comparator.comparingDouble((Suspect s) -> -s.probability()).thenComparing(Suspect::id))
                .toList();
        boolean exact = likeliest.size() <= MOST_EXACT;
        List<Suspect> order = new ArrayList<>(
                exactly(likeliest.subList(0, Math.min(MOST_EXACT, likeliest.size()))));
        if (!exact) {
            order.addAll(byRatio(likeliest.subList(MOST_EXACT, likeliest.size())));
        }
        return new Plan(order, expectedCost(order), exact);
    }

    /** Descending probability over the cost of looking, openings left out: optimal when nothing is shared. */
    public static List<Suspect> byRatio(List<Suspect> suspects) {
        return suspects.stream()
                .sorted(Comparator.comparingDouble((Suspect s) -> -ratio(s)).thenComparing(Suspect::id))
                .toList();
    }

    private static double ratio(Suspect s) {
        return s.cost() > 0 ? s.probability() / s.cost() : Double.POSITIVE_INFINITY;
    }

    /** Expected cost of looking in this order until the fault is found. */
    public double expectedCost(List<Suspect> order) {
        Set<String> open = new HashSet<>();
        double left = order.stream().mapToDouble(Suspect::probability).sum();
        double expected = 0;
        for (Suspect s : order) {
            double cost = s.cost();
            for (String step : s.behind()) {
                cost += open.add(step) ? openings.getOrDefault(step, 0.0) : 0;
            }
            expected += Math.max(0, left) * cost;
            left -= s.probability();
        }
        return expected;
    }

    private List<Suspect> exactly(List<Suspect> suspects) {
        int n = suspects.size();
        long[] behind = new long[n];
        double[] prices = number(suspects, behind);
        double[] value = new double[1 << n];
        byte[] next = new byte[1 << n];
        long[] open = new long[1 << n];
        double[] left = new double[1 << n];
        left[0] = suspects.stream().mapToDouble(Suspect::probability).sum();
        for (int set = 1; set < 1 << n; set++) {
            int last = Integer.numberOfTrailingZeros(set);
            int before = set & set - 1;
            open[set] = open[before] | behind[last];
            left[set] = left[before] - suspects.get(last).probability();
        }
        for (int set = (1 << n) - 2; set >= 0; set--) {
            value[set] = Double.POSITIVE_INFINITY;
            for (int i = 0; i < n; i++) {
                if ((set >> i & 1) == 0) {
                    double cost = suspects.get(i).cost() + price(behind[i] & ~open[set], prices);
                    double then = Math.max(0, left[set]) * cost + value[set | 1 << i];
                    if (then < value[set]) {
                        value[set] = then;
                        next[set] = (byte) i;
                    }
                }
            }
        }
        List<Suspect> order = new ArrayList<>(n);
        for (int set = 0; set != (1 << n) - 1; set |= 1 << next[set]) {
            order.add(suspects.get(next[set]));
        }
        return order;
    }

    /**
     * Numbers the openings;
     *
     * @return what each costs
     */
    private double[] number(List<Suspect> suspects, long[] behind) {
        Map<String, Integer> numbers = new LinkedHashMap<>();
        for (int i = 0; i < behind.length; i++) {
            for (String step : suspects.get(i).behind().stream().sorted().toList()) {
                if (openings.getOrDefault(step, 0.0) > 0) {
                    numbers.putIfAbsent(step, numbers.size());
                    behind[i] |= 1L << numbers.get(step);
                }
            }
        }
        if (numbers.size() > Long.SIZE) {
            throw new IllegalArgumentException("at most " + Long.SIZE + " openings can be told apart");
        }
        double[] prices = new double[numbers.size()];
        numbers.forEach((step, number) -> prices[number] = openings.get(step));
        return prices;
    }

    private static double price(long steps, double[] prices) {
        double sum = 0;
        for (long rest = steps; rest != 0; rest &= rest - 1) {
            sum += prices[Long.numberOfTrailingZeros(rest)];
        }
        return sum;
    }
}
