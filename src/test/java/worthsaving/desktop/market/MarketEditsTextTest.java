package worthsaving.desktop.market;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MarketEditsTextTest {

    @Test
    void what_is_written_is_read_again() {
        MarketEdits edits = MarketEdits.NONE
                .withLevel(YearMonth.of(2026, 7), Optional.of(181.25))
                .withLevel(YearMonth.of(2026, 4), Optional.empty())
                .withFactor("haircut", Optional.of(0.07))
                .with(new OwnTable("a \"b\"", LocalDate.of(2026, 7, 1), "year;make\n2012;f\u00f6rd\n", Set.of(3L, 2L)));
        assertThat(MarketEditsText.read(MarketEditsText.write(edits))).isEqualTo(edits);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{}", "[]", "no json", "{\"version\":2}", "{\"version\":1,\"index\":{\"July\":3}}",
        "{\"version\":1,\"tables\":[{\"day\":\"soon\"}]}"})
    void anything_else_is_refused(String text) {
        assertThatThrownBy(() -> MarketEditsText.read(text)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_file_is_read_in_utf_8_or_as_older_spreadsheets_wrote() {
        assertThat(OwnPage.text("\ufeffa,\u00a3".getBytes(StandardCharsets.UTF_8))).isEqualTo("a,\u00a3");
        assertThat(OwnPage.text(new byte[] {'a', ',', (byte) 0xa3})).isEqualTo("a,\u00a3");
    }
}
