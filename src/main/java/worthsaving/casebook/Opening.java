package worthsaving.casebook;

import java.util.List;

/** What became of opening a casebook. */
public sealed interface Opening {

    /**
     * Open as asked for.
     *
     * @param notes what is worth telling, such as that no backup could be made
     */
    record Opened(Casebook casebook, List<String> notes) implements Opening {
        public Opened {
            notes = List.copyOf(notes);
        }
    }

    /** Open for reading though it was to be written; the casebook refuses edits. */
    record ReadOnly(Casebook casebook, Trouble why) implements Opening {}

    /** Not open; the file was not touched. */
    record Refused(Trouble why) implements Opening {}
}
