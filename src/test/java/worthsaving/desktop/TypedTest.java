package worthsaving.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TypedTest {

    private static final LocalDate TODAY = LocalDate.of(2025, 12, 1);

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"1800|1800", "1,800|1800", " $1,800.50 |1800.5", "0|0"})
    void an_amount_is_understood(String text, double value) {
        assertThat(Typed.amount(text, true).value()).contains(value);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.800", "-5", "1e5", "NaN", "much", "1800.505"})
    void what_could_be_misread_is_asked_about(String text) {
        assertThat(Typed.amount(text, true).value()).isEmpty();
        assertThat(Typed.amount(text, true).fault()).contains(text).contains("write it as 1800");
    }

    @Test
    void a_blank_is_a_fault_only_where_something_is_needed() {
        assertThat(Typed.amount(" ", true).fault()).isNotBlank();
        assertThat(Typed.amount(" ", false).good()).isTrue();
        assertThat(Typed.day("", false, TODAY).good()).isTrue();
    }

    @Test
    void a_day_is_written_one_way_and_has_been() {
        assertThat(Typed.day("2025-11-30", true, TODAY).value()).contains(LocalDate.of(2025, 11, 30));
        assertThat(Typed.day("11/30/2025", true, TODAY).fault()).contains("2025-11-20");
        assertThat(Typed.day("2025-02-30", true, TODAY).good()).isFalse();
        assertThat(Typed.day("2025-12-02", true, TODAY).fault()).contains("still to come");
    }
}
