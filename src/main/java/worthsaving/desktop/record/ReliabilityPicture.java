package worthsaving.desktop.record;

import java.util.List;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;
import worthsaving.desktop.Texts;
import worthsaving.record.BrierScore.Bin;

/** Chances that were forecast, from left to right, against how often they came true, upwards, with how sure that is. */
final class ReliabilityPicture extends Region {

    private static final double SIDE = 170;
    private static final double FOOT = 34;
    private static final double LEFT = 40;
    private static final double SMALLEST = 3;
    private static final double SHARE = 1.2;

    private final List<Bin> bins;

    ReliabilityPicture(List<Bin> bins, String spoken) {
        this.bins = bins;
        getStyleClass().add("reliability-picture");
        setAccessibleText(spoken);
        setMinSize(SIDE + LEFT + 12, SIDE + FOOT + 8);
        setPrefSize(SIDE + LEFT + 12, SIDE + FOOT + 8);
        setMaxSize(SIDE + LEFT + 12, SIDE + FOOT + 8);
    }

    @Override
    protected void layoutChildren() {
        getChildren().clear();
        Rectangle frame = new Rectangle(LEFT, 4, SIDE, SIDE);
        frame.getStyleClass().add("frame-of-picture");
        getChildren().add(frame);
        line(x(0), y(0), x(1), y(1), "even-line");
        for (Bin bin : bins) {
            line(x(bin.mean()), y(bin.coverage().low()), x(bin.mean()), y(bin.coverage().high()), "doubt-line");
            Circle dot = new Circle(x(bin.mean()), y(bin.share()), SMALLEST + SHARE * Math.sqrt(bin.count()));
            dot.getStyleClass().add("fill-of-chance");
            getChildren().add(dot);
        }
        text(Texts.of("picture.none"), LEFT - 26, y(0));
        text(Texts.of("picture.all"), LEFT - 38, y(1) + 10);
        text(Texts.of("picture.none"), x(0), SIDE + 20);
        Text all = text(Texts.of("picture.all"), 0, SIDE + 20);
        all.setX(x(1) - all.getLayoutBounds().getWidth());
        Text foot = text(Texts.of("picture.forecast"), 0, SIDE + FOOT + 2);
        foot.setX(LEFT + (SIDE - foot.getLayoutBounds().getWidth()) / 2);
    }

    private static double x(double p) {
        return LEFT + SIDE * p;
    }

    private static double y(double p) {
        return 4 + SIDE * (1 - p);
    }

    private void line(double x1, double y1, double x2, double y2, String style) {
        Line line = new Line(x1, y1, x2, y2);
        line.getStyleClass().add(style);
        getChildren().add(line);
    }

    private Text text(String words, double x, double y) {
        Text text = new Text(x, y, words);
        text.getStyleClass().add("axis-label");
        getChildren().add(text);
        text.applyCss();
        return text;
    }
}
