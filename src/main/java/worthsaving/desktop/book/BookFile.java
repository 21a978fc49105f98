package worthsaving.desktop.book;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import worthsaving.casebook.Access;
import worthsaving.casebook.Casebook;
import worthsaving.casebook.Opening;
import worthsaving.casebook.Trouble;
import worthsaving.desktop.Texts;

/** The user's casebook file; its folder is made when there is none. */
public record BookFile(Path path) {

    public Opening open() {
        Path folder = path.toAbsolutePath().getParent();
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            return new Opening.Refused(
                    new Trouble(Texts.of("book.no_folder", folder, e.getMessage()), Texts.of("book.no_folder.mend")));
        }
        return Casebook.open(path, Access.WRITE);
    }
}
