package worthsaving.cli;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Currency;
import worthsaving.catalog.Catalogue;
import worthsaving.teardown.JournalReader;

/** Reads a teardown journal from a table. */
final class JournalFile {

    private JournalFile() {}

    static JournalReader.Reading read(Path file, Catalogue catalogue, Currency currency) throws IOException {
        try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            return JournalReader.read(file.getFileName().toString(), in, catalogue, currency);
        }
    }
}
