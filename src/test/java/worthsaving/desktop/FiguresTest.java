package worthsaving.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.quantity.Money;
import worthsaving.quantity.MoneyRange;

class FiguresTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"0 | 0", "-0.3 | 0", "2300.4 | 2,300", "-1250 | \u22121,250",
            "999999.6 | 1,000,000"})
    void amounts_are_whole_and_never_minus_zero(double amount, String text) {
        assertThat(Figures.amount(amount)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"0 | 0 %", "0.0001 | < 1 %", "0.004 | < 1 %", "0.006 | 1 %", "0.25 | 25 %",
        "0.994 | 99 %", "0.999 | > 99 %", "1 | 100 %"})
    void what_is_not_certain_never_reads_so(double p, String text) {
        assertThat(Figures.percent(p)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"0,0", "0.26,0.3", "9.94,9.9", "9.96,10", "41.2,41"})
    void hours_have_a_decimal_while_they_are_few(double hours, String text) {
        assertThat(Figures.hours(hours)).isEqualTo(text);
    }

    @Test
    void money_names_its_currency_whatever_the_locale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(Figures.money(Money.of(2300, "EUR"))).isEqualTo("EUR 2,300");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void a_currency_stays_with_its_amount_on_one_line() {
        assertThat(Figures.whole("averages USD -3,123. A price of USD 84, as USD says."))
                .isEqualTo("averages USD\u00a0\u22123,123. A price of USD\u00a084, as USD says.");
    }

    @Test
    void a_range_without_width_is_one_figure() {
        assertThat(Figures.money(MoneyRange.usd(60, 80, 120))).isEqualTo("USD 60 \u2013 120");
        assertThat(Figures.money(MoneyRange.usd(80, 80, 80))).isEqualTo("USD 80");
    }
}
