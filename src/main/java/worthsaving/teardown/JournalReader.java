package worthsaving.teardown;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import worthsaving.catalog.Catalogue;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Observation;

/**
 * Reads a journal from a table with the columns stage, kind, what, value, when and, if wished, witness; others are passed
 * over. Good rows are kept, bad ones named with line, column and mend.
 */
public final class JournalReader {

    private static final CSVFormat FORMAT = CSVFormat.DEFAULT.builder()
            .setHeader().setSkipHeaderRecord(true).setCommentMarker('#').setIgnoreSurroundingSpaces(true)
            .setIgnoreEmptyLines(true).get();
    private static final List<String> COLUMNS = List.of("stage", "kind", "what", "value", "when");
    private static final String KINDS = "opened, finding, item, hours, paid, part, mended, decision or note";
    private static final double MOST_HOURS = 1_000;
    private static final double MOST_MONEY = 1_000_000;

    private final String file;
    private final Set<String> steps;
    private final Set<String> findings;
    private final Set<String> items;
    private final Currency currency;
    private final List<Entry> entries = new ArrayList<>();
    private final List<String> faults = new ArrayList<>();

    private JournalReader(String file, Catalogue catalogue, Currency currency) {
        this.file = file;
        this.steps = catalogue.accessById().keySet();
        this.findings = catalogue.findingsById().keySet();
        this.items = catalogue.itemsById().keySet();
        this.currency = currency;
    }

    /** @param faults one for each row left out, ready to be shown */
    public record Reading(Journal journal, List<String> faults) {
        public Reading {
            faults = List.copyOf(faults);
        }
    }

    /** A cell that cannot be used. */
    private static final class Unusable extends Exception {
        private static final long serialVersionUID = 1;

        Unusable(String message) {
            super(message);
        }
    }

    /**
     * @param file name for messages
     * @param currency of the money in it
     * @throws IOException when the reader fails
     */
    public static Reading read(String file, Reader reader, Catalogue catalogue, Currency currency)
            throws IOException {
        JournalReader journal = new JournalReader(file, catalogue, currency);
        try (CSVParser parser = FORMAT.parse(reader)) {
            List<String> missing = new ArrayList<>(COLUMNS);
            missing.removeAll(parser.getHeaderNames());
            if (!missing.isEmpty()) {
                return new Reading(Journal.EMPTY, List.of(file + ": the first row must name the columns "
                        + String.join(", ", COLUMNS) + "; missing: " + String.join(", ", missing)));
            }
            for (CSVRecord row : parser) {
                journal.row(row, parser.getCurrentLineNumber());
            }
        } catch (IllegalArgumentException | UncheckedIOException e) {
            journal.faults.add(file + ": cannot be read as a table from here on: " + e.getMessage());
        }
        return new Reading(new Journal(journal.entries), journal.faults);
    }

    private void row(CSVRecord row, long line) {
        if (!row.isConsistent()) {
            faults.add(file + ", line " + line + ": has " + row.size() + " cells instead of "
                    + row.getParser().getHeaderNames().size()
                    + "; quote a text that holds a comma");
            return;
        }
        try {
            entries.add(entry(row, day(row)));
        } catch (Unusable e) {
            faults.add(file + ", line " + line + ", column " + e.getMessage());
        }
    }

    private Entry entry(CSVRecord row, String when) throws Unusable {
        String stage = row.get("stage");
        String what = row.get("what");
        return switch (row.get("kind").toLowerCase(Locale.ROOT)) {
            case "opened" -> new Entry.Opened(stage, known(what, steps, "an access step"), when);
            case "finding" -> new Entry.Seen(stage, new Observation(known(what, findings, "a finding"),
                    sight(row.get("value"), "present", "absent"), witness(row)), when);
            case "item" -> new Entry.Seen(stage, new Observation(known(what, items, "a failure item"),
                    sight(row.get("value"), "failed", "sound"), witness(row)), when);
            case "hours" -> new Entry.Worked(stage, what, Hours.of(number(row, MOST_HOURS)), when);
            case "paid" -> new Entry.Paid(stage, what, new Money(number(row, MOST_MONEY), currency), when);
            case "part" -> new Entry.PartBought(stage, known(what, items, "a failure item"),
                    new Money(number(row, MOST_MONEY), currency), when);
            case "mended" -> new Entry.Mended(stage, known(what, items, "a failure item"), when);
            case "decision" -> new Entry.Decision(stage, what, when);
            case "note" -> new Entry.Note(stage, what, when);
            default -> throw new Unusable("kind: '" + row.get("kind") + "' must be " + KINDS);
        };
    }

    private static String known(String id, Set<String> ids, String kind) throws Unusable {
        if (!ids.contains(id)) {
            throw new Unusable("what: '" + id + "' is not " + kind + " of the catalogue; write an id of it");
        }
        return id;
    }

    private static Observation.Sight sight(String text, String yes, String no) throws Unusable {
        if (text.equalsIgnoreCase(yes)) {
            return Observation.Sight.PRESENT;
        }
        if (text.equalsIgnoreCase(no)) {
            return Observation.Sight.ABSENT;
        }
        if (text.equalsIgnoreCase("unsure")) {
            return Observation.Sight.UNSURE;
        }
        throw new Unusable("value: '" + text + "' must be " + yes + ", " + no + " or unsure");
    }

    /** Own eyes where the table has no such column. */
    private static Observation.Witness witness(CSVRecord row) throws Unusable {
        String text = row.isMapped("witness") ? row.get("witness") : "";
        if (text.isEmpty() || text.equalsIgnoreCase("own_eyes")) {
            return Observation.Witness.OWN_EYES;
        }
        if (text.equalsIgnoreCase("seller")) {
            return Observation.Witness.SELLER;
        }
        throw new Unusable("witness: '" + text + "' must be own_eyes or seller, or blank");
    }

    private static double number(CSVRecord row, double most) throws Unusable {
        String text = row.get("value");
        try {
            double value = Double.parseDouble(text);
            if (value >= 0 && value <= most) {
                return value;
            }
        } catch (NumberFormatException e) {
            // reported below, with what is out of range
        }
        throw new Unusable("value: '" + text + "' must be a number from 0 to " + Math.round(most)
                + ", such as 2.5 or 1200, without unit or thousands mark");
    }

    private static String day(CSVRecord row) throws Unusable {
        String text = row.get("when");
        try {
            return text.isEmpty() ? text : LocalDate.parse(text).toString();
        } catch (DateTimeParseException e) {
            throw new Unusable("when: '" + text + "' must be a day such as 2025-11-20, or blank");
        }
    }
}
