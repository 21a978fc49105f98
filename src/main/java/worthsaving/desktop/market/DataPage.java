package worthsaving.desktop.market;

import java.util.List;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import worthsaving.desktop.CarNames;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Look;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.desktop.market.MarketWork.Composed;
import worthsaving.valuation.ErrorBand;
import worthsaving.valuation.ModelCard;
import worthsaving.valuation.PriceModel;

/** On what data the values rest, and how good they are. */
final class DataPage extends HBox {

    private static final int MOST_MAKES = 12;

    private final Look look;
    private final VBox data = new VBox(8);
    private final VBox errors = new VBox(8);
    private final CoverageChart coverage = new CoverageChart();

    DataPage(Look look) {
        super(28, new VBox(), new VBox());
        this.look = look;
        getStyleClass().add("tab-page");
        getChildren().setAll(data, errors);
        for (VBox half : List.of(data, errors)) {
            half.setPrefWidth(10);
            HBox.setHgrow(half, Priority.ALWAYS);
        }
    }

    void show(Composed market) {
        PriceModel model = market.model();
        ModelCard card = model.card();
        data.getChildren().setAll(Words.plain(Texts.of("market.data"), "subheading"), facts(market, card),
                Words.plain(Texts.of("market.cleaning"), "subheading"),
                Words.wrapped(Texts.of("market.cleaning.why"), "soft"), cleaning(card),
                Words.plain(Texts.of("market.limits"), "subheading"));
        data.getChildren().add(Words.wrapped(Texts.of("market.reach", Figures.number(model.oldest(), 0),
                look.unitsProperty().get().text(model.farthest()), card.makes(), Figures.number(card.models(), 0))));
        card.limits().forEach(limit -> data.getChildren().add(Words.wrapped(limit, "soft")));
        coverage.show(card.bands());
        errors.getChildren().setAll(Words.plain(Texts.of("market.errors"), "subheading"),
                Words.wrapped(Texts.of("market.errors.median", Figures.number(100 * card.chosen().medianError(), 1),
                        Figures.number(100 * card.chosen().meanError(), 1))),
                Words.wrapped(Texts.of("market.errors.coverage", Figures.number(100 * card.coverage(), 1))),
                Words.explained(Words.plain(Texts.of("market.coverage", card.currency()), "subheading"),
                        Texts.of("market.coverage.why")),
                coverage,
                Words.wrapped(Texts.of("market.coverage.why"), "soft"));
        List<ErrorBand> bands = model.errors(market.shipped().market().odometer());
        for (ErrorBand.By by : ErrorBand.By.values()) {
            errors.getChildren().addAll(
                    Words.explained(Words.plain(by == ErrorBand.By.MILEAGE
                            ? Texts.of("market.by.mileage", market.shipped().market().unit()) : Texts.of("market.by", by),
                            "subheading"), Texts.of("market.by.explain", by)),
                    scatter(bands.stream().filter(b -> b.by() == by).limit(MOST_MAKES).toList()));
        }
        errors.getChildren().add(Words.wrapped(Texts.of("market.by.all"), "soft"));
    }

    private static GridPane facts(Composed market, ModelCard card) {
        GridPane grid = grid();
        String[][] lines = {
            {Texts.of("market.fact.set"), card.name()},
            {Texts.of("market.fact.source"), card.source()},
            {Texts.of("market.fact.licence"), Texts.of("market.fact.licence.is", card.licence())},
            {Texts.of("market.fact.kind"), Texts.of(market.model().tellsSales() ? "market.kind.sold" : "market.kind.asked",
                    card.currency())},
            {Texts.of("market.fact.days"), Texts.of("market.fact.days.are", card.firstDay(), card.lastDay())},
            {Texts.of("market.fact.rows"), Figures.number((double) card.rows(), 0)},
        };
        for (int row = 0; row < lines.length; row++) {
            grid.addRow(row, Words.whole(lines[row][0], "soft"), grow(lines[row][1]));
        }
        return grid;
    }

    private static Label grow(String text) {
        Label label = Words.wrapped(text);
        GridPane.setHgrow(label, Priority.ALWAYS);
        return label;
    }

    private static GridPane cleaning(ModelCard card) {
        GridPane grid = grid();
        int row = 0;
        for (ModelCard.Cleaned rule : card.cleaned()) {
            if (rule.count().isEmpty()) {
                grid.add(Words.wrapped(rule.rule(), "soft"), 0, row++, 3, 1);
                continue;
            }
            Label count = Words.whole(Texts.of(rule.dropped() ? "market.dropped" : "market.blanked",
                    Figures.number((double) rule.count().getAsLong(), 0)));
            GridPane.setHalignment(count, HPos.RIGHT);
            Label why = Words.wrapped(rule.why(), "soft");
            GridPane.setHgrow(why, Priority.ALWAYS);
            grid.addRow(row++, Words.whole(rule.rule()), count, why);
        }
        grid.getChildren().forEach(n -> GridPane.setValignment(n, VPos.TOP));
        return grid;
    }

    private static GridPane scatter(List<ErrorBand> bands) {
        GridPane grid = grid();
        grid.getColumnConstraints().addAll(new ColumnConstraints(), new ColumnConstraints(), new ColumnConstraints());
        grid.getColumnConstraints().get(2).setHgrow(Priority.ALWAYS);
        double reach = bands.stream().mapToDouble(b -> Math.max(-b.low(), b.high())).max().orElse(1);
        int row = 0;
        for (ErrorBand band : bands) {
            String name = band.rows() > 0
                    ? Texts.of("market.by.rows", CarNames.capitals(band.group()),
                            Figures.number((double) band.rows(), 0)) : band.group();
            SpanBar bar = new SpanBar(band.low(), 0, band.high(), reach);
            Label span = Words.whole(Texts.of("market.by.span", Figures.number(100 * band.low(), 0),
                    Figures.number(100 * band.high(), 0)));
            grid.addRow(row++, Words.whole(name), span, bar);
        }
        return grid;
    }

    private static GridPane grid() {
        GridPane grid = new GridPane();
        grid.setHgap(14);
        grid.setVgap(3);
        return grid;
    }
}
