package worthsaving.desktop.catalogue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.CatalogueFault;
import worthsaving.catalog.CatalogueReading;
import worthsaving.catalog.CatalogueText;
import worthsaving.catalog.CatalogueText.Line;
import worthsaving.desktop.Ground;
import worthsaving.desktop.History;
import worthsaving.desktop.LatestWins;
import worthsaving.desktop.ScreenThread;
import worthsaving.desktop.Texts;
import worthsaving.desktop.catalogue.WhatChanges.Difference;
import worthsaving.desktop.catalogue.WhatChanges.Question;
import worthsaving.vehicle.Listing;

/** A draft of the catalogue being read and changed; holds no control. To be used on the screen thread only. */
public final class CatalogueModel {

    /** Label and source that a figure gets with the user's own hand. */
    private static final String OWN = "user";

    private final Shelf shelf;
    private final ScreenThread screen;
    private final Supplier<List<Listing>> lot;
    private final Consumer<Catalogue> kept;
    private final LatestWins<Question, List<Difference>> comparing;
    private final ReadOnlyObjectWrapper<CatalogueText> draft = new ReadOnlyObjectWrapper<>();
    private final ObservableList<CatalogueFault> faults = FXCollections.observableArrayList();
    private final ObservableList<Difference> differences = FXCollections.observableArrayList();
    private final ReadOnlyStringWrapper notice = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper changed = new ReadOnlyBooleanWrapper();
    private final ReadOnlyIntegerWrapper done = new ReadOnlyIntegerWrapper();
    private History<CatalogueText> history;
    private CatalogueText onShelf;
    private CatalogueReading reading;
    private Catalogue inUse;
    private volatile WhatChanges changes;

    /**
     * @param lot the cars that a change is tried on
     * @param kept told of the catalogue once it stands on the shelf
     */
    public CatalogueModel(
            Ground ground, Shelf shelf, Supplier<List<Listing>> lot, Consumer<Catalogue> kept, Executor background,
            ScreenThread screen) {
        this.shelf = shelf;
        this.screen = screen;
        this.lot = lot;
        this.kept = kept;
        this.inUse = ground.home().asWritten();
        this.changes = new WhatChanges(ground);
        this.comparing = new LatestWins<>(
                (question, cancelled, progress) -> changes.of(question, cancelled, progress), (running, newer) -> false,
                new Arrival(), background, screen);
    }

    /** Tries changes on other ground from now on. */
    public void use(Ground ground) {
        screen.require();
        changes = new WhatChanges(ground);
        differences.clear();
    }

    /** Reads the files, once. */
    public void open() {
        screen.require();
        if (history != null) {
            return;
        }
        try {
            onShelf = shelf.read();
            history = History.of(onShelf);
            show();
        } catch (IOException | UncheckedIOException e) {
            trouble.set(Texts.of("catalogue.unreadable", shelf.place(), e.getMessage()));
        }
    }

    /** Changes a cell; a figure changed by hand is labelled as the user's own. */
    public void edit(Line line, String column, String value) {
        screen.require();
        if (line.cell(column).equals(value.strip())) {
            return;
        }
        try {
            CatalogueText next = draft.get().with(line.file(), line.line(), column, value);
            if (isFigure(line.cell(column)) && line.cells().containsKey("label")) {
                next = next.with(line.file(), line.line(), "label", OWN)
                        .with(line.file(), line.line(), "source", Texts.of("catalogue.own_figure"));
            }
            history = history.push(next);
            trouble.set("");
            show();
        } catch (IllegalArgumentException e) {
            trouble.set(e.getMessage());
        }
    }

    private static boolean isFigure(String text) {
        return text.matches("[0-9.eE+-]+");
    }

    public void undo() {
        if (history != null) {
            history = history.undo();
            show();
        }
    }

    public void redo() {
        if (history != null) {
            history = history.redo();
            show();
        }
    }

    public boolean canUndo() {
        return history != null && history.canUndo();
    }

    public boolean canRedo() {
        return history != null && history.canRedo();
    }

    /** Judges the lot with the catalogue in use and with the draft, in the background. */
    public void compare() {
        screen.require();
        if (reading instanceof CatalogueReading.Valid valid) {
            busy.set(true);
            done.set(0);
            notice.set("");
            comparing.submit(new Question(inUse, valid.catalogue(), lot.get()));
        }
    }

    public void stop() {
        comparing.cancel();
        busy.set(false);
    }

    /** Puts the draft on the shelf and into use; a faulty draft stays a draft. */
    public void keep() {
        screen.require();
        if (!(reading instanceof CatalogueReading.Valid valid)) {
            return;
        }
        try {
            shelf.keep(draft.get());
            onShelf = draft.get();
            inUse = valid.catalogue();
            show();
            notice.set(Texts.of("catalogue.kept", shelf.place()));
            kept.accept(inUse);
        } catch (IOException e) {
            trouble.set(Texts.of("catalogue.not_kept", shelf.place(), e.getMessage()));
        }
    }

    private void show() {
        reading = history.now().read();
        faults.setAll(reading.faults());
        draft.set(history.now());
        differences.clear();
        notice.set("");
        changed.set(!draft.get().equals(onShelf));
    }

    /** Null until the files are read. */
    public ReadOnlyObjectProperty<CatalogueText> draftProperty() {
        return draft.getReadOnlyProperty();
    }

    /** The draft as the program would use it; empty while it has faults. */
    Optional<Catalogue> valid() {
        return reading instanceof CatalogueReading.Valid valid ? Optional.of(valid.catalogue()) : Optional.empty();
    }

    /** What stands in the way of using the draft. */
    public ObservableList<CatalogueFault> faults() {
        return faults;
    }

    /** Cars whose figures the draft changes, from the last comparison. */
    public ObservableList<Difference> differences() {
        return differences;
    }

    public ReadOnlyStringProperty noticeProperty() {
        return notice.getReadOnlyProperty();
    }

    public ReadOnlyStringProperty troubleProperty() {
        return trouble.getReadOnlyProperty();
    }

    public ReadOnlyBooleanProperty busyProperty() {
        return busy.getReadOnlyProperty();
    }

    /** Whether the draft differs from what stands on the shelf. */
    public ReadOnlyBooleanProperty changedProperty() {
        return changed.getReadOnlyProperty();
    }

    /** Cars judged so far in the comparison that runs. */
    public ReadOnlyIntegerProperty doneProperty() {
        return done.getReadOnlyProperty();
    }

    Map<String, String> names() {
        return Entry.names(draft.get());
    }

    private final class Arrival implements LatestWins.Listener<Question, List<Difference>> {

        @Override
        public void done(Question question, List<Difference> output, boolean latest) {
            busy.set(!latest);
            differences.setAll(output);
            notice.set(Texts.of("catalogue.compared", output.size(), question.lot().size()));
        }

        @Override
        public void failed(Question question, RuntimeException why) {
            busy.set(false);
            trouble.set(Texts.of("failed", why.getMessage()));
        }

        @Override
        public void progress(Question question, int count) {
            done.set(count);
        }
    }
}
