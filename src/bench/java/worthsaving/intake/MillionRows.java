package worthsaving.intake;

import java.io.BufferedInputStream;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStream;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A file of a million rows (or as many as asked for): listings read from it against a bare Commons CSV pass over it in
 * the same run, with the peak heap, the number of progress calls, and how soon a cancelled reading ends. Run it by
 * src/bench/intake/run.sh, which holds the heap to 96 MB.
 */
final class MillionRows {

    public static void main(String[] args) throws IOException {
        int rows = args.length > 0 ? Integer.parseInt(args[0]) : 1_000_000;
        Path file = Files.createTempFile("rows", ".csv");
        try {
            write(file, rows);
            System.out.printf("%,d rows, %,d bytes, heap at most %,d MB%n", rows, Files.size(file),
                    Runtime.getRuntime().maxMemory() >> 20);
            for (int round = 1; round <= 3; round++) {
                double bare = bare(file);
                Count all = new Count(Long.MAX_VALUE);
                double ours = listings(file, all);
                System.out.printf("round %d: Commons CSV %.2f s, listings %.2f s (%.2f times), %,d good, %,d refused, "
                        + "%,d progress calls, peak heap %,d MB%n", round, bare, ours, ours / bare, all.good,
                        all.refused, all.calls, peak());
            }
            Count some = new Count(rows / 10);
            double stopped = listings(file, some);
            System.out.printf("cancelled after %,d rows: ended after %.2f s with %,d rows read%n", rows / 10, stopped,
                    some.good);
        } finally {
            Files.delete(file);
        }
    }

    private static void write(Path file, int rows) throws IOException {
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            out.write("id,year,make,model,odometer,price,fuel,title,codes,story\n");
            for (int i = 0; i < rows; i++) {
                out.write("A" + i + ",2012,ford,focus," + (10_000 + i % 200_000) + "," + (500 + i % 9000)
                        + ",gas,clean,P0300,\"Ran well, then stopped on the way home; towed. Row " + i + "\"\n");
            }
        }
    }

    private static double bare(Path file) throws IOException {
        long start = System.nanoTime();
        long length = 0;
        try (CSVParser parser = CSVParser.parse(file, StandardCharsets.UTF_8, CSVFormat.RFC4180)) {
            for (CSVRecord row : parser) {
                length += row.get(row.size() - 1).length();
            }
        }
        return length < 0 ? Double.NaN : (System.nanoTime() - start) / 1e9;
    }

    private static double listings(Path file, Count count) throws IOException {
        ManagementFactory.getMemoryPoolMXBeans().forEach(MemoryPoolMXBean::resetPeakUsage);
        long start = System.nanoTime();
        Vocabulary none = new Vocabulary(Set.of(), Set.of(), Map.of(), Set.of());
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file))) {
            new ListingReader(none, IntakeSettings.american(LocalDate.of(2026, 11, 25))).read(in, "rows.csv", count);
        }
        return (System.nanoTime() - start) / 1e9;
    }

    private static long peak() {
        return ManagementFactory.getMemoryPoolMXBeans().stream().filter(p -> p.getType() == MemoryType.HEAP)
                .mapToLong(p -> p.getPeakUsage().getUsed()).sum() >> 20;
    }

    private static final class Count implements LotSink {
        private final long most;
        private long good;
        private long refused;
        private long calls;

        private Count(long most) {
            this.most = most;
        }

        @Override
        public void good(LotEntry entry) {
            good++;
        }

        @Override
        public void refused(RefusedRow row) {
            refused++;
        }

        @Override
        public void warning(IntakeFault fault) {
            // counted in the summary
        }

        @Override
        public boolean goOn(long rows, long characters) {
            calls++;
            return rows < most;
        }
    }
}
