package worthsaving.vehicle;

import java.time.LocalDate;
import java.util.Objects;
import java.util.OptionalDouble;
import worthsaving.quantity.Distance;

/**
 * One car as described. Make and model are kept in lower case, as the price data spell them.
 *
 * @param year model year
 * @param engineLitres displacement in litres
 * @param condition the advert's own word ("good", "fair", ...), not a judgement of ours
 */
public record Vehicle(
        Fact<Integer> year,
        Fact<String> make,
        Fact<String> model,
        Fact<String> trim,
        Fact<Distance> odometer,
        Powertrain powertrain,
        Fact<Double> engineLitres,
        Fact<Integer> cylinders,
        Fact<String> body,
        Fact<String> condition,
        TitleBrand title,
        Fact<Vin> vin) {

    public Vehicle {
        Objects.requireNonNull(powertrain, "powertrain");
        Objects.requireNonNull(title, "title");
    }

    public static Builder builder() {
        return new Builder();
    }

    public Builder toBuilder() {
        return new Builder(this);
    }

    /**
     * Age in years on a day, counted from the middle of the model year and never below zero;
     * empty when the year is unknown.
     */
    public OptionalDouble ageYears(LocalDate on) {
        return year.get()
                .map(y -> OptionalDouble.of(
                        Math.max(0, on.getYear() + (on.getDayOfYear() - 1) / 365.25 - (y + 0.5))))
                .orElse(OptionalDouble.empty());
    }

    /** Short name for people, such as {@code "2014 nissan rogue"}. */
    public String label() {
        return (year.get().map(y -> y + " ").orElse("")
                        + make.get().map(m -> m + " ").orElse("")
                        + model.orElse("car of unknown model"))
                .trim();
    }

    /** Collects the fields one by one; whatever is not set stays unknown. */
    public static final class Builder {
        private Fact<Integer> year = Fact.unknown();
        private Fact<String> make = Fact.unknown();
        private Fact<String> model = Fact.unknown();
        private Fact<String> trim = Fact.unknown();
        private Fact<Distance> odometer = Fact.unknown();
        private Powertrain powertrain = Powertrain.UNKNOWN;
        private Fact<Double> engineLitres = Fact.unknown();
        private Fact<Integer> cylinders = Fact.unknown();
        private Fact<String> body = Fact.unknown();
        private Fact<String> condition = Fact.unknown();
        private TitleBrand title = TitleBrand.UNKNOWN;
        private Fact<Vin> vin = Fact.unknown();

        private Builder() {}

        private Builder(Vehicle v) {
            year = v.year;
            make = v.make;
            model = v.model;
            trim = v.trim;
            odometer = v.odometer;
            powertrain = v.powertrain;
            engineLitres = v.engineLitres;
            cylinders = v.cylinders;
            body = v.body;
            condition = v.condition;
            title = v.title;
            vin = v.vin;
        }

        public Builder year(Fact<Integer> value) {
            year = value;
            return this;
        }

        public Builder make(Fact<String> value) {
            make = value;
            return this;
        }

        public Builder model(Fact<String> value) {
            model = value;
            return this;
        }

        public Builder trim(Fact<String> value) {
            trim = value;
            return this;
        }

        public Builder odometer(Fact<Distance> value) {
            odometer = value;
            return this;
        }

        public Builder powertrain(Powertrain value) {
            powertrain = value;
            return this;
        }

        public Builder engineLitres(Fact<Double> value) {
            engineLitres = value;
            return this;
        }

        public Builder cylinders(Fact<Integer> value) {
            cylinders = value;
            return this;
        }

        public Builder body(Fact<String> value) {
            body = value;
            return this;
        }

        public Builder condition(Fact<String> value) {
            condition = value;
            return this;
        }

        public Builder title(TitleBrand value) {
            title = value;
            return this;
        }

        public Builder vin(Fact<Vin> value) {
            vin = value;
            return this;
        }

        public Vehicle build() {
            return new Vehicle(
                    year, make, model, trim, odometer, powertrain, engineLitres, cylinders, body, condition, title, vin);
        }
    }
}
