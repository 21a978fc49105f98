package worthsaving.desktop.market;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.Node;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.Tooltip;
import worthsaving.desktop.CarNames;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Look;
import worthsaving.desktop.Texts;
import worthsaving.market.Comparable;
import worthsaving.market.PriceKind;
import worthsaving.valuation.AlikeCar;
import worthsaving.valuation.LevelRow;

/** The user's comparables, with what each says of the car being worked on. */
final class OwnTableView extends TableView<OwnTableView.Line> {

    private static final Set<String> NUMBERS = Set.of("miles", "price", "above", "weight", "moves", "says");

    /** @param told null while no car is looked at */
    record Line(OwnCars.Row row, LevelRow told, Map<String, String> saysOfCar, double moneyPerLog) {}

    OwnTableView(Look look) {
        setId("market-own");
        setAccessibleText(Texts.of("market.own"));
        add(look, "car", 18, l -> CarNames.title(comparable(l).car()));
        add(look, "miles", 5.5, l -> comparable(l).car().odometer().get()
                .map(d -> Figures.number(look.unitsProperty().get().of(d), 0)).orElse(Texts.of("none")));
        add(look, "price", 5, l -> Figures.amount(comparable(l).price().amount()));
        add(look, "kind", 4.4, l -> Texts.of(comparable(l).kind() == PriceKind.SALE ? "market.own.sold" : "market.own.asked"));
        add(look, "seen", 7.2, l -> comparable(l).seen().toString());
        add(look, "above", 5.4, l -> l.told() == null ? "" : signed(100 * l.told().above(), 0) + " %");
        add(look, "weight", 5.2, l -> l.told() == null ? "" : Figures.number(l.told().weight(), 2));
        add(look, "moves", 4.8, l -> l.told() == null ? "" : signed(l.moneyPerLog() * l.told().moves(), 0));
        add(look, "says", 6, l -> l.saysOfCar().getOrDefault(comparable(l).origin(), Texts.of("none")));
        add(look, "origin", 9.5, l -> comparable(l).origin());
        look.unitsProperty().addListener(o -> refresh());
        skinProperty().addListener(o -> Platform.runLater(this::explainHeaders));
    }

    /** Headers exist only once the skin does. */
    private void explainHeaders() {
        for (TableColumn<Line, ?> column : getColumns()) {
            Node header = lookup('#' + column.getId());
            if (header != null) {
                Tooltip.install(header, new Tooltip(Texts.of("market.own.explain." + column.getId().substring(4))));
            }
        }
    }

    private void add(Look look, String name, double width, Function<Line, String> text) {
        TableColumn<Line, String> column = new TableColumn<>();
        column.textProperty().bind(Bindings.createStringBinding(
                () -> Texts.of("market.own.column." + name, Texts.of("units", look.unitsProperty().get())),
                look.unitsProperty()));
        column.setId("own-" + name);
        column.prefWidthProperty().bind(look.textSizeProperty().multiply(width));
        column.setCellValueFactory(c -> new ReadOnlyStringWrapper(text.apply(c.getValue())));
        if (NUMBERS.contains(name)) {
            column.getStyleClass().add("number");
        }
        getColumns().add(column);
    }

    private static Comparable comparable(Line line) {
        return line.row().comparable();
    }

    private static String signed(double value, int decimals) {
        String text = Figures.number(value, decimals);
        return value > 0 && !text.equals("0") ? "+" + text : text;
    }

    /** @param car null while none is looked at */
    void show(OwnCars own, CarMarket car) {
        List<LevelRow> told = car == null ? List.of() : car.level().rows();
        Map<String, String> says = car == null ? Map.of() : car.alike().stream().collect(Collectors.toMap(
                AlikeCar::origin, a -> Figures.amount(a.adjusted().amount()), (first, second) -> first));
        double perLog = car == null || car.level().shift() == 0 ? 0 : car.moved().amount() / car.level().shift();
        boolean inStep = told.size() == own.rows().size();
        getItems().setAll(IntStream.range(0, own.rows().size())
                .mapToObj(i -> new Line(own.rows().get(i), inStep ? told.get(i) : null, says, perLog)).toList());
    }
}
