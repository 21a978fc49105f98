package worthsaving.catalog;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import worthsaving.quantity.HoursRange;
import worthsaving.quantity.Money;
import worthsaving.quantity.MoneyRange;
import worthsaving.quantity.Probability;
import worthsaving.quantity.Range;
import worthsaving.quantity.Source;

/**
 * One line of a table. A cell that cannot be read is reported and answered with a harmless value, so
 * that one pass finds every fault; the caller drops the whole catalogue when any was found.
 */
final class Row {

    /** Word for "all of them" in a column of choices. */
    static final String ANY = "any";

    private final String file;
    private final long line;
    private final CSVRecord cells;
    private final Faults faults;

    Row(String file, long line, CSVRecord cells, Faults faults) {
        this.file = file;
        this.line = line;
        this.cells = cells;
        this.faults = faults;
    }

    void fault(String column, String message) {
        faults.add(file, line, column, message);
    }

    /** The cell without spaces around it; blank when the line is too short to hold it. */
    String text(String column) {
        return cells.isSet(column) ? cells.get(column).strip() : "";
    }

    String required(String column) {
        String text = text(column);
        if (text.isEmpty()) {
            fault(column, "this cell is empty; fill it in");
        }
        return text;
    }

    /** Words of a cell, separated by spaces. */
    List<String> words(String column) {
        return Stream.of(text(column).split("\\s+")).filter(w -> !w.isEmpty()).toList();
    }

    double number(String column) {
        String text = required(column);
        try {
            double value = text.isEmpty() ? 0 : Double.parseDouble(text);
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException e) {
            // reported below, with infinities and NaN
        }
        fault(column, "'" + text + "' is not a number; write it like 0.25 or 1200, without unit or thousands mark");
        return 0;
    }

    double notNegative(String column) {
        double value = number(column);
        if (value < 0) {
            fault(column, value + " is below zero; use zero or more");
            return 0;
        }
        return value;
    }

    Probability probability(String column) {
        double value = number(column);
        if (value < 0 || value > 1) {
            fault(column, value + " is not a probability; use a figure from 0 to 1");
            return Probability.NEVER;
        }
        return Probability.of(value);
    }

    /** Columns prefix + low, mode, high. */
    Range range(String prefix) {
        double low = notNegative(prefix + "low");
        double mode = notNegative(prefix + "mode");
        double high = notNegative(prefix + "high");
        if (low > mode || mode > high) {
            fault(
                    prefix + "mode",
                    "low " + low + ", mode " + mode + " and high " + high
                            + " are out of order; low may not exceed mode, nor mode high");
            return Range.exactly(0);
        }
        return new Range(low, mode, high);
    }

    Range probabilityRange(String prefix) {
        Range range = range(prefix);
        if (range.high() > 1) {
            fault(prefix + "high", range.high() + " is not a probability; use a figure from 0 to 1");
        }
        return range;
    }

    MoneyRange money(String prefix) {
        return new MoneyRange(range(prefix), Money.USD);
    }

    HoursRange hours(String prefix) {
        return new HoursRange(range(prefix));
    }

    boolean yes(String column) {
        String text = required(column).toLowerCase(Locale.ROOT);
        if (!text.isEmpty() && !text.equals("yes") && !text.equals("no")) {
            fault(column, "'" + text + "' is not known; allowed: yes, no");
        }
        return text.equals("yes");
    }

    <E extends Enum<E>> E choice(String column, Class<E> type) {
        String text = required(column);
        E[] all = type.getEnumConstants();
        return text.isEmpty() ? all[0] : constant(column, text, type, all[0]);
    }

    <E extends Enum<E>> Set<E> choices(String column, Class<E> type) {
        Set<E> found = EnumSet.noneOf(type);
        for (String word : words(column)) {
            found.add(constant(column, word, type, type.getEnumConstants()[0]));
        }
        return found;
    }

    /** As {@link #choices}, where the word "any" stands for all and an empty cell is a fault. */
    <E extends Enum<E>> Set<E> choicesOrAny(String column, Class<E> type) {
        return required(column).equals(ANY) ? EnumSet.allOf(type) : choices(column, type);
    }

    Source source() {
        return new Source(choice("label", Source.Label.class), required("source"));
    }

    private <E extends Enum<E>> E constant(String column, String word, Class<E> type, E otherwise) {
        for (E constant : type.getEnumConstants()) {
            if (constant.name().equalsIgnoreCase(word)) {
                return constant;
            }
        }
        String allowed = Arrays.stream(type.getEnumConstants()).map(Enum::name).collect(Collectors.joining(", "));
        fault(column, "'" + word + "' is not known; allowed: " + allowed);
        return otherwise;
    }
}
