package worthsaving.desktop.market;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.desktop.market.MarketWork.Composed;
import worthsaving.market.MarketFactor;

/** Every factor between the model's price and what a car fetches, each with its range, its source and a field. */
final class FactorsPage extends VBox {

    private static final int DIGITS = 6;
    private static final String[] COLUMNS = {"name", "value", "range", "cars", "trust", "source"};

    private final MarketModel model;

    FactorsPage(MarketModel model) {
        super(8);
        this.model = model;
        getStyleClass().add("tab-page");
    }

    void show(Composed market) {
        String typing = getScene() == null || getScene().getFocusOwner() == null ? "" : getScene().getFocusOwner().getId();
        fill(market);
        if (typing != null && typing.startsWith("factor-")) {
            Optional.ofNullable(lookup('#' + typing)).ifPresent(Node::requestFocus);
        }
    }

    private void fill(Composed market) {
        getChildren().setAll(Words.wrapped(Texts.of("market.factors.how"), "soft"));
        Map<String, MarketFactor> now = market.settings().factors();
        Map<String, MarketFactor> shipped = market.shipped().valuer().settings().factors();
        GridPane grid = new GridPane();
        grid.setHgap(14);
        grid.setVgap(4);
        for (int i = 0; i < COLUMNS.length; i++) {
            grid.add(Words.explained(Words.whole(Texts.of("market.factor.column." + COLUMNS[i]), "soft"),
                    Texts.of("market.factor.explain." + COLUMNS[i])), i, 0);
        }
        int row = 1;
        for (FactorNames group : FactorNames.values()) {
            List<MarketFactor> factors = now.values().stream().filter(f -> FactorNames.of(f) == group)
                    .sorted(Comparator.comparing(MarketFactor::key)).toList();
            if (!factors.isEmpty()) {
                VBox heading = new VBox(2, Words.plain(Texts.of("market.factors", group), "subheading"),
                        Words.wrapped(Texts.of("market.factors.explain", group), "soft"));
                grid.add(heading, 0, row++, COLUMNS.length + 1, 1);
                for (MarketFactor factor : factors) {
                    row(grid, row++, factor, shipped.get(factor.key()));
                }
            }
        }
        getChildren().add(grid);
    }

    private void row(GridPane grid, int row, MarketFactor now, MarketFactor usual) {
        Label name = Words.whole(FactorNames.name(now), "factor-name");
        FactorLimits limits = FactorLimits.of(usual);
        Label range = Words.whole(limits.open()
                ? Texts.of("market.factor.range", Figures.number(limits.low(), 3), Figures.number(limits.high(), 3))
                : Texts.of("none"));
        Label cars = Words.whole(usual.cars() > 0 ? Figures.number(usual.cars(), 0) : Texts.of("none"));
        GridPane.setHalignment(cars, HPos.RIGHT);
        Label trust = Words.explained(Words.whole(Texts.of("label", now.source().label()), "source-mark"),
                Texts.of("label.explain", now.source().label()));
        boolean changed = !now.equals(usual);
        Label source = Words.wrapped(changed
                ? Texts.of("market.factor.changed", Figures.number(usual.value(), 3), usual.source().text())
                : usual.source().text(), "soft");
        GridPane.setHgrow(source, Priority.ALWAYS);
        grid.addRow(row, name, field(now, usual), range, cars, trust, source);
        if (changed) {
            Button back = new Button(Texts.of("market.factor.usual"));
            back.getStyleClass().add("plain");
            back.setId("usual-" + id(now.key()));
            back.setOnAction(e -> model.setFactor(now.key(), ""));
            grid.add(back, COLUMNS.length, row);
        }
    }

    /** Without points, which a style selector would take for a class. */
    static String id(String key) {
        return "factor-" + key.replace('.', '-');
    }

    private Node field(MarketFactor now, MarketFactor usual) {
        String text = Figures.number(now.value(), 3);
        if (!FactorLimits.of(usual).open()) {
            return Words.whole(text);
        }
        EditField field = new EditField(model, id(now.key()), FactorNames.name(now), text,
                typed -> model.setFactor(now.key(), typed));
        field.setPrefColumnCount(DIGITS);
        field.setMinWidth(Region.USE_PREF_SIZE);
        return field;
    }
}
