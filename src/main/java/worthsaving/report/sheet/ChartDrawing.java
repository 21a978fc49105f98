package worthsaving.report.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import worthsaving.report.Words;

/** Draws the chart of a sheet as marks, the same for paper and screen. */
final class ChartDrawing {

    static final double HEIGHT = 92;

    private static final double SMALL = 7;
    private static final double TITLE = 8;
    private static final double BASE = 70;
    private static final double TOP = 16;
    private static final double LABEL_GAP = 4;

    private final Typeface face;
    private final double width;
    private final List<Mark> marks = new ArrayList<>();

    private ChartDrawing(Typeface face, double width) {
        this.face = face;
        this.width = width;
    }

    /** Marks within {@code width} and {@link #HEIGHT}. */
    static List<Mark> of(SheetChart chart, Typeface face, double width) {
        ChartDrawing drawing = new ChartDrawing(face, width);
        drawing.title(chart.title());
        if (chart instanceof SheetChart.Spread spread) {
            drawing.spread(spread);
        } else if (chart instanceof SheetChart.Bars bars) {
            drawing.bars(bars);
        }
        return List.copyOf(drawing.marks);
    }

    private void title(String title) {
        marks.add(new Mark.Text(0, TITLE, TITLE, true, Ink.SOFT, cut(title, TITLE, width)));
    }

    private void spread(SheetChart.Spread s) {
        double tallest = s.shares().stream().mapToDouble(Double::doubleValue).max().orElse(0);
        double scale = width / (s.high() - s.low());
        double bar = s.width() * scale;
        for (int i = 0; i < s.shares().size(); i++) {
            double height = tallest > 0 ? (BASE - TOP) * s.shares().get(i) / tallest : 0;
            if (height > 0) {
                marks.add(new Mark.Box(i * bar, BASE - height, Math.max(0.3, bar - 0.7), height,
                        s.bad(i) ? Ink.BAD_BAR : Ink.GOOD_BAR));
            }
        }
        marks.add(new Mark.Rule(0, BASE, width, BASE, 0.7, Ink.SOFT));
        double split = (s.split() - s.low()) * scale;
        marks.add(new Mark.Rule(split, TOP - 2, split, BASE + 3, 0.9, Ink.TEXT));
        List<double[]> taken = new ArrayList<>();
        List<SheetChart.Mark> inOrder = new ArrayList<>(s.marks());
        inOrder.sort(Comparator.comparingDouble(SheetChart.Mark::value));
        for (SheetChart.Mark m : inOrder) {
            double x = Math.max(0, Math.min(width, (m.value() - s.low()) * scale));
            marks.add(new Mark.Rule(x, BASE, x, BASE + 4, 0.7, Ink.TEXT));
            String number = Words.whole(m.value());
            double wide = Math.max(face.width(number, SMALL), face.width(m.label(), SMALL));
            double left = Math.max(0, Math.min(width - wide, x - wide / 2));
            if (taken.stream().noneMatch(t -> left < t[1] + LABEL_GAP && left + wide > t[0] - LABEL_GAP)) {
                taken.add(new double[] {left, left + wide});
                marks.add(new Mark.Text(left, BASE + 11, SMALL, true, Ink.TEXT, number));
                marks.add(new Mark.Text(left, BASE + 19, SMALL, false, Ink.SOFT, face.showable(m.label())));
            }
        }
    }

    private void bars(SheetChart.Bars chart) {
        double most = chart.bars().stream().mapToDouble(b -> Math.max(0, b.amount())).max().orElse(0);
        double names = Math.min(width * 0.42, chart.bars().stream()
                .mapToDouble(b -> face.width(face.showable(b.label()), SMALL)).max().orElse(0));
        double numbers = chart.bars().stream().mapToDouble(b -> face.width(Words.whole(b.amount()), SMALL)).max()
                .orElse(0);
        double room = width - names - numbers - 10;
        double step = Math.min(16, (HEIGHT - TOP) / Math.max(1, chart.bars().size()));
        double y = TOP;
        for (SheetChart.Bar b : chart.bars()) {
            double length = most > 0 ? room * Math.max(0, b.amount()) / most : 0;
            double baseline = y + step * 0.5 + 2.5;
            marks.add(new Mark.Text(0, baseline, SMALL, b.best(), Ink.TEXT, cut(b.label(), SMALL, names)));
            marks.add(new Mark.Box(names + 5, y + step * 0.14, Math.max(0.5, length), step * 0.72,
                    b.best() ? Ink.PLAIN : Ink.GOOD_BAR));
            marks.add(new Mark.Text(names + 5 + Math.max(0.5, length) + 4, baseline, SMALL, b.best(), Ink.TEXT,
                    Words.whole(b.amount())));
            y += step;
        }
    }

    private String cut(String text, double size, double most) {
        String shown = face.showable(text);
        if (face.width(shown, size) <= most) {
            return shown;
        }
        int end = shown.length();
        while (end > 0 && face.width(shown.substring(0, end) + "\u2026", size) > most) {
            end = shown.offsetByCodePoints(end, -1);
        }
        return shown.substring(0, end) + "\u2026";
    }
}
