package worthsaving.ranking;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.ShippedCatalogue;
import worthsaving.deal.BuyerRule;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Money;
import worthsaving.quantity.Range;
import worthsaving.quantity.Seed;
import worthsaving.valuation.ValueForecast;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;
import worthsaving.vehicle.Vehicle;

class PreparedListingTest {

    /** An invented value, for no price model is needed here. */
    private static final ValueSource INVENTED = (vehicle, on) -> new ValueForecast(
            new Range(4_000, 6_500, 9_500).asPert(), Money.USD, List.of(), List.of(), List.of(), "invented");

    private final Catalogue catalogue = ShippedCatalogue.load();
    private final Judge judge = new Judge(catalogue, INVENTED, JudgeSettings.usual(catalogue, Seed.DEFAULT));

    private static Listing listing(Fact<Money> ask) {
        return new Listing("A", Vehicle.builder().year(Fact.known(2013)).odometer(Fact.known(Distance.ofMiles(111_000)))
                .build(), ask, LocalDate.of(2025, 11, 14), Fact.known(12.0), Exposure.UNKNOWN,
                List.of(Observation.present("WILL_NOT_MOVE")), "", "");
    }

    private PreparedListing prepared(Judge by) {
        return ((Preparation.Ready) by.prepare(listing(Fact.known(Money.usd(1_500))))).listing();
    }

    private static Appraisal done(Judged judged) {
        return ((Judged.Done) judged).appraisal();
    }

    @Test
    void at_its_own_price_it_gives_what_judging_gives() {
        JudgeSettings settings = judge.settings();
        Appraisal prepared = prepared(judge).appraise(settings.terms(), settings.rule(), Optional.of(Money.usd(1_500)));
        Appraisal whole = done(judge.judge(listing(Fact.known(Money.usd(1_500)))));
        assertThat(prepared.assessment().bestWay().expectedProfit())
                .isEqualTo(whole.assessment().bestWay().expectedProfit());
        assertThat(prepared.verdict()).isEqualTo(whole.verdict());
        assertThat(prepared.checks()).isEqualTo(whole.checks());
    }

    @Test
    void a_lower_price_leaves_more_and_the_most_to_pay_as_it_is() {
        JudgeSettings settings = judge.settings();
        PreparedListing prepared = prepared(judge);
        Appraisal dear = prepared.appraise(settings.terms(), settings.rule(), Optional.of(Money.usd(1_500)));
        Appraisal cheap = prepared.appraise(settings.terms(), settings.rule(), Optional.of(Money.usd(900)));
        assertThat(cheap.assessment().ways().get(0).expectedProfit())
                .isGreaterThan(dear.assessment().ways().get(0).expectedProfit() + 600);
        assertThat(cheap.assessment().mostToPay().limit()).isEqualTo(dear.assessment().mostToPay().limit());
    }

    @Test
    void a_greater_target_allows_a_smaller_price() {
        JudgeSettings settings = judge.settings();
        PreparedListing prepared = prepared(judge);
        Appraisal modest = prepared.appraise(settings.terms(), BuyerRule.of(Money.usd(0), 0.9), Optional.empty());
        Appraisal greedy = prepared.appraise(settings.terms(), BuyerRule.of(Money.usd(800), 0.9), Optional.empty());
        assertThat(greedy.assessment().mostToPay().limit().map(Money::amount).orElse(0.0))
                .isLessThan(modest.assessment().mostToPay().limit().orElseThrow().amount());
    }

    @Test
    void another_source_of_values_gives_what_a_new_judge_gives() {
        ValueSource dearer = INVENTED.times(1.2);
        JudgeSettings s = judge.settings();
        Appraisal shared = prepared(judge.with(dearer)).appraise(s.terms(), s.rule(), Optional.empty());
        Appraisal fresh = prepared(new Judge(catalogue, dearer, s)).appraise(s.terms(), s.rule(), Optional.empty());
        assertThat(shared.value().mean().amount()).isEqualTo(1.2 * prepared(judge)
                .appraise(s.terms(), s.rule(), Optional.empty()).value().mean().amount());
        assertThat(shared.assessment().bestWay().expectedProfit())
                .isEqualTo(fresh.assessment().bestWay().expectedProfit());
    }

    @Test
    void dearer_parts_make_repairs_dearer() {
        Catalogue dear = catalogue.withPartPrices(2);
        JudgeSettings s = judge.settings();
        double usual = prepared(judge).appraise(s.terms(), s.rule(), Optional.of(Money.usd(1_500)))
                .assessment().ways().get(0).expectedProfit();
        double dearer = prepared(new Judge(dear, INVENTED, s)).appraise(s.terms(), s.rule(), Optional.of(Money.usd(1_500)))
                .assessment().ways().get(0).expectedProfit();
        assertThat(dear.remedies().get(0).parts().mean().amount())
                .isEqualTo(2 * catalogue.remedies().get(0).parts().mean().amount());
        assertThat(dearer).isLessThan(usual);
    }

    @Test
    void a_refused_listing_cannot_be_prepared() {
        Listing empty = new Listing("B", Vehicle.builder().build(), Fact.unknown(), LocalDate.of(2025, 11, 14),
                Fact.unknown(), Exposure.UNKNOWN, List.of(), "", "");
        assertThat(judge.prepare(empty)).isInstanceOfSatisfying(Preparation.Refused.class,
                r -> assertThat(r.why().reason()).contains("neither model year nor mileage"));
    }
}
