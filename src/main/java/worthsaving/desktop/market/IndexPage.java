package worthsaving.desktop.market;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Map;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.control.cell.TextFieldTableCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.desktop.market.MarketWork.Composed;
import worthsaving.market.PriceIndex;

/** How prices have moved since the data: the index as a chart and as a table to correct and to go on with. */
final class IndexPage extends HBox {

    private final MarketModel model;
    private final IndexChart chart = new IndexChart();
    private final VBox said = new VBox(6);
    private final TableView<Map.Entry<LocalDate, Double>> table = new TableView<>();
    private final TextField month = new TextField();
    private final TextField level = new TextField();

    IndexPage(MarketModel model) {
        super(20);
        this.model = model;
        getStyleClass().add("tab-page");
        VBox.setVgrow(chart, Priority.ALWAYS);
        VBox left = new VBox(8, said, chart);
        HBox.setHgrow(left, Priority.ALWAYS);
        left.setPrefWidth(10);
        getChildren().setAll(left, right());
    }

    private VBox right() {
        table.setId("market-index");
        table.setEditable(true);
        table.setAccessibleText(Texts.of("market.index"));
        table.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN);
        TableColumn<Map.Entry<LocalDate, Double>, String> when = new TableColumn<>(Texts.of("market.index.month"));
        when.setCellValueFactory(c -> new ReadOnlyStringWrapper(YearMonth.from(c.getValue().getKey()).toString()));
        TableColumn<Map.Entry<LocalDate, Double>, String> value = new TableColumn<>(Texts.of("market.index.level"));
        value.setCellValueFactory(c -> new ReadOnlyStringWrapper(Figures.number(c.getValue().getValue(), 3)));
        value.setCellFactory(TextFieldTableCell.forTableColumn());
        value.setOnEditCommit(e -> {
            model.setLevel(YearMonth.from(e.getRowValue().getKey()).toString(), e.getNewValue());
            table.refresh();
        });
        table.getColumns().add(when);
        table.getColumns().add(value);
        VBox.setVgrow(table, Priority.ALWAYS);
        month.setId("market-index-month");
        month.setPromptText(Texts.of("market.index.month.how"));
        month.setAccessibleText(Texts.of("market.index.month"));
        level.setId("market-index-level");
        level.setPromptText(Texts.of("market.index.level"));
        level.setAccessibleText(Texts.of("market.index.level"));
        month.setPrefColumnCount(6);
        level.setPrefColumnCount(5);
        Button set = new Button(Texts.of("market.index.set"));
        set.setId("market-index-set");
        set.setMinWidth(Region.USE_PREF_SIZE);
        set.setOnAction(e -> model.setLevel(month.getText(), level.getText()));
        level.setOnAction(e -> set.fire());
        Button remove = new Button(Texts.of("market.index.remove"));
        remove.disableProperty().bind(table.getSelectionModel().selectedItemProperty().isNull());
        remove.setOnAction(e -> model.removeLevel(
                YearMonth.from(table.getSelectionModel().getSelectedItem().getKey())));
        Button published = new Button(Texts.of("market.index.published"));
        published.setOnAction(e -> model.publishedIndex());
        HBox entry = new HBox(6, month, level, set);
        entry.setAlignment(Pos.CENTER_LEFT);
        VBox right = new VBox(8, Words.plain(Texts.of("market.index"), "subheading"),
                Words.wrapped(Texts.of("market.index.how"), "soft"), table, entry,
                new HBox(6, remove, published));
        right.getStyleClass().add("side-column");
        return right;
    }

    void show(Composed market) {
        PriceIndex index = market.settings().index();
        LocalDate today = market.ground().today();
        double factor = index.factor(market.model().dataDay(), today);
        said.getChildren().setAll(Words.plain(Texts.of("market.since"), "subheading"));
        if (index.tells()) {
            said.getChildren().add(Words.wrapped(Texts.of("market.since.factor", market.model().dataDay(), today,
                    Figures.number(factor, 3), percent(factor), index.lastDay())));
        } else {
            said.getChildren().add(Words.wrapped(Texts.of("market.since.none", market.shipped().market().name(),
                    market.model().dataDay()), "notice"));
        }
        said.getChildren().add(Words.wrapped(Texts.of("market.source",
                Texts.of("label", index.source().label()), index.source().text()), "soft"));
        chart.show(index, market.model().dataDay(), today);
        table.getItems().setAll(index.levels().entrySet());
        table.scrollTo(Math.max(0, table.getItems().size() - 1));
    }

    private static String percent(double factor) {
        return (factor > 1 ? "+" : "") + Figures.number(100 * (factor - 1), 1) + " %";
    }
}
