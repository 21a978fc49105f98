package worthsaving.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AmountTest {

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "2300; 2300; ''", "2,300; 2300; ''", "2.300; 2300; ''", "2300.5; 2300.5; ''", "2300,50; 2300.5; ''",
        "1.234,50; 1234.5; ''", "1,234.50; 1234.5; ''", "1,234,567; 1234567; ''", "1.234.567,8; 1234567.8; ''",
        "210 000 km; 210000; km", "210\u00a0000 km; 210000; km", "210\u202f000; 210000; ''", "1'234.50; 1234.5; ''",
        "98k; 98000; ''", "98 k mi; 98000; mi", "1.6k; 1600; ''", "1,5k; 1500; ''", "98km; 98; km",
        "'$2,300'; 2300; '$'", "'1,400$'; 1400; '$'", "€ 3.500,-; 3500; €", "950,-; 950; ''", "EUR 950; 950; EUR",
        "-5; -5; ''", "-$5; -5; '$'", "\u22125; -5; ''", "(500); -500; ''", "0.500; 0.5; ''", "1234.567; 1234.567; ''",
        "0; 0; ''", "007; 7; ''"
    })
    void reads_what_people_write(String text, double value, String mark) {
        Amount amount = Amount.parse(text).orElseThrow();

        assertThat(amount.value()).isEqualTo(value, within(1e-9));
        assertThat(amount.mark()).isEqualTo(mark);
        assertThat(amount.masked()).isFalse();
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"131xxx; 131000", "131,xxx mi; 131000", "13xX; 1300", "9*; 90"})
    void counts_crossed_out_digits_as_zeros(String text, double value) {
        Amount amount = Amount.parse(text).orElseThrow();

        assertThat(amount.value()).isEqualTo(value);
        assertThat(amount.masked()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "", "abc", "-", "12 5", "1,234,50", "1.234.50", "12,34.567,8", "5000-6000", "2018-06-23", "12/5", "1e5", "NaN",
        "1.2.3.4", "3 or 4", "\u0663\u0664"
    })
    void refuses_what_is_no_single_number(String text) {
        assertThat(Amount.parse(text)).isEmpty();
    }

    @Test
    void refuses_endless_digits_without_stalling() {
        assertThat(Amount.parse("1,".repeat(100_000))).isEmpty();
    }
}
