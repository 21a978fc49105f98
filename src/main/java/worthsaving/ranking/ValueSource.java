package worthsaving.ranking;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import worthsaving.quantity.LogNormal;
import worthsaving.valuation.ValueForecast;
import worthsaving.vehicle.Vehicle;

/** What a car is worth once it runs; usually a fitted price model under market settings. */
@FunctionalInterface
public interface ValueSource {

    ValueForecast forecast(Vehicle vehicle, LocalDate on);

    /**
     * Your own figures, whatever the car: lognormal, one in ten below {@code low} and one in ten above {@code high}.
     *
     * @throws IllegalArgumentException unless 0 &lt; low &lt; high
     */
    static ValueSource between(double low, double high, Currency currency) {
        LogNormal value = LogNormal.between(low, high);
        return (vehicle, on) -> new ValueForecast(value, currency,
                List.of(new ValueForecast.Step("your own figures", 1, "entered by the user")), List.of(), List.of(),
                "your own figures");
    }

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
