package worthsaving.valuation;

import java.time.LocalDate;
import java.util.Collections;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;
import worthsaving.market.PriceRow;
import worthsaving.quantity.Distance;
import worthsaving.vehicle.Powertrain;
import worthsaving.vehicle.Vehicle;

/**
 * The facts a price model may use, from a row of training data or from a car on offer.
 * Numbers are NaN and words "" when not stated.
 *
 * @param age years, from the middle of the model year to {@code day}
 * @param day decimal year of the advert
 * @param features words of the table's further columns by name; a car on offer states none
 * @param title brand in the words of the data; of a car on offer, whose brand is a factor of its own, as sound
 */
record CarFacts(
        String make,
        String model,
        double year,
        double age,
        double miles,
        String condition,
        double cylinders,
        double litres,
        double power,
        String fuel,
        String gearbox,
        String body,
        String drive,
        double damage,
        double day,
        String title,
        SortedMap<String, String> features) {

    /** A car of whose title nothing is said. */
    CarFacts(
            String make,
            String model,
            double year,
            double age,
            double miles,
            String condition,
            double cylinders,
            double litres,
            double power,
            String fuel,
            String gearbox,
            String body,
            String drive,
            double damage,
            double day) {
        this(make, model, year, age, miles, condition, cylinders, litres, power, fuel, gearbox, body, drive, damage, day,
                "", Collections.emptySortedMap());
    }

    private static final String CLEAN = "clean";

    static CarFacts of(PriceRow row) {
        return new CarFacts(
                row.make(),
                row.model(),
                row.year(),
                row.ageYears(),
                row.miles(),
                row.condition(),
                row.cylinders(),
                row.litres(),
                row.power(),
                row.fuel(),
                row.gearbox(),
                row.body(),
                row.drive(),
                row.unrepairedDamage(),
                decimalYear(row.date()),
                row.title(),
                row.features());
    }

    /**
     * The facts of a car as it will be once repaired: no unrepaired damage.
     *
     * @param on the day ages are counted to; a market of the past is asked about a car of the same age
     * @param dataDay last day of the market's data, as a decimal year
     */
    static CarFacts of(Vehicle car, LocalDate on, double dataDay) {
        double age = car.ageYears(on).orElse(Double.NaN);
        return new CarFacts(
                word(car.make().orElse("")),
                word(car.model().orElse("")),
                dataDay - age - 0.5,
                age,
                car.odometer().map(Distance::miles).orElse(Double.NaN),
                word(car.condition().orElse("")),
                car.cylinders().map(Integer::doubleValue).orElse(Double.NaN),
                car.engineLitres().orElse(Double.NaN),
                Double.NaN,
                car.powertrain().engine().map(CarFacts::fuel).orElse(""),
                car.powertrain().gearbox().map(CarFacts::gearbox).orElse(""),
                word(car.body().orElse("")),
                car.powertrain().drive().map(CarFacts::drive).orElse(""),
                0,
                dataDay);
    }

    static double decimalYear(LocalDate date) {
        return date.getYear() + (date.getDayOfYear() - 1) / 365.25;
    }

    double milesPerYear() {
        return miles / Math.max(age, 0.5);
    }

    /** The same car without damage, with a clean title, and in the condition that the model takes as sound. */
    CarFacts sound(PriceModel model) {
        String word = model.words(WordField.CONDITION).contains("good") ? "good" : condition;
        return new CarFacts(
                make, model(), year, age, miles, word, cylinders, litres, power, fuel, gearbox, body, drive, 0, day,
                cleanTitle(model), features);
    }

    private static String cleanTitle(PriceModel model) {
        return model.words(WordField.TITLE).contains(CLEAN) ? CLEAN : "";
    }

    CarFacts withCleanTitle(PriceModel model) {
        return new CarFacts(
                make, model(), year, age, miles, condition, cylinders, litres, power, fuel, gearbox, body, drive, damage,
                day, cleanTitle(model), features);
    }

    CarFacts withCondition(String word) {
        return new CarFacts(
                make, model, year, age, miles, word, cylinders, litres, power, fuel, gearbox, body, drive, damage, day,
                title, features);
    }

    /** The same car with its body not stated. */
    CarFacts withoutBody() {
        return new CarFacts(make, model, year, age, miles, condition, cylinders, litres, power, fuel, gearbox, "", drive,
                damage, day, "", features);
    }

    /** The same car at the same age on another day. */
    CarFacts on(double otherDay) {
        return new CarFacts(make, model, otherDay - age - 0.5, age, miles, condition, cylinders, litres, power, fuel, gearbox,
                body, drive, damage, otherDay, "", features);
    }

    CarFacts withModel(String name) {
        return new CarFacts(
                make, name, year, age, miles, condition, cylinders, litres, power, fuel, gearbox, body, drive, damage,
                day, title, features);
    }

    /** The same car with each feature that it does not state as {@code typical} has it. */
    CarFacts withFeaturesOf(CarFacts typical) {
        SortedMap<String, String> all = new TreeMap<>(typical.features);
        all.putAll(features);
        return new CarFacts(
                make, model, year, age, miles, condition, cylinders, litres, power, fuel, gearbox, body, drive, damage,
                day, title, all);
    }

    String makeAndModel() {
        return make + "|" + model;
    }

    private static String word(String text) {
        return text.strip().toLowerCase(Locale.ROOT);
    }

    private static String fuel(Powertrain.Engine engine) {
        return switch (engine) {
            case PETROL, PETROL_TURBO -> "gas";
            case DIESEL -> "diesel";
            case HYBRID -> "hybrid";
            case ELECTRIC -> "electric";
        };
    }

    private static String gearbox(Powertrain.Gearbox gearbox) {
        return gearbox == Powertrain.Gearbox.MANUAL ? "manual" : "automatic";
    }

    private static String drive(Powertrain.Drive drive) {
        return drive == Powertrain.Drive.ALL ? "all" : "";
    }
}
