package worthsaving.casebook;

/** What became of an edit. */
public sealed interface Saving {

    /** It is on the drive. */
    record Done(Edited edited) implements Saving {}

    /** Nothing of it was kept; everything before it was. */
    record Failed(Trouble why) implements Saving {}
}
