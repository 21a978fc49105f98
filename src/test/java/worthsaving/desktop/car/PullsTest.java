package worthsaving.desktop.car;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.desktop.Texts;

class PullsTest {

    @ParameterizedTest
    @CsvSource({"2.5,pull.for.strong,12", "1.2,pull.for.clear,3.3", "0.3,pull.for.weak,1.3",
            "-0.3,pull.against.weak,1.3",
        "-1.2,pull.against.clear,3.3", "-9,pull.against.strong,'> 1,000'", "Infinity,pull.for.strong,'> 1,000'"})
    void strength_is_put_in_words_and_as_a_ratio(double logRatio, String key, String times) {
        assertThat(Pulls.key(logRatio)).isEqualTo(key);
        assertThat(Texts.of(key)).isNotBlank();
        assertThat(Pulls.times(logRatio)).isEqualTo(times);
    }

    @ParameterizedTest
    @CsvSource({"3,\u25b2\u25b2\u25b2", "0.1,\u25b2", "-2,\u25bd\u25bd"})
    void arrows_show_the_side_without_colour(double logRatio, String arrow) {
        assertThat(Pulls.arrow(logRatio)).isEqualTo(arrow);
    }
}
