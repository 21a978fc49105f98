package worthsaving.diagnosis;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import worthsaving.catalog.Onset;
import worthsaving.quantity.Distance;
import worthsaving.vehicle.Vehicle;

/**
 * Age and mileage that priors are taken at. What is missing is filled in at 12,000 miles a year, or as
 * ten years when neither is known (common practice, no source).
 *
 * @param assumptions what was filled in, in words
 */
record CarAge(double years, Distance odometer, List<String> assumptions) {

    private static final double USUAL_YEARS = 10;

    static CarAge of(Vehicle vehicle, LocalDate on) {
        OptionalDouble stated = vehicle.ageYears(on);
        Optional<Distance> read = vehicle.odometer().get();
        List<String> assumptions = new ArrayList<>();
        double years = stated.orElseGet(
                () -> read.map(d -> d.miles() / Onset.MILES_PER_YEAR).orElse(USUAL_YEARS));
        if (stated.isEmpty()) {
            assumptions.add(String.format(Locale.ROOT,
                    "year unknown: counted as %.0f years old%s", years, read.isPresent() ? ", from the mileage" : ""));
        }
        if (read.isEmpty()) {
            assumptions.add(String.format(Locale.ROOT,
                    "mileage unknown: counted as %,.0f miles, at 12,000 a year", years * Onset.MILES_PER_YEAR));
        }
        Distance odometer = read.orElseGet(() -> Distance.ofMiles(years * Onset.MILES_PER_YEAR));
        return new CarAge(years, odometer, List.copyOf(assumptions));
    }
}
