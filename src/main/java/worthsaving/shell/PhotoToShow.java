package worthsaving.shell;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import worthsaving.report.sheet.PhotoReading;

/**
 * A picture on the drive that is to go on a decision sheet.
 *
 * @param name what stands below it
 */
public record PhotoToShow(Path place, String name) {

    /** Under its file's name. */
    public PhotoToShow(Path place) {
        this(place, place.getFileName().toString());
    }

    /** Reads the file; never fails. */
    public PhotoReading read() {
        try {
            return Files.size(place) > PhotoReading.MOST_BYTES ? PhotoReading.tooLarge(name)
                    : PhotoReading.of(name, Files.readAllBytes(place));
        } catch (IOException e) {
            return PhotoReading.unreadable(name);
        }
    }
}
