package worthsaving.report.sheet;

/** The rectangle that a mark covers: left, top, right, bottom. */
final class Boxes {

    private Boxes() {}

    static double[] of(Mark mark) {
        if (mark instanceof Mark.Text t) {
            return new double[] {t.x(), t.y() - t.size(), t.x() + Typeface.get().width(t.text(), t.size()), t.y()};
        }
        if (mark instanceof Mark.Box b) {
            return new double[] {b.x(), b.y(), b.x() + b.width(), b.y() + b.height()};
        }
        if (mark instanceof Mark.Rule r) {
            return new double[] {Math.min(r.x1(), r.x2()), Math.min(r.y1(), r.y2()), Math.max(r.x1(), r.x2()),
                Math.max(r.y1(), r.y2())};
        }
        Mark.Image i = (Mark.Image) mark;
        return new double[] {i.x(), i.y(), i.x() + i.width(), i.y() + i.height()};
    }
}
