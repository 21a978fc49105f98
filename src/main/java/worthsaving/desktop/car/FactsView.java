package worthsaving.desktop.car;

import java.util.Set;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import worthsaving.desktop.CarNames;
import worthsaving.desktop.Choices;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Units;
import worthsaving.desktop.Words;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Powertrain;
import worthsaving.vehicle.TitleBrand;
import worthsaving.vehicle.Vehicle;

/** What is known of the car, to be corrected; what was guessed is marked, with the reason. */
final class FactsView extends VBox {

    private static final double FIELD_WIDTH = 130;

    private final CarModel model;
    private final ReadOnlyObjectProperty<Units> units;
    private final GridPane grid = new GridPane();
    private final VBox more = new VBox(10);
    private final Label trouble = Words.wrapped("", "notice", "failed");
    private Listing shown;
    private int row;

    FactsView(CarModel model, ReadOnlyObjectProperty<Units> units) {
        super(10);
        this.model = model;
        this.units = units;
        getStyleClass().add("tab-page");
        setId("facts");
        grid.setHgap(14);
        grid.setVgap(3);
        trouble.visibleProperty().bind(trouble.textProperty().isNotEmpty());
        trouble.managedProperty().bind(trouble.visibleProperty());
        getChildren().addAll(Words.explained(Words.plain(Texts.of("facts.title"), "subheading"), Texts.of("facts.why")),
                trouble, grid, more);
        model.scenarioProperty().addListener((o, was, is) -> show(is.listing()));
        units.addListener((o, was, is) -> {
            Listing again = shown;
            shown = null;
            if (again != null) {
                show(again);
            }
        });
    }

    /** What judging took for granted. */
    void show(CarPicture.Seen seen) {
        more.getChildren().clear();
        if (!seen.appraisal().assumptions().isEmpty()) {
            more.getChildren().add(Words.plain(Texts.of("facts.assumed"), "subheading"));
            seen.appraisal().assumptions().forEach(a -> more.getChildren().add(Words.wrapped("\u2022 " + a)));
        }
        Listing listing = seen.appraisal().listing();
        if (!listing.story().isBlank()) {
            more.getChildren().addAll(Words.plain(Texts.of("facts.story"), "subheading"),
                    Words.wrapped(listing.story()));
        }
        more.getChildren().add(Words.wrapped(Texts.of("facts.origin", listing.origin()), "soft"));
    }

    private void show(Listing listing) {
        if (listing.equals(shown)) {
            return;
        }
        shown = listing;
        trouble.setText("");
        grid.getChildren().clear();
        row = 0;
        Vehicle car = listing.vehicle();
        Powertrain p = car.powertrain();
        word("make", Correction.Word.MAKE, model.makes());
        word("model", Correction.Word.MODEL, car.make().get().map(model::models).orElse(Set.of()));
        word("trim", Correction.Word.TRIM, Set.of());
        figure("ask", listing.ask(), Correction.Figure.ASK);
        figure("year", car.year(), Correction.Figure.YEAR);
        figure("odometer", car.odometer(), Correction.Figure.MILES);
        figure("tow", listing.towMiles(), Correction.Figure.TOW);
        line("title", Choices.of("title", TitleBrand.values(), car.title(),
                t -> model.correct(Correction.title(shown, t))), Fact.known(car.title()));
        choice("engine", p.engine(), Powertrain.Engine.values(),
                f -> new Powertrain(f, p.timing(), p.gearbox(), p.drive()));
        choice("timing", p.timing(), Powertrain.TimingDrive.values(),
                f -> new Powertrain(p.engine(), f, p.gearbox(), p.drive()));
        choice("gearbox", p.gearbox(), Powertrain.Gearbox.values(),
                f -> new Powertrain(p.engine(), p.timing(), f, p.drive()));
        choice("drive", p.drive(), Powertrain.Drive.values(),
                f -> new Powertrain(p.engine(), p.timing(), p.gearbox(), f));
        figure("litres", car.engineLitres(), Correction.Figure.LITRES);
        for (Exposure.Hazard hazard : Exposure.Hazard.values()) {
            Exposure.Level level = listing.exposure().level(hazard);
            grid.addRow(row++, Words.whole(Texts.of("hazard", hazard), "soft"), Choices.of("level",
                    Exposure.Level.values(), level, l -> model.correct(Correction.exposure(shown, hazard, l))));
        }
    }

    /** With the unit, where it has one. */
    private String name(String key) {
        return Texts.of("fact." + key, key.equals("ask") ? model.currency().getCurrencyCode()
                : Texts.of("units", units.get()));
    }

    private void word(String key, Correction.Word word, Set<String> known) {
        Fact<String> fact = Correction.fact(shown, word);
        ComboBox<String> box = new ComboBox<>();
        box.setEditable(true);
        box.setId("fact-" + key);
        box.setAccessibleText(Texts.of("fact." + key));
        known.stream().map(k -> shownAs(word, k)).forEach(box.getItems()::add);
        box.setValue(shownAs(word, fact.orElse("")));
        box.setOnAction(e -> enter(box, word));
        box.getEditor().focusedProperty().addListener((o, was, is) -> {
            if (!is) {
                enter(box, word);
            }
        });
        line(key, box, fact);
    }

    /** Price data spell makes and models in lower case; a trim is kept as it was written. */
    private static String shownAs(Correction.Word word, String name) {
        return word == Correction.Word.TRIM ? name : CarNames.capitals(name);
    }

    private void enter(ComboBox<String> box, Correction.Word word) {
        Listing before = shown;
        if (box.getScene() == null || box.getEditor().getText().equals(shownAs(word, Correction.fact(before, word).orElse("")))) {
            return;
        }
        Correction.Result result = Correction.of(before, word, box.getEditor().getText());
        trouble.setText(result.trouble());
        result.listing().ifPresent(model::correct);
    }

    private void figure(String key, Fact<?> fact, Correction.Figure figure) {
        TextField field = new TextField(Correction.text(shown, figure, units.get()));
        field.setId("fact-" + key);
        field.setMaxWidth(FIELD_WIDTH);
        field.setAccessibleText(name(key));
        field.setOnAction(e -> enter(field, figure));
        field.focusedProperty().addListener((o, was, is) -> {
            if (!is) {
                enter(field, figure);
            }
        });
        line(key, field, fact);
    }

    private void enter(TextField field, Correction.Figure figure) {
        if (field.getScene() == null || field.getText().equals(Correction.text(shown, figure, units.get()))) {
            trouble.setText("");
            return;
        }
        Correction.Result result = Correction.of(shown, figure, field.getText(), model.currency(), units.get());
        trouble.setText(result.trouble());
        result.listing().ifPresent(model::correct);
    }

    private <E extends Enum<E>> void choice(String key, Fact<E> fact, E[] values, Function<Fact<E>, Powertrain> with) {
        ComboBox<?> box = Choices.orNone(key, values, fact.get(), chosen ->
                model.correct(Correction.powertrain(shown, with.apply(Fact.ofNullable(chosen.orElse(null))))));
        line(key, box, fact);
    }

    private void line(String key, Node value, Fact<?> fact) {
        String mark = fact instanceof Fact.Assumed<?> ? Texts.of("facts.guessed")
                : fact instanceof Fact.Unknown<?> ? Texts.of("facts.unknown") : "";
        Label reason = Words.wrapped(fact instanceof Fact.Assumed<?> assumed ? assumed.why() : "", "soft");
        GridPane.setHgrow(reason, Priority.ALWAYS);
        Label name = Words.whole(name(key), "soft");
        name.setLabelFor(value);
        grid.addRow(row++, name, value, Words.whole(mark, mark.isEmpty() ? "soft" : "guess-mark"), reason);
    }
}
