package worthsaving.cli;

import java.io.PrintWriter;
import java.util.concurrent.TimeUnit;
import java.util.function.IntConsumer;

/** Tells every other second how many of the listings are judged. */
final class ProgressLine implements IntConsumer {

    private static final long SPEAK_EVERY = TimeUnit.SECONDS.toNanos(2);

    private final PrintWriter err;
    private final int all;
    private long spoken = System.nanoTime();

    ProgressLine(PrintWriter err, int all) {
        this.err = err;
        this.all = all;
    }

    @Override
    public synchronized void accept(int done) {
        if (System.nanoTime() - spoken > SPEAK_EVERY) {
            spoken = System.nanoTime();
            err.println(done + " of " + all + " judged");
        }
    }
}
