package worthsaving.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.RejectedExecutionException;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import org.junit.jupiter.api.Test;

class LatestWinsTest {

    private final HandTurned threads = new HandTurned();
    private final List<String> heard = new ArrayList<>();
    private final List<Integer> worked = new ArrayList<>();

    private LatestWins<Integer, Integer> reckoner(boolean oldOnesAreOfUse) {
        return new LatestWins<>(this::work, (running, newer) -> oldOnesAreOfUse, new LatestWins.Listener<>() {
            @Override
            public void done(Integer input, Integer output, boolean latest) {
                heard.add(input + "=" + output + (latest ? "" : "..."));
            }

            @Override
            public void failed(Integer input, RuntimeException why) {
                heard.add(input + " failed: " + why.getMessage());
            }

            @Override
            public void progress(Integer input, int done) {
                heard.add(input + " at " + done);
            }
        }, threads.background(), threads.screen());
    }

    private Integer work(Integer input, BooleanSupplier cancelled, IntConsumer progress) {
        worked.add(input);
        if (cancelled.getAsBoolean()) {
            throw new CancellationException();
        }
        if (input < 0) {
            throw new IllegalStateException("below zero");
        }
        return input * input;
    }

    @Test
    void work_asked_for_while_the_program_closes_is_dropped() {
        LatestWins<Integer, Integer> closing = new LatestWins<>((input, cancelled, progress) -> input,
                (running, newer) -> true, new LatestWins.Listener<>() {
                    @Override
                    public void done(Integer input, Integer output, boolean latest) {
                        throw new AssertionError("nothing ran");
                    }

                    @Override
                    public void failed(Integer input, RuntimeException why) {
                        throw new AssertionError("nothing ran");
                    }
                }, work -> {
                    throw new RejectedExecutionException("closed");
                }, new ScreenThread(Runnable::run, () -> true));
        closing.submit(1);
        assertThat(closing.busy()).isFalse();
    }

    @Test
    void of_what_comes_while_one_runs_only_the_latest_is_done() {
        LatestWins<Integer, Integer> reckoner = reckoner(true);
        reckoner.submit(1);
        reckoner.submit(2);
        reckoner.submit(3);
        assertThat(threads.waitingInBackground()).isEqualTo(1);
        threads.turnAll();
        assertThat(worked).containsExactly(1, 3);
        assertThat(heard).containsExactly("1=1...", "3=9");
        assertThat(reckoner.busy()).isFalse();
    }

    @Test
    void a_result_of_no_use_is_dropped() {
        LatestWins<Integer, Integer> reckoner = reckoner(false);
        reckoner.submit(1);
        reckoner.submit(2);
        threads.turnAll();
        assertThat(heard).containsExactly("2=4");
    }

    @Test
    void a_result_overtaken_between_background_and_screen_is_dropped_too() {
        LatestWins<Integer, Integer> reckoner = reckoner(false);
        reckoner.submit(1);
        threads.turnBackground();
        reckoner.submit(2);
        threads.turnAll();
        assertThat(heard).containsExactly("2=4");
    }

    @Test
    void cancelled_work_tells_nothing_and_the_next_still_runs() {
        LatestWins<Integer, Integer> reckoner = reckoner(true);
        reckoner.submit(1);
        reckoner.submit(2);
        reckoner.cancel();
        assertThat(reckoner.busy()).isFalse();
        threads.turnAll();
        assertThat(heard).isEmpty();
        reckoner.submit(5);
        threads.turnAll();
        assertThat(heard).containsExactly("5=25");
    }

    @Test
    void a_failure_is_told_and_does_not_stop_the_next() {
        LatestWins<Integer, Integer> reckoner = reckoner(true);
        reckoner.submit(-1);
        reckoner.submit(4);
        threads.turnAll();
        assertThat(heard).containsExactly("-1 failed: below zero", "4=16");
    }

    @Test
    void progress_is_told_once_however_often_it_comes() {
        LatestWins<Integer, Integer> reckoner = new LatestWins<>((input, cancelled, progress) -> {
            for (int i = 1; i <= 100; i++) {
                progress.accept(i);
            }
            return input;
        }, (a, b) -> true, new LatestWins.Listener<>() {
            @Override
            public void done(Integer input, Integer output, boolean latest) {
                heard.add("done");
            }

            @Override
            public void failed(Integer input, RuntimeException why) {
                heard.add("failed");
            }

            @Override
            public void progress(Integer input, int done) {
                heard.add("at " + done);
            }
        }, threads.background(), threads.screen());
        reckoner.submit(1);
        threads.turnAll();
        assertThat(heard).containsExactly("at 100", "done");
    }

    @Test
    void only_the_screen_thread_may_ask() {
        LatestWins<Integer, Integer> reckoner = reckoner(true);
        assertThatThrownBy(() -> threads.elsewhere(() -> reckoner.submit(1)))
                .isInstanceOf(IllegalStateException.class).hasMessageContaining("screen thread");
    }
}
