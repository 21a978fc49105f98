package worthsaving.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import worthsaving.quantity.Seed;
import worthsaving.vehicle.Listing;

/** Damaged tables: never a crash, never a hang, and every row either a listing or refused with a reason. */
class IntakeFuzzTest {

    private static final int TABLES = Integer.getInteger("worthsaving.fuzz", 20_000);
    private static final byte[][] SPICE = Stream.of(
                    "\"", "\"\"",
                    "\n", "\r\n", ",", ";", "\t", "\0", "'", "=cmd()", "-", "$", "\u20ac", "\ufeff", "1e9", "k",
                    "xxx", "99999999999999999999", "NaN", "!", "{", "\\", "#", "sep=;\n", "1.2.3", "\ud83d\ude97")
            .map(s -> s.getBytes(StandardCharsets.UTF_8))
            .toArray(byte[][]::new);

    @Test
    void damaged_tables_are_read_to_the_end() throws IOException {
        List<byte[]> seeds = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("shared/samples/bad"))) {
            for (Path file : files.sorted().toList()) {
                seeds.add(Files.readAllBytes(file));
            }
        }
        byte[] lot = Files.readAllBytes(Path.of("shared/samples/lot.csv"));
        SplittableRandom random = Seed.DEFAULT.derive("intake fuzz").generator();
        long[] outcome = new long[3];
        for (int i = 0; i < TABLES; i++) {
            byte[] seed = i % 4 == 0 ? lot : seeds.get(random.nextInt(seeds.size()));
            byte[] table = mutated(seed, random);
            int number = i;
            assertTimeoutPreemptively(Duration.ofSeconds(5), () -> check(table, outcome), () -> "table " + number);
        }
        assertThat(Arrays.stream(outcome).min().orElseThrow())
                .as("fewest of good rows, refused rows, refused files")
                .isGreaterThan(TABLES / 100);
    }

    private static void check(byte[] table, long[] outcome) throws IOException {
        Lot read = Tables.reader().read(new ByteArrayInputStream(table), "f.csv");

        LotSummary summary = read.summary();
        assertThat(summary.good()).isEqualTo(read.entries().size());
        assertThat(summary.refused()).isEqualTo(read.refused().size());
        assertThat(summary.warnings()).isEqualTo(read.warnings().size());
        assertThat(read.refused()).allSatisfy(r -> {
            assertThat(r.faults()).isNotEmpty();
            assertThat(r.row()).isPositive();
        });
        assertThat(read.faults()).allSatisfy(f -> {
            assertThat(f.what()).isNotBlank();
            assertThat(f.mend()).isNotBlank();
            assertThat(f.what().chars()).noneMatch(Character::isISOControl);
        });
        assertThat(read.listings()).extracting(Listing::id).doesNotHaveDuplicates();
        assertThat(read.listings()).allSatisfy(l -> {
            l.ask().get().ifPresent(m -> assertThat(m.amount()).isBetween(0.0, 1e7));
            l.vehicle().year().get().ifPresent(y -> assertThat(y).isBetween(FigureCells.FIRST_YEAR, 2027));
        });
        if (!summary.readable()) {
            assertThat(read.warnings()).isNotEmpty();
            outcome[2]++;
        }
        outcome[0] += summary.good();
        outcome[1] += summary.refused();
    }

    private static byte[] mutated(byte[] seed, SplittableRandom random) {
        byte[] bytes = seed.clone();
        for (int k = 1 + random.nextInt(6); k > 0 && bytes.length > 0; k--) {
            int at = random.nextInt(bytes.length);
            int to = Math.min(bytes.length, at + 1 + random.nextInt(40));
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            out.write(bytes, 0, at);
            switch (random.nextInt(5)) {
                case 0 -> out.write(random.nextInt(256));
                case 1 -> out.writeBytes(SPICE[random.nextInt(SPICE.length)]);
                case 2 -> {
                    out.write(bytes, at, to - at);
                    out.write(bytes, at, to - at);
                    at = to;
                }
                case 3 -> at = to;
                default -> {
                    out.write(random.nextInt(256));
                    at++;
                }
            }
            out.write(bytes, at, bytes.length - at);
            bytes = out.toByteArray();
        }
        return bytes;
    }
}
