package worthsaving.desktop.teardown;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Currency;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import worthsaving.casebook.JournalEntry;
import worthsaving.casebook.JournalEntry.What;
import worthsaving.desktop.Texts;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Observation;
import worthsaving.vehicle.Observation.Sight;
import worthsaving.vehicle.Observation.Witness;

/**
 * A line of the journal as it is being typed.
 *
 * @param subject what it is about, where the kind needs that
 * @param words what was done, bought or thought
 * @param figure hours or money
 * @param planned what the same was expected to take or cost; may be blank
 * @param day such as 2025-11-22
 */
record Line(Kind kind, Optional<Subject> subject, Sight sight, String words, String figure, String planned, String day,
        String stage) {

    private static final double MOST_HOURS = 1_000;
    private static final double MOST_MONEY = 1_000_000;
    /** A comma is none for decimals: 1,5 is asked about. */
    private static final Pattern FIGURE = Pattern.compile("(\\d{1,9}|\\d{1,3}(,\\d{3})+)(\\.\\d{1,4})?|\\.\\d{1,4}");
    private static final LocalDate FIRST = LocalDate.of(1990, 1, 1);

    /** Where something can be wrong. */
    enum Field { SUBJECT, WORDS, FIGURE, PLANNED, DAY }

    /**
     * What came of it: an entry, or what is wrong by field.
     *
     * @param entry empty when something is wrong
     */
    record Read(Optional<JournalEntry> entry, Map<Field, String> wrong) {}

    /** A line that an entry is, to be corrected. */
    static Line of(JournalEntry entry, Function<String, Optional<Subject>> subjects) {
        What what = entry.what();
        String day = entry.at().atZone(ZoneId.systemDefault()).toLocalDate().toString();
        if (what instanceof What.Opened o) {
            return plain(Kind.OPENED, subjects.apply(o.step()), entry, day);
        } else if (what instanceof What.Finding f) {
            return new Line(Kind.FINDING, subjects.apply(f.seen().subject()), f.seen().sight(), entry.text(), "", "", day,
                    entry.stage());
        } else if (what instanceof What.Work w) {
            return new Line(Kind.HOURS, Optional.empty(), Sight.PRESENT, entry.text(), text(w.hours().value()),
                    w.planned().map(p -> text(p.value())).orElse(""), day, entry.stage());
        } else if (what instanceof What.Receipt r) {
            return new Line(Kind.RECEIPT, Optional.empty(), Sight.PRESENT, entry.text(), text(r.paid().amount()),
                    r.planned().map(p -> text(p.amount())).orElse(""), day, entry.stage());
        } else if (what instanceof What.PartBought p) {
            return new Line(Kind.PART, subjects.apply(p.item()), Sight.PRESENT, entry.text(), text(p.paid().amount()),
                    p.planned().map(m -> text(m.amount())).orElse(""), day, entry.stage());
        } else if (what instanceof What.Mended m) {
            return plain(Kind.MENDED, subjects.apply(m.item()), entry, day);
        }
        return plain(what instanceof What.Decision ? Kind.DECISION : Kind.NOTE, Optional.empty(), entry, day);
    }

    private static Line plain(Kind kind, Optional<Subject> subject, JournalEntry entry, String day) {
        return new Line(kind, subject, Sight.PRESENT, entry.text(), "", "", day, entry.stage());
    }

    private static String text(double value) {
        return value == Math.rint(value) ? String.format(Locale.ROOT, "%.0f", value) : Double.toString(value);
    }

    Read read(Currency currency, LocalDate today) {
        Map<Field, String> wrong = new EnumMap<>(Field.class);
        if (kind.chosen() && subject.isEmpty()) {
            wrong.put(Field.SUBJECT, Texts.of("teardown.wrong.subject"));
        }
        if (words.isBlank() && (kind == Kind.NOTE || kind == Kind.DECISION)) {
            wrong.put(Field.WORDS, Texts.of("teardown.wrong.words"));
        }
        double most = kind.money() ? MOST_MONEY : MOST_HOURS;
        Optional<Double> amount = kind.figure() ? number(Field.FIGURE, figure, most, wrong) : Optional.empty();
        Optional<Double> expected = kind.figure() && !planned.isBlank()
                ? number(Field.PLANNED, planned, most, wrong) : Optional.empty();
        Optional<LocalDate> on = day(today, wrong);
        return wrong.isEmpty()
                ? new Read(Optional.of(JournalEntry.on(on.orElseThrow(), ZoneId.systemDefault(), stage.strip(),
                        what(amount, expected, currency), words.strip())), wrong)
                : new Read(Optional.empty(), wrong);
    }

    private What what(Optional<Double> amount, Optional<Double> expected, Currency currency) {
        return switch (kind) {
            case OPENED -> new What.Opened(subject.orElseThrow().id());
            case FINDING -> new What.Finding(new Observation(subject.orElseThrow().id(), sight, Witness.OWN_EYES));
            case HOURS -> new What.Work(Hours.of(amount.orElseThrow()), expected.map(Hours::of));
            case RECEIPT -> new What.Receipt(new Money(amount.orElseThrow(), currency),
                    expected.map(e -> new Money(e, currency)));
            case PART -> new What.PartBought(subject.orElseThrow().id(), new Money(amount.orElseThrow(), currency),
                    expected.map(e -> new Money(e, currency)));
            case MENDED -> new What.Mended(subject.orElseThrow().id());
            case DECISION -> new What.Decision();
            case NOTE, PHOTO -> new What.Note();
        };
    }

    private static Optional<Double> number(Field field, String typed, double most, Map<Field, String> wrong) {
        if (FIGURE.matcher(typed.strip()).matches()) {
            double value = Double.parseDouble(typed.strip().replace(",", ""));
            if (value <= most) {
                return Optional.of(value);
            }
        }
        wrong.put(field, typed.isBlank() ? Texts.of("teardown.wrong.missing")
                : Texts.of("teardown.wrong.number", typed.strip(), String.format(Locale.ROOT, "%,.0f", most)));
        return Optional.empty();
    }

    private Optional<LocalDate> day(LocalDate today, Map<Field, String> wrong) {
        if (day.isBlank()) {
            return Optional.of(today);
        }
        try {
            LocalDate on = LocalDate.parse(day.strip(), DateTimeFormatter.ISO_LOCAL_DATE);
            if (!on.isBefore(FIRST) && !on.isAfter(today)) {
                return Optional.of(on);
            }
            wrong.put(Field.DAY, Texts.of("teardown.wrong.day.range", on, today));
        } catch (DateTimeException e) {
            wrong.put(Field.DAY, Texts.of("teardown.wrong.day", day.strip(), today));
        }
        return Optional.empty();
    }
}
