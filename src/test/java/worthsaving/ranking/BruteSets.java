package worthsaving.ranking;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import worthsaving.deal.ToolNeed;

/** Every set of a few cars, one by one, each added up from nothing. */
final class BruteSets {

    private BruteSets() {}

    static double best(List<Candidate> lot, Budget budget) {
        return search(lot, budget, 0);
    }

    static double bestWith(String id, List<Candidate> lot, Budget budget) {
        List<Candidate> first = new ArrayList<>(lot);
        first.sort((a, b) -> Boolean.compare(b.id().equals(id), a.id().equals(id)));
        return search(first, budget, 1);
    }

    private static double search(List<Candidate> lot, Budget budget, int must) {
        double best = Double.NEGATIVE_INFINITY;
        for (int set = 0; set < 1 << lot.size(); set++) {
            List<Candidate> cars = new ArrayList<>();
            for (int i = 0; i < lot.size(); i++) {
                if ((set >> i & 1) == 1) {
                    cars.add(lot.get(i));
                }
            }
            if ((set & must) == must && allowed(cars, budget)) {
                best = Math.max(best, profit(cars));
            }
        }
        return best;
    }

    static boolean allowed(List<Candidate> cars, Budget budget) {
        double cash = -saved(cars);
        double hours = 0;
        double bays = 0;
        for (Candidate car : cars) {
            cash += car.cash();
            hours += car.hours();
            bays += car.bays();
        }
        return cash <= budget.cash() + 1e-6 && hours <= budget.hours() + 1e-6 && bays <= budget.bays();
    }

    static double profit(List<Candidate> cars) {
        double profit = saved(cars);
        for (Candidate car : cars) {
            profit += car.profit();
        }
        return profit;
    }

    /** What each would pay for its own tools less what the set pays for each tool once. */
    private static double saved(List<Candidate> cars) {
        double saved = 0;
        Map<String, Double> none = new HashMap<>();
        Map<String, Double> price = new HashMap<>();
        for (Candidate car : cars) {
            for (ToolNeed tool : car.tools()) {
                saved += tool.price().amount() * tool.chance().value();
                price.put(tool.tool(), tool.price().amount());
                none.merge(tool.tool(), 1 - tool.chance().value(), (a, b) -> a * b);
            }
        }
        for (Map.Entry<String, Double> tool : none.entrySet()) {
            saved -= price.get(tool.getKey()) * (1 - tool.getValue());
        }
        return saved;
    }
}
