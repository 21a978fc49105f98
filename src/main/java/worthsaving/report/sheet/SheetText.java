package worthsaving.report.sheet;

import worthsaving.report.TextTable;

/** Text fit for a printed line. */
final class SheetText {

    private static final int LONGEST = 260;

    private SheetText() {}

    /** One line without control characters; longer than any sentence of ours, it is cut and says so. */
    static String clean(String text) {
        String plain = TextTable.plain(text).strip();
        return plain.codePointCount(0, plain.length()) <= LONGEST ? plain
                : plain.substring(0, plain.offsetByCodePoints(0, LONGEST - 1)) + "\u2026";
    }
}
