package worthsaving.casebook;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
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
    }
}
