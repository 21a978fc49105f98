package worthsaving.desktop.market;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.valuation.ModelCard.Band;

/** Share of cars inside the 80 % interval in each price band, with the limits that it should lie between. */
final class CoverageChart extends Drawing {

    static final double LOWER = 0.75;
    static final double MEANT = 0.80;
    static final double UPPER = 0.85;
    private static final double SPARE = 0.02;

    private List<Band> bands = List.of();

    CoverageChart() {
        super("coverage-chart");
        setId("market-coverage");
    }

    void show(List<Band> others) {
        bands = List.copyOf(others);
        setAccessibleText(Texts.of("market.coverage.spoken", IntStream.range(0, bands.size())
                .mapToObj(i -> name(i) + ": " + percent(bands.get(i).coverage())).collect(Collectors.joining("; "))));
        requestLayout();
    }

    @Override
    void draw(double em) {
        if (bands.isEmpty()) {
            return;
        }
        double low = Math.min(LOWER, bands.stream().mapToDouble(Band::coverage).min().orElse(LOWER)) - SPARE;
        double high = Math.max(UPPER, bands.stream().mapToDouble(Band::coverage).max().orElse(UPPER)) + SPARE;
        double left = 3.2 * em;
        double base = getHeight() - 1.6 * em;
        double unit = base / (high - low);
        bar(left, base - (UPPER - low) * unit, getWidth() - left, (UPPER - LOWER) * unit, "allowed");
        for (double limit : new double[] {LOWER, MEANT, UPPER}) {
            double y = base - (limit - low) * unit;
            line(left, y, getWidth(), y, limit == MEANT ? "meant" : "limit");
            ending(Figures.percent(limit), "axis-label", left - 0.4 * em, y + 0.35 * em);
        }
        double step = (getWidth() - left) / bands.size();
        for (int i = 0; i < bands.size(); i++) {
            double x = left + (i + 0.5) * step;
            double y = base - (bands.get(i).coverage() - low) * unit;
            dot(x, y, 0.35 * em, bands.get(i).coverage() < LOWER || bands.get(i).coverage() > UPPER ? "outside" : "inside");
            centred(percent(bands.get(i).coverage()), "figure", x, y - 0.6 * em);
            centred(name(i), "axis-label", x, getHeight() - 0.3 * em);
        }
    }

    private String name(int i) {
        return Double.isInfinite(bands.get(i).upTo())
                ? Texts.of("market.band.above", Figures.amount(bands.get(Math.max(0, i - 1)).upTo()))
                : Texts.of("market.band.to", Figures.amount(bands.get(i).upTo()));
    }

    private static String percent(double share) {
        return Figures.number(100 * share, 1) + " %";
    }
}
