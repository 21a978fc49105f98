package worthsaving.casebook;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Objects;
import java.util.Optional;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.teardown.Entry;
import worthsaving.vehicle.Observation;

/**
 * Something that happened to a case.
 *
 * @param at when it happened, as the user says
 * @param stage how far the car was, in the user's words, such as {@code "driveway"} or {@code "opened up"}; may be blank
 * @param what what happened
 * @param text the user's words on it; may be blank
 */
public record JournalEntry(Instant at, String stage, What what, String text) {

    public JournalEntry {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(stage, "stage");
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(text, "text");
    }

    /** An entry that happened on a day, at noon of the zone, so that it stays that day in the zones around. */
    public static JournalEntry on(LocalDate day, ZoneId zone, String stage, What what, String text) {
        return new JournalEntry(noon(day, zone), stage, what, text);
    }

    /** The moment that stands for a day. */
    public static Instant noon(LocalDate day, ZoneId zone) {
        return day.atTime(LocalTime.NOON).atZone(zone).toInstant();
    }

    /**
     * A line of a teardown journal, such as one read from a table.
     *
     * @param undated the day of a line that names none
     */
    public static JournalEntry of(Entry line, LocalDate undated, ZoneId zone) {
        LocalDate day = line.when().isBlank() ? undated : LocalDate.parse(line.when());
        return on(day, zone, line.stage(), what(line), text(line));
    }

    private static What what(Entry line) {
        if (line instanceof Entry.Opened opened) {
            return new What.Opened(opened.step());
        } else if (line instanceof Entry.Seen seen) {
            return new What.Finding(seen.observation());
        } else if (line instanceof Entry.Worked worked) {
            return new What.Work(worked.hours(), Optional.empty());
        } else if (line instanceof Entry.Paid paid) {
            return new What.Receipt(paid.amount(), Optional.empty());
        } else if (line instanceof Entry.PartBought part) {
            return new What.PartBought(part.item(), part.amount(), Optional.empty());
        } else if (line instanceof Entry.Mended mended) {
            return new What.Mended(mended.item());
        }
        return line instanceof Entry.Decision ? new What.Decision() : new What.Note();
    }

    private static String text(Entry line) {
        if (line instanceof Entry.Worked worked) {
            return worked.what();
        } else if (line instanceof Entry.Paid paid) {
            return paid.what();
        } else if (line instanceof Entry.Decision decision) {
            return decision.text();
        }
        return line instanceof Entry.Note note ? note.text() : "";
    }

    /**
     * The same as a line of a teardown journal.
     *
     * @param zone that its day is read in
     */
    public Entry line(ZoneId zone) {
        String when = at.atZone(zone).toLocalDate().toString();
        if (what instanceof What.Opened opened) {
            return new Entry.Opened(stage, opened.step(), when);
        } else if (what instanceof What.Finding finding) {
            return new Entry.Seen(stage, finding.seen(), when);
        } else if (what instanceof What.Work work) {
            return new Entry.Worked(stage, text, work.hours(), when);
        } else if (what instanceof What.Receipt receipt) {
            return new Entry.Paid(stage, text, receipt.paid(), when);
        } else if (what instanceof What.PartBought part) {
            return new Entry.PartBought(stage, part.item(), part.paid(), when);
        } else if (what instanceof What.Mended mended) {
            return new Entry.Mended(stage, mended.item(), when);
        }
        return what instanceof What.Decision ? new Entry.Decision(stage, text, when) : new Entry.Note(stage, text, when);
    }

    /** What an entry is about. */
    public sealed interface What {

        /** The text alone. */
        record Note() implements What {}

        /** Go on, stop, or another way out; the text says which. */
        record Decision() implements What {}

        /** Something was looked at. */
        record Finding(Observation seen) implements What {
            public Finding {
                Objects.requireNonNull(seen, "seen");
            }
        }

        /** @param planned book hours of the same jobs, for learning one's own speed */
        record Work(Hours hours, Optional<Hours> planned) implements What {
            public Work {
                Objects.requireNonNull(hours, "hours");
                Objects.requireNonNull(planned, "planned");
            }
        }

        /** @param planned what the same parts were expected to cost, for learning one's own part prices */
        record Receipt(Money paid, Optional<Money> planned) implements What {
            public Receipt {
                Objects.requireNonNull(paid, "paid");
                planned.ifPresent(p -> p.compareTo(paid)); // refuses another currency
            }
        }

        /**
         * An access step is open now, with all it requires.
         *
         * @param step its id
         */
        record Opened(String step) implements What {
            public Opened {
                named(step);
            }
        }

        /**
         * The part of an item lies on the shelf now.
         *
         * @param item id of the failure item that it mends
         * @param planned what it was expected to cost, for learning one's own part prices
         */
        record PartBought(String item, Money paid, Optional<Money> planned) implements What {
            public PartBought {
                named(item);
                Objects.requireNonNull(paid, "paid");
                planned.ifPresent(p -> p.compareTo(paid)); // refuses another currency
            }
        }

        /**
         * A failure item is mended, no longer to be reckoned with.
         *
         * @param item its id
         */
        record Mended(String item) implements What {
            public Mended {
                named(item);
            }
        }

        private static void named(String id) {
            if (id.isBlank()) {
                throw new IllegalArgumentException("an id of the catalogue is needed");
            }
        }
    }
}
