package worthsaving.desktop.lot;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.StringProperty;
import worthsaving.desktop.Ground;
import worthsaving.desktop.LatestWins;
import worthsaving.desktop.ScreenThread;
import worthsaving.desktop.Texts;

/** Reads tables of listings in the background, and hands their cars to the casebook. On the screen thread only. */
final class Tables {

    private final LotBook book;
    private final StringProperty trouble;
    private final Runnable onProblems;
    private final LatestWins<Path, TableReading> reader;
    private final BooleanProperty busy = new SimpleBooleanProperty();
    private TableReading table = TableReading.NONE;

    /**
     * @param trouble where is told that a table could not be read
     * @param onProblems after {@link #problems} have changed
     */
    Tables(Supplier<Ground> ground, LotBook book, StringProperty trouble, Runnable onProblems, Executor background,
            ScreenThread screen) {
        this.book = book;
        this.trouble = trouble;
        this.onProblems = onProblems;
        this.reader = new LatestWins<>((file, cancelled, progress) -> TableReading.of(file, ground.get(), cancelled),
                (running, newer) -> false, new Arrival(), background, screen);
    }

    void open(Path file) {
        busy.set(true);
        trouble.set("");
        reader.submit(file);
    }

    void cancel() {
        reader.cancel();
        busy.set(false);
    }

    BooleanProperty busyProperty() {
        return busy;
    }

    /** Of the table read last. */
    List<Problem> problems() {
        return table.problems();
    }

    boolean hasRefusedRows() {
        return !table.refusedRows().isEmpty();
    }

    /** Writes the rows left out as they stood in the table, under its header, for mending and reading again. */
    void saveRefusedRows(Path file) throws IOException {
        StringBuilder text = new StringBuilder(table.header()).append('\n');
        table.refusedRows().forEach(row -> text.append(row).append('\n'));
        Files.writeString(file, text, StandardCharsets.UTF_8);
    }

    private final class Arrival implements LatestWins.Listener<Path, TableReading> {

        @Override
        public void done(Path file, TableReading read, boolean latest) {
            busy.set(!latest);
            List<Problem> told = new ArrayList<>(read.problems());
            told.addAll(book.add(read.title(), read.listings()));
            table = new TableReading(read.title(), List.of(), told, read.header(), read.refusedRows());
            onProblems.run();
        }

        @Override
        public void failed(Path file, RuntimeException why) {
            busy.set(false);
            if (why instanceof TableReading.UnreadableTable unreadable) {
                table = new TableReading("", List.of(), unreadable.problems(), "", List.of());
                onProblems.run();
                trouble.set(Texts.of("lot.unreadable", why.getMessage()));
            } else {
                trouble.set(Texts.of("failed", why.getMessage()));
            }
        }
    }
}
