package worthsaving.desktop.car;

import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.sensitivity.TwoWayMap;

/** Expected profit over two figures: shaded by gain and loss, with amounts written in, and the line of break-even. */
final class MapChart extends Region {

    private static final int LABELS = 5;
    private static final double LEFT = 5.5;
    private static final double FOOT = 3.0;
    private static final double TOP = 1.4;

    private Matters.Drawn drawn;
    private MatterWords words;
    private double left;
    private double top;
    private double width;
    private double height;

    MapChart() {
        setId("matters-map");
        getStyleClass().add("map-chart");
        setMinSize(260, 200);
    }

    void show(Matters.Drawn map, MatterWords names) {
        drawn = map;
        words = names;
        setAccessibleText(Texts.of("matters.map.spoken", names.name(map.across()), names.name(map.up()),
                corner(0, 0), corner(0, 1), corner(1, 0), corner(1, 1)));
        requestLayout();
    }

    private String corner(int right, int upper) {
        double[][] r = drawn.map().results();
        return Figures.amount(r[upper * (r.length - 1)][right * (r.length - 1)]);
    }

    @Override
    protected void layoutChildren() {
        getChildren().clear();
        if (drawn == null || getWidth() < 80) {
            return;
        }
        double em = text("0", "axis-label", 0, 0).getLayoutBounds().getHeight();
        getChildren().clear();
        left = LEFT * em;
        top = TOP * em;
        width = getWidth() - left - em;
        height = getHeight() - top - FOOT * em;
        cells();
        for (TwoWayMap.Piece p : drawn.map().contour(0)) {
            Line line = new Line(x(p.across1()), y(p.up1()), x(p.across2()), y(p.up2()));
            line.getStyleClass().add("break-even");
            getChildren().add(line);
        }
        amounts(em);
        axes(em);
    }

    private void cells() {
        double[][] r = drawn.map().results();
        int n = r.length;
        double most = 1;
        for (double[] row : r) {
            for (double profit : row) {
                most = Math.max(most, Math.abs(profit));
            }
        }
        for (int j = 0; j < n; j++) {
            for (int i = 0; i < n; i++) {
                Rectangle cell = new Rectangle(left + width * i / n, top + height * (n - 1 - j) / n,
                        Math.ceil(width / n), Math.ceil(height / n));
                String side = r[j][i] < 0 ? "loss" : "gain";
                cell.getStyleClass().addAll("cell-of-map", Math.abs(r[j][i]) > most / 2 ? side + "-much" : side);
                getChildren().add(cell);
            }
        }
    }

    /** Amounts at every third value, so that the map can be read without its colours. */
    private void amounts(double em) {
        double[][] r = drawn.map().results();
        int n = r.length;
        int each = width / n * 3 > LEFT * em ? 3 : 4;
        for (int j = 0; j < n; j += 3) {
            for (int i = 0; i < n; i += each) {
                Text text = text(Figures.amount(r[j][i]), "amount-of-map", 0, 0);
                double w = text.getLayoutBounds().getWidth();
                double middle = left + width * (i + 0.5) / n;
                text.setX(Math.max(left + 2, Math.min(left + width - w - 2, middle - w / 2)));
                text.setY(top + height * (n - 0.5 - j) / n + 0.3 * em);
            }
        }
    }

    private void axes(double em) {
        int n = drawn.map().across().length;
        for (int k = 0; k < LABELS; k++) {
            int at = k * (n - 1) / (LABELS - 1);
            Text across = text(words.value(drawn.across(), drawn.map().across()[at]), "axis-label", 0,
                    top + height + 1.2 * em);
            double w = across.getLayoutBounds().getWidth();
            across.setX(Math.min(getWidth() - w, left + width * (at + 0.5) / n - w / 2));
            Text up = text(words.value(drawn.up(), drawn.map().up()[at]), "axis-label", 0,
                    top + height * (n - 0.5 - at) / n + 0.3 * em);
            up.setX(Math.max(0, left - 0.4 * em - up.getLayoutBounds().getWidth()));
        }
        Text title = text(words.name(drawn.across()), "axis-title", 0, top + height + 2.5 * em);
        title.setX(left + Math.max(0, (width - title.getLayoutBounds().getWidth()) / 2));
        text("\u2191 " + words.name(drawn.up()), "axis-title", 0, em);
    }

    /** Values stand in the middle of their cells. */
    private double x(double value) {
        double[] all = drawn.map().across();
        double share = (value - all[0]) / (all[all.length - 1] - all[0]);
        return left + width * (share * (all.length - 1) + 0.5) / all.length;
    }

    private double y(double value) {
        double[] all = drawn.map().up();
        double share = (value - all[0]) / (all[all.length - 1] - all[0]);
        return top + height * (1 - (share * (all.length - 1) + 0.5) / all.length);
    }

    private Text text(String words, String style, double x, double y) {
        Text text = new Text(x, y, words);
        text.getStyleClass().add(style);
        getChildren().add(text);
        text.applyCss();
        return text;
    }
}
