package worthsaving.desktop.car;

import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;

/** A chance from 0 to 1 as a filled bar, and a mark where it stood before the findings. */
final class ChanceBar extends Region {

    private final double before;
    private final double now;
    private final Rectangle track = new Rectangle();
    private final Rectangle fill = new Rectangle();
    private final Rectangle mark = new Rectangle();

    ChanceBar(double before, double now) {
        this.before = before;
        this.now = now;
        getStyleClass().add("chance-bar");
        track.getStyleClass().add("track-of-chance");
        fill.getStyleClass().add("fill-of-chance");
        mark.getStyleClass().add("mark-of-chance");
        getChildren().addAll(track, fill, mark);
        setMinSize(60, 12);
        setPrefHeight(12);
        setMaxHeight(12);
    }

    @Override
    protected void layoutChildren() {
        double w = getWidth();
        double h = getHeight();
        track.setWidth(w);
        track.setHeight(h);
        fill.setWidth(w * now);
        fill.setHeight(h);
        mark.setX(Math.max(0, Math.min(w - 2, w * before - 1)));
        mark.setWidth(2);
        mark.setHeight(h);
    }
}
