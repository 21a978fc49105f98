package worthsaving.market;

import static worthsaving.quantity.Distance.Unit.MILES;

import java.time.LocalDate;
import java.util.Collections;
import java.util.Locale;
import java.util.Objects;
import java.util.SortedMap;
import worthsaving.quantity.Distance;

/**
 * One priced car. Words are lower case in the vocabulary of the mapping, "" when not stated; numbers are
 * NaN when not stated.
 *
 * @param line line in the file, counted from 1 with the header
 * @param price in the table's currency; whether asked, bid or paid says the table's {@link PriceKind}
 * @param year model year, or year of first registration where the market counts so
 * @param miles odometer
 * @param power in metric horsepower
 * @param unrepairedDamage 1 yes, 0 no
 * @param date day of the advert
 * @param features words of the table's further columns, by the name the mapping gives them
 */
public record PriceRow(
        long line,
        double price,
        String make,
        String model,
        double year,
        double miles,
        String condition,
        double cylinders,
        double litres,
        double power,
        String fuel,
        String gearbox,
        String body,
        String drive,
        String title,
        double unrepairedDamage,
        LocalDate date,
        SortedMap<String, String> features) {

    private static final double LEAST_TELLING = 1000;
    private static final double ROUND = 500;

    public PriceRow {
        Objects.requireNonNull(date, "date");
        features = Collections.unmodifiableSortedMap(features);
    }

    /** A row of a table without further columns. */
    public PriceRow(
            long line,
            double price,
            String make,
            String model,
            double year,
            double miles,
            String condition,
            double cylinders,
            double litres,
            double power,
            String fuel,
            String gearbox,
            String body,
            String drive,
            String title,
            double unrepairedDamage,
            LocalDate date) {
        this(line, price, make, model, year, miles, condition, cylinders, litres, power, fuel, gearbox, body, drive, title,
                unrepairedDamage, date, Collections.emptySortedMap());
    }

    /** One of the columns that a cleaning rule can test, as a number. */
    double number(Field field) {
        return switch (field) {
            case PRICE -> price;
            case YEAR -> year;
            case ODOMETER -> miles;
            case CYLINDERS -> cylinders;
            case ENGINE_LITRES -> litres;
            case POWER -> power;
            case UNREPAIRED_DAMAGE -> unrepairedDamage;
            default -> throw new IllegalArgumentException(field.key() + " is not a number");
        };
    }

    /** One of the columns that hold words. */
    String word(Field field) {
        return switch (field) {
            case MAKE -> make;
            case MODEL -> model;
            case CONDITION -> condition;
            case FUEL -> fuel;
            case GEARBOX -> gearbox;
            case BODY -> body;
            case DRIVE -> drive;
            case TITLE -> title;
            default -> throw new IllegalArgumentException(field.key() + " is not a word");
        };
    }

    /** The same row with one number not stated. */
    PriceRow without(Field field) {
        return new PriceRow(
                line,
                price,
                make,
                model,
                field == Field.YEAR ? Double.NaN : year,
                field == Field.ODOMETER ? Double.NaN : miles,
                condition,
                field == Field.CYLINDERS ? Double.NaN : cylinders,
                field == Field.ENGINE_LITRES ? Double.NaN : litres,
                field == Field.POWER ? Double.NaN : power,
                fuel,
                gearbox,
                body,
                drive,
                title,
                field == Field.UNREPAIRED_DAMAGE ? Double.NaN : unrepairedDamage,
                date,
                features);
    }

    /** Age in years on the day of the advert, counted from the middle of the model year, never below zero. */
    public double ageYears() {
        double onDay = date.getYear() + (date.getDayOfYear() - 1) / 365.25;
        return Double.isNaN(year) ? Double.NaN : Math.max(0, onDay - (year + 0.5));
    }

    /**
     * What two adverts of the same car share: make, model, year, build and odometer. An odometer that is not
     * stated, small or a round figure in miles or kilometres is shared by many cars, so then the price counts too.
     */
    public String carIdentity() {
        boolean telling = miles >= LEAST_TELLING && !round(miles) && !round(new Distance(miles, MILES).kilometres());
        return String.join("|", make, model, "" + year, "" + miles, fuel, gearbox, body, "" + litres, "" + power,
                telling ? "" : "" + price);
    }

    private static boolean round(double distance) {
        return Math.abs(distance / ROUND - Math.rint(distance / ROUND)) < 1e-6;
    }

    /** Short text for reports, without anything personal. */
    String brief() {
        return String.format(
                Locale.ROOT, "line %d: %.0f, %.0f %s %s, %.0f mi", line, price, year, make, model, miles);
    }
}
