package worthsaving.trade;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Tables of this project with a header and remarks that begin with {@code #}. */
final class Resources {

    static final Path TRADE = Path.of("src", "test", "resources", "trade");

    private Resources() {}

    static List<CSVRecord> rows(Path file) throws IOException {
        CSVFormat format = CSVFormat.DEFAULT.builder()
                .setCommentMarker('#')
                .setHeader()
                .setSkipHeaderRecord(true)
                .setTrim(true)
                .get();
        try (CSVParser parser = CSVParser.parse(file, StandardCharsets.UTF_8, format)) {
            return parser.getRecords();
        }
    }
}
