package worthsaving.desktop.teardown;

import java.io.File;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import worthsaving.casebook.CaseFile;
import worthsaving.casebook.JournalEntry;
import worthsaving.casebook.Numbered;
import worthsaving.catalog.Catalogue;
import worthsaving.desktop.Choices;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.desktop.teardown.Line.Field;
import worthsaving.vehicle.Observation.Sight;

/** One line to add to the journal, or to correct in it. */
final class EntryForm extends VBox {

    private static final int FIGURE = 5;
    private static final int DAY = 7;
    private static final int STAGE = 8;

    private final TeardownModel model;
    private final ComboBox<Kind> kind;
    private final SubjectField subject = new SubjectField();
    private final ComboBox<Sight> sight;
    private final TextField words = new TextField();
    private final TextField figure = new TextField();
    private final TextField planned = new TextField();
    private final TextField day = new TextField();
    private final TextField stage = new TextField();
    private final Button add = new Button(Texts.of("teardown.add"));
    private final Button leave = new Button(Texts.of("teardown.leave"));
    private final Map<Field, Label> faults = new EnumMap<>(Field.class);
    private final HBox line = new HBox(8);
    private BiFunction<FileChooser, Window, File> whichPicture = FileChooser::showOpenDialog;
    private Optional<Long> correcting = Optional.empty();
    private String car = "";
    private final PhotoTaking photos;
    private final Supplier<LocalDate> today;

    EntryForm(TeardownModel model, PhotoTaking photos, Supplier<LocalDate> today) {
        super(4);
        this.model = model;
        this.photos = photos;
        this.today = today;
        setId("entry-form");
        getStyleClass().addAll("panel", "tab-page");
        kind = Choices.of("teardown.kind", Kind.values(), Kind.FINDING, k -> arrange());
        kind.setId("line-kind");
        kind.setAccessibleText(Texts.of("teardown.line.kind"));
        kind.setMinWidth(Region.USE_PREF_SIZE);
        sight = Choices.box(List.of(Sight.PRESENT, Sight.ABSENT, Sight.UNSURE), Sight.PRESENT, this::sight, s -> {});
        sight.setId("line-sight");
        sight.setMinWidth(Region.USE_PREF_SIZE);
        sight.setAccessibleText(Texts.of("teardown.line.sight"));
        subject.textProperty().addListener((o, was, is) -> relabel());
        field(words, "words", 0);
        field(figure, "figure", FIGURE);
        field(planned, "planned", FIGURE);
        field(day, "day", DAY);
        field(stage, "stage", STAGE);
        day.setText(today.get().toString());
        for (Field f : Field.values()) {
            Label fault = Words.wrapped("", "stop-words");
            fault.setId("fault-" + f);
            fault.visibleProperty().bind(fault.textProperty().isNotEmpty());
            fault.managedProperty().bind(fault.visibleProperty());
            faults.put(f, fault);
        }
        add.setId("line-add");
        add.setDefaultButton(false);
        add.setMinWidth(Region.USE_PREF_SIZE);
        add.setOnAction(e -> add());
        add.disableProperty().bind(model.book().readOnlyProperty().or(model.fileProperty().isNull()));
        leave.setId("line-leave");
        leave.setMinWidth(Region.USE_PREF_SIZE);
        leave.setOnAction(e -> clear());
        line.setAlignment(Pos.TOP_LEFT);
        getChildren().add(line);
        arrange();
    }

    private void field(TextField field, String key, int columns) {
        field.setId("line-" + key);
        field.setAccessibleText(Texts.of("teardown.line." + key));
        if (columns > 0) {
            field.setPrefColumnCount(columns);
            field.setMinWidth(Region.USE_PREF_SIZE);
        }
        field.setOnAction(e -> add());
    }

    /** Asks for pictures in another way than by the system's dialog, which no test can drive. */
    void picturesFrom(BiFunction<FileChooser, Window, File> which) {
        whichPicture = which;
    }

    void find() {
        (kind.getValue().chosen() ? subject : words).requestFocus();
    }

    /** Goes on in the stage of the last entry; another car's line is not kept. */
    void show(CaseFile file) {
        if (!file.id().equals(car)) {
            car = file.id();
            clear();
            stage.setText(file.journal().isEmpty() ? ""
                    : file.journal().get(file.journal().size() - 1).value().stage());
        }
    }

    /** Writes down that an access step is open now. */
    void opened(String step) {
        model.write(JournalEntry.on(today.get(), ZoneId.systemDefault(), stage.getText().strip(),
                new JournalEntry.What.Opened(step), ""));
    }

    /** Puts an entry into the line, to be corrected. */
    void correct(Numbered<JournalEntry> entry) {
        Line was = Line.of(entry.value(), this::known);
        correcting = Optional.of(entry.number());
        kind.setValue(was.kind());
        arrange();
        subject.choose(was.subject());
        sight.setValue(was.sight());
        words.setText(was.words());
        figure.setText(was.figure());
        planned.setText(was.planned());
        day.setText(was.day());
        stage.setText(was.stage());
        add.setText(Texts.of("teardown.keep"));
        arrange();
        find();
    }

    private Optional<Subject> known(String id) {
        Catalogue catalogue = model.catalogue();
        return Optional.ofNullable(catalogue.accessById().get(id)).map(s -> new Subject(id, s.name(), false))
                .or(() -> Optional.ofNullable(catalogue.findingsById().get(id)).map(f -> new Subject(id, f.name(), false)))
                .or(() -> Optional.ofNullable(catalogue.itemsById().get(id)).map(i -> new Subject(id, i.name(), true)));
    }

    private void clear() {
        correcting = Optional.empty();
        add.setText(Texts.of("teardown.add"));
        subject.choose(Optional.empty());
        words.clear();
        figure.clear();
        planned.clear();
        day.setText(today.get().toString());
        faults.values().forEach(f -> f.setText(""));
        arrange();
    }

    /** Shows the fields of the kind, on one line. */
    private void arrange() {
        Kind now = kind.getValue();
        subject.offer(Subject.of(model.catalogue(), now));
        line.getChildren().setAll(box("kind", kind, Optional.empty()));
        if (now.chosen()) {
            line.getChildren().add(grown(box("subject", subject, Optional.of(Field.SUBJECT))));
        }
        if (now == Kind.FINDING) {
            line.getChildren().add(box("sight", sight, Optional.empty()));
        }
        if (now.figure()) {
            line.getChildren().addAll(box(now.money() ? "money" : "hours", figure, Optional.of(Field.FIGURE)),
                    box(now.money() ? "planned_money" : "planned_hours", planned, Optional.of(Field.PLANNED)));
        }
        line.getChildren().add(grown(box("words", words, Optional.of(Field.WORDS))));
        line.getChildren().addAll(box("stage", stage, Optional.empty()), box("day", day, Optional.of(Field.DAY)));
        VBox buttons = new VBox(2, Words.plain(" "), correcting.isPresent() ? new HBox(6, add, leave) : add);
        line.getChildren().add(buttons);
        relabel();
    }

    private void relabel() {
        Sight was = sight.getValue();
        sight.setConverter(Choices.box(List.<Sight>of(), null, this::sight, s -> {}).getConverter());
        sight.setValue(null);
        sight.setValue(was);
    }

    /** An item has failed or is sound; a finding is there or not. */
    private String sight(Sight of) {
        return Texts.of(subject.chosen().map(Subject::item).orElse(false) ? "teardown.failed" : "sight", of);
    }

    private VBox box(String key, Region control, Optional<Field> fault) {
        Label name = Words.explained(Words.whole(Texts.of("teardown.line." + key, model.currency().getCurrencyCode()), "soft"),
                Texts.of("teardown.line.why." + key));
        name.setLabelFor(control);
        control.setMaxWidth(Double.MAX_VALUE);
        VBox box = new VBox(2, name, control);
        fault.map(faults::get).ifPresent(box.getChildren()::add);
        return box;
    }

    private static Node grown(VBox box) {
        HBox.setHgrow(box, Priority.ALWAYS);
        box.setPrefWidth(120);
        return box;
    }

    private void add() {
        Line typed = new Line(kind.getValue(), subject.chosen(), sight.getValue(), words.getText(), figure.getText(),
                planned.getText(), day.getText(), stage.getText());
        Line.Read read = typed.read(model.currency(), today.get());
        faults.forEach((field, label) -> label.setText(read.wrong().getOrDefault(field, "")));
        if (read.entry().isEmpty()) {
            return;
        }
        if (correcting.isPresent()) {
            model.rewrite(correcting.get(), read.entry().get());
        } else if (kind.getValue() == Kind.PHOTO) {
            FileChooser chooser = new FileChooser();
            chooser.setTitle(Texts.of("teardown.photo.choose"));
            chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(
                    Texts.of("teardown.photo.files"), "*.jpg", "*.jpeg", "*.png", "*.gif", "*.bmp"));
            File file = whichPicture.apply(chooser, getScene().getWindow());
            if (file == null) {
                return;
            }
            photos.take(file.toPath(), read.entry().get());
        } else {
            model.write(read.entry().get());
        }
        String keptDay = day.getText();
        clear();
        day.setText(keptDay);
        requestFocus(); // out of the fields, where the key for undoing undoes what is typed
    }
}
