package worthsaving.desktop.lot;

import java.util.List;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;

/**
 * The outcome of one listing on one line: thin from the 5th to the 95th of a hundred outcomes, thick over
 * the middle half, a tick at the middle; what lies left of zero in the colour of loss.
 */
final class OutcomeStrip extends Region {

    private static final double THIN = 0.18;
    private static final double THICK = 0.52;

    private final Rectangle whiskerLoss = part("whisker", "loss");
    private final Rectangle whisker = part("whisker");
    private final Rectangle boxLoss = part("box", "loss");
    private final Rectangle box = part("box");
    private final Rectangle zero = part("zero");
    private final Rectangle middle = part("middle");
    private List<Double> strip = List.of();
    private StripScale scale = new StripScale(-1, 1);

    OutcomeStrip() {
        getStyleClass().add("strip");
        getChildren().addAll(whiskerLoss, whisker, boxLoss, box, zero, middle);
        setMinWidth(40);
        setMaxWidth(Double.MAX_VALUE);
    }

    void show(List<Double> quantiles, StripScale shared) {
        strip = quantiles;
        scale = shared;
        requestLayout();
    }

    @Override
    protected void layoutChildren() {
        boolean flat = strip.isEmpty() || strip.get(0).equals(strip.get(9));
        getChildren().forEach(c -> c.setVisible(!flat || c == zero));
        bar(zero, -1, 1, 0.9);
        if (!flat) {
            split(whiskerLoss, whisker, strip.get(0), strip.get(9), THIN);
            split(boxLoss, box, strip.get(2), strip.get(7), THICK);
            double median = (strip.get(4) + strip.get(5)) / 2;
            place(middle, scale.at(median) * getWidth() - 1.5, 3, 0.75);
        }
        place(zero, scale.at(0) * getWidth() - 0.5, 1, 0.95);
    }

    private void split(Rectangle below, Rectangle above, double from, double to, double height) {
        bar(below, Math.min(from, 0), Math.min(to, 0), height);
        bar(above, Math.max(from, 0), Math.max(to, 0), height);
    }

    private void bar(Rectangle bar, double from, double to, double height) {
        double x = scale.at(from) * getWidth();
        place(bar, x, scale.at(to) * getWidth() - x, height);
    }

    private void place(Rectangle bar, double x, double width, double height) {
        bar.setX(x);
        bar.setWidth(width);
        bar.setHeight(height * getHeight());
        bar.setY((1 - height) / 2 * getHeight());
    }

    private static Rectangle part(String... styles) {
        Rectangle part = new Rectangle();
        part.getStyleClass().addAll(styles);
        return part;
    }
}
