package worthsaving.desktop.teardown;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import worthsaving.casebook.JournalEntry;
import worthsaving.casebook.Photo;
import worthsaving.casebook.PhotoFile;
import worthsaving.desktop.ScreenThread;
import worthsaving.desktop.Texts;

/** Writes a picture into the journal by reference; its checksum is taken in the background. */
final class PhotoTaking {

    private final TeardownModel model;
    private final Executor background;
    private final ScreenThread screen;
    private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");

    PhotoTaking(TeardownModel model, Executor background, ScreenThread screen) {
        this.model = model;
        this.background = background;
        this.screen = screen;
    }

    /** @param entry the note that it belongs to */
    void take(Path picture, JournalEntry entry) {
        screen.require();
        String car = model.fileProperty().get().id();
        Path casebook = model.book().file();
        background.execute(() -> {
            try {
                Photo photo = PhotoFile.of(picture, casebook, entry.at(), entry.stage(), entry.text());
                screen.executor().execute(() -> {
                    trouble.set("");
                    model.write(car, entry, photo);
                });
            } catch (IOException e) {
                screen.executor().execute(() -> trouble.set(Texts.of("teardown.photo.unreadable", picture, e.getMessage())));
            }
        });
    }

    /** Why the last picture was not taken; blank when it was. */
    ReadOnlyStringProperty troubleProperty() {
        return trouble.getReadOnlyProperty();
    }
}
