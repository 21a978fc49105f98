package worthsaving.catalog;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** The catalogue of the project folder, for tests. */
public final class ShippedCatalogue {

    public static final Path FOLDER = Path.of("shared", "catalogue");

    private ShippedCatalogue() {}

    public static Catalogue load() {
        return CatalogueReader.read(ShippedCatalogue::open).orElseThrow();
    }

    public static Reader open(String file) {
        try {
            return Files.newBufferedReader(FOLDER.resolve(file), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static String text(String file) {
        try {
            return Files.readString(FOLDER.resolve(file), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
