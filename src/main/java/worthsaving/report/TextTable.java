package worthsaving.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A table for people: columns in line, numbers to the right, a rule under the header. Control characters
 * are taken out, so that text from an advert cannot steer a terminal.
 */
public final class TextTable {

    private static final String GAP = "  ";

    private final List<Column> columns = new ArrayList<>();
    private final List<List<String>> rows = new ArrayList<>();
    /** The same rows as they came. */
    private final List<List<String>> full = new ArrayList<>();

    private record Column(String title, boolean right, int widest) {}

    /** Adds a column of text, cut to a width where it is longer. */
    public TextTable left(String title, int widest) {
        columns.add(new Column(title, false, widest));
        return this;
    }

    /** Adds a column of text. */
    public TextTable left(String title) {
        return left(title, Integer.MAX_VALUE);
    }

    /** Adds a column of numbers. */
    public TextTable right(String title) {
        columns.add(new Column(title, true, Integer.MAX_VALUE));
        return this;
    }

    /** @param cells one for each column; null is blank */
    public TextTable row(Object... cells) {
        if (cells.length != columns.size()) {
            throw new IllegalArgumentException("a row of " + columns.size() + " cells is needed, not " + cells.length);
        }
        full.add(Arrays.stream(cells).map(c -> c == null ? "" : c.toString()).toList());
        List<String> row = new ArrayList<>();
        for (int i = 0; i < cells.length; i++) {
            row.add(cut(cells[i] == null ? "" : plain(cells[i].toString()), columns.get(i).widest()));
        }
        rows.add(row);
        return this;
    }

    public void write(Appendable out) throws IOException {
        int[] widths = new int[columns.size()];
        for (int i = 0; i < widths.length; i++) {
            widths[i] = width(columns.get(i).title());
            for (List<String> row : rows) {
                widths[i] = Math.max(widths[i], width(row.get(i)));
            }
        }
        line(out, columns.stream().map(Column::title).toList(), widths);
        List<String> rule = new ArrayList<>();
        for (int w : widths) {
            rule.add("-".repeat(w));
        }
        line(out, rule, widths);
        for (List<String> row : rows) {
            line(out, row, widths);
        }
    }

    private void line(Appendable out, List<String> cells, int[] widths) throws IOException {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            String pad = " ".repeat(widths[i] - width(cells.get(i)));
            line.append(i == 0 ? "" : GAP);
            line.append(columns.get(i).right() ? pad + cells.get(i) : cells.get(i) + pad);
        }
        out.append(line.toString().stripTrailing()).append('\n');
    }

    /** As a table of GitHub Flavored Markdown; nothing is cut. */
    void markdown(Appendable out) throws IOException {
        out.append('|');
        for (Column column : columns) {
            out.append(' ').append(Markdown.text(column.title())).append(" |");
        }
        out.append("\n|");
        for (Column column : columns) {
            out.append(column.right() ? " ---: |" : " --- |");
        }
        out.append('\n');
        for (List<String> row : full) {
            out.append('|');
            for (int i = 0; i < row.size(); i++) {
                out.append(' ').append(columns.get(i).right() ? Markdown.figure(row.get(i)) : Markdown.cell(row.get(i)))
                        .append(" |");
            }
            out.append('\n');
        }
    }

    /** One line without control and direction-changing characters. */
    public static String plain(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            int type = Character.getType(c);
            if (c == '\n' || c == '\t' || c == '\r') {
                plain.append(' ');
            } else if (type != Character.CONTROL && type != Character.FORMAT && type != Character.SURROGATE) {
                plain.appendCodePoint(c);
            }
        });
        return plain.toString();
    }

    private static String cut(String text, int widest) {
        if (width(text) <= widest) {
            return text;
        }
        StringBuilder cut = new StringBuilder();
        for (int c : text.codePoints().toArray()) {
            if (width(cut) + width(c) > widest - 1) {
                break;
            }
            cut.appendCodePoint(c);
        }
        return cut.append('\u2026').toString();
    }

    private static int width(CharSequence text) {
        return text.codePoints().map(TextTable::width).sum();
    }

    /** Terminal cells that a character takes: none for a combining mark, two for an ideograph or emoji. */
    private static int width(int codePoint) {
        int type = Character.getType(codePoint);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) {
            return 0;
        }
        boolean wide = Character.isIdeographic(codePoint) || codePoint >= 0x1f300 && codePoint <= 0x1faff;
        return wide ? 2 : 1;
    }
}
