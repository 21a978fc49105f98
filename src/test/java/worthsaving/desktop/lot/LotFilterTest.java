package worthsaving.desktop.lot;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.deal.Verdict;

class LotFilterTest {

    private static List<String> ids(LotFilter filter) {
        return Rows.three().stream().filter(filter).map(r -> r.listing().id()).toList();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"'' | A,B,C", "FOCUS | B", "ford water | A,B,C", "clutch floor | A",
        "offer less | B", "nothing such | ''"})
    void all_words_must_occur_somewhere(String words, String ids) {
        assertThat(String.join(",", ids(LotFilter.ALL.withWords(words)))).isEqualTo(ids);
    }

    @Test
    void a_verdict_narrows_further() {
        LotFilter buys = LotFilter.ALL.withVerdict(Optional.of(Verdict.Kind.BUY));
        assertThat(ids(buys)).containsExactly("A");
        assertThat(ids(buys.withWords("focus"))).isEmpty();
        assertThat(ids(buys.withVerdict(Optional.empty()))).hasSize(3);
    }
}
