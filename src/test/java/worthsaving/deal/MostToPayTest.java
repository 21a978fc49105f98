package worthsaving.deal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static worthsaving.quantity.Money.usd;

import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import worthsaving.quantity.Money;
import worthsaving.quantity.Range;
import worthsaving.quantity.Seed;

/** Laws of the most to pay, over random invented cars and rules. */
class MostToPayTest {

    static LongStream seeds() {
        return LongStream.range(0, 12);
    }

    private DealCase car;
    private DealTerms terms;
    private BuyerRule rule;

    private void draw(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] chance = random.doubles(6, 0.02, 0.6).toArray();
        double mode = random.nextDouble(5_000, 12_000);
        car = SampleDeals.eightItems(new Range(0.7 * mode, mode, 1.4 * mode).asPert(), chance)
                .withMethod(new DealCase.Method(1_024, new Seed(seed), random.nextBoolean()));
        terms = DealTerms.usual(Money.USD)
                .with(Term.INCOME_TAX, random.nextBoolean() ? 0 : 20)
                .with(Term.AUCTION_PREMIUM, random.nextInt(15));
        rule = BuyerRule.of(usd(random.nextDouble(0, 1_500)), random.nextDouble(0.02, 0.5))
                .withWays(Set.of(WayOut.REPAIR_AND_SELL));
        if (random.nextBoolean()) {
            rule = rule.withLeastPerHour(random.nextDouble(20, 90));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void the_rule_holds_at_the_limit_and_breaks_one_unit_above(long seed) {
        draw(seed);
        Optional<Money> limit = limit(terms, rule);
        if (limit.isEmpty()) {
            assertThat(meets(usd(0))).isFalse();
        } else {
            assertThat(meets(limit.get())).isTrue();
            assertThat(meets(limit.get().plus(usd(1)))).isFalse();
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void a_stricter_rule_never_allows_more(long seed) {
        draw(seed);
        double limit = amount(terms, rule);
        BuyerRule more = BuyerRule.of(rule.targetProfit().plus(usd(200)), rule.mostChanceOfLoss().value());
        BuyerRule safer = BuyerRule.of(rule.targetProfit(), rule.mostChanceOfLoss().value() / 2);
        assertThat(amount(terms, more.withWays(rule.ways()))).isLessThanOrEqualTo(
                amount(terms, BuyerRule.of(rule.targetProfit(), rule.mostChanceOfLoss().value())
                        .withWays(rule.ways())));
        assertThat(amount(terms, safer.withWays(rule.ways()))).isLessThanOrEqualTo(
                amount(terms, BuyerRule.of(rule.targetProfit(), rule.mostChanceOfLoss().value())
                        .withWays(rule.ways())));
        assertThat(amount(terms, rule.withLeastPerHour(500))).isLessThanOrEqualTo(limit);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void dearer_terms_never_allow_more(long seed) {
        draw(seed);
        double limit = amount(terms, rule);
        for (Term dearer : new Term[] {Term.TOW_HOOK_UP, Term.TITLE_TRANSFER, Term.DETAILING, Term.SALES_TAX}) {
            DealTerms changed = terms.with(dearer, terms.get(dearer).high() + 50);
            assertThat(amount(changed, rule)).as(dearer.id()).isLessThanOrEqualTo(limit + 1e-3);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void a_dearer_car_never_allows_less(long seed) {
        draw(seed);
        double limit = amount(terms, rule);
        car = new DealCase(car.patterns(), car.repairs(), car.labour(),
                SampleDeals.value(car.value().saleValue().scaled(1.05)), car.towMiles(), car.title(), car.items(),
                car.method());
        assertThat(amount(terms, rule)).isGreaterThanOrEqualTo(limit);
    }

    @Test
    void one_more_day_costs_its_holding_over_the_tax() {
        DealTerms fixed = SampleDeals.timingChainTerms().with(Term.HOLDING_PER_DAY_OWN, 12);
        BuyerRule target = BuyerRule.of(usd(1_000), 1);
        double now = limitOf(SampleDeals.timingChain(), fixed, target);
        double later = limitOf(SampleDeals.timingChain(), fixed.with(Term.DAYS_WAITING, 1), target);
        assertThat(now - later).isCloseTo(12 / 1.06, within(1e-3));
    }

    @Test
    void the_ask_moves_the_opening_offer_but_not_the_limit() {
        DealCase chain = SampleDeals.timingChain();
        BuyerRule target = BuyerRule.of(usd(1_000), 0.2);
        MostToPay dear = DealEngine.assess(chain, SampleDeals.timingChainTerms(), target, Optional.of(usd(4_000)))
                .mostToPay();
        MostToPay cheap = DealEngine.assess(chain, SampleDeals.timingChainTerms(), target, Optional.of(usd(1_000)))
                .mostToPay();
        assertThat(dear.limit()).isEqualTo(cheap.limit());
        assertThat(dear.opening()).contains(usd(1_900));
        assertThat(cheap.opening()).contains(usd(850));
        assertThat(dear.breakEven().orElseThrow().amount()).isCloseTo((5_363 - 1_917) / 1.06, within(1e-3));
    }

    private Optional<Money> limit(DealTerms t, BuyerRule r) {
        return DealEngine.assess(car, t, r, Optional.empty()).mostToPay().limit();
    }

    private double amount(DealTerms t, BuyerRule r) {
        return limit(t, r).map(Money::amount).orElse(-1.0);
    }

    private static double limitOf(DealCase deal, DealTerms t, BuyerRule r) {
        return DealEngine.assess(deal, t, r, Optional.empty()).mostToPay().limit().orElseThrow().amount();
    }

    private boolean meets(Money price) {
        WayResult way = DealEngine.assess(car, terms, rule, Optional.of(price)).way(WayOut.REPAIR_AND_SELL);
        boolean perHour = rule.leastPerHour().isEmpty() || way.profitPerHour().isEmpty()
                || way.profitPerHour().getAsDouble() >= rule.leastPerHour().getAsDouble() - 1e-9;
        return way.expectedProfit() >= rule.targetProfit().amount() - 1e-9
                && way.chanceOfLoss() <= rule.mostChanceOfLoss().value() + 1e-9 && perHour;
    }
}
