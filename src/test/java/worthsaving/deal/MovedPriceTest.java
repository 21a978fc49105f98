package worthsaving.deal;

import static org.assertj.core.api.Assertions.assertThat;
import static worthsaving.quantity.Money.usd;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import worthsaving.quantity.Money;
import worthsaving.quantity.Range;

/** A slider moved and moved back gives what a first look gives, whatever was looked at in between. */
class MovedPriceTest {

    private static final DealCase CAR = SampleDeals.eightItems(
            new Range(5_000, 8_000, 11_000).asPert(), 0.5, 0.3, 0.2, 0.1, 0.1, 0.4, 0.05, 0.2);

    private static final DealTerms TERMS = DealTerms.usual(Money.USD);
    private static final BuyerRule RULE = BuyerRule.of(usd(800), 0.25);

    @Test
    void the_same_whatever_was_judged_before() {
        PreparedDeal moved = DealEngine.prepare(CAR);
        moved.assess(TERMS, RULE, Optional.of(usd(500)));
        moved.assess(TERMS.with(Term.INCOME_TAX, 30), RULE, Optional.of(usd(900)));
        moved.assess(TERMS, BuyerRule.of(usd(2_000), 0.1), Optional.empty());
        for (int price = 600; price <= 4_200; price += 900) {
            same(moved.assess(TERMS, RULE, Optional.of(usd(price))),
                    DealEngine.assess(CAR, TERMS, RULE, Optional.of(usd(price))));
        }
        same(moved.assess(TERMS, RULE, Optional.empty()), DealEngine.assess(CAR, TERMS, RULE, Optional.empty()));
    }

    @Test
    void other_terms_are_not_mistaken_for_the_last_ones() {
        PreparedDeal deal = DealEngine.prepare(CAR);
        Assessment before = deal.assess(TERMS, RULE, Optional.of(usd(1_500)));
        Assessment taxed = deal.assess(TERMS.with(Term.INCOME_TAX, 30), RULE, Optional.of(usd(1_500)));

        assertThat(taxed.way(WayOut.REPAIR_AND_SELL).expectedProfit())
                .isLessThan(before.way(WayOut.REPAIR_AND_SELL).expectedProfit());
    }

    private static void same(Assessment a, Assessment b) {
        assertThat(a.mostToPay()).isEqualTo(b.mostToPay());
        assertThat(a.best()).isEqualTo(b.best());
        assertThat(a.verdict()).isEqualTo(b.verdict());
        assertThat(a.effects()).isEqualTo(b.effects());
        assertThat(a.valueOfKnowing()).isEqualTo(b.valueOfKnowing());
        for (WayOut way : WayOut.values()) {
            assertThat(a.way(way).expectedProfit()).isEqualTo(b.way(way).expectedProfit());
            assertThat(a.way(way).chanceOfLoss()).isEqualTo(b.way(way).chanceOfLoss());
        }
    }
}
