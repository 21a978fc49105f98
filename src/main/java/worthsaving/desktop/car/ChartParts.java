package worthsaving.desktop.car;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;

/**
 * Bars, lines and texts of a chart, kept from one drawing to the next: new nodes at each move of a slider take longer
 * than all that is reckoned. Texts lie over lines, lines over bars.
 */
final class ChartParts {

    private static final double BARS = 2;
    private static final double LINES = 1;

    private final ObservableList<Node> children;
    private final Map<String, List<Node>> made = new HashMap<>();
    private final Map<String, Integer> used = new HashMap<>();

    ChartParts(ObservableList<Node> children) {
        this.children = children;
    }

    /** Begins a drawing; nothing is drawn yet. */
    void begin() {
        used.clear();
    }

    /** Ends it: what an earlier drawing had more of is hidden. */
    void end() {
        made.forEach((styles, nodes) -> {
            for (int i = used.getOrDefault(styles, 0); i < nodes.size(); i++) {
                nodes.get(i).setVisible(false);
            }
        });
    }

    void bar(double x, double y, double width, double height, String... styles) {
        Rectangle bar = (Rectangle) part(Rectangle::new, BARS, styles);
        bar.setX(x);
        bar.setY(y);
        bar.setWidth(width);
        bar.setHeight(height);
    }

    void line(double x1, double y1, double x2, double y2, String... styles) {
        Line line = (Line) part(Line::new, LINES, styles);
        line.setStartX(x1);
        line.setStartY(y1);
        line.setEndX(x2);
        line.setEndY(y2);
    }

    /** A text in the font of its style, to be put in its place. */
    Text text(String words, String... styles) {
        Text text = (Text) part(Text::new, 0, styles);
        text.setText(words);
        return text;
    }

    private Node part(Supplier<Node> maker, double order, String... styles) {
        String key = String.join(" ", styles);
        List<Node> nodes = made.computeIfAbsent(key, k -> new ArrayList<>());
        int next = used.merge(key, 1, Integer::sum) - 1;
        if (next == nodes.size()) {
            Node node = maker.get();
            node.getStyleClass().addAll(styles);
            node.setViewOrder(order);
            node.setManaged(false);
            nodes.add(node);
            children.add(node);
            node.applyCss();
        }
        nodes.get(next).setVisible(true);
        return nodes.get(next);
    }
}
