package worthsaving.deal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static worthsaving.quantity.Money.usd;

import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import worthsaving.catalog.MoneyLine;
import worthsaving.catalog.ShippedCatalogue;
import worthsaving.quantity.Money;
import worthsaving.quantity.Range;
import worthsaving.quantity.Source;

class DealTermsTest {

    private static final DealTerms USUAL = DealTerms.usual(Money.USD);

    @Test
    void the_shipped_catalogue_is_taken_as_it_is() {
        var catalogue = ShippedCatalogue.load();
        DealTerms terms = DealTerms.from(catalogue.moneyLines(), Money.USD);
        assertThat(terms.get(Term.TOW_PER_MILE)).isEqualTo(catalogue.moneyById().get("tow_per_mile").figure());
        assertThat(terms.get(Term.OWN_HOURLY)).isEqualTo(catalogue.moneyById().get("own_hourly").figure());
        assertThat(terms.sources().get(Term.TOW_PER_MILE).label()).isEqualTo(Source.Label.PUBLISHED);
        List<String> unknownToCatalogue = Arrays.stream(Term.values()).map(Term::id)
                .filter(id -> !catalogue.moneyById().containsKey(id)).toList();
        assertThat(unknownToCatalogue).containsExactlyInAnyOrder("days_in_yard", "days_waiting", "work_per_day",
                "repeat_borne", "speed", "parts_price", "open_up_hours", "scrap_tons", "opened_up_share");
    }

    /** Built-in money is in dollars; a term without a line would stop every other market. */
    @Test
    void the_shipped_catalogue_has_a_line_for_all_money_so_that_it_can_be_told_in_another_currency() {
        var catalogue = ShippedCatalogue.load();
        Currency euro = Currency.getInstance("EUR");
        DealTerms terms = DealTerms.from(catalogue.in(euro, 0.9).moneyLines(), euro);

        assertThat(terms.get(Term.DETAILING).mode()).isCloseTo(0.9 * 120, within(1e-9));
        assertThat(terms.get(Term.COMEBACK_RESERVE)).isEqualTo(catalogue.moneyById().get("comeback_reserve").figure());
        assertThatThrownBy(() -> DealTerms.from(List.of(), euro)).hasMessageContaining("detailing has a built-in figure in USD");
    }

    @Test
    void an_auction_and_a_tax_on_profit_wait_to_be_asked_for() {
        DealTerms terms = DealTerms.from(ShippedCatalogue.load().moneyLines(), Money.USD);
        assertThat(terms.mean(Term.AUCTION_PREMIUM)).isZero();
        assertThat(terms.mean(Term.INCOME_TAX)).isZero();
        assertThat(terms.mean(Term.WHOLESALE_DISCOUNT)).isZero();
        PriceTerms auction = terms.with(Term.SALES_TAX, 6)
                .atAuction(Range.exactly(10), Range.exactly(150)).priceTerms();
        assertThat(auction.costOf(usd(5_400)).amount()).isCloseTo(6_446.40, within(0.005));
    }

    @Test
    void every_unusable_line_is_named_at_once() {
        List<MoneyLine> lines = List.of(
                line("tow_hook_up", new Range(1, 2, 3), MoneyLine.Unit.DAYS),
                line("haggle", new Range(1, 2, 300), MoneyLine.Unit.PERCENT),
                line("of_no_concern", new Range(-1, 2, 3), MoneyLine.Unit.DAYS));
        assertThatThrownBy(() -> DealTerms.from(lines, Money.USD))
                .hasMessageContaining("tow_hook_up must be given as MONEY")
                .hasMessageContaining("haggle must lie")
                .hasMessageNotContaining("of_no_concern");
    }

    @ParameterizedTest
    @EnumSource(Term.class)
    void nothing_is_negative(Term term) {
        assertThatThrownBy(() -> USUAL.with(term, -1)).hasMessageContaining(term.id());
        assertThat(Term.ofId(term.id())).contains(term);
    }

    @Test
    void speed_and_work_per_day_divide_and_are_above_nothing() {
        assertThatThrownBy(() -> USUAL.with(Term.WORK_PER_DAY, 0)).hasMessageContaining("above 0");
        assertThatThrownBy(() -> USUAL.with(Term.SPEED, 0)).hasMessageContaining("above 0");
        assertThat(USUAL.with(Term.SPEED, 250).mean(Term.SPEED)).isEqualTo(250);
    }

    /** The ledger of the timing-chain car, worked by hand: net 5,363 with the capital rounded to 48. */
    @Test
    void a_ledger_from_terms() {
        DealTerms terms = SampleDeals.nothingElse()
                .with(Term.DETAILING, 200).with(Term.TOW_HOOK_UP, 110).with(Term.TOW_PER_MILE, 4)
                .with(Term.TITLE_TRANSFER, 95).with(Term.HOLDING_PER_DAY_OWN, 4).with(Term.CAPITAL_RATE, 10)
                .with(Term.COMEBACK_RESERVE, 2);
        SaleLedger ledger = terms.ledger(usd(6_200), 30, 35, usd(5_000));
        assertThat(ledger.net().amount()).isCloseTo(5_363 + 48 - 47.945205479452056, within(1e-9));
        assertThat(ledger.lines()).contains(new CashLine("tow", usd(230)));
        DealTerms asking = terms.with(Term.HAGGLE, 6).withValueIsAsk(true);
        assertThat(asking.ledger(usd(10_000), 0, 0, usd(0)).saleValue().amount()).isCloseTo(9_400, within(1e-9));
    }

    @Test
    void rules_of_thumb_for_comparison() {
        assertThat(RulesOfThumb.totalLoss(usd(7_500), usd(500), usd(10_000))).isFalse();
        assertThat(RulesOfThumb.totalLoss(usd(7_500), usd(2_500), usd(10_000))).isTrue();
        // Iowa: "more than" 70 %, https://www.iowalegalaid.org/resource/salvage-vehicles
        assertThat(RulesOfThumb.repairExceeds(usd(7_000), .70, usd(10_000))).isFalse();
        assertThat(RulesOfThumb.repairExceeds(usd(7_000.01), .70, usd(10_000))).isTrue();
        assertThat(RulesOfThumb.mostToPay(usd(6_200), .65, usd(1_917)).amount()).isCloseTo(2_113, within(1e-9));
    }

    private static MoneyLine line(String id, Range figure, MoneyLine.Unit unit) {
        return new MoneyLine(id, "buy", id, figure, unit, "", Source.guess("invented"));
    }
}
