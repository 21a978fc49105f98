package worthsaving.ranking;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import worthsaving.valuation.ValueForecast;
import worthsaving.vehicle.Vehicle;

/** What a car is worth once it runs; usually a fitted price model under market settings. */
@FunctionalInterface
public interface ValueSource {

    ValueForecast forecast(Vehicle vehicle, LocalDate on);

    /** The same values multiplied by a factor of the user's own, shown as a step of its own. */
    default ValueSource times(double factor) {
        return (vehicle, on) -> {
            ValueForecast forecast = forecast(vehicle, on);
            List<ValueForecast.Step> steps = new ArrayList<>(forecast.steps());
            steps.add(new ValueForecast.Step("your own factor", factor, "entered by the user"));
            return new ValueForecast(forecast.saleValue().scaled(factor), forecast.currency(), steps,
                    forecast.contributions(), forecast.warnings(), forecast.modelName(), forecast.unknownModel());
        };
    }
}
