package worthsaving.desktop.market;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import worthsaving.desktop.CarNames;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Units;
import worthsaving.market.Comparable;
import worthsaving.market.PriceKind;
import worthsaving.valuation.AlikeCar;
import worthsaving.valuation.LevelRow;

/** The user's comparables, with what each says of the car being worked on. */
final class OwnTableView extends TableView<OwnTableView.Line> {

    /** @param told null while no car is looked at */
    record Line(OwnCars.Row row, LevelRow told, Map<String, String> saysOfCar, double moneyPerLog) {}

    OwnTableView(Units units) {
        setId("market-own");
        setAccessibleText(Texts.of("market.own"));
        add("car", 15, l -> CarNames.title(comparable(l).car()));
        add("miles", 8, l -> comparable(l).car().odometer().get().map(units::text).orElse(Texts.of("none")));
        add("price", 6, l -> Figures.amount(comparable(l).price().amount()));
        add("kind", 4.5, l -> Texts.of(comparable(l).kind() == PriceKind.SALE ? "market.own.sold" : "market.own.asked"));
        add("seen", 6.5, l -> comparable(l).seen().toString());
        add("above", 6, l -> l.told() == null ? "" : signed(100 * l.told().above(), 0) + " %");
        add("weight", 5, l -> l.told() == null ? "" : Figures.number(l.told().weight(), 2));
        add("moves", 5.5, l -> l.told() == null ? "" : signed(l.moneyPerLog() * l.told().moves(), 0));
        add("says", 6, l -> l.saysOfCar().getOrDefault(comparable(l).origin(), Texts.of("none")));
        add("origin", 9, l -> comparable(l).origin());
    }

    private void add(String name, double em, Function<Line, String> text) {
        TableColumn<Line, String> column = new TableColumn<>(Texts.of("market.own.column." + name));
        column.setId("own-" + name);
        column.setPrefWidth(em * 13);
        column.setCellValueFactory(c -> new ReadOnlyStringWrapper(text.apply(c.getValue())));
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
