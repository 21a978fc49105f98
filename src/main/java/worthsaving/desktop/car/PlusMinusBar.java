package worthsaving.desktop.car;

import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;

/** A share from -1 to 1 drawn to the left or right of the middle. */
final class PlusMinusBar extends Region {

    private final double share;
    private final Rectangle bar = new Rectangle();
    private final Rectangle middle = new Rectangle();

    PlusMinusBar(double share) {
        this.share = share;
        getStyleClass().add("strip");
        bar.getStyleClass().add("box");
        if (share < 0) {
            bar.getStyleClass().add("loss");
        }
        middle.getStyleClass().add("zero");
        getChildren().addAll(bar, middle);
        setMinSize(80, 12);
        setPrefSize(160, 12);
    }

    @Override
    protected void layoutChildren() {
        double half = getWidth() / 2;
        double length = Math.abs(share) * half;
        bar.setX(share < 0 ? half - length : half);
        bar.setWidth(length);
        bar.setY(2);
        bar.setHeight(Math.max(1, getHeight() - 4));
        middle.setX(half - 0.5);
        middle.setWidth(1);
        middle.setHeight(getHeight());
    }
}
