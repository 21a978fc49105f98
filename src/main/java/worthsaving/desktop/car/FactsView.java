package worthsaving.desktop.car;

import java.util.function.Function;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import worthsaving.desktop.CarNames;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Vehicle;

/** What is known of the car; what was guessed is marked, with the reason. */
final class FactsView extends VBox {

    private final GridPane grid = new GridPane();
    private int row;

    FactsView() {
        super(10);
        getStyleClass().add("tab-page");
        setId("facts");
        grid.setHgap(14);
        grid.setVgap(3);
    }

    void show(CarPicture.Seen seen) {
        Listing listing = seen.appraisal().listing();
        getChildren().setAll(Words.plain(Texts.of("facts.title"), "subheading"), grid);
        fill(listing);
        if (!seen.appraisal().assumptions().isEmpty()) {
            getChildren().add(Words.plain(Texts.of("facts.assumed"), "subheading"));
            seen.appraisal().assumptions().forEach(a -> getChildren().add(Words.wrapped("\u2022 " + a)));
        }
        if (!listing.story().isBlank()) {
            getChildren().addAll(Words.plain(Texts.of("facts.story"), "subheading"), Words.wrapped(listing.story()));
        }
        getChildren().add(Words.wrapped(Texts.of("facts.origin", listing.origin()), "soft"));
    }

    private void fill(Listing listing) {
        grid.getChildren().clear();
        row = 0;
        Vehicle car = listing.vehicle();
        fact("year", car.year(), Object::toString);
        fact("make", car.make(), CarNames::capitals);
        fact("model", car.model(), CarNames::capitals);
        fact("trim", car.trim(), t -> t);
        fact("odometer", car.odometer(), d -> Texts.of("facts.miles", Figures.number(d.miles(), 0)));
        fact("engine", car.powertrain().engine(), e -> Texts.of("engine", e));
        fact("litres", car.engineLitres(), l -> Texts.of("facts.l", Figures.number(l, 1)));
        fact("timing", car.powertrain().timing(), t -> Texts.of("timing", t));
        fact("gearbox", car.powertrain().gearbox(), g -> Texts.of("gearbox", g));
        fact("drive", car.powertrain().drive(), d -> Texts.of("drive", d));
        fact("title", Fact.known(Texts.of("title", car.title())), t -> t);
        fact("tow", listing.towMiles(), m -> Texts.of("facts.miles", Figures.number(m, 0)));
        for (Exposure.Hazard hazard : Exposure.Hazard.values()) {
            Exposure.Level level = listing.exposure().level(hazard);
            if (level != Exposure.Level.UNKNOWN) {
                line(Texts.of("hazard", hazard), Texts.of("level", level), "", "");
            }
        }
    }

    private <T> void fact(String key, Fact<T> fact, Function<T, String> text) {
        String name = Texts.of("fact." + key);
        if (fact instanceof Fact.Known<T> known) {
            line(name, text.apply(known.value()), "", "");
        } else if (fact instanceof Fact.Assumed<T> assumed) {
            line(name, text.apply(assumed.value()), Texts.of("facts.guessed"), assumed.why());
        } else {
            line(name, Texts.of("none"), Texts.of("facts.unknown"), "");
        }
    }

    private void line(String name, String value, String mark, String why) {
        Label reason = Words.wrapped(why, "soft");
        GridPane.setHgrow(reason, Priority.ALWAYS);
        Label marked = Words.whole(mark, mark.isEmpty() ? "soft" : "guess-mark");
        grid.addRow(row++, Words.whole(name, "soft"), Words.whole(value), marked, reason);
    }
}
