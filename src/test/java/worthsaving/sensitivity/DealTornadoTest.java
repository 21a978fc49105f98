package worthsaving.sensitivity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static worthsaving.quantity.Money.usd;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import worthsaving.deal.Assessment;
import worthsaving.deal.BuyerRule;
import worthsaving.deal.DealEngine;
import worthsaving.deal.DealTerms;
import worthsaving.deal.PreparedDeal;
import worthsaving.deal.SampleDeals;
import worthsaving.deal.Term;
import worthsaving.deal.WayOut;
import worthsaving.quantity.Money;
import worthsaving.quantity.Range;
import worthsaving.quantity.Source;

class DealTornadoTest {

    private static final Money ASK = usd(2_300);

    /** The timing-chain car: expected profit 1,008 with a title at 95; each unit of title costs one of profit. */
    @Test
    void one_uncertain_line_on_a_certain_car() {
        DealTerms terms = SampleDeals.timingChainTerms()
                .with(Term.TITLE_TRANSFER, new Range(0, 95, 5_000), Source.guess("invented"));
        DealTornado sensitivity = new DealTornado(
                DealEngine.prepare(SampleDeals.timingChain()), terms, WayOut.REPAIR_AND_SELL, ASK);
        Tornado tornado = sensitivity.tornado();
        Tornado.Bar title = tornado.bars().get(0);
        assertThat(title.input().name()).isEqualTo(Term.TITLE_TRANSFER.label());
        assertThat(title.atLow()).isCloseTo(1_008 + 95, within(0.005));
        assertThat(title.atHigh()).isCloseTo(1_008 + 95 - 5_000, within(0.005));
        assertThat(tornado.base()).isCloseTo(1_008 + 95 - (4 * 95 + 5_000) / 6.0, within(1.0));
        assertThat(sensitivity.breakEven(title.input(), usd(0)).orElseThrow()).isCloseTo(1_103, within(0.005));
    }

    @Test
    void the_base_is_the_profit_that_is_shown_and_value_weighs_most() {
        PreparedDeal car = DealEngine.prepare(SampleDeals.eightItems(new Range(4_000, 6_500, 9_500).asPert(),
                .6, .3, .25, .2, .15, .1, .08, .05));
        DealTerms terms = DealTerms.usual(Money.USD);
        Assessment shown = car.assess(terms, BuyerRule.of(usd(1_000), .2), Optional.of(ASK));
        DealTornado sensitivity = new DealTornado(car, terms, WayOut.REPAIR_AND_SELL, ASK);
        Tornado tornado = sensitivity.tornado();
        assertThat(tornado.base()).isCloseTo(shown.way(WayOut.REPAIR_AND_SELL).expectedProfit(), within(1e-9));
        assertThat(tornado.bars().get(0).input().name()).isEqualTo(DealTornado.SALE_VALUE);
        assertThat(tornado.bars()).hasSize(sensitivity.inputs().size());
        double share = sensitivity.breakEven(sensitivity.inputs().get(0), usd(shown.way(WayOut.REPAIR_AND_SELL)
                .expectedProfit() - 300)).orElseThrow();
        double there = car.withValueTimes(share).expectedProfit(terms, WayOut.REPAIR_AND_SELL, ASK);
        assertThat(shown.way(WayOut.REPAIR_AND_SELL).expectedProfit() - there).isCloseTo(300, within(0.01));
    }

    /** An item between sound and failed, and parts and hours together: what a map can be drawn over. */
    @Test
    void items_and_the_repair_as_a_whole_can_be_moved_too() {
        PreparedDeal car = DealEngine.prepare(SampleDeals.eightItems(new Range(4_000, 6_500, 9_500).asPert(),
                .6, .3, .25, .2, .15, .1, .08, .05));
        DealTerms terms = DealTerms.usual(Money.USD);
        String item = "ITEM_0";
        DealTornado sensitivity = new DealTornado(car, terms, WayOut.REPAIR_AND_SELL, ASK, Map.of(item, "an item"));

        DealTornado.Figure moved = figure(sensitivity, DealTornado.Kind.ITEM);
        assertThat(moved.id()).isEqualTo(item);
        assertThat(moved.input().low()).isZero();
        assertThat(moved.input().base()).isEqualTo(car.chance(item));
        assertThat(moved.input().high()).isEqualTo(1);
        Tornado.Bar bar = sensitivity.tornado().bars().stream().filter(b -> b.input().name().equals("an item")).findFirst()
                .orElseThrow();
        assertThat(bar.atLow()).as("a sound item costs nothing").isGreaterThan(bar.atHigh());
        assertThat(bar.atHigh()).isCloseTo(car.withChances(Map.of(item, 1.0)).expectedProfit(terms,
                WayOut.REPAIR_AND_SELL, ASK), within(1e-9));
    }

    @Test
    void a_map_holds_the_expected_profit_at_each_of_its_points() {
        PreparedDeal car = DealEngine.prepare(SampleDeals.eightItems(new Range(4_000, 6_500, 9_500).asPert(),
                .6, .3, .25, .2, .15, .1, .08, .05));
        DealTerms terms = DealTerms.usual(Money.USD);
        DealTornado sensitivity = new DealTornado(car, terms, WayOut.REPAIR_AND_SELL, ASK);
        DealTornado.Figure value = figure(sensitivity, DealTornado.Kind.SALE_VALUE);
        DealTornado.Figure cost = figure(sensitivity, DealTornado.Kind.REPAIR_COST);
        int[] told = {0};

        TwoWayMap map = sensitivity.map(value, cost, 2, () -> told[0]++);

        int points = map.across().length * map.up().length;
        assertThat(told[0]).isEqualTo(points);
        double x = map.across()[map.across().length - 1];
        double y = map.up()[0];
        DealTerms cheaper = terms.with(Term.PARTS_PRICE, terms.get(Term.PARTS_PRICE).times(y), Source.guess("moved"))
                .with(Term.SPEED, terms.get(Term.SPEED).times(y), Source.guess("moved"));
        assertThat(cost.input().low()).isLessThan(1);
        assertThat(cost.input().high()).isGreaterThan(1);
        assertThat(map.results()[0][map.across().length - 1]).isCloseTo(car.withValueTimes(x)
                .expectedProfit(cheaper, WayOut.REPAIR_AND_SELL, ASK), within(1e-6));
        assertThat(sensitivity.inputs()).as("the repair as a whole stands in no tornado beside its parts")
                .doesNotContain(cost.input()).contains(value.input());
    }

    private static DealTornado.Figure figure(DealTornado of, DealTornado.Kind kind) {
        return of.figures().stream().filter(f -> f.kind() == kind).findFirst().orElseThrow();
    }
}
