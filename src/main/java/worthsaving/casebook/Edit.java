package worthsaving.casebook;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import worthsaving.vehicle.Listing;

/** Everything that can be done to a casebook. Each edit is kept whole or not at all, and can be undone. */
public sealed interface Edit {

    /** In words, for the list of edits and beside undo. */
    String label();

    /** A new case; its id must be new. */
    record AddCase(Listing listing) implements Edit {
        @Override
        public String label() {
            return "add " + listing.id();
        }
    }

    /** The facts, price or evidence of a case are others now. */
    record ChangeCase(Listing listing) implements Edit {
        @Override
        public String label() {
            return "change " + listing.id();
        }
    }

    /** The case with all that was written about it. */
    record DropCase(String id) implements Edit {
        @Override
        public String label() {
            return "drop " + id;
        }
    }

    /**
     * An entry in the journal.
     *
     * @param photos that belong to it
     */
    record Write(String id, JournalEntry entry, List<Photo> photos) implements Edit {
        public Write {
            photos = List.copyOf(photos);
        }

        public Write(String id, JournalEntry entry) {
            this(id, entry, List.of());
        }

        @Override
        public String label() {
            return "write in the journal of " + id;
        }
    }

    /** Another text for an entry. */
    record Rewrite(long number, JournalEntry entry) implements Edit {
        @Override
        public String label() {
            return "rewrite entry " + number;
        }
    }

    /** An entry less. */
    record Strike(long number) implements Edit {
        @Override
        public String label() {
            return "strike entry " + number;
        }
    }

    /** A photo of a case. */
    record AddPhoto(String id, Photo photo) implements Edit {
        @Override
        public String label() {
            return "add a photo of " + id;
        }
    }

    /** A photo less; the picture itself is left where it lies. */
    record DropPhoto(long number) implements Edit {
        @Override
        public String label() {
            return "drop photo " + number;
        }
    }

    /** A forecast is kept, to be compared with what comes. */
    record Keep(String id, Forecast forecast) implements Edit {
        @Override
        public String label() {
            return "keep a forecast of " + id;
        }
    }

    /** What came of it; empty when it is not finished after all. */
    record Finish(String id, Optional<Actual> actual) implements Edit {
        @Override
        public String label() {
            return (actual.isPresent() ? "finish " : "take up again ") + id;
        }
    }

    /** A setting; empty to forget it. */
    record Set(String name, Optional<String> value) implements Edit {
        @Override
        public String label() {
            return "set " + name;
        }
    }

    /** Several at once, as one. */
    record Several(String label, List<Edit> edits) implements Edit {
        public Several {
            Objects.requireNonNull(label, "label");
            edits = List.copyOf(edits);
        }
    }
}
