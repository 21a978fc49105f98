package worthsaving.intake.advert;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.vehicle.Observation.Sight;
import worthsaving.vehicle.Powertrain.Gearbox;
import worthsaving.vehicle.TitleBrand;

/** What is denied must never be read as said. Everyday usage, no source. */
class NegationTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "runs great no knocks | knock | ABSENT",
        "not overheating | overheating | ABSENT",
        "does not smoke | smoke | ABSENT",
        "never had any overheating | overheating | ABSENT",
        "no knocks, leaks or smoke | smoke | ABSENT",
        "no knocks, leaks or smoke | knock | ABSENT",
        "no rust | rust | -",
        "rust free southern truck | rust | -",
        "knocks: none | knock | ABSENT",
        "knocks? no. | knock | ABSENT",
        "without any noise, knocks when cold | knock | PRESENT",
        "no title, engine knocks | knock | PRESENT",
        "no start, knocks | knock | PRESENT",
        "no start, knocks | no_start | PRESENT",
        "wont start | no_start | PRESENT",
        "it will not start | no_start | PRESENT",
        "does not overheat but knocks | knock | PRESENT",
        "does not overheat but knocks | overheating | ABSENT",
        "no smoke and no knocks | knock | ABSENT",
        "not a salvage car and it knocks | knock | PRESENT",
        "check engine light is off | check_engine_light | -",
        "no check engine light | check_engine_light | ABSENT",
        "loses coolant but doesn't overheat | coolant_loss | PRESENT",
        "loses coolant but doesn't overheat | overheating | ABSENT",
        "has never overheated | overheating | ABSENT",
        "doesn't slip | transmission_slip | ABSENT",
        "isn't burning oil | oil_consumption | ABSENT",
        "the oil light never came on | oil_light | ABSENT",
        "airbag light is NOT on | airbag_light | ABSENT",
        "has a loud knock from the bottom end | knock | PRESENT",
        "zero oil leaks | oil_leak | ABSENT",
        "needs no oil between changes, knocks | knock | PRESENT",
    })
    void symptom(String text, String word, String sight) {
        Map<String, Sight> read = Vocabularies.read("2011 Honda Civic. " + text).condition().symptoms().stream()
                .collect(java.util.stream.Collectors.toMap(s -> s.value().word(), s -> s.value().sight()));
        assertThat(read.get(word)).isEqualTo(sight.equals("-") ? null : Sight.valueOf(sight));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "needs head gasket | HEAD_GASKET | FAILED",
        "probably the head gasket | HEAD_GASKET | DOUBTED",
        "lifter? | LIFTER_CAM | DOUBTED",
        "not the head gasket | HEAD_GASKET | DENIED",
        "alternator? no | ALTERNATOR | DENIED",
        "new alternator | ALTERNATOR | REPAIRED",
        "alternator was replaced last year | ALTERNATOR | REPAIRED",
        "starter is new | STARTER | REPAIRED",
        "needs new starter | STARTER | FAILED",
        "new water pump, thermostat and radiator | RADIATOR | REPAIRED",
        "water pump, thermostat and radiator replaced | WATER_PUMP | REPAIRED",
        "water pump leaking, new radiator | WATER_PUMP | FAILED",
        "comes with a new turbo in the trunk, turbo is blown | TURBO_BEARING | FAILED",
        "had timing chain replaced at 90k | TIM_CHAIN_WORN | REPAIRED",
        "I think its the fuel pump | FUEL_PUMP_LP | DOUBTED",
        "bad starter | STARTER | FAILED",
        "timing chain is fine | TIM_CHAIN_WORN | DENIED",
        "head gasket? not sure | HEAD_GASKET | DOUBTED",
        "the alternator is shot | ALTERNATOR | FAILED",
    })
    void claim(String text, String item, Claim.Standing standing) {
        List<Claim> claims = Vocabularies.read("2011 Honda Civic. " + text).condition().claims().stream()
                .map(Found::value).filter(c -> c.item().equals(item)).toList();
        assertThat(claims).containsExactly(new Claim(item, standing));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "salvage? NO clean title | CLEAN", "not salvage | UNKNOWN", "never salvage | UNKNOWN",
        "title in hand | CLEAN_CLAIMED",
        "clean title in hand | CLEAN", "rebuilt title | REBUILT", "Rebuilt? no, salvage | SALVAGE", "no title | LOST",
        "bill of sale only | LOST", "bill of sale and clean title | CLEAN", "lien holder has title | LIEN",
        "no liens | UNKNOWN", "clean title, no liens | CLEAN", "rebuilt transmission | UNKNOWN",
        "parts only | PARTS_ONLY",
        "certificate of destruction | PARTS_ONLY", "salvage title now rebuilt title | REBUILT",
        "salvage yard engine | UNKNOWN",
        "Title - lost | LOST", "title: clean | CLEAN", "flood title | FLOOD", "runs great | UNKNOWN",
    })
    void title(String text, TitleBrand brand) {
        assertThat(Vocabularies.read("2011 Honda Civic. " + text).offer().title().value()).isEqualTo(brand);
    }

    @Test
    void denied_gearbox_is_not_the_gearbox() {
        assertThat(Vocabularies.read("2015 Ford Fiesta SE manual(no dct!)").car().gearbox().orElseThrow().value())
                .isEqualTo(Gearbox.MANUAL);
    }

    @Test
    void deleted_no_is_no_claim() {
        assertThat(Vocabularies.read("2013 RAM 2500 6.7 cummins deleted? no all stock").condition().claims()).isEmpty();
    }

    @Test
    void unknown_title_is_marked_a_guess_with_its_reason() {
        Found<TitleBrand> title = Vocabularies.read("2011 Honda Civic").offer().title();
        assertThat(title.isGuessed()).isTrue();
        assertThat(title.why()).contains("unknown is not clean");
    }

    @Test
    void every_symptom_of_the_vocabulary_that_has_a_state_uses_a_word_the_report_knows() {
        Set<String> states = Set.of("not_running", "no_crank", "no_start", "starts_dies", "limited_restart",
                "runs_will_not_move", "runs_do_not_drive", "runs_overheats", "runs_slips", "runs_limp", "runs_rough",
                "runs_drives", "runs");
        assertThat(Vocabularies.SHIPPED.symptoms().values()).allSatisfy(kind ->
                assertThat(kind.state().map(states::contains).orElse(true)).isTrue());
    }
}
