package worthsaving.desktop.book;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyLongProperty;
import javafx.beans.property.ReadOnlyLongWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import worthsaving.casebook.CaseFile;
import worthsaving.casebook.Edit;
import worthsaving.casebook.Edited;
import worthsaving.casebook.Opening;
import worthsaving.casebook.Saving;
import worthsaving.desktop.ScreenThread;
import worthsaving.desktop.Texts;
import worthsaving.desktop.book.BookWork.Outcome;
import worthsaving.shell.CasebookPath;

/**
 * The screens' way to the casebook; holds no control. Edits are carried out in the order in which they are made, on one
 * background thread, and {@link #cases()} follows once nothing is waiting any more. To be used on the screen thread only.
 */
public final class BookModel {

    private final BookWork work;
    private final Sample sample;
    private final Executor inOrder;
    private final ScreenThread screen;
    private final ObservableList<CaseFile> cases = FXCollections.observableArrayList();
    private final ObservableList<CaseFile> shown = FXCollections.unmodifiableObservableList(cases);
    private final ReadOnlyBooleanWrapper readOnly = new ReadOnlyBooleanWrapper(true);
    private final ReadOnlyBooleanWrapper open = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper note = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper undoLabel = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper redoLabel = new ReadOnlyStringWrapper("");
    private final ReadOnlyLongWrapper revision = new ReadOnlyLongWrapper();
    private BookState state = BookState.EMPTY;
    private int waiting;

    /**
     * Begins with opening the casebook, in the background.
     *
     * @param opening opens it; called on {@code inOrder}
     * @param inOrder carries out one thing after the other
     */
    public BookModel(Supplier<Opening> opening, Sample sample, Executor inOrder, ScreenThread screen) {
        screen.require();
        this.work = new BookWork(opening, sample);
        this.sample = sample;
        this.inOrder = inOrder;
        this.screen = screen;
        queue(work::open);
    }

    /**
     * The casebook's cases in the order in which they were added, then those of the sample that are in the file only once
     * they are touched; without invented ones while they are hidden. Not to be changed.
     */
    public ObservableList<CaseFile> cases() {
        return shown;
    }

    /** The case with an id, shown or hidden: the casebook's, else the sample's. */
    public Optional<CaseFile> caseOf(String id) {
        return all().stream().filter(c -> c.id().equals(id)).findFirst();
    }

    /** The cases that are in the casebook's file, by id, whether shown or hidden. */
    public Map<String, CaseFile> inFile() {
        return state.cases().stream().collect(Collectors.toMap(CaseFile::id, Function.identity()));
    }

    /** The casebook's file, beside which photos are looked for; until it is open, where one usually lies. */
    public Path file() {
        return work.file().orElseGet(CasebookPath::usual);
    }

    /** Settings by name; those of the sample's cases where the casebook has none. */
    public Map<String, String> settings() {
        return sample.settingsUnder(state.cases(), state.settings());
    }

    /** That a case was bought, and for what. */
    public Optional<Bought> bought(String id) {
        return Optional.ofNullable(settings().get(Bought.setting(id))).flatMap(Bought::read);
    }

    /** Whether invented cases are hidden. */
    public boolean sampleHidden() {
        return Sample.hidden(state.settings());
    }

    /** Hides all invented cases, or shows them again. */
    public void hideSample(boolean hidden) {
        save(Sample.hide(hidden, state.settings(), Texts.of(hidden ? "book.hide" : "book.show")));
    }

    /** Queues an edit; of an untouched case of the sample it first takes the case into the casebook, as one edit. */
    public void save(Edit edit) {
        queue(() -> work.save(edit));
    }

    /** Takes back the last edit, of whatever screen or day. */
    public void undo() {
        queue(work::undo);
    }

    /** Does the edit again that was taken back last. */
    public void redo() {
        queue(work::redo);
    }

    /** Whether edits are refused; {@link #noteProperty()} says why. So it is until the casebook is open. */
    public ReadOnlyBooleanProperty readOnlyProperty() {
        return readOnly.getReadOnlyProperty();
    }

    public boolean readOnly() {
        return readOnly.get();
    }

    /** Whether opening has been tried: from then on {@link #cases()} are what there is. */
    public ReadOnlyBooleanProperty openProperty() {
        return open.getReadOnlyProperty();
    }

    /** Whether something waits to be kept. */
    public ReadOnlyBooleanProperty busyProperty() {
        return busy.getReadOnlyProperty();
    }

    /** What is to be told of the casebook as a whole while the window is open, with the mend; blank when nothing is. */
    public ReadOnlyStringProperty noteProperty() {
        return note.getReadOnlyProperty();
    }

    /** Why the last edit was not kept, with the mend; blank when it was. */
    public ReadOnlyStringProperty troubleProperty() {
        return trouble.getReadOnlyProperty();
    }

    /** What was kept or taken back last, in words; blank before the first edit. */
    public ReadOnlyStringProperty saidProperty() {
        return said.getReadOnlyProperty();
    }

    /** The edit that {@link #undo} takes back, in words; blank when there is none. */
    public ReadOnlyStringProperty undoLabelProperty() {
        return undoLabel.getReadOnlyProperty();
    }

    /** The edit that {@link #redo} does again, in words; blank when there is none. */
    public ReadOnlyStringProperty redoLabelProperty() {
        return redoLabel.getReadOnlyProperty();
    }

    public boolean canUndo() {
        return !undoLabel.get().isEmpty();
    }

    public boolean canRedo() {
        return !redoLabel.get().isEmpty();
    }

    /** Changes whenever cases or settings may have. */
    public ReadOnlyLongProperty revisionProperty() {
        return revision.getReadOnlyProperty();
    }

    /**
     * Closes the casebook after everything that waits is kept.
     *
     * @return done once it is closed
     */
    public CompletableFuture<Void> close() {
        screen.require();
        return CompletableFuture.runAsync(work::close, inOrder);
    }

    private List<CaseFile> all() {
        return sample.under(state.cases(), state.settings());
    }

    private void queue(Supplier<Outcome> what) {
        screen.require();
        waiting++;
        busy.set(true);
        try {
            inOrder.execute(() -> {
                Outcome outcome = what.get();
                screen.executor().execute(() -> arrived(outcome));
            });
        } catch (RejectedExecutionException e) {
            waiting--; // the casebook was closed before
            trouble.set(Texts.of("book.trouble", Texts.of("book.not_open"), Texts.of("book.not_open.mend")));
        }
    }

    private void arrived(Outcome outcome) {
        waiting--;
        readOnly.set(outcome.readOnly());
        outcome.note().ifPresent(words -> {
            note.set(words);
            open.set(true);
        });
        outcome.saving().ifPresent(saving -> {
            trouble.set(saving instanceof Saving.Failed failed ? BookWork.words(failed.why()) : "");
            if (saving instanceof Saving.Done done) {
                said.set(words(done.edited()));
            }
        });
        state = outcome.state();
        undoLabel.set(state.toUndo().map(Edited::label).orElse(""));
        redoLabel.set(state.toRedo().map(Edited::label).orElse(""));
        if (waiting == 0) {
            boolean hidden = sampleHidden();
            List<CaseFile> now = all().stream().filter(c -> !hidden || !c.invented()).toList();
            if (!now.equals(cases)) {
                cases.setAll(now);
            }
            busy.set(false);
            revision.set(revision.get() + 1);
        }
    }

    /** An undoing is labelled by the casebook as such. */
    private static String words(Edited edited) {
        return edited.kind() == Edited.Kind.EDIT ? Texts.of("book.kept", edited.label())
                : Texts.of("book.kept_again", edited.label());
    }
}
