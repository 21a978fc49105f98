package worthsaving.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** A table far larger than what is kept of it. */
class BigTableTest {

    private static final int ROWS = 300_000;
    private static final int STORY = 400;

    /**
     * 300,000 rows of about 450 bytes, 135 MB, made while they are read. What may grow are the two tables of
     * repeats: 2^20 slots of 12 bytes each at this size, 25 MB together, and never above twice that.
     */
    @Test
    void memory_does_not_grow_with_the_table() throws IOException {
        HeapWatch sink = new HeapWatch();
        GeneratedTable table = new GeneratedTable(ROWS);
        LotSummary summary = Tables.reader().read(table, "big.csv", sink);

        assertThat(summary.good()).isEqualTo(ROWS - ROWS / 1_000);
        assertThat(summary.refused()).isEqualTo(ROWS / 1_000);
        assertThat(table.bytesGiven).isGreaterThan(130_000_000L);
        assertThat(sink.samples).isEqualTo(ROWS / 50_000);
        assertThat(sink.mostLiveBytes - sink.firstLiveBytes)
                .as("growth of the live heap between the first 50,000 rows and the fullest moment")
                .isLessThan(32_000_000L);
    }

    /** Measures the live heap after a collection, every 50,000 rows. */
    private static final class HeapWatch implements LotSink {
        private long firstLiveBytes;
        private long mostLiveBytes;
        private int samples;

        @Override
        public void good(LotEntry entry) {}

        @Override
        public void refused(RefusedRow row) {}

        @Override
        public void warning(IntakeFault fault) {}

        @Override
        public boolean goOn(long rows, long characters) {
            if (rows % 50_000 == 0) {
                System.gc();
                long live = ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
                firstLiveBytes = samples++ == 0 ? live : firstLiveBytes;
                mostLiveBytes = Math.max(mostLiveBytes, live);
            }
            return true;
        }
    }

    /** Hands out rows as they are asked for; every thousandth has an odometer nobody can read. */
    private static final class GeneratedTable extends InputStream {
        private final int rows;
        private byte[] line = (Tables.HEADER + ",story\n").getBytes(StandardCharsets.US_ASCII);
        private int at;
        private int row;
        private long bytesGiven;

        private GeneratedTable(int rows) {
            this.rows = rows;
        }

        @Override
        public int read() {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
        }

        @Override
        public int read(byte[] into, int offset, int length) {
            if (at == line.length) {
                if (row == rows) {
                    return -1;
                }
                row++;
                String odometer = row % 1_000 == 0 ? "abc" : Integer.toString(10_000 + row % 200_000);
                line = ("A" + row + ",2012,ford,focus," + odometer + ",1500," + "s".repeat(STORY) + "\n")
                        .getBytes(StandardCharsets.US_ASCII);
                at = 0;
            }
            int n = Math.min(length, line.length - at);
            System.arraycopy(line, at, into, offset, n);
            at += n;
            bytesGiven += n;
            return n;
        }
    }
}
