package worthsaving.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Powertrain.Drive;
import worthsaving.vehicle.Powertrain.Engine;
import worthsaving.vehicle.Powertrain.Gearbox;
import worthsaving.vehicle.Powertrain.TimingDrive;
import worthsaving.vehicle.TitleBrand;

class WordsTest {

    /** Our own format can say every kind there is, and says it for certain. */
    @Test
    void every_kind_has_a_word_of_its_own() {
        assertThat(Arrays.asList(Engine.values())).allSatisfy(
                e -> assertThat(Words.engine(word(e))).contains(Fact.known(e)));
        assertThat(Arrays.asList(Gearbox.values())).allSatisfy(
                g -> assertThat(Words.gearbox(word(g))).contains(Fact.known(g)));
        assertThat(Arrays.asList(TimingDrive.values())).allSatisfy(
                t -> assertThat(Words.timing(word(t))).contains(Fact.known(t)));
        assertThat(Arrays.asList(Drive.values())).allSatisfy(
                d -> assertThat(Words.drive(word(d))).contains(Fact.known(d)));
    }

    @ParameterizedTest
    @EnumSource(TitleBrand.class)
    void every_state_of_the_title_has_a_word(TitleBrand brand) {
        assertThat(Words.title(word(brand))).contains(brand);
        assertThat(Words.title(brand.name())).contains(brand);
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    @ParameterizedTest
    @CsvSource({"gas, PETROL", "Benzin, PETROL", "PETROL, PETROL"})
    void plain_petrol_leaves_the_turbo_open(String word, Engine engine) {
        Fact<Engine> fact = Words.fuel(word).orElseThrow();

        assertThat(fact.get()).contains(engine);
        assertThat(fact).isInstanceOfSatisfying(Fact.Assumed.class, a -> assertThat(a.why()).contains("turbo"));
    }

    @ParameterizedTest
    @CsvSource({"diesel, DIESEL", "hybrid, HYBRID", "electric, ELECTRIC", "Elektro, ELECTRIC"})
    void other_fuels_say_the_engine(String word, Engine engine) {
        assertThat(Words.fuel(word)).contains(Fact.known(engine));
    }

    @ParameterizedTest
    @ValueSource(strings = {"lpg", "cng", "other", "andere"})
    void some_fuels_are_known_words_that_say_nothing(String word) {
        assertThat(Words.fuel(word)).contains(Fact.unknown());
    }

    @Test
    void automatic_is_certain_only_in_our_own_column() {
        assertThat(Words.gearbox("automatic")).contains(Fact.known(Gearbox.AUTOMATIC));
        assertThat(Words.transmission("automatic").orElseThrow().isKnown()).isFalse();
        assertThat(Words.gearbox("automatik").orElseThrow().isKnown()).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "steam", "petrol-ish", "cleaned", "4x5"})
    void nothing_is_guessed_from_other_words(String word) {
        assertThat(Words.engine(word)).isEmpty();
        assertThat(Words.fuel(word)).isEmpty();
        assertThat(Words.gearbox(word)).isEmpty();
        assertThat(Words.transmission(word)).isEmpty();
        assertThat(Words.timing(word)).isEmpty();
        assertThat(Words.drive(word)).isEmpty();
        assertThat(Words.title(word)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(names = {"ENGINE", "FUEL", "GEARBOX", "TRANSMISSION", "TIMING", "DRIVE", "TITLE"})
    void the_list_of_known_words_is_in_order(Field field) {
        assertThat(Words.known(field).split(", ")).hasSizeGreaterThan(1).isSorted();
    }

    @Test
    void other_fields_have_no_list() {
        assertThatThrownBy(() -> Words.known(Field.PRICE)).hasMessageContaining("PRICE");
    }
}
