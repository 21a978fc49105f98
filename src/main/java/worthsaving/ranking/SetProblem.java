package worthsaving.ranking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import worthsaving.deal.ToolNeed;

/**
 * Candidates as arrays. Buying set S, a tool costs price x (1 - product over S of (1 - p)): once, when at
 * least one of the cars needs it, which they do independently of each other.
 */
final class SetProblem {

    /** Limits, in this order. */
    static final int CASH = 0;
    static final int BAYS = 1;
    static final int HOURS = 2;

    final List<Candidate> cars;
    final double[] limit;
    /** By car: expected profit, and what it takes of each limit, before any tool. */
    final double[] profit;
    final double[][] takes;
    final List<ToolNeed> tools = new ArrayList<>();
    /** By tool and car: chance that the car needs it. */
    final double[][] need;
    /** By car: numbers of the tools it may need. */
    final int[][] toolsOf;

    SetProblem(List<Candidate> cars, Budget budget) {
        this.cars = List.copyOf(cars);
        this.limit = new double[] {budget.cash(), budget.bays(), budget.hours()};
        int n = cars.size();
        Map<String, Integer> number = new LinkedHashMap<>();
        for (Candidate car : cars) {
            for (ToolNeed tool : car.tools()) {
                if (number.putIfAbsent(tool.tool(), number.size()) == null) {
                    tools.add(tool);
                }
            }
        }
        profit = new double[n];
        takes = new double[n][];
        toolsOf = new int[n][];
        need = new double[tools.size()][n];
        for (int i = 0; i < n; i++) {
            Candidate car = cars.get(i);
            double own = car.toolCost();
            profit[i] = car.profit() + own;
            takes[i] = new double[] {Math.max(0, car.cash() - own), car.bays(), car.hours()};
            toolsOf[i] = car.tools().stream().mapToInt(t -> number.get(t.tool())).toArray();
            for (ToolNeed tool : car.tools()) {
                need[number.get(tool.tool())][i] = tool.chance().value();
            }
        }
    }

    int size() {
        return profit.length;
    }

    double price(int tool) {
        return tools.get(tool).price().amount();
    }

    /** What a car adds to the cost of tools when each of them is still unbought with this probability. */
    double addedTools(int car, double[] unbought) {
        double sum = 0;
        for (int t : toolsOf[car]) {
            sum += price(t) * need[t][car] * unbought[t];
        }
        return sum;
    }

    /**
     * The least that each car adds to the cost of tools, whatever else is bought: what it adds to all the
     * others, because the cost of tools is submodular.
     */
    double[] leastAdded() {
        double[] least = new double[size()];
        for (int i = 0; i < least.length; i++) {
            for (int t : toolsOf[i]) {
                double unbought = 1;
                for (int j = 0; j < least.length; j++) {
                    unbought *= j == i ? 1 : 1 - need[t][j];
                }
                least[i] += price(t) * need[t][i] * unbought;
            }
        }
        return least;
    }

    /**
     * A way to share the cost of tools among all cars such that no set of them pays more than its own tools
     * cost. What the cars add one after another, in any order, is such a share (Edmonds 1970), and so is the
     * mean over all turns of one order, which is taken here.
     */
    double[] fairShare() {
        int n = size();
        double[] share = new double[n];
        for (int t = 0; t < tools.size(); t++) {
            for (int first = 0; first < n; first++) {
                double unbought = 1;
                for (int k = 0; k < n; k++) {
                    int i = (first + k) % n;
                    share[i] += price(t) * need[t][i] * unbought / n;
                    unbought *= 1 - need[t][i];
                }
            }
        }
        return share;
    }
}
