package worthsaving.report.sheet;

import java.util.ArrayList;
import java.util.List;

/** Lays out one table: columns of numbers as wide as they need, columns of text share what is left. */
final class TableComposer {

    private static final double SIZE = PageComposer.BODY;
    private static final double LINE = SIZE * 1.28;
    private static final double GAP = 9;
    private static final double LEAST = 40;

    private final Section.Table table;
    private final Typeface face;
    private final Paragraph paragraph;

    TableComposer(Section.Table table, Typeface face, Paragraph paragraph) {
        this.table = table;
        this.face = face;
        this.paragraph = paragraph;
    }

    void compose(List<Mark> marks, double x, double top, double width) {
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
    }

    double height(double width) {
        double[] widths = widths(width);
        return titleHeight(widths) + 2 + table.cells().stream().mapToDouble(c -> height(c, widths)).sum();
    }

    private List<String> titles() {
        return table.columns().stream().map(Section.Column::title).toList();
    }

    private double titleHeight(double[] widths) {
        int most = 1;
        for (int i = 0; i < widths.length; i++) {
            most = Math.max(most, paragraph.lines(titles().get(i), PageComposer.SMALL, widths[i]).size());
        }
        return most * PageComposer.SMALL * 1.28;
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
                y += size * 1.28;
            }
            left += widths[i] + GAP;
        }
    }

    /** In points; numbers may take no more than half of the table. */
    private double[] widths(double width) {
        int n = table.columns().size();
        double[] natural = new double[n];
        double numbers = 0;
        double texts = 0;
        for (int i = 0; i < n; i++) {
            natural[i] = natural(i);
            if (table.columns().get(i).number()) {
                numbers += natural[i];
            } else {
                texts += natural[i];
            }
        }
        double room = width - GAP * (n - 1);
        double shrink = numbers > 0 ? Math.min(1, (texts > 0 ? 0.66 : 1) * room / numbers) : 1;
        double forTexts = room - numbers * shrink;
        double[] widths = new double[n];
        for (int i = 0; i < n; i++) {
            widths[i] = table.columns().get(i).number() ? natural[i] * shrink
                    : Math.max(Math.min(LEAST, forTexts / n), forTexts * natural[i] / texts);
        }
        return fitted(widths, room);
    }

    private double[] fitted(double[] widths, double room) {
        double sum = 0;
        for (double w : widths) {
            sum += w;
        }
        if (sum > room) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] *= room / sum;
            }
        }
        return widths;
    }

    private double natural(int column) {
        List<String> all = new ArrayList<>();
        table.cells().forEach(c -> all.add(face.showable(c.get(column))));
        double cells = all.stream().mapToDouble(t -> face.width(t, SIZE)).max().orElse(0);
        String title = table.columns().get(column).title();
        double word = 0;
        for (String w : title.split(" ")) {
            word = Math.max(word, face.width(w, PageComposer.SMALL));
        }
        return Math.max(cells, table.columns().get(column).number() ? word : face.width(title, PageComposer.SMALL))
                + 0.01;
    }
}
