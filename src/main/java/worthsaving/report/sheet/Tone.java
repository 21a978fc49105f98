package worthsaving.report.sheet;

/** How a decision is coloured; the words say the same. */
public enum Tone {
    GO,
    CARE,
    STOP,
    PLAIN
}
