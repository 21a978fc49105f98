package worthsaving.ranking;

import static org.assertj.core.api.Assertions.assertThat;
import static worthsaving.ranking.Lots.appraise;
import static worthsaving.ranking.Lots.listing;

import org.junit.jupiter.api.Test;
import worthsaving.deal.Verdict;
import worthsaving.deal.WayOut;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;
import worthsaving.vehicle.TitleBrand;
import worthsaving.vehicle.Vehicle;

class JudgeTest {

    private static double limit(Listing listing) {
        return appraise(listing).assessment().mostToPay().limit().map(Money::amount).orElse(0.0);
    }

    @Test
    void a_foreign_price_is_refused_with_the_mend() {
        Judged judged = Lots.JUDGE.judge(listing("A", Lots.car(2015), Money.of(2_000, "EUR")));

        assertThat(judged).isInstanceOfSatisfying(Judged.Refused.class, no -> {
            assertThat(no.reason()).contains("EUR").contains("USD");
            assertThat(no.mend()).contains("convert");
        });
    }

    @Test
    void a_car_of_unknown_age_and_mileage_is_refused() {
        Vehicle nothing = Vehicle.builder().make(Fact.known("invented")).build();

        assertThat(Lots.JUDGE.judge(listing("A", nothing, Money.usd(2_000)))).isInstanceOf(Judged.Refused.class);
    }

    @Test
    void a_cheap_fault_allows_a_higher_price_than_a_dear_one() {
        double battery = limit(listing("A", 1_000, Observation.present("NO_CRANK"), Observation.present("BATT_12V")));
        double engine = limit(listing("B", 1_000, Observation.present("NO_CRANK"), Observation.present("ENG_DEAD")));

        assertThat(battery).isGreaterThan(engine + 1_500);
    }

    @Test
    void metal_in_the_filter_lowers_the_most_to_pay_and_a_clean_filter_raises_it() {
        Observation light = Observation.present("OIL_LIGHT_ON");
        double unknown = limit(listing("A", 2_000, light));

        assertThat(limit(listing("A", 2_000, light, Observation.present("FILTER_METAL")))).isLessThan(unknown);
        assertThat(limit(listing("A", 2_000, light, Observation.absent("FILTER_METAL")))).isGreaterThan(unknown);
    }

    /** The price data are of running cars with the faults usual at their age, so those must not be charged again. */
    @Test
    void a_running_car_without_complaints_is_worth_its_value_less_the_costs_of_dealing() {
        Appraisal running = appraise(listing("A", 5_000));

        double spread = 8_000 - 5_000 * 1.06;
        assertThat(running.assessment().way(WayOut.REPAIR_AND_SELL).expectedProfit())
                .isBetween(spread - 1_800, spread - 500);
    }

    @Test
    void an_ask_that_can_hardly_be_a_price_is_asked_about() {
        Appraisal deposit = appraise(listing("A", 200));

        assertThat(deposit.verdict().kind()).isEqualTo(Verdict.Kind.CHECK_FIRST);
        assertThat(deposit.verdict().headline()).contains("USD 200.00").contains("deposit");
    }

    @Test
    void lost_papers_stop_whatever_the_profit() {
        Vehicle lost = Lots.car(2015).toBuilder().title(TitleBrand.LOST).build();

        assertThat(appraise(listing("A", lost, Money.usd(500))).verdict().kind()).isEqualTo(Verdict.Kind.HARD_STOP);
    }

    @Test
    void nobody_resells_unmended_for_more_than_the_ask() {
        Appraisal cheap = appraise(listing("A", 600, Observation.present("ENG_DEAD")));

        assertThat(cheap.assessment().way(WayOut.SELL_AS_IT_STANDS).profit().greatest()).isNegative();
    }

    @Test
    void a_car_without_a_price_is_judged_at_the_most_to_pay() {
        Appraisal open = appraise(listing("A", Lots.car(2015), null, Observation.present("NO_CRANK")));

        assertThat(open.assessment().ask()).isEmpty();
        assertThat(open.assessment().price()).isEqualTo(open.assessment().mostToPay().limit().orElseThrow());
    }

    @Test
    void very_old_cars_are_not_certain_to_have_been_in_a_crash() {
        Appraisal old = appraise(listing("A", Lots.car(1970), Money.usd(3_000)));

        assertThat(old.diagnosis().belief("COLL_STRUCT").posterior().value()).isLessThan(0.1);
    }
}
