package worthsaving.desktop.car;

import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;

/** The profit between the two ends of one figure, on the scale of all of them; what is below zero stands out. */
final class SwingBar extends Region {

    private final double from;
    private final double to;
    private final double base;
    private final double least;
    private final double greatest;
    private final Rectangle loss = part("box", "loss");
    private final Rectangle gain = part("box");
    private final Rectangle zero = part("zero");
    private final Rectangle now = part("middle");

    SwingBar(double from, double to, double base, double least, double greatest) {
        this.from = from;
        this.to = to;
        this.base = base;
        this.least = least;
        this.greatest = greatest;
        getStyleClass().add("strip");
        getChildren().addAll(loss, gain, zero, now);
        setMinSize(80, 14);
        setPrefSize(160, 14);
        setMaxHeight(14);
    }

    @Override
    protected void layoutChildren() {
        bar(loss, Math.min(from, 0), Math.min(to, 0));
        bar(gain, Math.max(from, 0), Math.max(to, 0));
        tick(zero, 0, 1);
        tick(now, base, 2);
    }

    private void bar(Rectangle bar, double a, double b) {
        bar.setX(x(a));
        bar.setWidth(Math.max(0, x(b) - x(a)));
        bar.setY(2);
        bar.setHeight(Math.max(1, getHeight() - 4));
    }

    private void tick(Rectangle tick, double at, double width) {
        tick.setVisible(at >= least && at <= greatest);
        tick.setX(x(at) - width / 2);
        tick.setWidth(width);
        tick.setHeight(getHeight());
    }

    private double x(double money) {
        double share = (money - least) / Math.max(1, greatest - least);
        return Math.max(0, Math.min(1, share)) * getWidth();
    }

    private static Rectangle part(String... styles) {
        Rectangle part = new Rectangle();
        part.getStyleClass().addAll(styles);
        return part;
    }
}
