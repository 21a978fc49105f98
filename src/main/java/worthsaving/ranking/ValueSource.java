package worthsaving.ranking;

import java.time.LocalDate;
import worthsaving.valuation.ValueForecast;
import worthsaving.vehicle.Vehicle;

/** What a car is worth once it runs; usually a fitted price model under market settings. */
@FunctionalInterface
public interface ValueSource {

    ValueForecast forecast(Vehicle vehicle, LocalDate on);
}
