package worthsaving.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VinTest {

    /**
     * Sources: 1G4AH59H45G118341 is the worked sample of 49 CFR 565.15 table V (sum 411); the other
     * valid ones are widely published test numbers; the invalid one changes the last digit.
     */
    @ParameterizedTest
    @CsvSource({
        "1M8GDM9AXKP042788, 351, X, true",
        "11111111111111111, 89, 1, true",
        "1G4AH59H45G118341, 411, 4, true",
        "1HGCM82633A004352, 311, 3, true",
        "1HGCM82633A004353, 313, 5, false"
    })
    void takes_the_check_digit_of_49_cfr_565(String text, int sum, char check, boolean holds) {
        Vin vin = new Vin(text);

        assertThat(vin.weightedSum()).isEqualTo(sum);
        assertThat(vin.expectedCheckDigit()).isEqualTo(check);
        assertThat(vin.checkDigitHolds()).isEqualTo(holds);
    }

    /** The letters I, O and Q are not allowed: ISO 3779. */
    @Test
    void names_the_letter_that_a_vin_cannot_hold() {
        assertThatThrownBy(() -> new Vin("1M8GDM9AIKP042788"))
                .hasMessageContaining("character 9")
                .hasMessageContaining("'I'");
        assertThatThrownBy(() -> new Vin("1M8GDM9AXKP04278")).hasMessageContaining("has 16");
    }

    /** 17 zeros pass the arithmetic, but 0 codes no model year: 49 CFR 565.15 table VII. */
    @Test
    void zeros_pass_the_sum_and_have_no_year() {
        Vin zeros = new Vin("0".repeat(17));

        assertThat(zeros.checkDigitHolds()).isTrue();
        assertThat(zeros.modelYear()).isEmpty();
    }

    /** Derived from the equal values of 49 CFR 565.15 table III. */
    @Test
    void catches_every_single_substitution_but_letters_of_equal_value() {
        String good = "1HGCM82633A004352";
        Map<Character, String> twins = twinsByCharacter("1AJ", "2BKS", "3CLT", "4DMU", "5ENV", "6FW", "7GPX", "8HY",
                "9RZ");
        String allowed = "0123456789ABCDEFGHJKLMNPRSTUVWXYZ";
        for (int i = 0; i < 17; i++) {
            if (i == 8) {
                continue;
            }
            for (char c : allowed.toCharArray()) {
                if (c == good.charAt(i)) {
                    continue;
                }
                Vin changed = new Vin(good.substring(0, i) + c + good.substring(i + 1));
                boolean blind = twins.getOrDefault(good.charAt(i), "").indexOf(c) >= 0;
                assertThat(changed.checkDigitHolds()).as("%s", changed).isEqualTo(blind);
            }
        }
    }

    /** 49 CFR 565.15 table VII; the letter or digit in position 7 tells the thirty-year cycle. */
    @ParameterizedTest
    @CsvSource({
        "A, 1980, 2010", "H, 1987, 2017", "J, 1988, 2018", "P, 1993, 2023", "R, 1994, 2024", "T, 1996, 2026",
        "V, 1997, 2027", "Y, 2000, 2030", "1, 2001, 2031", "9, 2009, 2039"
    })
    void reads_the_model_year_by_positions_7_and_10(char code, int early, int late) {
        assertThat(new Vin("1HGCM8263" + code + "A004352").modelYear()).hasValue(early);
        assertThat(new Vin("1HGCM8A63" + code + "A004352").modelYear()).hasValue(late);
    }

    private static Map<Character, String> twinsByCharacter(String... groups) {
        Map<Character, String> twins = new java.util.HashMap<>();
        for (String group : groups) {
            group.chars().forEach(c -> twins.put((char) c, group));
        }
        return twins;
    }

    /** Source: ISO 3780, which allots the first character to parts of the world. */
    @ParameterizedTest
    @CsvSource({"A, AFRICA", "H, AFRICA", "J, ASIA", "R, ASIA", "S, EUROPE", "Z, EUROPE", "1, NORTH_AMERICA", "5, NORTH_AMERICA",
        "6, OCEANIA", "7, OCEANIA", "8, SOUTH_AMERICA", "9, SOUTH_AMERICA"})
    void knows_the_part_of_the_world(char first, Vin.Region region) {
        Vin vin = new Vin(first + "M8GDM9AXKP042788");

        assertThat(vin.region()).isEqualTo(region);
        assertThat(vin.northAmerican()).isEqualTo(region == Vin.Region.NORTH_AMERICA);
        assertThat(vin).hasToString(vin.text());
    }
}
