package worthsaving.desktop.car;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
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
import worthsaving.desktop.car.Why.Topic;
import worthsaving.quantity.Money;

/** The car, the verdict in one sentence, and the figures that decide it. */
final class CarHeader extends VBox {

    private final CarModel model;
    private final Label name = Words.plain("", "heading");
    private final Label busy = Words.whole(Texts.of("car.reckoning"), "soft");
    private final VerdictBadge badge = new VerdictBadge();
    private final Label headline = Words.wrapped("", "subheading");
    private final FlowPane figures = new FlowPane(18, 4);
    private final Map<String, Shown> shown = new HashMap<>();

    /** A figure with its name under it; made once, so that the focus stays while figures move. */
    private record Shown(Label figure, Label under) {}

    CarHeader(CarModel model, CarBook book, WhyPane why) {
        super(6);
        this.model = model;
        getStyleClass().addAll("panel", "padded");
        headline.setId("car-headline");
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        HBox top = new HBox(10, name, busy, space, new BuyBar(model, book),
                button(Shortcuts.UNDO, model, book), button(Shortcuts.REDO, model, book));
        top.setAlignment(Pos.CENTER_LEFT);
        HBox verdict = new HBox(10, badge, headline);
        verdict.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(headline, Priority.ALWAYS);
        getChildren().addAll(top, verdict, figures);
        figure("ask", Optional.empty(), why);
        figure("most", Optional.of(Topic.MOST), why);
        figure("opening", Optional.of(Topic.OPENING), why);
        figure("profit", Optional.of(Topic.PROFIT), why);
        figure("loss", Optional.of(Topic.LOSS), why);
        figure("bad", Optional.of(Topic.BAD), why);
        figure("hours", Optional.of(Topic.HOURS), why);
        figure("days", Optional.of(Topic.DAYS), why);
        busy.visibleProperty().bind(model.busyProperty());
        model.scenarioProperty().addListener((o, was, is) ->
                name.setText(CarNames.title(is.listing().vehicle()) + " \u00b7 " + is.listing().id()));
        model.pictureProperty().addListener((o, was, is) -> show());
        show();
    }

    private static Button button(Shortcuts shortcut, CarModel model, CarBook book) {
        boolean undo = shortcut == Shortcuts.UNDO;
        Button button = new Button(Texts.of("menu", shortcut));
        button.setId(undo ? "undo" : "redo");
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.disableProperty().bind((undo ? model.canUndoProperty() : model.canRedoProperty()).not());
        Tooltip of = new Tooltip();
        of.textProperty().bind(undo ? book.book().undoLabelProperty() : book.book().redoLabelProperty());
        button.tooltipProperty().bind(Bindings.when(of.textProperty().isEmpty()).then((Tooltip) null).otherwise(of));
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
        figures.setVisible(false);
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
        String label = seen.shown().label();
        figures.setVisible(true);
        badge.show(seen.appraisal().verdict().kind());
        headline.setText(seen.appraisal().verdict().headline());
        money("ask", model.moved(Lever.PRICE) ? "price" : "ask", a.ask(), label);
        money("most", "most", a.mostToPay().wholeLimit(), label);
        money("opening", "opening", a.mostToPay().opening(), label);
        money("profit", way.expectedProfit(), a, label);
        put("loss", "loss", Figures.percent(way.chanceOfLoss()), label);
        money("bad", way.meanOfWorstTwentieth(), a, label);
        put("hours", "hours", Figures.hours(way.ownHours().value()), label);
        put("days", "days", Figures.days(way.days().mean()), label);
    }

    private void money(String id, double amount, Assessment a, String way) {
        put(id, id, Figures.money(new Money(amount, a.price().currency())), way);
        shown.get(id).figure().getStyleClass().remove("below-zero");
        if (amount < 0) {
            shown.get(id).figure().getStyleClass().add("below-zero");
        }
    }

    private void money(String id, String key, Optional<Money> amount, String way) {
        put(id, key, amount.map(Figures::money).orElse(Texts.of("none")), way);
    }

    private void put(String id, String key, String text, String way) {
        Shown one = shown.get(id);
        one.figure().setText(text);
        one.under().setText(Texts.of("car.figure." + key));
        Words.explained(one.under(), Texts.of("car.explain." + key, way));
    }

    private void figure(String id, Optional<Topic> topic, WhyPane why) {
        Label figure = Words.whole("", "big-figure");
        figure.setId("car-" + id);
        Label under = Words.whole("", "soft");
        HBox name = new HBox(2, under);
        name.setAlignment(Pos.CENTER_LEFT);
        topic.ifPresent(t -> name.getChildren().add(why.button(t, "", Texts.of("car.figure." + id))));
        shown.put(id, new Shown(figure, under));
        figures.getChildren().add(new VBox(figure, name));
    }
}
