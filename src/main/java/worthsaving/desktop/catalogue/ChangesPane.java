package worthsaving.desktop.catalogue;

import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import worthsaving.desktop.CarNames;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.VerdictBadge;
import worthsaving.desktop.Words;
import worthsaving.desktop.catalogue.WhatChanges.Difference;
import worthsaving.ranking.Standing;

/** What a changed figure does to the cars of the lot; there only when it was asked for. */
final class ChangesPane extends VBox {

    private final CatalogueModel model;
    private final VBox cars = new VBox(8);

    ChangesPane(CatalogueModel model) {
        super(8);
        this.model = model;
        setId("catalogue-changes");
        getStyleClass().addAll("panel", "padded", "side-column");
        Label running = new Label();
        running.setWrapText(true);
        ReadOnlyIntegerProperty done = model.doneProperty();
        running.textProperty().bind(Bindings.createStringBinding(
                () -> Texts.of("catalogue.comparing", Figures.number(done.get(), 0)), done));
        Button stop = new Button(Texts.of("lot.stop"));
        stop.setOnAction(e -> model.stop());
        HBox progress = new HBox(8, running, stop);
        progress.visibleProperty().bind(model.busyProperty());
        progress.managedProperty().bind(model.busyProperty());
        ScrollPane scroll = new ScrollPane(cars);
        scroll.setFitToWidth(true);
        getChildren().addAll(Words.plain(Texts.of("catalogue.changes"), "subheading"), progress, scroll);
        visibleProperty().bind(model.busyProperty().or(Bindings.isNotEmpty(model.differences())));
        managedProperty().bind(visibleProperty());
        model.differences().addListener((ListChangeListener<Difference>) c -> fill());
    }

    private void fill() {
        cars.getChildren().setAll(model.differences().stream().map(ChangesPane::car).toList());
    }

    private static VBox car(Difference difference) {
        Standing before = difference.before();
        Standing after = difference.after();
        VBox box = new VBox(3, Words.wrapped(CarNames.title(after.listing().vehicle()), "subheading"));
        box.getStyleClass().add("ruled");
        FlowPane verdicts = new FlowPane(6, 3, badge(before));
        if (difference.ofVerdict()) {
            verdicts.getChildren().addAll(Words.whole(Texts.of("catalogue.to")), badge(after));
        }
        box.getChildren().addAll(verdicts,
                line("catalogue.most", most(before), most(after)),
                line("catalogue.profit", Figures.amount(before.expectedProfit().amount()),
                        Figures.amount(after.expectedProfit().amount())),
                line("catalogue.loss", Figures.percent(before.chanceOfLoss()), Figures.percent(after.chanceOfLoss())));
        return box;
    }

    private static VerdictBadge badge(Standing standing) {
        VerdictBadge badge = new VerdictBadge();
        badge.show(standing.verdict().kind());
        return badge;
    }

    private static String most(Standing standing) {
        return standing.mostToPay().wholeLimit().map(m -> Figures.amount(m.amount())).orElse(Texts.of("none"));
    }

    private static Label line(String key, String before, String after) {
        return before.equals(after)
                ? Words.wrapped(Texts.of("catalogue.same", Texts.of(key), before), "soft")
                : Words.wrapped(Texts.of("catalogue.from_to", Texts.of(key), before, after));
    }
}
