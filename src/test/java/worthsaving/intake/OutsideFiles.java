package worthsaving.intake;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Tables of outside values, where they are at hand; a test that needs them is skipped otherwise. */
final class OutsideFiles {

    private static final Path FOLDER = Path.of(System.getProperty("worthsaving.shared", "../shared"));

    private OutsideFiles() {}

    static Path file(String relative) {
        Path file = FOLDER.resolve(relative);
        assumeTrue(Files.exists(file), relative + " is not at hand; say where with -Dworthsaving.shared=FOLDER");
        return file;
    }

    static List<CSVRecord> rows(String relative) throws IOException {
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
        try (CSVParser parser = CSVParser.parse(file(relative), StandardCharsets.UTF_8, format)) {
            return parser.getRecords();
        }
    }
}
