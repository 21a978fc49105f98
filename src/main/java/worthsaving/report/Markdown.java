package worthsaving.report;

/**
 * Text for Markdown (CommonMark 0.31, tables of GitHub Flavored Markdown): every ASCII punctuation mark that could
 * begin markup or an HTML tag is escaped with a backslash, as section 2.4 allows.
 */
final class Markdown {

    private static final String SPECIAL = "\\`*_{}[]<>#|~&$!";

    private Markdown() {}

    /** One line of text that means itself. */
    static String text(String text) {
        String plain = TextTable.plain(text);
        StringBuilder escaped = new StringBuilder(plain.length());
        for (int i = 0; i < plain.length(); i++) {
            char c = plain.charAt(i);
            if (SPECIAL.indexOf(c) >= 0) {
                escaped.append('\\');
            }
            escaped.append(c);
        }
        String line = escaped.toString();
        return line.matches("(?s)\\s*([-+=]|\\d+[.)]\\s).*") ? escapeFirst(line) : line;
    }

    /** A cell; text is neutralised too, because Markdown tables are pasted into spreadsheets. */
    static String cell(String text) {
        return text(SpreadsheetText.neutral(text));
    }

    /** A figure of ours in a column of figures: a sign before a digit, or alone, is no formula. */
    static String figure(String text) {
        return text.matches("[-+]?[0-9][0-9,.]*( %)?|-?") ? text : cell(text);
    }

    /** What would begin a list or underline a heading. */
    private static String escapeFirst(String line) {
        int i = 0;
        while (Character.isWhitespace(line.charAt(i))) {
            i++;
        }
        if (!Character.isDigit(line.charAt(i))) {
            return line.substring(0, i) + "\\" + line.substring(i);
        }
        while (Character.isDigit(line.charAt(i))) {
            i++;
        }
        return line.substring(0, i) + "\\" + line.substring(i);
    }
}
