package worthsaving.valuation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import worthsaving.quantity.Distance;

/**
 * Notices cars outside the data and says how much further the interval must reach.
 *
 * @param makeSpread spread of makes in ln price, measured: what not knowing the make costs
 * @param modelSpread the same of models within their make
 * @param fewRows rows from which on a model carries no doubt of its own; below, a share of that of one never seen
 */
record Guard(
        double oldest, double farthest, double makeSpread, double modelSpread, double fewRows) {

    /** Beyond the data each year, and each ten thousand miles, adds so much spread of ln price (guess). */
    private static final double SPREAD_PER_STEP = 0.04;
    private static final double MILES_PER_STEP = 10_000;

    /** Added spread of ln price; it goes into the reach before that is calibrated, see {@link Spread#widened}. */
    double spread(CarFacts car, Encoder encoder) {
        Encoder.Level make = encoder.makes().get(car.make());
        Encoder.Level model = encoder.models().get(car.makeAndModel());
        double variance = square(beyond(car.age(), oldest, 1)) + square(beyond(car.miles(), farthest, MILES_PER_STEP));
        if (make == null) {
            variance += makeSpread * makeSpread;
        }
        double unknown = model == null ? 1 : Math.max(0, (fewRows - model.rows()) / fewRows);
        return Math.sqrt(variance + unknown * modelSpread * modelSpread);
    }

    private static double beyond(double value, double end, double step) {
        return value > end ? SPREAD_PER_STEP * (value - end) / step : 0;
    }

    /** Why a car is valued with more doubt than others, in plain words. */
    List<String> warnings(CarFacts car, Encoder encoder, Distance.Unit unit) {
        List<String> warnings = new ArrayList<>();
        Encoder.Level make = encoder.makes().get(car.make());
        Encoder.Level model = encoder.models().get(car.makeAndModel());
        if (make == null) {
            warnings.add("The make " + quoted(car.make()) + " is not in the price data: valued as a typical car of "
                    + "its age, mileage and body, whatever the make; the interval is much wider. Look up what such cars fetch, "
                    + "or give comparables.");
        } else if (model == null) {
            warnings.add("The model " + quoted(car.model()) + " is not in the price data: valued as a typical "
                    + car.make() + ", which is too high for a small or cheap one and too low for a large or dear one; the "
                    + "interval is much wider. Look up what such cars fetch, or give comparables.");
        } else if (model.rows() < fewRows) {
            warnings.add(String.format(Locale.ROOT,
                    "Only %.0f cars of this model in the price data: leans on its make, with a wider interval.",
                    model.rows()));
        }
        warn(car.age(), oldest, warnings, "age", age -> String.format(Locale.ROOT, "%.0f years", age));
        warn(car.miles(), farthest, warnings, "mileage", miles -> Explanation.distance(miles, unit));
        return warnings;
    }

    private static void warn(
            double value, double end, List<String> warnings, String name, DoubleFunction<String> told) {
        if (Double.isNaN(value)) {
            warnings.add("The " + name + " is not known: valued as the price data value cars that do not state it.");
        } else if (value > end) {
            warnings.add("The " + name + " of " + told.apply(value) + " is beyond the price data, which end at "
                    + told.apply(end) + ": the value is an extrapolation and the interval is widened.");
        }
    }

    private static double square(double v) {
        return v * v;
    }

    private static String quoted(String word) {
        return word.isEmpty() ? "(not stated)" : "'" + word + "'";
    }
}
