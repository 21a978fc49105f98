package worthsaving.desktop.teardown;

import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import worthsaving.casebook.CaseFile;
import worthsaving.desktop.CarNames;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.desktop.book.BookModel;

/** Which car, the answer in one sentence, and how the reckoning is coming along. */
final class TeardownHead extends VBox {

    private final TeardownModel model;
    private final ComboBox<CaseFile> cars = new ComboBox<>();
    private final Label headline = Words.wrapped("", "subheading");
    private final Button begin = new Button();
    private boolean filling;

    TeardownHead(TeardownModel model) {
        super(6);
        this.model = model;
        getStyleClass().addAll("panel", "padded");
        cars.setId("teardown-car");
        cars.setAccessibleText(Texts.of("teardown.car"));
        cars.setConverter(new Names());
        cars.valueProperty().addListener((o, was, is) -> {
            if (!filling && is != null) {
                model.choose(is.id());
            }
        });
        begin.setId("teardown-begin");
        begin.setMinWidth(Region.USE_PREF_SIZE);
        begin.setOnAction(e -> model.begin());
        headline.setId("teardown-headline");
        HBox.setHgrow(headline, Priority.ALWAYS);
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        HBox top = new HBox(10, Words.whole(Texts.of("teardown.title"), "heading"), cars, begin, space, progress(),
                button("undo", model.book()), button("redo", model.book()));
        top.setAlignment(Pos.CENTER_LEFT);
        getChildren().addAll(top, headline, Words.trouble(model.troubleProperty()));
        model.cars().addListener((ListChangeListener<CaseFile>) c -> fill());
        model.fileProperty().addListener(o -> fill());
        model.offeredProperty().addListener(o -> fill());
        model.pictureProperty().addListener(o -> show());
        model.stoppedProperty().addListener(o -> show());
        fill();
    }

    private HBox progress() {
        ProgressBar bar = new ProgressBar();
        bar.progressProperty().bind(Bindings.createDoubleBinding(
                () -> model.doneProperty().get() / (double) model.steps(), model.doneProperty()));
        bar.setAccessibleText(Texts.of("car.reckoning"));
        Button stop = new Button(Texts.of("lot.stop"));
        stop.setId("teardown-stop");
        stop.setMinWidth(Region.USE_PREF_SIZE);
        stop.setOnAction(e -> model.cancel());
        HBox running = new HBox(8, Words.whole(Texts.of("car.reckoning"), "soft"), bar, stop);
        running.setAlignment(Pos.CENTER_LEFT);
        running.visibleProperty().bind(model.busyProperty());
        running.managedProperty().bind(running.visibleProperty());
        Button again = new Button(Texts.of("teardown.again"));
        again.setId("teardown-again");
        again.setMinWidth(Region.USE_PREF_SIZE);
        again.setOnAction(e -> model.again());
        again.visibleProperty().bind(model.stoppedProperty());
        again.managedProperty().bind(again.visibleProperty());
        return new HBox(8, running, again);
    }

    private static Button button(String key, BookModel book) {
        boolean undo = key.equals("undo");
        Button button = new Button(Texts.of("menu." + key));
        button.setId("teardown-" + key);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.disableProperty().bind((undo ? book.undoLabelProperty() : book.redoLabelProperty()).isEmpty());
        button.setOnAction(e -> {
            if (undo) {
                book.undo();
            } else {
                book.redo();
            }
        });
        return button;
    }

    private void fill() {
        filling = true;
        cars.getItems().setAll(model.cars());
        cars.setValue(model.fileProperty().get());
        filling = false;
        boolean offer = model.fileProperty().get() == null && model.offeredProperty().get() != null;
        begin.setVisible(offer);
        begin.setManaged(offer);
        if (offer) {
            begin.setText(Texts.of("teardown.begin", CarNames.title(model.offeredProperty().get().vehicle())));
        }
        show();
    }

    private void show() {
        TeardownPicture picture = model.pictureProperty().get();
        if (model.fileProperty().get() == null) {
            headline.setText(Texts.of("teardown.none"));
        } else if (picture == null) {
            headline.setText(Texts.of(model.stoppedProperty().get() ? "teardown.stopped" : "car.reckoning"));
        } else {
            String words = picture.seen().map(s -> AdviceWords.headline(s.advice()))
                    .orElseGet(() -> picture.refused().map(r -> Texts.of("problem.line", r.reason(), r.mend())).orElse(""));
            headline.setText(model.stoppedProperty().get() ? Texts.of("teardown.out_of_date", words) : words);
        }
    }

    private static final class Names extends StringConverter<CaseFile> {

        @Override
        public String toString(CaseFile of) {
            return Optional.ofNullable(of).map(c -> Texts.of(c.invented() ? "teardown.case.invented" : "teardown.case",
                    CarNames.title(c.listing().vehicle()), c.id())).orElse("");
        }

        @Override
        public CaseFile fromString(String text) {
            throw new UnsupportedOperationException("cars are chosen, not typed");
        }
    }
}
