package worthsaving.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/**
 * The shipped figures beside the trade notes they were written from. Source of all expected values:
 * trade/*.csv of the outside data, expert estimates.
 */
class CatalogueAgainstNotesTest {

    private static final Catalogue CATALOGUE = ShippedCatalogue.load();
    private static final String NOTES = "trade/failures.csv";

    /** The answers that the onsets were fitted to hold secondary damage, as the notes' figures do. */
    @Test
    void every_item_of_the_notes_is_there_with_its_chance() throws IOException {
        Map<String, CSVRecord> points =
                OnsetPointsTest.points().stream().collect(Collectors.toMap(r -> r.get("item"), r -> r));
        for (CSVRecord row : OutsideData.rowsOrSkip(NOTES)) {
            String id = row.get("id");
            assertThat(CATALOGUE.itemsById()).containsKey(id);
            if (!ASKED_OTHERWISE.contains(id)) {
                assertThat(asked(points, id, "p6")).as(id).isEqualTo(Double.parseDouble(row.get("p_60k_6yr")));
                assertThat(asked(points, id, "p10")).as(id).isEqualTo(Double.parseDouble(row.get("p_120k_10yr")));
                assertThat(asked(points, id, "p15")).as(id).isEqualTo(Double.parseDouble(row.get("p_180k_15yr")));
            }
        }
    }

    /**
     * OIL_COOLER: the notes' one item for filter housing and cooler was split in two. INTERCOOLER_OIL: the
     * notes' figure is less than what worn turbos alone leave there.
     */
    private static final Set<String> ASKED_OTHERWISE = Set.of("OIL_COOLER", "INTERCOOLER_OIL");

    private static double asked(Map<String, CSVRecord> points, String item, String column) {
        return Double.parseDouble(points.get(item).get(column));
    }

    @Test
    void hours_and_part_prices_are_those_of_the_notes() throws IOException {
        Map<String, PartSource> sources =
                Map.of("oe", PartSource.MAKER, "aftermarket", PartSource.AFTERMARKET, "used", PartSource.USED);
        for (CSVRecord row : OutsideData.rowsOrSkip(NOTES)) {
            FailureItem item = CATALOGUE.itemsById().get(row.get("id"));
            assertThat(item.jobHours().hours().mode()).isEqualTo(Double.parseDouble(row.get("job_hours_mode")));
            sources.forEach((column, source) -> {
                String price = row.get(column + "_mode");
                assertThat(item.parts().containsKey(source)).as(item.id()).isEqualTo(!price.isEmpty());
                if (!price.isEmpty()) {
                    assertThat(item.parts().get(source).amount().mode()).isEqualTo(Double.parseDouble(price));
                }
            });
        }
    }

    /**
     * The eight links that closed circles are left out; everything else is kept, the notes' figure within the
     * range. Three lie below it: with them overdue belts and old fluid alone would exceed the notes' own
     * figures for broken belts and dead gearboxes.
     */
    @Test
    void secondary_damage_is_that_of_the_notes_less_the_circles() throws IOException {
        Map<List<String>, DamageLink> links =
                CATALOGUE.damage().stream().collect(Collectors.toMap(d -> List.of(d.cause(), d.effect()), d -> d));
        Set<String> leftOut = new TreeSet<>();
        Set<String> lowered = new TreeSet<>();
        for (CSVRecord row : OutsideData.rowsOrSkip("trade/secondary_damage.csv")) {
            DamageLink link = links.get(List.of(row.get("cause_failure"), row.get("secondary_failure")));
            if (link == null) {
                leftOut.add(row.get("cause_failure") + ">" + row.get("secondary_failure"));
            } else {
                double usual = Double.parseDouble(row.get("p_secondary_given_cause"));
                if (link.chance().low() <= usual && usual <= link.chance().high()) {
                    assertThat(link.chance().mode()).isLessThanOrEqualTo(usual);
                } else {
                    lowered.add(row.get("cause_failure") + ">" + row.get("secondary_failure"));
                }
            }
        }
        assertThat(lowered)
                .containsExactly("AT_FLUID>AT_CLUTCHES", "AT_FLUID>TC_SHUDDER", "TIM_BELT_DUE>TIM_BELT_BROKEN");
        assertThat(leftOut)
                .containsExactly(
                        "BATT_12V>ALTERNATOR",
                        "CAT_FAILED>VALVE_BURNT",
                        "DCT_CLUTCH>DCT_MECHA",
                        "INTERCOOLER_OIL>PISTON_LAND",
                        "OIL_PICKUP>OIL_PUMP",
                        "TC_SHUDDER>AT_CLUTCHES",
                        "TURBO_BEARING>PISTON_LAND",
                        "VVT_PHASER>TIM_CHAIN_WORN");
    }

    @Test
    void money_lines_are_those_of_the_notes() throws IOException {
        List<Double> modes =
                CATALOGUE.moneyLines().stream().map(m -> m.figure().mode()).toList();
        for (CSVRecord row : OutsideData.rowsOrSkip("trade/economics.csv")) {
            assertThat(modes).as(row.get("item")).contains(Double.parseDouble(row.get("mode")));
        }
        assertThat(CATALOGUE.moneyById().get("tow_hook_up").figure().mode()).isEqualTo(110);
        assertThat(CATALOGUE.moneyById().get("haggle").figure().mode()).isEqualTo(6);
        assertThat(CATALOGUE.moneyById().get("scrap_per_ton").unit()).isEqualTo(MoneyLine.Unit.MONEY_PER_TON);
    }

    /**
     * Codes of the outside list that say nothing of a failure of ours, such as a circuit that is only
     * broken in itself, may be missing; no code belongs to two findings.
     */
    @Test
    void trouble_codes_lead_to_one_finding_each() throws IOException {
        Map<String, String> findingByCode = CATALOGUE.findings().stream()
                .flatMap(f -> f.codes().stream().map(c -> Map.entry(c, f.id())))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
        Set<String> listed = OutsideData.rowsOrSkip("checks/dtc_generic.csv").stream()
                .map(r -> r.get("code"))
                .collect(Collectors.toSet());

        listed.removeAll(findingByCode.keySet());

        assertThat(listed).containsExactlyInAnyOrder("P0325");
        assertThat(findingByCode)
                .containsEntry("P0016", "CODE_CAM_CRANK")
                .containsEntry("P0299", "CODE_BOOST")
                .containsEntry("P0420", "CODE_CATALYST")
                .containsEntry("P0217", "OVERHEATS");
    }
}
