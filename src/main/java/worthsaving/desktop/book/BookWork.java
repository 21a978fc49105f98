package worthsaving.desktop.book;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import worthsaving.casebook.CaseFile;
import worthsaving.casebook.Casebook;
import worthsaving.casebook.CasebookException;
import worthsaving.casebook.Edit;
import worthsaving.casebook.Opening;
import worthsaving.casebook.Saving;
import worthsaving.casebook.Trouble;
import worthsaving.desktop.Texts;

/** What is done to the casebook in the background, one thing after the other; never used by two threads at a time. */
final class BookWork {

    private final Supplier<Opening> opening;
    private final Sample sample;
    private Optional<Casebook> book = Optional.empty();
    private Trouble closed = new Trouble(Texts.of("book.not_open"), Texts.of("book.not_open.mend"));
    private BookState state = BookState.EMPTY;
    /** Read by the screen thread as well. */
    private volatile Path file;

    BookWork(Supplier<Opening> opening, Sample sample) {
        this.opening = opening;
        this.sample = sample;
    }

    /**
     * What became of one thing.
     *
     * @param readOnly whether edits are refused from now on
     * @param note of opening alone: why they are, or what else is worth telling; blank when nothing is
     * @param saving empty when nothing was to be kept or taken back
     */
    record Outcome(BookState state, boolean readOnly, Optional<String> note, Optional<Saving> saving) {}

    Outcome open() {
        Opening opened = opening.get();
        String note = "";
        if (opened instanceof Opening.Opened fine) {
            book = Optional.of(fine.casebook());
            note = String.join("; ", fine.notes());
        } else if (opened instanceof Opening.ReadOnly readOnly) {
            book = Optional.of(readOnly.casebook());
            note = words(readOnly.why());
        } else {
            closed = ((Opening.Refused) opened).why();
            note = words(closed);
        }
        file = book.map(Casebook::file).orElse(null);
        try {
            state = book.isPresent() ? BookState.of(book.get()) : state;
        } catch (CasebookException e) {
            close();
            closed = e.trouble();
            note = words(closed);
        }
        return new Outcome(state, book.map(Casebook::readOnly).orElse(true), Optional.of(note), Optional.empty());
    }

    Optional<Path> file() {
        return Optional.ofNullable(file);
    }

    Outcome save(Edit edit) {
        return write(b -> b.save(sample.carriedIn(edit, state.cases().stream().map(CaseFile::id).collect(Collectors.toSet()))));
    }

    /** Does nothing when there is nothing to take back, as when the key is held down. */
    Outcome undo() {
        return state.toUndo().isEmpty() && writable() ? unchanged() : write(Casebook::undo);
    }

    Outcome redo() {
        return state.toRedo().isEmpty() && writable() ? unchanged() : write(Casebook::redo);
    }

    private boolean writable() {
        return book.map(b -> !b.readOnly()).orElse(false);
    }

    private Outcome unchanged() {
        return new Outcome(state, false, Optional.empty(), Optional.empty());
    }

    private Outcome write(Function<Casebook, Saving> how) {
        if (book.isEmpty()) {
            return new Outcome(state, true, Optional.empty(), Optional.of(new Saving.Failed(closed)));
        }
        Saving saving;
        try {
            saving = how.apply(book.get());
            state = BookState.of(book.get());
        } catch (CasebookException e) {
            saving = new Saving.Failed(e.trouble());
        } catch (IllegalArgumentException e) {
            saving = new Saving.Failed(new Trouble(String.valueOf(e.getMessage()), Texts.of("book.not_kept.mend")));
        }
        return new Outcome(state, book.get().readOnly(), Optional.empty(), Optional.of(saving));
    }

    void close() {
        book.ifPresent(Casebook::close);
        book = Optional.empty();
    }

    static String words(Trouble trouble) {
        return Texts.of("book.trouble", trouble.reason(), trouble.mend());
    }
}
