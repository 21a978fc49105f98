package worthsaving.report.sheet;

import java.util.ArrayList;
import java.util.List;

/** Lays out one table: columns of numbers as wide as they need, columns of text share what is left. */
final class TableComposer {

    private static final double SIZE = PageComposer.BODY;
    private static final double LINE = SIZE * PageComposer.LEADING;
    private static final double GAP = 9;
    private static final double MOST_FOR_NUMBERS = 0.66;
    /** A title of a column of numbers that is wider breaks between its words. */
    private static final double MOST_FOR_TITLE = 42;

    private final Section.Table table;
    private final Typeface face;
    private final Paragraph paragraph;

    TableComposer(Section.Table table, Typeface face, Paragraph paragraph) {
        this.table = table;
        this.face = face;
        this.paragraph = paragraph;
    }

    /** @return where the table ends */
    double compose(List<Mark> marks, double x, double top, double width) {
        double[] widths = widths(width);
        double y = top;
        row(marks, titles(), widths, x, y, PageComposer.SMALL, Ink.SOFT);
        y += titleHeight(widths);
        marks.add(new Mark.Rule(x, y + 1, x + width, y + 1, 0.5, Ink.LINE));
        y += 2;
        for (List<String> cells : table.cells()) {
            row(marks, cells, widths, x, y, SIZE, Ink.TEXT);
            y += height(cells, widths);
        }
        return y;
    }

    private List<String> titles() {
        return table.columns().stream().map(Section.Column::title).toList();
    }

    private double titleHeight(double[] widths) {
        int most = 1;
        for (int i = 0; i < widths.length; i++) {
            most = Math.max(most, paragraph.lines(titles().get(i), PageComposer.SMALL, widths[i]).size());
        }
        return most * PageComposer.SMALL * PageComposer.LEADING;
    }

    private double height(List<String> cells, double[] widths) {
        int most = 1;
        for (int i = 0; i < widths.length; i++) {
            most = Math.max(most, lines(cells.get(i), i, widths, SIZE).size());
        }
        return most * LINE;
    }

    private List<String> lines(String cell, int column, double[] widths, double size) {
        return paragraph.lines(cell, size, widths[column]);
    }

    private void row(List<Mark> marks, List<String> cells, double[] widths, double x, double top, double size,
            Ink ink) {
        double left = x;
        for (int i = 0; i < widths.length; i++) {
            double y = top + size;
            for (String line : lines(cells.get(i), i, widths, size)) {
                double at = table.columns().get(i).number() ? left + widths[i] - face.width(line, size) : left;
                marks.add(new Mark.Text(at, y, size, false, ink, line));
                y += size * PageComposer.LEADING;
            }
            left += widths[i] + GAP;
        }
    }

    /**
     * In points. Numbers get what they need, up to two thirds of the table; each text gets what it needs or an
     * equal share, and those that need more share what is left. The first text takes what nobody needs.
     */
    private double[] widths(double width) {
        int n = table.columns().size();
        double[] widths = new double[n];
        double room = width - GAP * (n - 1);
        double numbers = 0;
        int texts = 0;
        for (int i = 0; i < n; i++) {
            widths[i] = natural(i);
            numbers += isNumber(i) ? widths[i] : 0;
            texts += isNumber(i) ? 0 : 1;
        }
        double shrink = Math.min(1, (texts > 0 ? MOST_FOR_NUMBERS : 1) * room / Math.max(1, numbers));
        double left = room - numbers * shrink;
        double wanting = 0;
        double given = 0;
        for (int i = 0; i < n; i++) {
            if (!isNumber(i)) {
                wanting += Math.max(0, widths[i] - left / texts);
                given += Math.min(widths[i], left / texts);
            }
        }
        double granted = wanting > 0 ? Math.min(1, (left - given) / wanting) : 0;
        double spare = Math.max(0, left - given - wanting);
        for (int i = 0; i < n; i++) {
            if (isNumber(i)) {
                widths[i] *= shrink;
            } else {
                double share = Math.min(widths[i], left / texts);
                widths[i] = share + granted * (widths[i] - share) + spare;
                spare = 0;
            }
        }
        return widths;
    }

    private boolean isNumber(int column) {
        return table.columns().get(column).number();
    }

    private double natural(int column) {
        List<String> all = new ArrayList<>();
        table.cells().forEach(c -> all.add(face.showable(c.get(column))));
        double cells = all.stream().mapToDouble(t -> face.width(t, SIZE)).max().orElse(0);
        String title = table.columns().get(column).title();
        double heading = face.width(title, PageComposer.SMALL);
        if (isNumber(column) && heading > MOST_FOR_TITLE) {
            heading = 0;
            for (String word : title.split(" ")) {
                heading = Math.max(heading, face.width(word, PageComposer.SMALL));
            }
        }
        return Math.max(cells, heading) + 0.01;
    }
}
