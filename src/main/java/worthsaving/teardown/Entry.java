package worthsaving.teardown;

import java.util.Objects;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Observation;

/** One line of a teardown journal. */
public sealed interface Entry {

    /** Where in the work it belongs, in the user's words; may be blank. */
    String stage();

    /** The day, as written; may be blank. */
    String when();

    /** An access step is open now, with all it requires. */
    record Opened(String stage, String step, String when) implements Entry {}

    /** A finding, or a failure item looked at directly. */
    record Seen(String stage, Observation observation, String when) implements Entry {}

    /** Own hours worked. */
    record Worked(String stage, String what, Hours hours, String when) implements Entry {}

    /** Money spent: the car, its tow, oil, machining. */
    record Paid(String stage, String what, Money amount, String when) implements Entry {}

    /** A part that lies on the shelf now, with what it cost: finishing needs no other. */
    record PartBought(String stage, String item, Money amount, String when) implements Entry {}

    /** An item mended, no longer to be reckoned with. */
    record Mended(String stage, String item, String when) implements Entry {}

    /** Go on, stop, or another way out; the text says which. */
    record Decision(String stage, String text, String when) implements Entry {
        public Decision {
            Objects.requireNonNull(text, "text");
        }
    }

    record Note(String stage, String text, String when) implements Entry {
        public Note {
            Objects.requireNonNull(text, "text");
        }
    }
}
