package worthsaving.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import worthsaving.intake.IntakeFault.Effect;

/** One row seen through the columns; gathers what is wrong with it. */
final class Cells {

    private static final Set<String> NOTHING =
            Set.of("-", "--", "n/a", "na", "nan", "null", "none", "unknown", "?", "tbd");
    private static final int LONGEST_NOTHING = 7;
    private static final String FORMULA_STARTS = "=+-@\t";

    private final String source;
    private final RawRow row;
    private final Columns columns;
    private final List<IntakeFault> faults = new ArrayList<>();
    private boolean refused;

    Cells(String source, RawRow row, Columns columns) {
        this.source = source;
        this.row = row;
        this.columns = columns;
    }

    /** The cell without blanks around it; empty when there is no such column or the cell says "nothing". */
    String text(Field field) {
        int index = columns.index(field);
        String text = index < 0 ? "" : row.cells().get(index).strip();
        if (text.isEmpty() || Character.isDigit(text.charAt(0))) {
            return text;
        }
        // An export of ours puts a quote before what a spreadsheet would take for a formula.
        if (text.length() > 1 && text.charAt(0) == '\'' && FORMULA_STARTS.indexOf(text.charAt(1)) >= 0) {
            text = text.substring(1);
        }
        boolean nothing = text.length() <= LONGEST_NOTHING && NOTHING.contains(text.toLowerCase(Locale.ROOT));
        return nothing ? "" : text;
    }

    Columns columns() {
        return columns;
    }

    long row() {
        return row.line();
    }

    String place() {
        return source + ", row " + row.line();
    }

    void refuse(Field field, String what, String mend) {
        refuse(columns.name(field), what, mend);
    }

    void refuse(String column, String what, String mend) {
        refused = true;
        faults.add(new IntakeFault(source, row.line(), column, Effect.ROW_REFUSED, what, mend));
    }

    void warn(Field field, String what, String mend) {
        faults.add(new IntakeFault(source, row.line(), columns.name(field), Effect.WARNING, what, mend));
    }

    boolean refused() {
        return refused;
    }

    List<IntakeFault> faults() {
        return faults;
    }

    /** A cell in quotes for a message: long ones cut, control characters made visible. */
    static String shown(String text) {
        String cut = text.length() <= 40 ? text : text.substring(0, 37) + "...";
        StringBuilder plain = new StringBuilder("'");
        cut.chars().forEach(c -> plain.append(Character.isISOControl(c) ? '\ufffd' : (char) c));
        return plain.append('\'').toString();
    }
}
