package worthsaving.record;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A finished car as the record sees it: what was forecast and what came.
 *
 * @param forecasts by quantity; may lack some
 * @param actuals by quantity, those that are known
 * @param items probability of each failure item that has been looked at, and whether it had failed
 * @param speed own hours per book hour over the jobs that say both; empty without such jobs
 * @param partPrice money paid for parts per money expected, over the receipts that say both
 * @param daysToSell days from ready to sold
 */
public record FinishedCar(
        String id,
        Map<Quantity, Ensemble> forecasts,
        Map<Quantity, Double> actuals,
        List<Chance> items,
        OptionalDouble speed,
        OptionalDouble partPrice,
        OptionalDouble daysToSell) {

    public FinishedCar {
        Objects.requireNonNull(id, "id");
        forecasts = Map.copyOf(forecasts);
        actuals = Map.copyOf(actuals);
        items = List.copyOf(items);
    }
}
