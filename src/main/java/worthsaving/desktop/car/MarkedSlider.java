package worthsaving.desktop.car;

import java.util.OptionalDouble;
import javafx.scene.Node;
import javafx.scene.control.Slider;
import javafx.scene.layout.Region;

/** A slider with a mark on its track where the deal turns. */
final class MarkedSlider extends Region {

    private static final double WIDTH = 3;

    private final Slider slider = new Slider();
    private final Region mark = new Region();
    private OptionalDouble at = OptionalDouble.empty();

    MarkedSlider() {
        mark.getStyleClass().add("turning-mark");
        mark.setManaged(false);
        mark.setMouseTransparent(true);
        getChildren().addAll(slider, mark);
    }

    Slider slider() {
        return slider;
    }

    void mark(OptionalDouble point) {
        at = point;
        requestLayout();
    }

    @Override
    protected double computePrefHeight(double width) {
        return slider.prefHeight(width);
    }

    @Override
    protected double computePrefWidth(double height) {
        return slider.prefWidth(height);
    }

    @Override
    protected double computeMaxHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected void layoutChildren() {
        slider.resizeRelocate(0, 0, getWidth(), getHeight());
        mark.setVisible(at.isPresent() && slider.getMax() > slider.getMin());
        if (mark.isVisible()) {
            Node thumb = slider.lookup(".thumb");
            double inset = thumb == null ? 0 : thumb.getLayoutBounds().getWidth() / 2;
            double share = (at.getAsDouble() - slider.getMin()) / (slider.getMax() - slider.getMin());
            double x = inset + share * (getWidth() - 2 * inset);
            mark.resizeRelocate((double) Math.round(x - WIDTH / 2), 0, WIDTH, getHeight());
        }
    }
}
