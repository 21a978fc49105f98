package worthsaving.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {

    /** kitten to sitting is the textbook pair of Levenshtein distance 3; a swap counts once (Damerau 1964). */
    @ParameterizedTest
    @CsvSource({"kitten, sitting, 3", "ab, ba, 1", "'', abc, 3", "same, same, 0", "toyta, toyota, 1"})
    void counts_edits(String a, String b, int distance) {
        assertThat(Nearest.distance(a, b)).isEqualTo(distance);
        assertThat(Nearest.distance(b, a)).isEqualTo(distance);
    }

    @Test
    void names_what_was_probably_meant() {
        List<String> ids = List.of("HEAD_GASKET", "HEAD_WARPED", "WATER_PUMP");

        assertThat(Nearest.to("head_gaskit", ids)).contains("HEAD_GASKET");
        assertThat(Nearest.to("WATERPUMP", ids)).contains("WATER_PUMP");
        assertThat(Nearest.to("TURBO", ids)).isEmpty();
        assertThat(Nearest.to("x".repeat(1000), ids)).isEmpty();
    }

    @Test
    void ties_do_not_depend_on_the_order_of_the_candidates() {
        assertThat(Nearest.to("bat", List.of("cat", "bar"))).contains("bar");
        assertThat(Nearest.to("bat", List.of("bar", "cat"))).contains("bar");
    }
}
