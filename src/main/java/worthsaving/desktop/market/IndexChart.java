package worthsaving.desktop.market;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import javafx.scene.shape.Polyline;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.market.PriceIndex;

/** The price index over time, with the days that prices are brought from and to. */
final class IndexChart extends Drawing {

    private static final int TICKS = 4;
    private static final double[] STEPS = {1, 2, 2.5, 5, 10};

    private PriceIndex index;
    private LocalDate data = LocalDate.EPOCH;
    private LocalDate today = LocalDate.EPOCH;

    IndexChart() {
        super("index-chart");
        setId("market-index-chart");
    }

    /** @param dataDay latest advert of the price model */
    void show(PriceIndex other, LocalDate dataDay, LocalDate now) {
        index = other;
        data = dataDay;
        today = now;
        setAccessibleText(Texts.of("market.index.spoken", Figures.number(index.levels().firstEntry().getValue(), 1),
                index.levels().firstKey(), Figures.number(index.levels().lastEntry().getValue(), 1), index.lastDay()));
        requestLayout();
    }

    @Override
    void draw(double em) {
        if (index == null) {
            return;
        }
        List<Map.Entry<LocalDate, Double>> points = List.copyOf(index.levels().entrySet());
        double low = points.stream().mapToDouble(Map.Entry::getValue).min().orElse(0);
        double high = points.stream().mapToDouble(Map.Entry::getValue).max().orElse(1);
        double step = step((high - low) / TICKS, high);
        low = Math.floor(low / step) * step;
        high = Math.max(low + step, Math.ceil(high / step) * step);
        LocalDate from = earlier(points.get(0).getKey(), data);
        LocalDate to = earlier(today, index.lastDay()).equals(today) ? index.lastDay() : today;
        Frame frame = new Frame(3.4 * em, getWidth() - 0.8 * em, getHeight() - 1.8 * em, 2.6 * em, from.toEpochDay(),
                Math.max(from.toEpochDay() + 1, to.toEpochDay()), low, high);
        for (double level = low; level <= high + step / 2; level += step) {
            line(frame.left, frame.y(level), frame.right, frame.y(level), "limit");
            ending(Figures.number(level, step < 1 ? 1 : 0), "axis-label", frame.left - 0.4 * em, frame.y(level) + 0.35 * em);
        }
        years(frame, em, from, to);
        Polyline line = add(new Polyline(), "curve");
        points.forEach(p -> line.getPoints().addAll(frame.x(p.getKey()), frame.y(p.getValue())));
        points.forEach(p -> dot(frame.x(p.getKey()), frame.y(p.getValue()), 0.16 * em, "point"));
        mark(frame, em, data, Texts.of("market.index.data"), em);
        mark(frame, em, today, Texts.of("market.index.today"), 2.2 * em);
    }

    private void years(Frame frame, double em, LocalDate from, LocalDate to) {
        int every = (int) Math.ceil((to.getYear() - from.getYear() + 1) * 3.2 * em / (frame.right - frame.left));
        for (int year = from.getYear() + 1; year <= to.getYear(); year += Math.max(1, every)) {
            double x = frame.x(LocalDate.of(year, 1, 1));
            line(x, frame.base, x, frame.base + 0.25 * em, "axis");
            centred(Integer.toString(year), "axis-label", x, frame.base + 1.4 * em);
        }
    }

    private void mark(Frame frame, double em, LocalDate day, String name, double y) {
        line(frame.x(day), y + 0.3 * em, frame.x(day), frame.base, "meant");
        centred(name, "figure", frame.x(day), y);
    }

    private static LocalDate earlier(LocalDate a, LocalDate b) {
        return a.isBefore(b) ? a : b;
    }

    /** A round distance between lines of at least {@code least}. */
    private static double step(double least, double high) {
        double wanted = least > 0 ? least : high / 10;
        double power = Math.pow(10, Math.floor(Math.log10(wanted)));
        for (double step : STEPS) {
            if (step * power >= wanted) {
                return step * power;
            }
        }
        return 10 * power;
    }

    /** Where days and levels lie on the screen. */
    private record Frame(double left, double right, double base, double top, long from, long to, double low, double high) {

        double x(LocalDate day) {
            double at = Math.max(from, Math.min(to, day.toEpochDay()));
            return left + (at - from) / (to - from) * (right - left);
        }

        double y(double level) {
            return base - (level - low) / (high - low) * (base - top);
        }
    }
}
