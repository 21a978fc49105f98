package worthsaving.record;

import java.util.Objects;

/**
 * One forecast beside what came of it.
 *
 * @param car which car
 * @param actual in the unit of the forecast, finite
 */
public record Scored(String car, Ensemble forecast, double actual) {

    public Scored {
        Objects.requireNonNull(car, "car");
        Objects.requireNonNull(forecast, "forecast");
        if (!Double.isFinite(actual)) {
            throw new IllegalArgumentException("what came must be finite, not " + actual);
        }
    }
}
