package worthsaving.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Observation;
import worthsaving.vehicle.Observation.Sight;
import worthsaving.vehicle.Observation.Witness;

/** What was seen, said and read out, cell by cell. */
class EvidenceTest {

    private static List<Observation> observed(String column, String cell) {
        return Tables.one(Tables.withColumn(column, "\"" + cell + "\"")).listing().observations();
    }

    @ParameterizedTest
    @CsvSource({
        "present, PRESENT, OWN_EYES", "absent, ABSENT, OWN_EYES", "unsure, UNSURE, OWN_EYES",
        "seller_says, PRESENT, SELLER"
    })
    void the_column_says_what_was_seen_and_by_whom(String column, Sight sight, Witness witness) {
        assertThat(observed(column, "KNOCKS")).containsExactly(new Observation("KNOCKS", sight, witness));
    }

    @ParameterizedTest
    @CsvSource({"found_failed, PRESENT", "found_sound, ABSENT"})
    void items_looked_at_directly(String column, Sight sight) {
        assertThat(observed(column, "WATER_PUMP"))
                .containsExactly(new Observation("WATER_PUMP", sight, Witness.OWN_EYES));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '#', value = {
        "KNOCKS OVERHEATS", "KNOCKS,OVERHEATS", "KNOCKS; OVERHEATS", " knocks |overheats ", "KNOCKS KNOCKS  OVERHEATS"
    })
    void ids_may_be_parted_and_spelled_as_one_likes(String cell) {
        assertThat(observed("present", cell))
                .containsExactly(Observation.present("KNOCKS"), Observation.present("OVERHEATS"));
    }

    @Test
    void the_seller_may_claim_and_deny_findings_and_items() {
        assertThat(observed("seller_says", "HEAD_GASKET !KNOCKS !water_pump")).containsExactly(
                new Observation("HEAD_GASKET", Sight.PRESENT, Witness.SELLER),
                new Observation("KNOCKS", Sight.ABSENT, Witness.SELLER),
                new Observation("WATER_PUMP", Sight.ABSENT, Witness.SELLER));
    }

    /** The seller's word and one's own eyes may differ: both are kept, for the diagnosis to weigh. */
    @Test
    void seller_and_own_eyes_may_contradict_each_other() {
        Lot lot = Tables.read(Tables.HEADER + ",present,seller_says", "A1,2012,ford,focus,90000,1500,KNOCKS,!KNOCKS");

        assertThat(Tables.one(lot).listing().observations()).hasSize(2);
    }

    @ParameterizedTest
    @CsvSource({
        "present, absent", "present, unsure", "absent, unsure", "found_failed, found_sound"
    })
    void one_witness_may_not_contradict_himself(String one, String other) {
        String id = one.startsWith("found") ? "HEAD_GASKET" : "KNOCKS";
        Lot lot = Tables.read(Tables.HEADER + "," + one + "," + other,
                "A1,2012,ford,focus,90000,1500," + id + "," + id);

        assertThat(lot.faults()).singleElement().satisfies(f -> {
            assertThat(f.column()).isEqualTo(other);
            assertThat(f.what()).contains(id);
        });
    }

    @Test
    void a_code_read_out_against_a_finding_told_absent_is_a_contradiction() {
        Lot lot = Tables.read(Tables.HEADER + ",absent,codes", "A1,2012,ford,focus,90000,1500,OVERHEATS,P0217");

        assertThat(lot.refused()).hasSize(1);
        assertThat(lot.faults()).extracting(IntakeFault::column).containsExactly("codes");
    }

    @Test
    void codes_are_kept_whether_the_catalogue_knows_them_or_not() {
        LotEntry entry = Tables.one(Tables.withColumn("codes", "p0300 P1234 U0100"));

        assertThat(entry.codes()).extracting(read -> read.code().text()).containsExactly("P0300", "P1234", "U0100");
        assertThat(entry.listing().observations()).containsExactly(Observation.present("CODE_MISFIRE"));
    }

    @ParameterizedTest
    @CsvSource({
        "present, HEAD_GASKET, found_failed", "absent, HEAD_GASKET, found_sound", "found_failed, KNOCKS, present",
        "found_sound, KNOCKS, absent"
    })
    void an_id_in_the_wrong_column_is_sent_to_the_right_one(String column, String id, String right) {
        assertThat(Tables.withColumn(column, id).faults()).singleElement()
                .satisfies(f -> assertThat(f.mend()).contains(right));
    }

    @ParameterizedTest
    @CsvSource({"LOW_OIL_PRESSURE", "low_oil_pressure", "low-oil-pressure"})
    void hazards_in_any_spelling(String cell) {
        Exposure exposure = Tables.one(Tables.withColumn("drove_on", cell)).listing().exposure();

        assertThat(exposure.levels().keySet()).isEqualTo(Set.of(Exposure.Hazard.LOW_OIL_PRESSURE));
    }

    @Test
    void without_a_catalogue_ids_are_taken_as_they_are() throws Exception {
        Vocabulary none = new Vocabulary(Set.of(), Set.of(), Map.of(), Set.of());
        Lot lot = new ListingReader(none, Tables.SETTINGS).read(new StringReader(
                Tables.HEADER + ",present\nA1,2012,nobody,knows,90000,1500,SOMETHING\n"), "t.csv");

        assertThat(lot.faults()).isEmpty();
        assertThat(Tables.one(lot).listing().observations()).containsExactly(Observation.present("SOMETHING"));
    }
}
