package worthsaving.valuation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ModelNamesTest {

    private static final Set<String> KNOWN =
            Set.of("civic", "f-150", "f150", "silverado", "silverado 1500", "1500", "f250 super duty");

    @ParameterizedTest
    @CsvSource({
        "civic lx sedan 4d, civic",
        "f150 xl, f-150",
        "F, ",
        "silverado 1500 crew cab, silverado 1500",
        "silverado 2500, silverado",
        "1500 crew cab tradesman, 1500",
        "trax, ",
        "f-250 super duty lariat, f250 super duty",
        "-, "
    })
    void finds_the_longest_known_name_that_the_words_begin_with(String stated, String expected) {
        assertThat(ModelNames.behind(stated, KNOWN, name -> name.equals("f-150") ? 2 : 1).orElse(null))
                .isEqualTo(expected);
    }
}
