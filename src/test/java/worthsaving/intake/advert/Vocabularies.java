package worthsaving.intake.advert;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;

/** The shipped vocabulary, read once for all tests. */
final class Vocabularies {

    static final Path FOLDER = Path.of("shared", "vocabulary");
    static final LocalDate DAY = LocalDate.of(2025, 6, 1);
    static final Vocabulary SHIPPED = Vocabulary.read(Vocabularies::open);
    static final AdvertReader READER = new AdvertReader(SHIPPED);

    private Vocabularies() {}

    static Reader open(String name) {
        try {
            Path file = FOLDER.resolve(name);
            return Files.exists(file) ? Files.newBufferedReader(file) : null;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static AdvertReading read(String text) {
        return READER.read(text, DAY);
    }
}
