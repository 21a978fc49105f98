package worthsaving.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import worthsaving.quantity.Distance;

/**
 * The shipped figures beside the trade notes they were written from. Source of all expected values:
 * trade/*.csv of the outside data, expert estimates.
 */
class CatalogueAgainstNotesTest {

    private static final Catalogue CATALOGUE = ShippedCatalogue.load();
    private static final String NOTES = "trade/failures.csv";

    private record Point(String column, double age, double miles, double tolerance) {}

    /** The ten-year figure within a fifth, the others within three tenths; never closer than 0.005. */
    private static final List<Point> POINTS = List.of(
            new Point("p_60k_6yr", 6, 60_000, 0.3),
            new Point("p_120k_10yr", 10, 120_000, 0.2),
            new Point("p_180k_15yr", 15, 180_000, 0.3));

    @Test
    void every_item_of_the_notes_is_there_with_its_onset() throws IOException {
        Map<String, FailureItem> items = CATALOGUE.itemsById();
        SoftAssertions soft = new SoftAssertions();
        for (CSVRecord row : OutsideData.rowsOrSkip(NOTES)) {
            String id = row.get("id");
            soft.assertThat(items).containsKey(id);
            for (Point point : POINTS) {
                double expected = Double.parseDouble(row.get(point.column()));
                soft.assertThat(prior(id, point))
                        .as(id + " " + point.column())
                        .isCloseTo(expected, within(Math.max(0.005, point.tolerance() * expected)));
            }
        }
        soft.assertAll();
    }

    /** The notes' one item for filter housing and cooler was split in two. */
    private static double prior(String id, Point point) {
        double prior = itemPrior(id, point);
        return id.equals("OIL_COOLER") ? 1 - (1 - prior) * (1 - itemPrior("OIL_FILTER_HOUSING", point)) : prior;
    }

    private static double itemPrior(String id, Point point) {
        return CATALOGUE
                .itemsById()
                .get(id)
                .onset()
                .prior(point.age(), Distance.ofMiles(point.miles()))
                .value();
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

    /** The eight links that closed circles are left out; everything else is kept. */
    @Test
    void secondary_damage_is_that_of_the_notes_less_the_circles() throws IOException {
        Map<List<String>, DamageLink> links =
                CATALOGUE.damage().stream().collect(Collectors.toMap(d -> List.of(d.cause(), d.effect()), d -> d));
        Set<String> leftOut = new TreeSet<>();
        for (CSVRecord row : OutsideData.rowsOrSkip("trade/secondary_damage.csv")) {
            DamageLink link = links.get(List.of(row.get("cause_failure"), row.get("secondary_failure")));
            if (link == null) {
                leftOut.add(row.get("cause_failure") + ">" + row.get("secondary_failure"));
            } else {
                assertThat(link.chance().mode()).isEqualTo(Double.parseDouble(row.get("p_secondary_given_cause")));
            }
        }
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
