package worthsaving.desktop;

import java.util.Objects;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiPredicate;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;

/**
 * Runs costly work in the background for an input that keeps changing: one run at a time, and of the
 * inputs that come meanwhile only the latest waits. Results arrive on the screen thread in order; one
 * that is no longer of use is dropped. To be called from the screen thread only.
 */
public final class LatestWins<I, O> {

    /** What is done in the background. */
    @FunctionalInterface
    public interface Work<I, O> {

        /**
         * @param cancelled asked now and then; a run that is no longer wanted may throw CancellationException
         * @param progress told how much is done
         */
        O of(I input, BooleanSupplier cancelled, IntConsumer progress);
    }

    /** Told on the screen thread. */
    public interface Listener<I, O> {

        /** @param latest whether nothing newer is waiting */
        void done(I input, O output, boolean latest);

        void failed(I input, RuntimeException why);

        default void progress(I input, int done) {}
    }

    private final Work<I, O> work;
    private final BiPredicate<I, I> stillOfUse;
    private final Listener<I, O> listener;
    private final Executor background;
    private final ScreenThread screen;
    private Run running;
    private I waiting;

    /** @param stillOfUse whether the result for the first input may be shown while the second waits */
    public LatestWins(
            Work<I, O> work,
            BiPredicate<I, I> stillOfUse,
            Listener<I, O> listener,
            Executor background,
            ScreenThread screen) {
        this.work = Objects.requireNonNull(work, "work");
        this.stillOfUse = Objects.requireNonNull(stillOfUse, "stillOfUse");
        this.listener = Objects.requireNonNull(listener, "listener");
        this.background = Objects.requireNonNull(background, "background");
        this.screen = Objects.requireNonNull(screen, "screen");
    }

    /** Asks for the result of an input; replaces whatever was waiting. */
    public void submit(I input) {
        screen.require();
        Objects.requireNonNull(input, "input");
        if (running == null) {
            waiting = null;
            start(input);
        } else {
            waiting = input;
            if (!stillOfUse.test(running.input, input)) {
                running.cancelled = true;
            }
        }
    }

    /** Drops the run and what is waiting. */
    public void cancel() {
        screen.require();
        waiting = null;
        if (running != null) {
            running.cancelled = true;
        }
    }

    /** Whether something runs whose result is still wanted, or waits. */
    public boolean busy() {
        screen.require();
        return waiting != null || (running != null && !running.cancelled);
    }

    private void start(I input) {
        running = new Run(input);
        try {
            background.execute(running);
        } catch (RejectedExecutionException e) {
            running = null; // the program is being closed: nobody waits for the result
        }
    }

    private final class Run implements Runnable {
        private final I input;
        private final AtomicInteger done = new AtomicInteger();
        private volatile boolean cancelled;

        Run(I input) {
            this.input = input;
        }

        @Override
        public void run() {
            try {
                O output = work.of(input, () -> cancelled, this::progress);
                screen.executor().execute(() -> end(() -> listener.done(input, output, waiting == null)));
            } catch (CancellationException e) {
                screen.executor().execute(() -> end(() -> {}));
            } catch (RuntimeException e) {
                screen.executor().execute(() -> end(() -> listener.failed(input, e)));
            }
        }

        /** Passes on what is done, one message at a time however often it is called. */
        private void progress(int count) {
            if (done.getAndAccumulate(count, Math::max) == 0) {
                screen.executor().execute(() -> {
                    int latest = done.getAndSet(0);
                    if (!cancelled && running == this) {
                        listener.progress(input, latest);
                    }
                });
            }
        }

        private void end(Runnable tell) {
            screen.require();
            running = null;
            try {
                if (!cancelled) {
                    tell.run();
                }
            } finally {
                if (running == null && waiting != null) {
                    I next = waiting;
                    waiting = null;
                    start(next);
                }
            }
        }
    }
}
