package worthsaving.desktop;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import worthsaving.ranking.JudgeSettings;

/** A long invented lot: the sample over and over, each time with other miles, year and ask. */
public final class LongLot {

    private static final long SEED = 20_251_201;

    private LongLot() {}

    /** Writes so many rows as a table. */
    public static Path write(Path sample, Path file, int rows) throws IOException {
        CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).setCommentMarker('#').get();
        Random random = new Random(SEED);
        List<String> lines = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(Files.readString(sample), format)) {
            List<String> header = parser.getHeaderNames();
            List<CSVRecord> records = parser.getRecords();
            lines.add(CSVFormat.DEFAULT.format(header.toArray()));
            for (int i = 0; i < rows; i++) {
                CSVRecord record = records.get(i % records.size());
                List<String> cells = new ArrayList<>();
                for (String name : header) {
                    cells.add(varied(name, record.get(name), i, random));
                }
                lines.add(CSVFormat.DEFAULT.format(cells.toArray()));
            }
        }
        return Files.write(file, lines);
    }

    /** The usual settings with fewer points, for when so many rows shall be judged quickly and roughly. */
    public static Ground coarse(Ground ground, int points) {
        JudgeSettings s = ground.settings();
        return new Ground(ground.catalogue(), ground.values(), new JudgeSettings(s.workshop(), s.terms(), s.rule(),
                s.trust(), s.checks(), s.method().withPoints(points), s.patterns().withPoints(points),
                s.towMilesAssumed()), ground.makes(), ground.models(), ground.adverts(), ground.today());
    }

    private static String varied(String name, String cell, int row, Random random) {
        double factor = 0.8 + 0.4 * random.nextDouble();
        return switch (name) {
            case "id" -> String.format("N%04d", row + 1);
            case "odometer", "price" -> cell.matches("\\d+") ? Long.toString(Math.round(Double.parseDouble(cell) * factor))
                    : cell;
            case "year" -> cell.matches("\\d+") ? Integer.toString(Integer.parseInt(cell) - random.nextInt(3)) : cell;
            default -> cell;
        };
    }
}
