package worthsaving.intake;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import worthsaving.quantity.Distance;
import worthsaving.vehicle.Fact;

/**
 * Reads the distances, the year and the day of a row. A figure that is there and cannot be
 * right refuses the row; nothing is clipped or guessed.
 */
final class FigureCells {

    /** An odometer shows six digits. */
    static final double MOST_DISTANCE = 999_999;

    static final int FIRST_YEAR = 1900;

    private static final double MOST_TOW_MILES = 5_000;
    private static final Pattern FULL_YEAR = Pattern.compile("(\\d{4})(?:\\.0+)?");
    private static final Pattern SHORT_YEAR = Pattern.compile("['\u2019]?(\\d{2})");
    private static final Pattern ISO_DAY = Pattern.compile("(\\d{4})-(\\d{2})(?:-(\\d{2})(?:[T ].*)?)?");
    private static final Pattern GERMAN_DAY = Pattern.compile("(\\d{1,2})\\.(\\d{1,2})\\.(\\d{4})");

    private final Cells cells;
    private final IntakeSettings settings;

    FigureCells(Cells cells, IntakeSettings settings) {
        this.cells = cells;
        this.settings = settings;
    }

    Fact<Distance> odometer() {
        String text = cells.text(Field.ODOMETER);
        if (text.isEmpty() || text.equalsIgnoreCase("tmu")) {
            return Fact.unknown();
        }
        String mend = "write a plain number such as 98000, with mi or km after it if you like";
        Optional<Amount> parsed = Amount.parse(text);
        Optional<Distance.Unit> unit = parsed.flatMap(a -> unit(a.mark()));
        if (parsed.isEmpty()) {
            cells.refuse(Field.ODOMETER, Cells.shown(text) + " is no odometer reading", mend);
        } else if (parsed.get().value() < 0) {
            cells.refuse(Field.ODOMETER, Cells.shown(text) + " is below zero", mend);
        } else if (parsed.get().value() > MOST_DISTANCE) {
            cells.refuse(Field.ODOMETER, Cells.shown(text) + " is more than six digits", mend);
        } else if (unit.isEmpty()) {
            cells.refuse(Field.ODOMETER, Cells.shown(text) + " has a unit that is neither miles nor kilometres", mend);
        } else {
            Distance distance = new Distance(parsed.get().value(), unit.get());
            if (parsed.get().masked()) {
                return Fact.assumed(distance, "the last digits are crossed out and counted as zeros");
            }
            boolean band = cells.columns().get(Field.ODOMETER).map(Column::band).orElse(false);
            return band ? Fact.assumed(distance, "the table gives a class of mileage") : Fact.known(distance);
        }
        return Fact.unknown();
    }

    private Optional<Distance.Unit> unit(String mark) {
        if (!mark.isEmpty()) {
            return Column.unit(mark.replaceAll("\\.$", ""));
        }
        String stated = cells.text(Field.ODOMETER_UNIT);
        if (!stated.isEmpty()) {
            return Column.unit(stated);
        }
        Optional<Distance.Unit> ofColumn = cells.columns().get(Field.ODOMETER).flatMap(Column::unit);
        return ofColumn.or(() -> Optional.of(settings.odometerUnit()));
    }

    Fact<Double> towMiles() {
        String text = cells.text(Field.TOW_MILES);
        if (text.isEmpty()) {
            return Fact.unknown();
        }
        Optional<Amount> amount = Amount.parse(text).filter(a -> a.mark().isEmpty()
                || Column.unit(a.mark()).filter(u -> u == Distance.Unit.MILES).isPresent());
        if (amount.isEmpty() || amount.get().value() < 0 || amount.get().value() > MOST_TOW_MILES) {
            cells.refuse(Field.TOW_MILES, Cells.shown(text) + " is no distance of 0 to 5000 miles",
                    "write the miles one way as a plain number, or leave the cell blank");
            return Fact.unknown();
        }
        return Fact.known(amount.get().value());
    }

    Fact<Integer> year(LocalDate seen) {
        String text = cells.text(Field.YEAR);
        if (text.isEmpty()) {
            return Fact.unknown();
        }
        int latest = Math.min(seen.getYear(), settings.today().getYear()) + 1;
        Matcher m = FULL_YEAR.matcher(text);
        if (m.matches()) {
            int year = number(m, 1);
            if (year >= FIRST_YEAR && year <= latest) {
                return Fact.known(year);
            }
            cells.refuse(Field.YEAR, year + " is no model year between " + FIRST_YEAR + " and " + latest
                    + ", the year after it was seen", "write the model year with four digits");
        } else if (m.usePattern(SHORT_YEAR).matches()) {
            int year = 2000 + number(m, 1);
            return Fact.assumed(year > latest ? year - 100 : year, "the table gives two digits of the year");
        } else {
            cells.refuse(Field.YEAR, Cells.shown(text) + " is no year", "write the model year with four digits");
        }
        return Fact.unknown();
    }

    /** The day of the listing; the day of reading when the table has none. */
    LocalDate seen() {
        String text = cells.text(Field.SEEN);
        if (text.isEmpty()) {
            return settings.today();
        }
        Matcher iso = ISO_DAY.matcher(text);
        Matcher german = GERMAN_DAY.matcher(text);
        try {
            LocalDate day = null;
            if (iso.matches()) {
                day = LocalDate.of(number(iso, 1), number(iso, 2), iso.group(3) == null ? 1 : number(iso, 3));
            } else if (german.matches()) {
                day = LocalDate.of(number(german, 3), number(german, 2), number(german, 1));
            }
            if (day != null && !day.isAfter(settings.today()) && day.getYear() >= FIRST_YEAR) {
                return day;
            }
        } catch (DateTimeException noSuchDay) {
            // falls through to the refusal: no such day in the calendar
        }
        cells.refuse(Field.SEEN, Cells.shown(text) + " is no day up to " + settings.today(),
                "write year-month-day, such as " + settings.today());
        return settings.today();
    }

    private static int number(Matcher m, int group) {
        return Integer.parseInt(m.group(group));
    }
}
