package worthsaving.desktop.car;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import worthsaving.deal.Assessment;
import worthsaving.deal.WayResult;
import worthsaving.desktop.CarNames;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Shortcuts;
import worthsaving.desktop.Texts;
import worthsaving.desktop.VerdictBadge;
import worthsaving.desktop.Words;
import worthsaving.quantity.Money;

/** The car, the verdict in one sentence, and the figures that decide it. */
final class CarHeader extends VBox {

    private final CarModel model;
    private final Label name = Words.plain("", "heading");
    private final Label busy = Words.whole(Texts.of("car.reckoning"), "soft");
    private final VerdictBadge badge = new VerdictBadge();
    private final Label headline = Words.wrapped("", "subheading");
    private final FlowPane figures = new FlowPane(22, 4);

    CarHeader(CarModel model) {
        super(6);
        this.model = model;
        getStyleClass().addAll("panel", "padded");
        headline.setId("car-headline");
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        HBox top = new HBox(10, name, busy, space, button(Shortcuts.UNDO, model), button(Shortcuts.REDO, model));
        top.setAlignment(Pos.CENTER_LEFT);
        HBox verdict = new HBox(10, badge, headline);
        verdict.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(headline, Priority.ALWAYS);
        getChildren().addAll(top, verdict, figures);
        busy.visibleProperty().bind(model.busyProperty());
        model.scenarioProperty().addListener((o, was, is) ->
                name.setText(CarNames.title(is.listing().vehicle()) + " \u00b7 " + is.listing().id()));
        model.pictureProperty().addListener((o, was, is) -> show());
        show();
    }

    private static Button button(Shortcuts shortcut, CarModel model) {
        boolean undo = shortcut == Shortcuts.UNDO;
        Button button = new Button(Texts.of("menu", shortcut));
        button.setId(undo ? "undo" : "redo");
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.disableProperty().bind((undo ? model.canUndoProperty() : model.canRedoProperty()).not());
        button.setOnAction(e -> {
            if (undo) {
                model.undo();
            } else {
                model.redo();
            }
        });
        return button;
    }

    private void show() {
        figures.getChildren().clear();
        CarPicture picture = model.pictureProperty().get();
        badge.setVisible(picture != null && picture.seen().isPresent());
        badge.setManaged(badge.isVisible());
        if (picture == null) {
            headline.setText(Texts.of("car.reckoning"));
            return;
        }
        picture.refused().ifPresent(r -> headline.setText(Texts.of("problem.line", r.reason(), r.mend())));
        picture.seen().ifPresent(this::show);
    }

    private void show(CarPicture.Seen seen) {
        Assessment a = seen.appraisal().assessment();
        WayResult way = a.way(seen.shown());
        badge.show(seen.appraisal().verdict().kind());
        headline.setText(seen.appraisal().verdict().headline());
        add("ask", model.moved(Lever.PRICE) ? "price" : "ask", a.ask().map(Figures::money));
        add("most", "most", a.mostToPay().wholeLimit().map(Figures::money));
        add("opening", "opening", a.mostToPay().opening().map(Figures::money));
        Money profit = new Money(way.expectedProfit(), a.price().currency());
        add("profit", "profit", Optional.of(Figures.money(profit)), seen.shown().label(), profit.amount() < 0);
        add("loss", "loss", Optional.of(Figures.percent(way.chanceOfLoss())), seen.shown().label(), false);
        Money bad = new Money(way.meanOfWorstTwentieth(), a.price().currency());
        add("bad", "bad", Optional.of(Figures.money(bad)), seen.shown().label(), bad.amount() < 0);
        add("hours", "hours", Optional.of(Figures.hours(way.ownHours().value())), seen.shown().label(), false);
        add("days", "days", Optional.of(Figures.days(way.days().mean())), seen.shown().label(), false);
    }

    private void add(String id, String key, Optional<String> text) {
        add(id, key, text, "", false);
    }

    private void add(String id, String key, Optional<String> text, String way, boolean belowZero) {
        Label figure = Words.whole(text.orElse(Texts.of("none")), "big-figure");
        figure.setId("car-" + id);
        if (belowZero) {
            figure.getStyleClass().add("below-zero");
        }
        Label under = Words.explained(Words.whole(Texts.of("car.figure." + key), "soft"),
                Texts.of("car.explain." + key, way));
        figures.getChildren().add(new VBox(figure, under));
    }
}
