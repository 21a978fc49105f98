package worthsaving.intake;

import com.sun.management.GarbageCollectionNotificationInfo;
import java.io.BufferedInputStream;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStream;
import java.lang.management.GarbageCollectorMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryUsage;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Pattern;
import javax.management.NotificationEmitter;
import javax.management.openmbean.CompositeData;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A file of a million rows (or as many as asked for): listings read from it against a bare Commons CSV pass over it in
 * the same run, with the most that was left on the heap after any collection, the number of progress calls, and how soon
 * a cancelled reading ends. Times are by the clock and of the reading thread's processor time, which other work on the
 * machine disturbs less. Run it by src/bench/intake/run.sh, which holds the heap to 96 MB.
 */
final class MillionRows {

    private static final Pattern HEAP_POOL = Pattern.compile("Eden|Survivor|Old|Tenured");
    private static final AtomicLong MOST_LEFT = new AtomicLong();

    private record Took(double clock, double processor) {
        private static Took since(long clock, long processor) {
            return new Took((System.nanoTime() - clock) / 1e9, (processorTime() - processor) / 1e9);
        }
    }

    public static void main(String[] args) throws IOException {
        watchCollections();
        int rows = args.length > 0 ? Integer.parseInt(args[0]) : 1_000_000;
        Path file = Files.createTempFile("rows", ".csv");
        try {
            write(file, rows);
            System.out.printf("%,d rows, %,d bytes, heap at most %,d MB%n", rows, Files.size(file),
                    Runtime.getRuntime().maxMemory() >> 20);
            for (int round = 1; round <= 3; round++) {
                Took bare = bare(file);
                Count all = new Count(Long.MAX_VALUE);
                Took ours = listings(file, all);
                System.out.printf("round %d: Commons CSV %.2f s (processor %.2f s), listings %.2f s (%.2f s): %.2f times "
                        + "by the clock, %.2f by the processor; %,d good, %,d refused, %,d progress calls, "
                        + "at most %.1f MB left after a collection%n", round, bare.clock, bare.processor, ours.clock,
                        ours.processor, ours.clock / bare.clock, ours.processor / bare.processor, all.good,
                        all.refused, all.calls, MOST_LEFT.get() / 1e6);
            }
            Count some = new Count(rows / 10);
            Took stopped = listings(file, some);
            System.out.printf("cancelled after %,d rows: ended after %.2f s with %,d rows read%n", rows / 10, stopped.clock,
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

    private static Took bare(Path file) throws IOException {
        long start = System.nanoTime();
        long processor = processorTime();
        long length = 0;
        try (CSVParser parser = CSVParser.parse(file, StandardCharsets.UTF_8, CSVFormat.RFC4180)) {
            for (CSVRecord row : parser) {
                length += row.get(row.size() - 1).length();
            }
        }
        if (length == 0) {
            throw new IllegalStateException("nothing was read");
        }
        return Took.since(start, processor);
    }

    private static Took listings(Path file, Count count) throws IOException {
        MOST_LEFT.set(0);
        long start = System.nanoTime();
        long processor = processorTime();
        Vocabulary none = new Vocabulary(Set.of(), Set.of(), Map.of(), Set.of());
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file))) {
            new ListingReader(none, IntakeSettings.american(LocalDate.of(2026, 11, 25))).read(in, "rows.csv", count);
        }
        return Took.since(start, processor);
    }

    private static long processorTime() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    /** What is left after each collection, of every pool of the heap. */
    private static void watchCollections() {
        for (GarbageCollectorMXBean collector : ManagementFactory.getGarbageCollectorMXBeans()) {
            ((NotificationEmitter) collector).addNotificationListener((note, ignored) -> {
                Map<String, MemoryUsage> after = GarbageCollectionNotificationInfo.from((CompositeData) note.getUserData())
                        .getGcInfo().getMemoryUsageAfterGc();
                long left = after.entrySet().stream().filter(e -> HEAP_POOL.matcher(e.getKey()).find())
                        .mapToLong(e -> e.getValue().getUsed()).sum();
                MOST_LEFT.accumulateAndGet(left, Math::max);
            }, n -> n.getType().equals(GarbageCollectionNotificationInfo.GARBAGE_COLLECTION_NOTIFICATION), null);
        }
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
