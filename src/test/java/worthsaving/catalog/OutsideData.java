package worthsaving.catalog;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Optional tables outside the project; a test that needs one is skipped when it is absent. */
final class OutsideData {

    private static final Path FOLDER = Path.of(System.getProperty("worthsaving.shared", "../shared"));

    private OutsideData() {}

    static List<CSVRecord> rowsOrSkip(String file) throws IOException {
        Path path = FOLDER.resolve(file);
        assumeTrue(Files.exists(path), () -> path + " is not here: set -Dworthsaving.shared to its folder");
        try (CSVParser parser = CSVParser.parse(
                path,
                StandardCharsets.UTF_8,
                CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get())) {
            return parser.getRecords();
        }
    }
}
