package worthsaving.desktop.teardown;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import worthsaving.casebook.CaseFile;
import worthsaving.casebook.JournalEntry;
import worthsaving.casebook.Numbered;
import worthsaving.casebook.Photo;
import worthsaving.casebook.PhotoFile;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;

/** The journal by stage, newest stage first; every line can be corrected or struck. */
final class JournalPane extends VBox {

    private static final double THUMBNAIL = 72;

    private final TeardownModel model;
    private final Consumer<Numbered<JournalEntry>> onCorrect;

    JournalPane(TeardownModel model, Consumer<Numbered<JournalEntry>> onCorrect) {
        super(8);
        this.model = model;
        this.onCorrect = onCorrect;
        getStyleClass().add("padded");
        setId("journal");
    }

    void show(CaseFile file) {
        getChildren().setAll(
                Words.explained(Words.plain(Texts.of("teardown.journal"), "subheading"), Texts.of("teardown.journal.why")));
        Map<String, List<Node>> stages = new LinkedHashMap<>();
        for (Numbered<JournalEntry> entry : file.journal()) {
            stages.computeIfAbsent(stage(entry.value().stage()), s -> new ArrayList<>()).add(line(entry, file));
        }
        for (Numbered<Photo> photo : file.photos()) {
            if (photo.value().entry().isEmpty()) {
                stages.computeIfAbsent(stage(photo.value().stage()), s -> new ArrayList<>()).add(picture(photo));
            }
        }
        List<String> order = new ArrayList<>(stages.keySet());
        for (int i = order.size() - 1; i >= 0; i--) {
            VBox lines = new VBox(4, Words.plain(order.get(i), "stage-of-journal"));
            lines.getChildren().addAll(stages.get(order.get(i)));
            getChildren().add(lines);
        }
        if (stages.isEmpty()) {
            getChildren().add(Words.wrapped(Texts.of("teardown.journal.empty"), "soft"));
        }
    }

    private static String stage(String written) {
        return written.isBlank() ? Texts.of("teardown.stage.none") : written;
    }

    private VBox line(Numbered<JournalEntry> entry, CaseFile file) {
        String day = entry.value().at().atZone(ZoneId.systemDefault()).toLocalDate().toString();
        Label what = Words.wrapped(EntryWords.of(entry.value(), model.catalogue()));
        HBox.setHgrow(what, Priority.ALWAYS);
        what.setMaxWidth(Double.MAX_VALUE);
        Button correct = button("teardown.correct", entry.number());
        correct.setOnAction(e -> onCorrect.accept(entry));
        Button strike = button("teardown.strike", entry.number());
        strike.setOnAction(e -> model.strike(entry.number()));
        HBox buttons = new HBox(correct, strike);
        HBox row = new HBox(6, Words.whole(day, "soft"), what, buttons);
        row.setAlignment(Pos.TOP_LEFT);
        VBox line = new VBox(2, row);
        line.setId("entry-" + entry.number());
        List<Numbered<Photo>> photos = file.photosOf(entry.number());
        if (!photos.isEmpty()) {
            FlowPane pictures = new FlowPane(6, 4);
            photos.forEach(p -> pictures.getChildren().add(picture(p)));
            line.getChildren().add(pictures);
        }
        return line;
    }

    private Button button(String key, long number) {
        Button button = new Button(Texts.of(key));
        button.setId(key.replace("teardown.", "") + "-" + number);
        button.getStyleClass().addAll("plain", "small-button");
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.disableProperty().bind(model.book().readOnlyProperty());
        return button;
    }

    private Node picture(Numbered<Photo> photo) {
        Path place = PhotoFile.place(photo.value(), model.book().file());
        Button drop = new Button(Texts.of("teardown.photo.drop"));
        drop.setId("drop-photo-" + photo.number());
        drop.getStyleClass().addAll("plain", "small-button");
        drop.setMinWidth(Region.USE_PREF_SIZE);
        drop.disableProperty().bind(model.book().readOnlyProperty());
        drop.setOnAction(e -> model.dropPhoto(photo.number()));
        if (!Files.isReadable(place)) {
            return new VBox(2, Words.wrapped(Texts.of("teardown.photo.missing", place), "stop-words"), drop);
        }
        Image image = new Image(place.toUri().toString(), THUMBNAIL, THUMBNAIL, true, true, true);
        ImageView view = new ImageView(image);
        view.setAccessibleText(photo.value().caption());
        Tooltip.install(view, new Tooltip(place.toString()));
        VBox box = new VBox(2, view, drop);
        image.errorProperty().addListener((o, was, is) -> {
            if (is) {
                box.getChildren().set(0, Words.wrapped(Texts.of("teardown.photo.no_picture", place), "stop-words"));
            }
        });
        return box;
    }
}
