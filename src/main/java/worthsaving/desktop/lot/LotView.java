package worthsaving.desktop.lot;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressIndicator;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import worthsaving.deal.Verdict;
import worthsaving.desktop.Choices;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Look;
import worthsaving.desktop.Settings;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.ranking.Order;

/** The screen of all listings. */
public final class LotView extends VBox {

    private static final double MIN_ROWS = 8;

    private final LotModel model;
    private final LotTable table;
    private final TextField words = new TextField();
    private LotFilter filter = LotFilter.ALL;

    public LotView(LotModel model, Settings settings, Look look, Consumer<LotRow> onOpen, Runnable onChoose) {
        this.model = model;
        this.table = new LotTable(model, settings, look, onOpen);
        getStyleClass().add("screen");
        setId("lot");
        VBox.setVgrow(table, Priority.ALWAYS);
        table.minHeightProperty().bind(look.textSizeProperty().multiply(MIN_ROWS));
        CompareView compare = new CompareView(model.comparison(), model::itemName, look.unitsProperty());
        VBox.setVgrow(compare, Priority.ALWAYS);
        table.visibleProperty().bind(compare.visibleProperty().not());
        table.managedProperty().bind(table.visibleProperty());
        Label uncompared = Words.trouble(model.comparison().troubleProperty());
        uncompared.setId("compare-trouble");
        getChildren().addAll(title(onChoose), filters(), trouble(), uncompared, table, compare,
                new ChoicePanel(model), new ProblemPanel(model), new AdvertBox(model));
    }

    public void copy() {
        table.copy();
    }

    /** Sets the selected cars side by side. */
    public void compare() {
        model.comparison().compare(table.selected().stream().map(LotRow::listing).toList());
    }

    /** Takes the selected cars out of the lot; undo brings them back. */
    public void drop() {
        table.drop();
    }

    public void usualColumns() {
        table.usualColumns();
    }

    /** Puts the cursor into the filter. */
    public void find() {
        words.requestFocus();
        words.selectAll();
    }

    private HBox title(Runnable onChoose) {
        Label heading = new Label();
        heading.getStyleClass().add("heading");
        heading.textProperty().bind(Bindings.createStringBinding(
                () -> model.rows().isEmpty()
                        ? Texts.of("lot.heading")
                        : Texts.of("lot.heading.of", model.rows().size(), model.titleProperty().get()),
                model.rows(), model.titleProperty()));
        Label sample = new Label(Texts.of("lot.sample"));
        sample.getStyleClass().add("notice");
        sample.setWrapText(true);
        sample.visibleProperty().bind(model.inventedProperty());
        sample.managedProperty().bind(sample.visibleProperty());
        HBox.setHgrow(sample, Priority.SOMETIMES);
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        Button open = new Button(Texts.of("lot.open"));
        open.setId("lot-open");
        open.setMinWidth(Region.USE_PREF_SIZE);
        open.setOnAction(e -> onChoose.run());
        heading.setMinWidth(Region.USE_PREF_SIZE);
        HBox row = new HBox(12, heading, sample, space, open);
        row.setMinHeight(Region.USE_PREF_SIZE);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private FlowPane filters() {
        words.setId("lot-words");
        words.setPromptText(Texts.of("lot.words"));
        words.setAccessibleText(Texts.of("lot.words"));
        words.setPrefColumnCount(24);
        words.textProperty().addListener((o, was, is) -> filter(filter.withWords(is)));
        List<Optional<Verdict.Kind>> kinds = new ArrayList<>(List.of(Optional.empty()));
        EnumSet.allOf(Verdict.Kind.class).forEach(k -> kinds.add(Optional.of(k)));
        ComboBox<Optional<Verdict.Kind>> verdicts = Choices.box(kinds, Optional.empty(),
                v -> v.map(k -> Texts.of("verdict", k)).orElse(Texts.of("lot.all_verdicts")),
                v -> filter(filter.withVerdict(v)));
        verdicts.setId("lot-verdicts");
        verdicts.setAccessibleText(Texts.of("lot.verdicts"));
        ComboBox<Order> orders = Choices.of("lot.order", Order.values(), model.order(), order -> {
            table.unsort();
            model.order(order);
        });
        orders.setId("lot-order");
        orders.setTooltip(new Tooltip(Texts.of("lot.order.why")));
        Label by = new Label(Texts.of("lot.order"));
        by.setLabelFor(orders);
        FlowPane row = new FlowPane(10, 6, words, verdicts, by, orders, compareButton(),
                currency(), progress());
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private Label currency() {
        Label currency = Words.whole("", "soft");
        currency.setId("lot-currency");
        currency.textProperty().bind(Bindings.createStringBinding(
                () -> Texts.of("lot.currency", model.currency().getCurrencyCode()), model.currencyProperty()));
        return currency;
    }

    private Button compareButton() {
        Button compare = new Button(Texts.of("compare.go"));
        compare.setId("lot-compare");
        compare.setMinWidth(Region.USE_PREF_SIZE);
        compare.setTooltip(new Tooltip(Texts.of("compare.how")));
        compare.setOnAction(e -> compare());
        return compare;
    }

    private HBox progress() {
        ProgressIndicator turning = new ProgressIndicator();
        turning.setPrefSize(18, 18);
        Label text = new Label();
        text.textProperty().bind(Bindings.createStringBinding(
                () -> model.total() == 0 ? Texts.of("lot.reading")
                        : Texts.of("lot.judging", Figures.number(model.doneProperty().get(), 0),
                                Figures.number(model.total(), 0)), model.doneProperty(), model.busyProperty()));
        Button stop = new Button(Texts.of("lot.stop"));
        stop.getStyleClass().add("plain");
        stop.setOnAction(e -> model.cancel());
        HBox box = new HBox(8, turning, text, stop);
        box.setAlignment(Pos.CENTER_LEFT);
        box.visibleProperty().bind(model.busyProperty());
        box.managedProperty().bind(box.visibleProperty());
        return box;
    }

    private Label trouble() {
        Label trouble = Words.trouble(model.troubleProperty());
        trouble.setId("lot-trouble");
        return trouble;
    }

    private void filter(LotFilter other) {
        filter = other;
        table.filter(other);
    }
}
