package worthsaving.report;

/**
 * Text that a spreadsheet will not take for a formula.
 *
 * <p>A single quote goes before a cell that begins with = + - @, their full-width forms, a tab, a line
 * end or NUL, also after spaces. Source: OWASP, CSV Injection; OWASP ASVS 1.2.10 for NUL; that spaces
 * are looked through is our own caution.
 */
public final class SpreadsheetText {

    private static final String STARTS = "=+-@\uff1d\uff0b\uff0d\uff20";
    private static final String CONTROLS = "\t\r\n\0";

    private SpreadsheetText() {}

    public static String neutral(String text) {
        int i = 0;
        while (i < text.length() && (Character.isSpaceChar(text.charAt(i)) || Character.isWhitespace(text.charAt(i)))
                && CONTROLS.indexOf(text.charAt(i)) < 0) {
            i++;
        }
        boolean starts = i < text.length()
                && (STARTS.indexOf(text.charAt(i)) >= 0 || CONTROLS.indexOf(text.charAt(i)) >= 0);
        return starts ? "'" + text : text;
    }
}
