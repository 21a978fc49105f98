package worthsaving.ranking;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import worthsaving.deal.ToolNeed;
import worthsaving.quantity.Probability;

/**
 * The set of cars with the greatest expected profit under cash, bays and own hours, exactly.
 *
 * <p>Maximise sum of profit before tools - cost of tools, cost of tools = sum over tools of price x (1 -
 * product over the set of (1 - chance)), subject to the three limits; cash includes the tools. A
 * three-dimensional knapsack with a submodular cost, solved by depth-first branch and bound (Land and Doig
 * 1960, Econometrica 28:497) under the two bounds of {@link Relaxation}: one with the least that a car can
 * add to the cost of tools, one with a fair share of it. Tools shared by several activities: Rhys (1970),
 * Management Science 17:200.
 */
public final class SetChoice {

    private static final double SLACK = 1e-9;

    private final SetProblem problem;
    private final Relaxation least;
    private final Relaxation shared;
    private final double[] addsLeast;
    private final double[] share;
    private final int[] order;
    private final boolean[] taken;
    private boolean[] best;
    private double bestProfit = Double.NEGATIVE_INFINITY;
    private final int mustTake;
    private long nodes;

    private SetChoice(List<Candidate> cars, Budget budget, Optional<String> forced) {
        problem = new SetProblem(cars, budget);
        addsLeast = problem.leastAdded();
        share = problem.fairShare();
        least = relaxation(addsLeast);
        shared = relaxation(share);
        order = IntStream.range(0, cars.size()).boxed()
                .sorted(Comparator.comparing((Integer i) -> !forced.filter(cars.get(i).id()::equals).isPresent())
                        .thenComparing(i -> -shared.reduced(i)))
                .mapToInt(Integer::intValue).toArray();
        least.arrange(order);
        shared.arrange(order);
        mustTake = forced.isPresent() ? 1 : 0;
        taken = new boolean[cars.size()];
    }

    /** The best set; with equal profits the one found first, the same for any order of the candidates. */
    public static ChosenSet best(List<Candidate> candidates, Budget budget) {
        return new SetChoice(sorted(candidates), budget, Optional.empty()).solve().orElseThrow();
    }

    /**
     * The best set that holds one of the candidates.
     *
     * @return empty when it does not fit even alone
     */
    static Optional<ChosenSet> bestWith(String id, List<Candidate> candidates, Budget budget) {
        return new SetChoice(sorted(candidates), budget, Optional.of(id)).solve();
    }

    /** All of them together, whatever they take. */
    static ChosenSet all(List<Candidate> candidates) {
        SetChoice choice = new SetChoice(sorted(candidates), Budget.NONE, Optional.empty());
        boolean[] every = new boolean[candidates.size()];
        Arrays.fill(every, true);
        return choice.written(every);
    }

    /** Nodes that finding the best set visits; for measuring. */
    static long nodes(List<Candidate> candidates, Budget budget) {
        SetChoice choice = new SetChoice(sorted(candidates), budget, Optional.empty());
        choice.solve();
        return choice.nodes;
    }

    private static List<Candidate> sorted(List<Candidate> candidates) {
        List<Candidate> sorted = candidates.stream().sorted(Comparator.comparing(Candidate::id)).toList();
        for (int i = 1; i < sorted.size(); i++) {
            if (sorted.get(i).id().equals(sorted.get(i - 1).id())) {
                throw new IllegalArgumentException("two candidates are called " + sorted.get(i).id());
            }
        }
        return sorted;
    }

    private Relaxation relaxation(double[] toolCost) {
        double[] profit = problem.profit.clone();
        double[][] takes = new double[profit.length][];
        for (int i = 0; i < profit.length; i++) {
            profit[i] -= toolCost[i];
            takes[i] = problem.takes[i].clone();
            takes[i][SetProblem.CASH] += toolCost[i];
        }
        return new Relaxation(profit, takes, problem.limit);
    }

    private Optional<ChosenSet> solve() {
        double[] unbought = new double[problem.tools.size()];
        Arrays.fill(unbought, 1);
        branch(0, new State(0, 0, 0, 0, 0, 0, unbought));
        return Optional.ofNullable(best).map(this::written);
    }

    /**
     * What is chosen so far.
     *
     * @param profit before tools
     * @param cash before tools
     * @param tools cost of tools
     * @param shares fair shares of the chosen cars
     * @param unbought by tool: probability that none of them needs it
     */
    private record State(
            double profit, double cash, double bays, double hours, double tools, double shares, double[] unbought) {}

    private void branch(int depth, State s) {
        nodes++;
        if (depth >= mustTake && s.profit() - s.tools() > bestProfit + SLACK) {
            bestProfit = s.profit() - s.tools();
            best = taken.clone();
        }
        if (depth == order.length || bound(depth, s) <= bestProfit + SLACK) {
            return;
        }
        int car = order[depth];
        double added = problem.addedTools(car, s.unbought());
        double[] takes = problem.takes[car];
        double cash = s.cash() + takes[SetProblem.CASH];
        double bays = s.bays() + takes[SetProblem.BAYS];
        double hours = s.hours() + takes[SetProblem.HOURS];
        if (fits(cash + s.tools() + added, SetProblem.CASH) && fits(bays, SetProblem.BAYS)
                && fits(hours, SetProblem.HOURS)) {
            double[] unbought = s.unbought();
            if (problem.toolsOf[car].length > 0) {
                unbought = unbought.clone();
                for (int t : problem.toolsOf[car]) {
                    unbought[t] *= 1 - problem.need[t][car];
                }
            }
            taken[car] = true;
            branch(depth + 1, new State(s.profit() + problem.profit[car], cash, bays, hours, s.tools() + added,
                    s.shares() + share[car], unbought));
            taken[car] = false;
        }
        if (depth >= mustTake) {
            branch(depth + 1, s);
        }
    }

    private boolean fits(double amount, int limit) {
        return amount <= problem.limit[limit] + SLACK * Math.max(1, amount);
    }

    private double bound(int depth, State s) {
        double bays = problem.limit[SetProblem.BAYS] - s.bays();
        double hours = problem.limit[SetProblem.HOURS] - s.hours();
        double cash = problem.limit[SetProblem.CASH] - s.cash();
        return Math.min(
                s.profit() - s.tools() + least.bound(depth, cash - s.tools(), bays, hours),
                s.profit() - s.shares() + shared.bound(depth, cash - s.shares(), bays, hours));
    }

    private ChosenSet written(boolean[] chosen) {
        List<Candidate> cars = IntStream.range(0, chosen.length).filter(i -> chosen[i])
                .mapToObj(problem.cars::get).toList();
        List<ToolNeed> tools = new ArrayList<>();
        double cost = 0;
        for (int t = 0; t < problem.tools.size(); t++) {
            double unbought = 1;
            for (int i = 0; i < chosen.length; i++) {
                unbought *= chosen[i] ? 1 - problem.need[t][i] : 1;
            }
            if (unbought < 1) {
                ToolNeed tool = problem.tools.get(t);
                tools.add(new ToolNeed(tool.tool(), tool.name(), tool.price(), Probability.of(1 - unbought)));
                cost += problem.price(t) * (1 - unbought);
            }
        }
        double saved = cars.stream().mapToDouble(Candidate::toolCost).sum() - cost;
        return new ChosenSet(cars, cars.stream().mapToDouble(Candidate::profit).sum() + saved,
                Math.max(0, cars.stream().mapToDouble(Candidate::cash).sum() - saved),
                cars.stream().mapToDouble(Candidate::hours).sum(), cars.stream().mapToInt(Candidate::bays).sum(),
                tools, saved);
    }
}
