package worthsaving.intake.advert;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;
import worthsaving.vehicle.Observation.Sight;
import worthsaving.vehicle.Observation.Witness;
import worthsaving.vehicle.Powertrain;
import worthsaving.vehicle.TitleBrand;

/** One invented advert followed through to the listing, and what each field tells of itself. */
class AdvertReadingTest {

    private static final String TEXT = "17 Escape SE 1.5 ecoboost. Losing coolant, white smoke, no knocks. 88k mi, "
            + "lifter tick maybe, new starter. P0304. drove it home. Asking 4,200. Lien - bank has title. call 555-0147";
    private static final AdvertReading READING = Vocabularies.read(TEXT);

    @Test
    void fields_say_which_words_they_came_from() {
        assertThat(READING.car().model().orElseThrow().words()).singleElement()
                .satisfies(s -> assertThat(s.of(READING.text())).isEqualTo("Escape"));
        assertThat(READING.offer().price().orElseThrow().words()).singleElement()
                .satisfies(s -> assertThat(s.of(READING.text())).isEqualTo("4,200"));
        assertThat(READING.car().mileage().orElseThrow().words()).singleElement()
                .satisfies(s -> assertThat(s.of(READING.text())).isEqualTo("88k mi"));
    }

    @Test
    void guesses_carry_a_reason() {
        Found<String> make = READING.car().make().orElseThrow();
        assertThat(make.isGuessed()).isTrue();
        assertThat(make.why()).isNotEmpty();
        assertThat(READING.condition().claims()).filteredOn(c -> c.value().standing() == Claim.Standing.IMPLIED)
                .extracting(c -> c.value().item()).containsExactly("HEAD_GASKET");
        assertThat(READING.condition().claims()).filteredOn(Found::isGuessed).allMatch(c -> !c.why().isEmpty());
    }

    @Test
    void listing_keeps_stated_and_assumed_apart() {
        Listing listing = READING.toListing("lot-1", "pasted text");
        assertThat(listing.vehicle().year()).isEqualTo(Fact.known(2017));
        assertThat(listing.vehicle().model()).isEqualTo(Fact.known("escape"));
        assertThat(listing.vehicle().make()).isInstanceOf(Fact.Assumed.class);
        assertThat(listing.vehicle().engineLitres()).isEqualTo(Fact.known(1.5));
        assertThat(listing.vehicle().powertrain().engine()).isEqualTo(Fact.known(Powertrain.Engine.PETROL_TURBO));
        assertThat(listing.vehicle().title()).isEqualTo(TitleBrand.LIEN);
        assertThat(listing.seen()).isEqualTo(Vocabularies.DAY);
        assertThat(listing.ask().get().orElseThrow().amount()).isEqualTo(4200);
    }

    @Test
    void observations_are_the_sellers_word_and_leave_out_what_merely_follows() {
        assertThat(READING.toListing("lot-1", "pasted text").observations()).contains(
                new Observation("USES_COOLANT", Sight.PRESENT, Witness.SELLER),
                new Observation("KNOCKS", Sight.ABSENT, Witness.SELLER),
                new Observation("LIFTER_CAM", Sight.UNSURE, Witness.SELLER),
                new Observation("STARTER", Sight.ABSENT, Witness.SELLER),
                new Observation("TITLE_NOT_IN_HAND", Sight.PRESENT, Witness.SELLER))
                .allMatch(o -> o.witness() == Witness.SELLER)
                .noneMatch(o -> o.subject().equals("HEAD_GASKET"));
    }

    @Test
    void trouble_codes_and_driving_on_are_read() {
        assertThat(READING.condition().codes()).extracting(f -> f.value().code().text()).containsExactly("P0304");
        assertThat(READING.condition().exposure().level(Exposure.Hazard.OVERHEATING)).isEqualTo(Exposure.Level.DRIVEN_ON);
    }

    @Test
    void other_readings_are_offered_for_correction() {
        AdvertReading r = Vocabularies.read("2012 Honda Civic 98k $4000 $4500");
        assertThat(r.offer().price().orElseThrow().others()).isNotEmpty();
    }

    @Test
    void masked_miles_are_a_guess_and_a_lower_bound() {
        Found<Mileage> m = Vocabularies.read("2011 Chevy Equinox LT 131xxx miles").car().mileage().orElseThrow();
        assertThat(m.isGuessed()).isTrue();
        assertThat(m.value().lowerBound()).isTrue();
    }

    @Test
    void missing_fields_are_noted() {
        assertThat(Vocabularies.read("nice car").notes()).contains("no model year found", "no asking price found",
                "no mileage found");
    }

    @Test
    void the_same_text_gives_the_same_reading() {
        AdvertReading again = new AdvertReader(Vocabulary.read(Vocabularies::open)).read(TEXT, Vocabularies.DAY);
        assertThat(again).isEqualTo(READING);
    }
}
