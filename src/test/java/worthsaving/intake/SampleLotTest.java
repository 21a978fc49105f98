package worthsaving.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import worthsaving.catalog.Applicability;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.CatalogueReader;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.Flag;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;
import worthsaving.vehicle.Observation.Sight;
import worthsaving.vehicle.Powertrain;
import worthsaving.vehicle.TitleBrand;

/** The invented lot makes sense to a mechanic, as far as that can be tested. */
class SampleLotTest {

    private static Catalogue catalogue;
    private static Lot lot;

    @BeforeAll
    static void read() throws IOException {
        catalogue = CatalogueReader.read(SampleLotTest::open).orElseThrow();
        try (InputStream in = Files.newInputStream(Path.of("shared/samples/lot.csv"))) {
            lot = new ListingReader(Vocabulary.of(catalogue, Set.of()), Tables.SETTINGS).read(in, "lot.csv");
        }
    }

    private static Reader open(String name) {
        try {
            return Files.newBufferedReader(Path.of("shared/catalogue", name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void has_no_fault_against_the_shipped_catalogue() {
        assertThat(lot.faults()).isEmpty();
        assertThat(lot.entries()).hasSize(25);
    }

    /** A claim that a belt broke on an engine with a chain would be a slip in the story. */
    @Test
    void claimed_and_found_items_exist_on_the_car() {
        Map<String, FailureItem> items = catalogue.itemsById();
        assertThat(lot.listings()).allSatisfy(l -> assertThat(l.observations())
                .filteredOn(o -> items.containsKey(o.subject()) && o.sight() == Sight.PRESENT)
                .allSatisfy(o -> assertThat(applies(items.get(o.subject()).applies(), l.vehicle().powertrain()))
                        .as("%s on %s", o.subject(), l.id())
                        .isTrue()));
    }

    private static boolean applies(Applicability a, Powertrain p) {
        return p.engine().get().map(a.engines()::contains).orElse(true)
                && p.timing().get().map(a.timings()::contains).orElse(true)
                && p.gearbox().get().map(a.gearboxes()::contains).orElse(true)
                && p.drive().get().map(a.drives()::contains).orElse(true);
    }

    @Test
    void trouble_codes_are_findings_of_the_listing() {
        assertThat(lot.entries()).filteredOn(e -> !e.codes().isEmpty()).hasSizeGreaterThan(10).allSatisfy(e ->
                assertThat(e.codes()).allSatisfy(code -> assertThat(e.listing().observations())
                        .extracting(Observation::subject)
                        .containsAnyElementsOf(vocabulary().findings(code.code()))));
    }

    private static Vocabulary vocabulary() {
        return Vocabulary.of(catalogue, Set.of());
    }

    @Test
    void holds_every_engine_gearbox_and_drive_and_some_of_each_title() {
        assertThat(lot.listings().stream().flatMap(l -> l.vehicle().powertrain().engine().get().stream())
                .collect(Collectors.toSet())).isEqualTo(EnumSet.allOf(Powertrain.Engine.class));
        assertThat(lot.listings().stream().flatMap(l -> l.vehicle().powertrain().gearbox().get().stream())
                .collect(Collectors.toSet())).isEqualTo(EnumSet.allOf(Powertrain.Gearbox.class));
        assertThat(lot.listings().stream().map(l -> l.vehicle().title()).collect(Collectors.toSet()))
                .contains(TitleBrand.CLEAN, TitleBrand.CLEAN_CLAIMED, TitleBrand.SALVAGE, TitleBrand.LIEN,
                        TitleBrand.LOST);
    }

    /** Salt water, a holed frame and a lost title: three cars that no ask may turn into a buy. */
    @Test
    void holds_hard_stops_of_three_kinds() {
        Set<String> stops = catalogue.items().stream()
                .filter(i -> i.flags().contains(Flag.HARD_STOP))
                .map(FailureItem::id)
                .collect(Collectors.toSet());
        Map<String, Set<String>> seenAs = Map.of(
                "L09", Set.of("RUST_THROUGH"), "L10", Set.of("SALT_MARKS"), "L11", Set.of("TITLE_NOT_IN_HAND"));
        seenAs.forEach((id, findings) -> {
            Listing listing = lot.listings().stream().filter(l -> l.id().equals(id)).findFirst().orElseThrow();
            List<String> present = listing.observations().stream()
                    .filter(o -> o.sight() == Sight.PRESENT).map(Observation::subject).toList();
            assertThat(present).containsAll(findings);
            assertThat(catalogue.findingLinks())
                    .anyMatch(k -> findings.contains(k.finding()) && stops.contains(k.item()));
        });
    }

    /** Makes and models stand only where open data hold them. */
    @Test
    void makes_and_models_are_in_the_open_price_data() throws IOException {
        Set<String> known = OutsideFiles.rows("data/us_classifieds_2018_19.csv").stream()
                .map(SampleLotTest::makeAndModel)
                .collect(Collectors.toSet());

        assertThat(lot.listings()).allSatisfy(l -> assertThat(known)
                .contains(l.vehicle().make().orElse("") + " " + l.vehicle().model().orElse("")));
    }

    private static String makeAndModel(CSVRecord row) {
        return row.get("make") + " " + row.get("model");
    }
}
