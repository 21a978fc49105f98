package worthsaving.deal;

import static org.assertj.core.api.Assertions.assertThat;
import static worthsaving.quantity.Money.usd;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.Flag;
import worthsaving.quantity.Money;
import worthsaving.quantity.Probability;
import worthsaving.vehicle.TitleBrand;

class VerdictTest {

    private static final BuyerRule RULE = BuyerRule.of(usd(1_000), 0.20);

    @Test
    void buy_at_an_ask_below_the_limit() {
        Verdict verdict = verdict(TitleBrand.CLEAN, Map.of(), usd(2_300));
        assertThat(verdict.kind()).isEqualTo(Verdict.Kind.BUY);
        assertThat(verdict.headline()).isEqualTo(
                "Buy at USD 2,300 or less, to repair and sell; walk away above USD 2,307.");
        assertThat(verdict.reasons()).hasSize(3).first().asString().contains("USD 1,008").contains("USD 1,000");
        assertThat(verdict.wouldChange()).anyMatch(s -> s.contains("A price above USD 2,307"));
    }

    @Test
    void offer_less_when_the_ask_is_above_the_limit() {
        Verdict verdict = verdict(TitleBrand.CLEAN, Map.of(), usd(3_000));
        assertThat(verdict.kind()).isEqualTo(Verdict.Kind.BUY_BELOW);
        assertThat(verdict.headline()).contains("2,307");
        assertThat(verdict.wouldChange()).anyMatch(s -> s.contains("at most USD 2,307"));
    }

    @Test
    void walk_away_when_the_limit_is_less_than_half_the_ask() {
        Verdict verdict = verdict(TitleBrand.CLEAN, Map.of(), usd(5_000));
        assertThat(verdict.kind()).isEqualTo(Verdict.Kind.WALK_AWAY);
        assertThat(verdict.reasons()).hasSize(3).noneMatch(s -> s.contains("do not buy"));
    }

    @Test
    void an_unknown_ask_gives_a_limit() {
        Assessment a = DealEngine.assess(
                SampleDeals.timingChain(), SampleDeals.timingChainTerms(), RULE, Optional.empty());
        assertThat(a.verdict().kind()).isEqualTo(Verdict.Kind.BUY_BELOW);
        assertThat(a.price()).isEqualTo(a.mostToPay().limit().orElseThrow());
        assertThat(a.way(WayOut.REPAIR_AND_SELL).expectedProfit()).isGreaterThanOrEqualTo(1_000);
    }

    @ParameterizedTest
    @EnumSource(value = TitleBrand.class, names = {"LOST", "LIEN", "PARTS_ONLY"})
    void papers_stop_the_best_deal(TitleBrand title) {
        Verdict verdict = verdict(title, Map.of(), usd(100));
        assertThat(verdict.kind()).isEqualTo(Verdict.Kind.HARD_STOP);
        assertThat(verdict.afterCheck("Look first").kind()).isEqualTo(Verdict.Kind.HARD_STOP);
    }

    @Test
    void an_item_that_must_not_be_bought_stops_when_it_is_likely() {
        Map<String, FailureItem> items = Map.of("BEARINGS", SampleDeals.item("BEARINGS", Flag.HARD_STOP));
        assertThat(assess(TitleBrand.CLEAN, items, usd(100), above(.14, .14)).kind())
                .isEqualTo(Verdict.Kind.HARD_STOP);
        Verdict unsure = assess(TitleBrand.CLEAN, items, usd(100), above(.50, .14));
        assertThat(unsure.kind()).isEqualTo(Verdict.Kind.CHECK_FIRST);
        assertThat(unsure.reasons().get(0)).contains("would rule the car out");
        assertThat(assess(TitleBrand.CLEAN, items, usd(100), above(.50, .16)).kind()).isEqualTo(Verdict.Kind.BUY);
    }

    private static BuyerRule above(double hardStop, double review) {
        return new BuyerRule(RULE.targetProfit(), RULE.mostChanceOfLoss(), RULE.leastPerHour(), RULE.ways(),
                Probability.of(hardStop), Probability.of(review), RULE.openingShare());
    }

    @Test
    void a_review_item_or_an_unknown_title_asks_for_a_look() {
        Map<String, FailureItem> items = Map.of("VALVES", SampleDeals.item("VALVES", Flag.REVIEW));
        assertThat(verdict(TitleBrand.CLEAN, items, usd(2_000)).kind()).isEqualTo(Verdict.Kind.CHECK_FIRST);
        Verdict unknown = verdict(TitleBrand.UNKNOWN, Map.of(), usd(2_000));
        assertThat(unknown.kind()).isEqualTo(Verdict.Kind.CHECK_FIRST);
        assertThat(unknown.reasons().get(0)).contains("unknown is not clean");
    }

    @Test
    void a_check_goes_before_the_verdict_and_keeps_it_visible() {
        Verdict verdict = verdict(TitleBrand.CLEAN, Map.of(), usd(2_300)).afterCheck("Cut the oil filter first.");
        assertThat(verdict.kind()).isEqualTo(Verdict.Kind.CHECK_FIRST);
        assertThat(verdict.headline()).isEqualTo("Cut the oil filter first.");
        assertThat(verdict.wouldChange().get(0)).contains("Buy at USD 2,300");
    }

    private static Verdict verdict(TitleBrand title, Map<String, FailureItem> items, Money ask) {
        return assess(title, items, ask, RULE);
    }

    private static Verdict assess(TitleBrand title, Map<String, FailureItem> items, Money ask, BuyerRule rule) {
        DealCase c = SampleDeals.timingChain();
        DealCase deal = new DealCase(c.patterns(), c.repairs(), c.labour(), c.value(), c.towMiles(), title, items,
                c.method());
        return DealEngine.assess(deal, SampleDeals.timingChainTerms(), rule, Optional.of(ask)).verdict();
    }
}
