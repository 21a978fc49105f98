package worthsaving.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class HistoryTest {

    @Test
    void undo_and_redo_go_back_and_forth() {
        History<String> history = History.of("a").push("b").push("c");
        assertThat(history.undo().now()).isEqualTo("b");
        assertThat(history.undo().undo().now()).isEqualTo("a");
        assertThat(history.undo().undo().undo().now()).isEqualTo("a");
        assertThat(history.undo().redo()).isEqualTo(history);
        assertThat(history.redo()).isSameAs(history);
    }

    @Test
    void a_new_edit_forgets_what_was_undone() {
        History<String> history = History.of("a").push("b").undo().push("c");
        assertThat(history.canRedo()).isFalse();
        assertThat(history.undo().now()).isEqualTo("a");
    }

    @Test
    void the_same_state_again_is_no_edit() {
        History<String> history = History.of("a");
        assertThat(history.push("a")).isSameAs(history);
        assertThat(history.canUndo()).isFalse();
    }

    @Test
    void whatever_is_done_all_of_it_can_be_taken_back() {
        SplittableRandom random = new SplittableRandom(7);
        History<Integer> history = History.of(0);
        for (int i = 0; i < 2_000; i++) {
            switch (random.nextInt(3)) {
                case 0 -> history = history.push(i);
                case 1 -> history = history.undo();
                default -> history = history.redo();
            }
            assertThat(history.undo().redo().now()).isEqualTo(history.canUndo() ? history.now() : history.redo().now());
        }
        while (history.canUndo()) {
            history = history.undo();
        }
        assertThat(history.past()).isEmpty();
    }
}
