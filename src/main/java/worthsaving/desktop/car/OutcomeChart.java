package worthsaving.desktop.car;

import javafx.scene.layout.Region;
import javafx.scene.text.Text;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;

/** How often each profit comes about: a bar a bin, loss in its own colour left of zero, money below. */
final class OutcomeChart extends Region {

    private static final double LABEL_SPACE = 4.5;
    private static final double TOP = 2.9;
    private static final double FOOT = 3.0;
    private static final double NARROWEST = 50;

    private final ChartParts parts = new ChartParts(getChildren());
    private Histogram outcomes;
    private String currency = "";

    OutcomeChart() {
        getStyleClass().add("outcome-chart");
        setId("outcome-chart");
        setMinSize(200, 120);
    }

    void show(Histogram histogram, String currencyCode) {
        outcomes = histogram;
        currency = currencyCode;
        setAccessibleText(Texts.of("chart.spoken", Figures.percent(histogram.chanceOfLoss()),
                Figures.amount(histogram.mean()), currencyCode));
        requestLayout();
    }

    Histogram shown() {
        return outcomes;
    }

    @Override
    protected void layoutChildren() {
        parts.begin();
        if (outcomes != null && getWidth() >= NARROWEST) {
            draw();
        }
        parts.end();
    }

    private void draw() {
        Text title = parts.text(Texts.of("chart.axis", currency), "axis-title");
        double em = title.getLayoutBounds().getHeight();
        double top = TOP * em;
        double base = getHeight() - FOOT * em;
        double unit = (base - top) / outcomes.tallest();
        for (int i = 0; i < outcomes.shares().length; i++) {
            double from = outcomes.low() + i * outcomes.width();
            double height = outcomes.shares()[i] * unit;
            parts.bar(x(from) + 0.5, base - height, Math.max(1, x(from + outcomes.width()) - x(from) - 1), height,
                    "bar-of-chart", from < -outcomes.width() / 2 ? "loss" : "gain");
        }
        parts.line(0, base, getWidth(), base, "axis");
        parts.line(x(0), top - 0.2 * em, x(0), base, "zero");
        parts.line(x(outcomes.mean()), top - 0.2 * em, x(outcomes.mean()), base, "mean");
        axis(base, em, (int) Math.max(2, getWidth() / (LABEL_SPACE * em)));
        title.setX((getWidth() - title.getLayoutBounds().getWidth()) / 2);
        title.setY(base + 2.5 * em);
        heads(em);
    }

    private void axis(double base, double em, int labels) {
        double tick = outcomes.tick(labels);
        for (double at = Math.ceil(outcomes.low() / tick) * tick; at <= outcomes.high(); at += tick) {
            parts.line(x(at), base, x(at), base + 0.25 * em, "axis");
            Text text = parts.text(Figures.amount(at), "axis-label");
            double width = text.getLayoutBounds().getWidth();
            text.setX(Math.max(0, Math.min(getWidth() - width, x(at) - width / 2)));
            text.setY(base + 1.2 * em);
        }
    }

    /** Chance of loss left of zero, chance of gain right of it; where there is no room, at the edge. */
    private void heads(double em) {
        Text loss = parts.text(Texts.of("chart.loss", Figures.percent(outcomes.chanceOfLoss())), "loss-label");
        Text gain = parts.text(Texts.of("chart.gain", Figures.percent(1 - outcomes.chanceOfLoss())), "gain-label");
        double gap = 0.5 * em;
        double lossWidth = loss.getLayoutBounds().getWidth();
        double gainWidth = gain.getLayoutBounds().getWidth();
        double zero = Math.max(lossWidth + gap, Math.min(getWidth() - gainWidth - gap, x(0)));
        loss.setX(zero - gap - lossWidth);
        gain.setX(zero + gap);
        loss.setY(em);
        gain.setY(em);
        Text mean = parts.text(Texts.of("chart.mean", Figures.amount(outcomes.mean())), "mean-label");
        boolean right = x(outcomes.mean()) + gap + mean.getLayoutBounds().getWidth() < getWidth();
        mean.setX(x(outcomes.mean()) + (right ? 0.3 * em : -0.3 * em - mean.getLayoutBounds().getWidth()));
        mean.setY(2.3 * em);
    }

    private double x(double money) {
        return (money - outcomes.low()) / (outcomes.high() - outcomes.low()) * getWidth();
    }
}
