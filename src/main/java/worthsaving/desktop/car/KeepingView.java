package worthsaving.desktop.car;

import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.geometry.HPos;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import worthsaving.deal.KeeperOption;
import worthsaving.deal.KeeperPlan;
import worthsaving.deal.Scenario.Repeat;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Units;
import worthsaving.desktop.Words;
import worthsaving.desktop.car.KeepingModel.Field;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Money;
import worthsaving.ranking.RemainingLife;
import worthsaving.ranking.Rescue;

/** For who would keep the car: mending it, paying a quote or replacing it, over the same years and distance. */
final class KeepingView extends VBox {

    private static final int COLUMNS = 6;
    private static final int LEFT_SHOWN = 6;
    private static final double WORDS = 170;

    private final KeepingModel model;
    private final CarModel car;
    private final ReadOnlyObjectProperty<Units> units;
    private final Label fault = Words.wrapped("", "stop-words");
    private final VBox result = new VBox(8);
    private final List<Entry> entries;

    private record Column(String key, BiFunction<KeeperPlan, KeeperOption, String> text) {}

    private static final List<Column> FIGURES = List.of(
            new Column("now", (p, o) -> amount(o.upfrontTotal())),
            new Column("again", (p, o) -> o.repeat().map(Repeat::expected).map(KeepingView::amount).orElse("0")),
            new Column("later", (p, o) -> amount(o.otherRepairs())),
            new Column("end", (p, o) -> amount(o.endValue())),
            new Column("net", (p, o) -> amount(o.netCost())),
            new Column("year", (p, o) -> amount(p.perYear(o))));

    KeepingView(KeepingModel model, CarModel car, ReadOnlyObjectProperty<Units> units) {
        super(8);
        this.model = model;
        this.car = car;
        this.units = units;
        getStyleClass().add("tab-page");
        setId("keeping");
        entries = Stream.of(Field.values()).map(Entry::new).toList();
        FlowPane fields = new FlowPane(12, 6);
        fields.getChildren().addAll(entries);
        fault.setId("keep-fault");
        fault.visibleProperty().bind(fault.textProperty().isNotEmpty());
        fault.managedProperty().bind(fault.visibleProperty());
        getChildren().addAll(
                Words.explained(Words.plain(Texts.of("keep.title"), "subheading"), Texts.of("keep.why")),
                fields, fault, Words.trouble(model.troubleProperty()), result);
        model.keepingProperty().addListener((o, was, is) -> fill());
        car.scenarioProperty().addListener((o, was, is) -> {
            if (was == null || !was.sameCar(is)) {
                fill();
            }
        });
        units.addListener(o -> {
            fill();
            show(model.rescueProperty().get());
        });
        model.rescueProperty().addListener((o, was, is) -> show(is));
        fill();
        show(model.rescueProperty().get());
    }

    private void fill() {
        Keeping k = model.keepingProperty().get();
        fault.setText("");
        entries.forEach(Entry::name);
        entry(Field.YEARS).show(Integer.toString(k.years()));
        entry(Field.DISTANCE).show(Figures.number(units.get().of(Distance.ofMiles(k.milesPerYear())), 0));
        entry(Field.QUOTE).show(k.quote().map(KeepingView::amount).orElse(""));
        entry(Field.OFFER).show(k.offer().map(KeepingView::amount).orElse(""));
    }

    private Entry entry(Field which) {
        return entries.get(which.ordinal());
    }

    /** A field under its name; it stays the same node, so that the next one keeps the cursor it was given. */
    private final class Entry extends VBox {
        private final Field which;
        private final Label name = Words.whole("", "soft");
        private final TextField field = new TextField();
        private String shown = "";

        Entry(Field which) {
            super(1);
            this.which = which;
            field.setId("keep-" + which.name().toLowerCase(Locale.ROOT));
            field.setPrefColumnCount(COLUMNS);
            field.setOnAction(e -> enter());
            field.focusedProperty().addListener((o, was, is) -> {
                if (!is) {
                    enter();
                }
            });
            name.setLabelFor(field);
            Words.explained(name, Texts.of("keep.explain", which));
            getChildren().addAll(name, field);
        }

        private void name() {
            name.setText(Texts.of("keep.field." + which.name().toLowerCase(Locale.ROOT), which == Field.DISTANCE
                    ? Texts.of("units", units.get()) : car.currency().getCurrencyCode()));
            field.setAccessibleText(name.getText());
        }

        /** What is being typed stays while another field is taken over. */
        private void show(String text) {
            if (!field.isFocused() || !text.equals(shown)) {
                field.setText(text);
            }
            shown = text;
        }

        private void enter() {
            if (!field.getText().strip().equals(shown)) {
                fault.setText(model.enter(which, field.getText(), units.get()));
            }
        }
    }

    private void show(Rescue rescue) {
        if (rescue == null) {
            result.getChildren().setAll(Words.wrapped(Texts.of("keep.reckoning"), "soft"));
            return;
        }
        KeeperPlan plan = rescue.plan();
        Label headline = Words.wrapped(Texts.of("keep.cheapest", plan.cheapest().name(), Figures.money(rescue.margin()),
                plan.months() / 12, units.get().text(plan.distance())), "subheading");
        headline.setId("keep-cheapest");
        result.getChildren().clear();
        rescue.hardStop().ifPresent(stop ->
                result.getChildren().add(Words.wrapped(Texts.of("keep.stop", stop), "stop-words")));
        result.getChildren().addAll(headline, ways(rescue));
        result.getChildren().addAll(
                Words.wrapped(Texts.of("keep.quote.replacing", most(rescue.breakEvenQuote()))),
                Words.wrapped(Texts.of("keep.quote.other", most(rescue.breakEvenAgainstBest()))),
                Words.wrapped(Texts.of("keep.stands", Figures.money(rescue.asItStands()))));
        if (!rescue.left().isEmpty()) {
            result.getChildren().addAll(Words.explained(Words.plain(Texts.of("keep.left"), "subheading"),
                    Texts.of("keep.left.why")), left(rescue.left()));
        }
        result.getChildren().add(Words.plain(Texts.of("keep.assumed"), "subheading"));
        rescue.assumptions().forEach(a -> result.getChildren().add(
                Words.wrapped("\u2022 " + Texts.of("keep.assumption", a.text(), Texts.of("label", a.label())), "soft")));
    }

    private GridPane ways(Rescue rescue) {
        KeeperPlan plan = rescue.plan();
        GridPane grid = grid(FIGURES.size() + 1);
        head(grid, 0, "way", "");
        for (int c = 0; c < FIGURES.size(); c++) {
            head(grid, c + 1, FIGURES.get(c).key(), "");
        }
        head(grid, FIGURES.size() + 1, "distance", Texts.of("units.one", units.get()));
        int row = 1;
        for (KeeperOption option : plan.options()) {
            String style = option == plan.cheapest() ? "subheading" : "plain-figure";
            grid.add(Words.wrapped((option == plan.cheapest() ? "\u2605 " : "") + option.name(), style), 0, row);
            for (int c = 0; c < FIGURES.size(); c++) {
                Label figure = Words.whole(FIGURES.get(c).text().apply(plan, option), style);
                figure.setId("keep-" + FIGURES.get(c).key() + "-" + row);
                grid.add(figure, c + 1, row);
            }
            double each = option.netCost().amount() / units.get().of(plan.distance());
            grid.add(Words.whole(Figures.number(each, 2), style), FIGURES.size() + 1, row++);
        }
        return grid;
    }

    private static GridPane left(List<RemainingLife> left) {
        GridPane grid = grid(3);
        head(grid, 0, "item", "");
        head(grid, 1, "chance", "");
        head(grid, 2, "alone", "");
        head(grid, 3, "expected", "");
        int row = 1;
        for (RemainingLife one : left.subList(0, Math.min(LEFT_SHOWN, left.size()))) {
            grid.addRow(row++, Words.wrapped(one.item().name()), Words.whole(Figures.percent(one.chance().value())),
                    Words.whole(amount(one.cost())), Words.whole(amount(one.expected())));
        }
        return grid;
    }

    private static void head(GridPane grid, int column, String key, String unit) {
        grid.add(Words.explained(Words.whole(Texts.of("keep.column." + key, unit), "soft"),
                Texts.of("keep.column.why." + key)), column, 0);
    }

    /** A column of words and others of figures. */
    private static GridPane grid(int figures) {
        GridPane grid = new GridPane();
        grid.setHgap(10);
        grid.setVgap(4);
        ColumnConstraints words = new ColumnConstraints();
        words.setMinWidth(0);
        words.setPrefWidth(WORDS);
        words.setHgrow(Priority.ALWAYS);
        grid.getColumnConstraints().add(words);
        for (int i = 0; i < figures; i++) {
            ColumnConstraints column = new ColumnConstraints();
            column.setHalignment(HPos.RIGHT);
            grid.getColumnConstraints().add(column);
        }
        return grid;
    }

    private static String most(Money quote) {
        return quote.amount() > 0 ? Figures.money(quote) : Texts.of("keep.never");
    }

    private static String amount(Money money) {
        return Figures.amount(money.amount());
    }
}
