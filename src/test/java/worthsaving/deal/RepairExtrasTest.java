package worthsaving.deal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static worthsaving.quantity.Money.usd;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.quantity.HoursRange;
import worthsaving.quantity.MoneyRange;
import worthsaving.vehicle.TitleBrand;

/** Money lines around a repair; an invented car worth 8,000, one job of 1,000 and 10 hours, worked by hand. */
class RepairExtrasTest {

    private static final DealTerms NOTHING = SampleDeals.nothingElse();

    private static WayResult mended(Labour labour, DealTerms terms) {
        DealCase car = new DealCase(SampleDeals.enumerated(List.of("A"), List.of(SampleDeals.bits(0)), 1),
                f -> Optional.of(SampleDeals.plan(f, SampleDeals.job("A", MoneyRange.usd(1_000, 1_000, 1_000),
                        HoursRange.of(10, 10, 10), 1, 0))),
                labour, SampleDeals.exactly(8_000), 0, TitleBrand.CLEAN, Map.of(),
                DealCase.Method.USUAL.committed());
        return DealEngine.assess(car, terms, BuyerRule.of(usd(0), 1), Optional.of(usd(2_000)))
                .way(WayOut.REPAIR_AND_SELL);
    }

    @Test
    void shipping_and_disposal_are_paid_once_a_car() {
        WayResult way = mended(Labour.own(usd(35)),
                NOTHING.with(Term.PARTS_SHIPPING, 40).with(Term.DISPOSAL, 20));
        assertThat(way.expectedProfit()).isCloseTo(8_000 - 2_000 - 1_000 - 350 - 60, within(1e-6));
        assertThat(way.cashOut().mean()).isCloseTo(2_000 + 1_000 + 60, within(1e-6));
    }

    @Test
    void a_core_charge_is_cash_and_no_cost() {
        WayResult without = mended(Labour.own(usd(35)), NOTHING);
        WayResult with = mended(Labour.own(usd(35)), NOTHING.with(Term.CORE_CHARGE, 150));
        assertThat(with.expectedProfit()).isEqualTo(without.expectedProfit());
        assertThat(with.cashOut().mean() - without.cashOut().mean()).isCloseTo(150, within(1e-9));
    }

    /** Five per cent of 10 hours at 100 is 50; a cap of 40 holds it there; own hands have no such line. */
    @ParameterizedTest
    @CsvSource({"80, 50", "40, 40"})
    void a_shop_charges_for_supplies_up_to_a_cap(double cap, double expected) {
        DealTerms terms = NOTHING.with(Term.SHOP_SUPPLIES, 5).with(Term.SHOP_SUPPLIES_CAP, cap);
        assertThat(mended(Labour.shop(usd(100)), terms).expectedProfit())
                .isCloseTo(8_000 - 2_000 - 1_000 - 1_000 - expected, within(1e-6));
        assertThat(mended(Labour.own(usd(35)), terms).expectedProfit()).isCloseTo(4_650, within(1e-6));
    }

    @Test
    void a_sale_to_the_trade_gives_up_a_share() {
        assertThat(mended(Labour.own(usd(35)), NOTHING.with(Term.WHOLESALE_DISCOUNT, 12)).expectedProfit())
                .isCloseTo(8_000 * .88 - 2_000 - 1_350, within(1e-6));
    }
}
