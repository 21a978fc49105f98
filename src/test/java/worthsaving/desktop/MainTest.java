package worthsaving.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import javafx.application.Application;
import org.junit.jupiter.api.Test;

class MainTest {

    @Test
    void without_a_display_it_says_so_and_names_the_command_line() {
        assertThat(Main.obstacle("Linux", Map.of())).hasValueSatisfying(
                message -> assertThat(message).contains("DISPLAY").contains(" instead:  worthsaving rank"));
        assertThat(Main.obstacle("Linux", Map.of("DISPLAY", " "))).isPresent();
    }

    @Test
    void under_wayland_alone_it_names_what_lacks() {
        assertThat(Main.obstacle("Linux", Map.of("WAYLAND_DISPLAY", "wayland-0"))).hasValueSatisfying(
                message -> assertThat(message).contains("xwayland").contains(" neither:  worthsaving rank"));
        assertThat(Main.obstacle("Linux", Map.of("WAYLAND_DISPLAY", "wayland-0", "DISPLAY", ":0"))).isEmpty();
    }

    @Test
    void with_a_display_or_on_systems_that_have_none_to_name_it_starts() {
        assertThat(Main.obstacle("Linux", Map.of("DISPLAY", ":0"))).isEmpty();
        assertThat(Main.obstacle("Windows 11", Map.of())).isEmpty();
        assertThat(Main.obstacle("Mac OS X", Map.of())).isEmpty();
    }

    @Test
    void the_exit_code_is_none_of_the_command_line_and_main_runs_without_a_module_path() {
        assertThat(Main.NO_DISPLAY).isNotIn(0, 1, 2, 3, 4, 70);
        assertThat(Application.class.isAssignableFrom(Main.class)).isFalse();
    }
}
