package worthsaving.desktop.car;

import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;

/** How often each profit comes about: a bar a bin, loss in its own colour left of zero, money below. */
final class OutcomeChart extends Region {

    private static final double LABEL_SPACE = 4.5;
    private static final double TOP = 2.9;
    private static final double FOOT = 3.0;

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
        getChildren().clear();
        if (outcomes == null || getWidth() < 50) {
            return;
        }
        double em = text("0", "axis-label").getLayoutBounds().getHeight();
        getChildren().clear();
        double top = TOP * em;
        double base = getHeight() - FOOT * em;
        double unit = (base - top) / outcomes.tallest();
        for (int i = 0; i < outcomes.shares().length; i++) {
            double from = outcomes.low() + i * outcomes.width();
            double height = outcomes.shares()[i] * unit;
            Rectangle bar = new Rectangle(x(from) + 0.5, base - height,
                    Math.max(1, x(from + outcomes.width()) - x(from) - 1), height);
            bar.getStyleClass().addAll("bar-of-chart", from < -outcomes.width() / 2 ? "loss" : "gain");
            getChildren().add(bar);
        }
        line(0, base, getWidth(), base, "axis");
        line(x(0), top - 0.2 * em, x(0), base, "zero");
        line(x(outcomes.mean()), top - 0.2 * em, x(outcomes.mean()), base, "mean");
        axis(base, em, (int) Math.max(2, getWidth() / (LABEL_SPACE * em)));
        heads(em);
    }

    private void axis(double base, double em, int labels) {
        double tick = outcomes.tick(labels);
        for (double at = Math.ceil(outcomes.low() / tick) * tick; at <= outcomes.high(); at += tick) {
            line(x(at), base, x(at), base + 0.25 * em, "axis");
            Text text = text(Figures.amount(at), "axis-label");
            double width = text.getLayoutBounds().getWidth();
            text.setX(Math.max(0, Math.min(getWidth() - width, x(at) - width / 2)));
            text.setY(base + 1.2 * em);
        }
        Text title = text(Texts.of("chart.axis", currency), "axis-title");
        title.setX((getWidth() - title.getLayoutBounds().getWidth()) / 2);
        title.setY(base + 2.5 * em);
    }

    /** Chance of loss left of zero, chance of gain right of it; where there is no room, at the edge. */
    private void heads(double em) {
        Text loss = text(Texts.of("chart.loss", Figures.percent(outcomes.chanceOfLoss())), "loss-label");
        Text gain = text(Texts.of("chart.gain", Figures.percent(1 - outcomes.chanceOfLoss())), "gain-label");
        double gap = 0.5 * em;
        double lossWidth = loss.getLayoutBounds().getWidth();
        double gainWidth = gain.getLayoutBounds().getWidth();
        double zero = Math.max(lossWidth + gap, Math.min(getWidth() - gainWidth - gap, x(0)));
        loss.setX(zero - gap - lossWidth);
        gain.setX(zero + gap);
        loss.setY(em);
        gain.setY(em);
        Text mean = text(Texts.of("chart.mean", Figures.amount(outcomes.mean())), "mean-label");
        boolean right = x(outcomes.mean()) + gap + mean.getLayoutBounds().getWidth() < getWidth();
        mean.setX(x(outcomes.mean()) + (right ? 0.3 * em : -0.3 * em - mean.getLayoutBounds().getWidth()));
        mean.setY(2.3 * em);
    }

    private double x(double money) {
        return (money - outcomes.low()) / (outcomes.high() - outcomes.low()) * getWidth();
    }

    private void line(double x1, double y1, double x2, double y2, String style) {
        Line line = new Line(x1, y1, x2, y2);
        line.getStyleClass().add(style);
        getChildren().add(line);
    }

    private Text text(String words, String style) {
        Text text = new Text(words);
        text.getStyleClass().add(style);
        getChildren().add(text);
        text.applyCss();
        return text;
    }
}
