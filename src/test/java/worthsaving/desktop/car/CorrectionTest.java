package worthsaving.desktop.car;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import worthsaving.desktop.Units;
import worthsaving.desktop.car.Correction.Figure;
import worthsaving.desktop.car.Correction.Word;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Exposure.Hazard;
import worthsaving.vehicle.Exposure.Level;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.TitleBrand;

class CorrectionTest {

    private final Listing listing = Cars.overheated();

    @ParameterizedTest
    @CsvSource({"ASK,'1,250',1250", "YEAR,2014,2014", "MILES,98000,98000", "TOW,0,0", "LITRES,2.5,2.5", "LITRES,2.0,2"})
    void what_is_typed_counts_as_stated(Figure figure, String typed, String shown) {
        Listing corrected = Correction.of(listing, figure, typed, Money.USD, Units.MILES).listing().orElseThrow();
        assertThat(Correction.text(corrected, figure, Units.MILES)).isEqualTo(shown);
        for (Figure other : Figure.values()) {
            if (other != figure) {
                assertThat(Correction.text(corrected, other, Units.MILES))
                        .isEqualTo(Correction.text(listing, other, Units.MILES));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Figure.class)
    void blank_means_not_stated(Figure figure) {
        Listing corrected = Correction.of(listing, figure, " ", Money.USD, Units.MILES).listing().orElseThrow();
        assertThat(Correction.text(corrected, figure, Units.MILES)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"ASK,cheap", "ASK,-5", "YEAR,1885", "YEAR,20144", "MILES,98k", "MILES,9999999999", "TOW,1e9",
            "LITRES,25", "LITRES,0"})
    void what_cannot_be_right_is_refused_with_words_and_changes_nothing(Figure figure, String typed) {
        Correction.Result result = Correction.of(listing, figure, typed, Money.USD, Units.MILES);
        assertThat(result.listing()).isEmpty();
        assertThat(result.trouble()).contains(typed);
    }

    @Test
    void distances_are_typed_and_shown_in_the_units_chosen() {
        Listing corrected = Correction.of(listing, Figure.MILES, "160,934", Money.USD, Units.KILOMETRES).listing()
                .orElseThrow();
        assertThat(Correction.text(corrected, Figure.MILES, Units.MILES)).isEqualTo("100000");
        assertThat(Correction.text(corrected, Figure.MILES, Units.KILOMETRES)).isEqualTo("160934");
    }

    @Test
    void names_count_as_stated_and_blank_ones_as_not_stated() {
        Listing civic = Correction.of(listing, Word.MODEL, "  Civic  LX ").listing().orElseThrow();
        assertThat(civic.vehicle().model()).isEqualTo(Fact.known("civic lx"));
        assertThat(civic.vehicle().make()).isEqualTo(listing.vehicle().make());
        assertThat(Correction.of(listing, Word.TRIM, "SE").listing().orElseThrow().vehicle().trim())
                .isEqualTo(Fact.known("SE"));
        assertThat(Correction.of(listing, Word.MAKE, " ").listing().orElseThrow().vehicle().make())
                .isEqualTo(Fact.unknown());
        assertThat(Correction.of(listing, Word.MAKE, "x".repeat(61)).listing()).isEmpty();
    }

    @Test
    void title_and_exposure_change_and_change_back() {
        Listing lien = Correction.title(listing, TitleBrand.LIEN);
        assertThat(lien.vehicle().title()).isEqualTo(TitleBrand.LIEN);
        assertThat(Correction.title(lien, listing.vehicle().title())).isEqualTo(listing);
        Listing driven = Correction.exposure(listing, Hazard.OVERHEATING, Level.DRIVEN_ON);
        assertThat(driven.exposure().level(Hazard.OVERHEATING)).isEqualTo(Level.DRIVEN_ON);
        assertThat(Correction.exposure(driven, Hazard.OVERHEATING, Level.UNKNOWN).exposure())
                .isEqualTo(Exposure.UNKNOWN);
    }

    @Test
    void a_corrected_guess_is_a_guess_no_longer() {
        Listing guessed = new Listing(listing.id(), listing.vehicle(), Fact.assumed(Money.usd(900), "read as 900"),
                listing.seen(), listing.towMiles(), listing.exposure(), listing.observations(), "", "");
        assertThat(Correction.of(guessed, Figure.ASK, "950", Money.USD, Units.MILES).listing().orElseThrow().ask().isKnown())
                .isTrue();
    }
}
