package worthsaving.desktop.market;

import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
import javafx.scene.text.Text;

/** A small chart drawn anew whenever its size or content changes; style names give the colours. */
abstract class Drawing extends Region {

    private static final double LEAST = 50;

    Drawing(String style) {
        getStyleClass().addAll("market-chart", style);
    }

    @Override
    protected final void layoutChildren() {
        getChildren().clear();
        if (getWidth() > LEAST) {
            double em = text("0", "axis-label", 0, 0).getLayoutBounds().getHeight();
            getChildren().clear();
            draw(em);
        }
    }

    /** @param em height of ordinary text */
    abstract void draw(double em);

    final void line(double x1, double y1, double x2, double y2, String style) {
        add(new Line(x1, y1, x2, y2), style);
    }

    final void bar(double x, double y, double width, double height, String style) {
        add(new Rectangle(x, y, Math.max(0, width), Math.max(0, height)), style);
    }

    final void dot(double x, double y, double radius, String style) {
        add(new Circle(x, y, radius), style);
    }

    final <S extends Shape> S add(S shape, String style) {
        shape.getStyleClass().add(style);
        getChildren().add(shape);
        return shape;
    }

    /** Its baseline begins at the point. */
    final Text text(String words, String style, double x, double y) {
        Text text = add(new Text(x, y, words), style);
        text.applyCss();
        return text;
    }

    /** Centred on the point, but never outside the chart. */
    final void centred(String words, String style, double x, double y) {
        Text text = text(words, style, x, y);
        double width = text.getLayoutBounds().getWidth();
        text.setX(Math.max(0, Math.min(getWidth() - width, x - width / 2)));
    }

    /** Ends at the point. */
    final void ending(String words, String style, double x, double y) {
        Text text = text(words, style, x, y);
        text.setX(x - text.getLayoutBounds().getWidth());
    }
}
