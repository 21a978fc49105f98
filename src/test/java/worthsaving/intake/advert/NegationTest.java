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
        "idles really rough | rough_running | PRESENT",
        "lumpy tickover | rough_running | PRESENT",
        "does not run rough | rough_running | -",
        "injector knock, black smoke | knock | -",
        "knocking from front suspension | clunk | PRESENT",
        "knock sensor code | knock | -",
        "noisy tappets | tick | PRESENT",
        "rattles for 3 seconds on start up | cold_start_rattle | PRESENT",
        "my other truck is the one that overheats | overheating | -",
        "the blue one overheats and knocks, not this one | knock | ABSENT",
        "my other truck is fine. overheats on hills | overheating | PRESENT",
        "no rattle on cold start | cold_start_rattle | ABSENT",
        "fan belt screeches | squeal | PRESENT",
        "stop safely now message | hybrid_warning | PRESENT",
        "clutch doesn't slip | clutch_slip | ABSENT",
        "clutch bites high | clutch_slip | PRESENT",
        "bangs into 3rd | hard_shift | PRESENT",
        "jumps out of second gear | gear_grind | PRESENT",
        "sometimes wont go into gear | will_not_move | -",
        "no reverse camera | no_reverse | -",
        "no starting issues | no_start | -",
        "turns over but doesn't fire | crank_no_start | PRESENT",
        "nothing when key is turned | no_crank | PRESENT",
        "click click click when you turn the key | rapid_clicking | PRESENT",
        "struggles to start | hard_start | PRESENT",
        "won't stay running | starts_dies | PRESENT",
        "low oil shuts it off at lights | stalls | PRESENT",
        "keeps cutting out | stalls | PRESENT",
        "battery light came on and it died | stalled_driving | PRESENT",
        "never left me stranded | stalled_driving | -",
        "bits of metal in the sump | metal_in_oil | PRESENT",
        "no mayo under cap | milky_oil | ABSENT",
        "temperature climbs at idle | overheating | PRESENT",
        "heated seats get hot | overheating | -",
        "failed block test | bubbles_in_tank | PRESENT",
        "low coolant warning | coolant_loss | PRESENT",
        "loses coolant out the back of the motor | coolant_leak | PRESENT",
        "loses coolant out the back of the motor | coolant_loss | -",
        "soft top is new, no coolant leaks | coolant_loss | -",
        "dumping all its coolant | coolant_leak | PRESENT",
        "AC blows ice cold | heater_cold | -",
        "AC blows ice cold | ac_warm | -",
        "down to 40 miles of range | range_lost | PRESENT",
        "310 miles of range | range_lost | -",
        "starts remaining 8 | def_countdown | PRESENT",
        "front end alignment done | collision_front | -",
        "ran into money problems | collision_front | -",
        "airbags did not deploy | airbag_deployed | -",
        "exhaust fell off | loud_exhaust | PRESENT",
        "wheel is super heavy | steering_heavy | PRESENT",
        "pedal rock hard | hard_pedal | PRESENT",
        "needs front pads and rotors | brakes_bad | PRESENT",
        "needs jump started every time | jump_starts | PRESENT",
        "push start button | jump_starts | -",
        "hasn't been driven in 2 years | sat_long | PRESENT",
        "garaged all winter | sat_long | -",
        "missing front grille | misfire | -",
        "missing on one cylinder | misfire | PRESENT",
        "a great car you don't want to miss | misfire | -",
        "no power windows | no_power | -",
        "won't shift out of 2nd | limp_mode | PRESENT",
        "lost oil pressure on the highway | oil_light | PRESENT",
        "oil pressure is good | oil_light | -",
        "dipstick was dry | oil_low | PRESENT",
        "all the warning lights on | dash_lights | PRESENT",
        "no lights on the dash | dash_lights | -",
        "lost one of the keys | key_lost | -",
        "compression 40 psi in one cylinder | low_compression | PRESENT",
        "compression good on all cylinders | low_compression | -",
        "caliper seized | seized | -",
        "needs a new battery | battery_new | -",
        "timing chain has slipped | transmission_slip | -",
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
        "timing chain done last year | TIM_CHAIN_WORN | -",
        "chain has jumped a tooth | TIM_CHAIN_JUMPED | FAILED",
        "cam belt has gone | TIM_BELT_BROKEN | FAILED",
        "timing belt is original at 148k, due NOW | TIM_BELT_DUE | FAILED",
        "no record of timing belt | TIM_BELT_DUE | FAILED",
        "timing belt changed last year | TIM_BELT_DUE | -",
        "it has a timing chain, no belt to change | TIM_BELT_DUE | -",
        "bent valves | VALVE_BURNT | FAILED",
        "check engine light for camshaft sensor | CKP_CMP | FAILED",
        "check engine light for camshaft sensor | LIFTER_CAM | -",
        "intake valves carboned up | CARBON_VALVES | FAILED",
        "carbon fiber trim | CARBON_VALVES | -",
        "rocker cover gasket leaking | VC_GASKET | FAILED",
        "vacuum pump leaks oil | VACUUM_PUMP_SEAL | FAILED",
        "big ends have gone | ROD_BEARING | FAILED",
        "piston slap when cold | PISTON_LAND | -",
        "blew the motor | ENG_DEAD | FAILED",
        "engine replaced at 90k | ENG_DEAD | -",
        "suspect head gasket | HEAD_GASKET | DOUBTED",
        "radiator fan not working | RADIATOR | -",
        "heater matrix leaking | HEATER_CORE | FAILED",
        "intercooler pipe blown off | BOOST_LEAK | FAILED",
        "high voltage battery fan not running | HV_FAN_BUS | FAILED",
        "cat nicked last week | CAT_STOLEN | FAILED",
        "someone cut the cat off | CAT_STOLEN | FAILED",
        "trans took a dump | AT_CLUTCHES | FAILED",
        "transmission works good | AT_CLUTCHES | -",
        "transmission doesn't slip | AT_CLUTCHES | -",
        "cvt whining | CVT_BELT | FAILED",
        "CVT replaced at 80k | CVT_BELT | -",
        "lost 4 bars | EV_PACK | IMPLIED",
        "release bearing noisy | MT_CLUTCH | FAILED",
        "diff leaking | REAR_DIFF | FAILED",
        "frame rot by the rear control arms | SUSP_FRONT | -",
        "power steering fluid leak | STEER_RACK | FAILED",
        "needs welding for MOT | RUST_STRUCT | FAILED",
        "new welding machine not included | RUST_STRUCT | -",
        "window doesn't work | BODY_COSM | FAILED",
        "no dents | BODY_COSM | DENIED",
        "aux belt snapped | ACC_BELT | FAILED",
        "could be the fuel pump | FUEL_PUMP_LP | DOUBTED",
        "recent cambelt and water pump | WATER_PUMP | REPAIRED",
        "replaced plugs and coils already still nothing | COIL_PLUG | -",
        "looked in through the valve cover with a borescope | VC_GASKET | MENTIONED",
        "will include a spare alternator that I had lying around | ALTERNATOR | MENTIONED",
        "a strange smell comes from around the alternator | ALTERNATOR | MENTIONED",
        "shop tells me it is the water pump behind the timing cover | WATER_PUMP | FAILED",
        "the left front wheel bearing is humming on the highway | WHEEL_BRG | FAILED",
        "Replaced already: plugs, wires, water pump and front brakes | WATER_PUMP | REPAIRED",
        "thieves came in the night and cut the cat off | CAT_STOLEN | FAILED",
        "solenoid pack is bad, transmission stuck in third | AT_CLUTCHES | -",
        "told him the timing belt was due, now the belt is in pieces | TIM_BELT_DUE | -",
        "told him the timing belt was due, now the belt is in pieces | TIM_BELT_BROKEN | FAILED",
        "my brothers other car has a bad starter | STARTER | MENTIONED",
    })
    void claim(String text, String item, String standing) {
        List<Claim> claims = Vocabularies.read("2011 Honda Civic. " + text).condition().claims().stream()
                .map(Found::value).filter(c -> c.item().equals(item)).toList();
        if (standing.equals("-")) {
            assertThat(claims).isEmpty();
        } else {
            assertThat(claims).containsExactly(new Claim(item, Claim.Standing.valueOf(standing)));
        }
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
        "clen title | CLEAN", "lien release in hand | UNKNOWN", "HPI clear | CLEAN", "total loss | SALVAGE",
        "cat N from 2019, long since repaired | REBUILT", "Cat S not repaired | SALVAGE",
        "repairable write off, inspected and now registered again | REBUILT", "clear Ohio title | CLEAN",
        "Salvage history? none, clear MD title | CLEAN", "Ohio title in hand | CLEAN_CLAIMED",
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
