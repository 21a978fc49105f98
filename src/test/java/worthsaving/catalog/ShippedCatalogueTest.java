package worthsaving.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.catalog.FindingKind.Stage;
import worthsaving.quantity.HoursRange;
import worthsaving.quantity.Range;
import worthsaving.vehicle.Powertrain.Drive;
import worthsaving.vehicle.Powertrain.Engine;
import worthsaving.vehicle.Powertrain.Gearbox;
import worthsaving.vehicle.Powertrain.TimingDrive;

class ShippedCatalogueTest {

    private static final Catalogue CATALOGUE = ShippedCatalogue.load();

    @Test
    void loads_without_a_fault_and_names_its_edition() {
        assertThat(CatalogueReader.read(ShippedCatalogue::open).faults()).isEmpty();
        assertThat(CATALOGUE.version()).isNotBlank();
    }

    @Test
    void covers_the_trade() {
        assertThat(CATALOGUE.items()).hasSizeGreaterThanOrEqualTo(105);
        assertThat(CATALOGUE.findings()).hasSizeGreaterThanOrEqualTo(60);
        assertThat(CATALOGUE.accessSteps()).hasSizeGreaterThanOrEqualTo(24);
        assertThat(CATALOGUE.remedies()).hasSizeGreaterThanOrEqualTo(13);
        assertThat(CATALOGUE.moneyLines()).hasSizeGreaterThanOrEqualTo(43);
        assertThat(CATALOGUE.items().stream().map(FailureItem::system).distinct())
                .contains(
                        "engine timing", "lubrication", "bottom end", "head and cooling", "turbo and air", "fuel",
                        "ignition", "electrical", "exhaust", "diesel", "transmission", "driveline",
                        "hybrid and electric", "body", "flood", "collision", "brakes", "suspension");
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "OIL_PAN_GASKET", "OIL_FILTER_HOUSING", "OIL_COOLER", "TIMING_COVER_SEAL", "VACUUM_PUMP", "VACUUM_PUMP_SEAL",
        "ACC_BELT", "TURBO_FEED", "TURBO_DRAIN", "TURBO_SEALS", "CRANKCASE_BREATHER", "VALVE_STEM_SEALS", "OIL_LOW_EXT"
    })
    void holds_the_everyday_jobs_of_this_trade(String item) {
        assertThat(CATALOGUE.itemsById()).containsKey(item);
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "NO_CRANK", "CRANKS_NO_START", "KNOCKS", "OVERHEATS", "WILL_NOT_MOVE", "HYBRID_NOT_READY", "LIMP_MODE",
        "ENGINE_LAMP", "OIL_LIGHT_ON"
    })
    void presenting_conditions_are_findings_of_the_advert(String finding) {
        assertThat(CATALOGUE.findingsById().get(finding).stage()).isEqualTo(Stage.ADVERT);
    }

    /** Closure hours, most likely figures. Source: trade notes, an expert estimate. */
    @ParameterizedTest
    @CsvSource({
        "FRONT_COVER_OFF, 3.9, 5.8, 8.9",
        "TURBO_OFF, 1.8, 2.9, 4.6",
        "HEAD_OFF, 9.5, 14.4, 22.4",
        "OIL_PAN_OFF, 2.8, 4.1, 6.6",
        "GEARBOX_OUT, 5.8, 8.5, 13.1",
        "ENGINE_OUT, 8.2, 11.6, 17.1",
        "HV_PACK_OUT, 2.4, 3.5, 5.8",
        "GEARBOX_PAN_OFF, 0.9, 1.4, 2.4"
    })
    void access_with_all_it_requires_takes_the_known_hours(String step, double low, double mode, double high) {
        Set<String> closure = new HashSet<>();
        addWithRequirements(step, closure);

        Range hours = closure.stream()
                .map(id -> CATALOGUE.accessById().get(id).hours())
                .reduce(HoursRange.NONE, HoursRange::plus)
                .hours();

        assertThat(List.of(hours.low(), hours.mode(), hours.high()))
                .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : Double.compare(a, b))
                .containsExactly(low, mode, high);
    }

    @Test
    void every_item_shows_in_some_finding() {
        Set<String> shown = CATALOGUE.findingLinks().stream().map(FindingLink::item).collect(Collectors.toSet());

        assertThat(CATALOGUE.items()).extracting(FailureItem::id).isSubsetOf(shown);
    }

    @Test
    void every_finding_can_be_met_on_some_car() {
        for (FindingKind finding : CATALOGUE.findings()) {
            assertThat(CATALOGUE.findingLinks())
                    .as(finding.id())
                    .anyMatch(l -> l.finding().equals(finding.id()) && l.chance().mode() > 0);
        }
    }

    @Test
    void every_access_step_and_tool_is_used() {
        Set<String> steps = new HashSet<>();
        CATALOGUE.items().forEach(i -> i.access().forEach(s -> addWithRequirements(s, steps)));
        Set<String> tools = Stream.of(
                        CATALOGUE.items().stream().map(FailureItem::tools),
                        CATALOGUE.findings().stream().map(FindingKind::tools),
                        CATALOGUE.remedies().stream().map(Remedy::tools))
                .flatMap(s -> s)
                .flatMap(List::stream)
                .collect(Collectors.toSet());

        assertThat(CATALOGUE.accessById().keySet()).isSubsetOf(steps);
        assertThat(CATALOGUE.toolsById().keySet()).isSubsetOf(tools);
    }

    @Test
    void every_kind_of_car_has_items_that_stop_it() {
        for (Engine engine : Engine.values()) {
            assertThat(CATALOGUE.items()).as(engine.name()).anyMatch(i -> i.applies().engines().contains(engine));
        }
        for (Gearbox gearbox : List.of(Gearbox.MANUAL, Gearbox.AUTOMATIC, Gearbox.CVT, Gearbox.DUAL_CLUTCH)) {
            Set<String> unable = CATALOGUE.findingLinks().stream()
                    .filter(l -> l.finding().equals("WILL_NOT_MOVE"))
                    .map(FindingLink::item)
                    .collect(Collectors.toSet());
            assertThat(CATALOGUE.items())
                    .as(gearbox.name())
                    .anyMatch(i -> unable.contains(i.id())
                            && i.system().equals("transmission")
                            && i.applies().gearboxes().contains(gearbox));
        }
    }

    @Test
    void items_apply_only_where_the_part_exists() {
        assertThat(applies("TIM_CHAIN_WORN").timings()).containsExactly(TimingDrive.CHAIN);
        assertThat(applies("TIM_BELT_BROKEN").timings()).containsExactly(TimingDrive.BELT);
        assertThat(applies("MT_CLUTCH").gearboxes()).containsExactly(Gearbox.MANUAL);
        assertThat(applies("TRANSFER_PTU").drives()).containsExactly(Drive.ALL);
        assertThat(applies("REAR_DIFF").drives()).containsExactlyInAnyOrder(Drive.REAR, Drive.ALL);
        assertThat(applies("HV_PACK").engines()).containsExactly(Engine.HYBRID);
        assertThat(applies("COIL_PLUG").engines())
                .containsExactlyInAnyOrder(Engine.PETROL, Engine.PETROL_TURBO, Engine.HYBRID);
        assertThat(applies("TURBO_BEARING").engines()).containsExactlyInAnyOrder(Engine.PETROL_TURBO, Engine.DIESEL);
        assertThat(CATALOGUE.items().stream().filter(i -> i.applies().engines().contains(Engine.ELECTRIC)))
                .extracting(FailureItem::id)
                .doesNotContain("OIL_PUMP", "STARTER", "FUEL_PUMP_LP", "AT_FLUID", "CAT_STOLEN", "ENG_DEAD");
    }

    @Test
    void only_the_two_floods_exclude_each_other() {
        assertThat(CATALOGUE.items().stream().filter(i -> !i.exclusiveGroup().isBlank()))
                .extracting(FailureItem::id, FailureItem::exclusiveGroup)
                .containsExactlyInAnyOrder(
                        tuple("FLOOD_FRESH", "flood"),
                        tuple("FLOOD_SALT", "flood"));
    }

    @Test
    void root_causes_are_kept_apart_from_the_parts_they_kill() {
        assertThat(item("TURBO_BEARING").rootCauses())
                .contains("TURBO_FEED", "TURBO_DRAIN", "OIL_PICKUP", "OIL_PUMP", "OIL_LOW_EXT");
        assertThat(item("ROD_BEARING").rootCauses()).contains("OIL_PICKUP", "OIL_PUMP");
        assertThat(item("TURBO_BEARING").flags()).contains(Flag.ROOT_CAUSE_FIRST);
        Remedy alone = remedy("TURBO_ONLY");
        Remedy withCause = remedy("TURBO_AND_CAUSE");
        assertThat(alone.closes()).doesNotContain("TURBO_FEED");
        assertThat(withCause.closes()).contains("TURBO_FEED", "TURBO_DRAIN");
        assertThat(alone.comeback()).isGreaterThan(withCause.comeback());
        assertThat(remedy("TURBO_CARTRIDGE").parts().mean()).isLessThan(withCause.parts().mean());
    }

    @Test
    void hard_stops_are_marked() {
        assertThat(CATALOGUE.items().stream().filter(i -> i.flags().contains(Flag.HARD_STOP)))
                .extracting(FailureItem::id)
                .containsExactlyInAnyOrder("RUST_STRUCT", "FLOOD_SALT", "TITLE_PAPERS", "VIN_MISMATCH");
    }

    @Test
    void a_used_engine_closes_what_is_inside_an_engine() {
        assertThat(remedy("USED_ENGINE").wholeUnit()).isTrue();
        assertThat(remedy("USED_ENGINE").closes())
                .contains("ROD_BEARING", "ENG_DEAD", "TIM_CHAIN_JUMPED", "HEAD_GASKET", "PISTON_RINGS")
                .doesNotContain("TURBO_BEARING", "RADIATOR", "STARTER");
    }

    @Test
    void every_finding_a_seller_could_answer_by_telephone_has_a_question() {
        assertThat(CATALOGUE.findings().stream()
                        .filter(f -> f.stage() == Stage.ADVERT || f.stage() == Stage.PHONE)
                        .filter(f -> f.question().isBlank()))
                .isEmpty();
    }

    @Test
    void checks_that_hurt_carry_a_caution() {
        List<String> silent = new ArrayList<>();
        CATALOGUE.findings().stream()
                .filter(f -> f.canDoDamage() && f.caution().isBlank())
                .forEach(f -> silent.add(f.id()));
        CATALOGUE.items().stream()
                .filter(i -> i.flags().contains(Flag.HIGH_VOLTAGE) && i.caution().isBlank())
                .forEach(i -> silent.add(i.id()));

        assertThat(silent).isEmpty();
    }

    private static Applicability applies(String item) {
        return item(item).applies();
    }

    private static FailureItem item(String id) {
        return CATALOGUE.itemsById().get(id);
    }

    private static Remedy remedy(String id) {
        return CATALOGUE.remedies().stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
    }

    private static void addWithRequirements(String step, Set<String> closure) {
        if (closure.add(step)) {
            CATALOGUE.accessById().get(step).requires().forEach(s -> addWithRequirements(s, closure));
        }
    }
}
