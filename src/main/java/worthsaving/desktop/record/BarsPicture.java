package worthsaving.desktop.record;

import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;

/** Counts as bars, and a line where all would stand if the forecasts were right. */
final class BarsPicture extends Region {

    private static final double HEIGHT = 46;
    private static final double WIDTH = 150;

    private final int[] counts;

    BarsPicture(int[] counts, String spoken) {
        this.counts = counts.clone();
        getStyleClass().add("bars-picture");
        setAccessibleText(spoken);
        setMinSize(WIDTH, HEIGHT);
        setPrefSize(WIDTH, HEIGHT);
        setMaxSize(WIDTH, HEIGHT);
    }

    @Override
    protected void layoutChildren() {
        getChildren().clear();
        int most = 1;
        double sum = 0;
        for (int count : counts) {
            most = Math.max(most, count);
            sum += count;
        }
        double step = getWidth() / counts.length;
        for (int i = 0; i < counts.length; i++) {
            double height = Math.max(1, counts[i] * (getHeight() - 2) / most);
            Rectangle bar = new Rectangle(i * step + 2, getHeight() - height, step - 4, height);
            bar.getStyleClass().add("fill-of-chance");
            getChildren().add(bar);
        }
        double even = getHeight() - sum / counts.length * (getHeight() - 2) / most;
        Line line = new Line(0, even, getWidth(), even);
        line.getStyleClass().add("even-line");
        getChildren().add(line);
    }
}
