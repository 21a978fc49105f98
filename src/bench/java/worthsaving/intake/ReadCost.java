import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import worthsaving.intake.IntakeFault;
import worthsaving.intake.IntakeSettings;
import worthsaving.intake.ListingReader;
import worthsaving.intake.LotEntry;
import worthsaving.intake.LotSink;
import worthsaving.intake.RefusedRow;
import worthsaving.intake.Vocabulary;

/**
 * Cost of reading a table of listings against a bare pass of Commons CSV over the same text, same run.
 * Run from the project folder after a build:
 * java -cp 'target/worthsaving.jar:target/lib/*' src/bench/java/worthsaving/intake/ReadCost.java [rows]
 */
final class ReadCost {

    public static void main(String[] args) throws IOException {
        int rows = args.length > 0 ? Integer.parseInt(args[0]) : 200_000;
        StringBuilder text = new StringBuilder("id,year,make,model,odometer,price,fuel,title,story\n");
        for (int i = 0; i < rows; i++) {
            text.append('A').append(i).append(",2012,ford,focus,").append(10_000 + i % 200_000)
                    .append(",1500,gas,clean,\"Ran well, then stopped. ").append("word ".repeat(20)).append("\"\n");
        }
        String table = text.toString();
        for (int round = 0; round < 5; round++) {
            System.out.printf("%,d rows, %,d characters: Commons CSV %.2f s, listings %.2f s%n", rows, table.length(),
                    bare(new StringReader(table)), listings(new StringReader(table)));
        }
    }

    private static double bare(Reader in) throws IOException {
        long start = System.nanoTime();
        long length = 0;
        try (CSVParser parser = CSVFormat.RFC4180.parse(in)) {
            for (CSVRecord row : parser) {
                length += row.get(row.size() - 1).length();
            }
        }
        return length < 0 ? Double.NaN : (System.nanoTime() - start) / 1e9;
    }

    private static double listings(Reader in) throws IOException {
        long start = System.nanoTime();
        Vocabulary none = new Vocabulary(Set.of(), Set.of(), Map.of(), Set.of());
        new ListingReader(none, IntakeSettings.american(LocalDate.of(2026, 11, 25))).read(in, "table", new LotSink() {
            @Override
            public void good(LotEntry entry) {}

            @Override
            public void refused(RefusedRow row) {
                throw new IllegalStateException(row.toString());
            }

            @Override
            public void warning(IntakeFault fault) {
                throw new IllegalStateException(fault.toString());
            }
        });
        return (System.nanoTime() - start) / 1e9;
    }
}
