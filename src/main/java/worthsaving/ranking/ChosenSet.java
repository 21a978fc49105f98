package worthsaving.ranking;

import java.util.List;
import worthsaving.deal.ToolNeed;

/**
 * Cars to buy together.
 *
 * @param cars by id
 * @param profit expected profit of the set, each tool bought once
 * @param cash laid out before money comes back, each tool bought once
 * @param tools what the set may make one buy, with the chance that at least one of its cars needs it
 * @param toolsShared what buying each tool once saves against each car buying its own
 */
public record ChosenSet(
        List<Candidate> cars, double profit, double cash, double hours, int bays, List<ToolNeed> tools,
        double toolsShared) {

    public ChosenSet {
        cars = List.copyOf(cars);
        tools = List.copyOf(tools);
    }

    public boolean holds(String id) {
        return cars.stream().anyMatch(c -> c.id().equals(id));
    }
}
