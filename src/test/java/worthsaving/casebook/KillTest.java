package worthsaving.casebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import worthsaving.quantity.Seed;

/**
 * {@code kill -9} at random moments of writing. Every edit whose number was printed must be there, the log without a gap,
 * the file sound, and the next window free to write. {@code src/bench/reliability/kill.sh} does this a thousand times.
 *
 * <p>A kill ends the process, not the computer: what the system had already taken for the drive is written. A cut of power
 * is left to SQLite's own tests of synchronous FULL.
 */
class KillTest {

    private static final int KILLS = Integer.getInteger("worthsaving.kills", 8);
    private static final int FRESH_FILE_EVERY = 25;
    private static final int MOST_MICROSECONDS = 60_000;

    @TempDir
    Path folder;

    @Test
    void no_kept_edit_is_lost() throws Exception {
        SplittableRandom random = Seed.DEFAULT.derive("kills " + System.getProperty("worthsaving.kills.seed", "")).generator();
        long printed = 0;
        long beyond = 0;
        long expected = 0;
        Path file = null;
        for (int kill = 0; kill < KILLS; kill++) {
            if (kill % FRESH_FILE_EVERY == 0) {
                file = folder.resolve("casebook-" + kill + ".db");
                expected = 0;
            }
            long last = expected;
            try (Child child = Child.start(file, Child.WRITE, Long.toString(random.nextLong()))) {
                if (random.nextInt(10) > 0) {
                    last = child.nextNumber();
                }
                TimeUnit.MICROSECONDS.sleep(random.nextInt(MOST_MICROSECONDS));
                List<Long> unread = child.kill();
                child.waitFor();
                for (long number : unread) {
                    assertThat(number).isGreaterThan(last);
                    last = number;
                }
            }
            printed += last - expected;
            try (Casebook book = Cases.open(file)) {
                assertThat(Schema.damage(book.database())).as("kill " + kill).isEmpty();
                assertThat(book.database().rows("PRAGMA foreign_key_check")).isEmpty();
                long there = book.history().size();
                assertThat(there).as("kill " + kill + ": edits kept of those printed")
                        .isGreaterThanOrEqualTo(last).isLessThanOrEqualTo(last + 1);
                assertThat(book.database().number("SELECT coalesce(max(id), 0) FROM edit")).as("no gap").isEqualTo(there);
                assertThat(book.cases()).isNotNull();
                beyond += there - last;
                expected = there;
            }
        }
        System.out.printf("%d kills, %d edits printed and all found, %d kept but not yet printed%n", KILLS, printed, beyond);
        assertThat(printed).isPositive();
    }
}
