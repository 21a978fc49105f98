package worthsaving.deal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static worthsaving.quantity.Money.usd;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.quantity.Money;
import worthsaving.quantity.Range;
import worthsaving.quantity.Seed;
import worthsaving.quantity.Source;

class DealEngineTest {

    private static final Optional<Money> ASK = Optional.of(usd(2_300));
    private static final BuyerRule RULE = BuyerRule.of(usd(1_000), 0.20);

    @Test
    void without_doubt_it_gives_the_sum_done_by_hand() {
        ScenarioDeal hand = TradeCases.timingChain();
        Assessment a = DealEngine.assess(SampleDeals.timingChain(), SampleDeals.timingChainTerms(), RULE, ASK);
        WayResult repair = a.way(WayOut.REPAIR_AND_SELL);
        assertThat(repair.expectedProfit()).isCloseTo(hand.expectedProfit(usd(2_300)).amount(), within(1e-6));
        assertThat(repair.expectedProfit()).isCloseTo(1_008, within(0.005));
        assertThat(repair.chanceOfLoss()).isCloseTo(.15, within(1e-12));
        assertThat(repair.profit().least()).isCloseTo(-815, within(0.005));
        assertThat(a.mostToPay().limit().orElseThrow().amount()).isCloseTo(2_307.55, within(0.005));
        assertThat(a.mostToPay().wholeLimit()).contains(usd(2_307));
        assertThat(a.mostToPay().opening()).contains(usd(1_900));
        assertThat(a.verdict().kind()).isEqualTo(Verdict.Kind.BUY);
        assertThat(a.verdict().reasons()).hasSize(3);
    }

    @Test
    void own_hours_are_paid_and_counted() {
        Assessment a = DealEngine.assess(SampleDeals.timingChain(), SampleDeals.timingChainTerms(), RULE, ASK);
        WayResult repair = a.way(WayOut.REPAIR_AND_SELL);
        double hours = .55 * 14 + .30 * 28 + .15 * 24;
        assertThat(repair.ownHours().value()).isCloseTo(hours, within(1e-9));
        assertThat(repair.profitPerHour().orElseThrow()).isCloseTo(1_008 / hours + 35, within(1e-3));
        double worstCash = 2_300 * 1.06 + 230 + 95 + 2_900;
        assertThat(repair.cashOut().greatest()).isCloseTo(worstCash, within(1e-6));
    }

    @Test
    void a_chance_of_loss_below_the_worst_scenario_binds_at_its_break_even() {
        Assessment a = DealEngine.assess(
                SampleDeals.timingChain(), SampleDeals.timingChainTerms(), BuyerRule.of(usd(1_000), 0.10), ASK);
        assertThat(a.mostToPay().binding()).isEqualTo(MostToPay.Binding.CHANCE_OF_LOSS);
        assertThat(a.mostToPay().limit().orElseThrow().amount()).isCloseTo(1_531.13, within(0.005));
        assertThat(a.verdict().kind()).isEqualTo(Verdict.Kind.BUY_BELOW);
    }

    @Test
    void knowing_the_pattern_is_worth_the_bad_buys_avoided() {
        Assessment a = DealEngine.assess(SampleDeals.timingChain(), SampleDeals.timingChainTerms(), RULE, ASK);
        double withKnowledge = .55 * (1_785 - 1_000);
        assertThat(a.valueOfKnowing().amount()).isCloseTo(withKnowledge - 8, within(0.005));
    }

    @Test
    void item_effects_name_the_bearings_first() {
        Assessment a = DealEngine.assess(SampleDeals.timingChain(), SampleDeals.timingChainTerms(), RULE, ASK);
        assertThat(a.effects()).extracting(ItemEffect::item).startsWith("BEARINGS");
        ItemEffect bearings = a.effects().get(0);
        assertThat(bearings.profitIfFailed()).isCloseTo(-815, within(0.005));
        assertThat(bearings.profitIfSound()).isCloseTo((.55 * 1_785 + .30 * 495) / .85, within(0.005));
    }

    @Test
    void stopping_is_chosen_where_finishing_is_worth_less() {
        DealTerms terms = SampleDeals.timingChainTerms().with(Term.ASIS_SHARE, 50).with(Term.OPENED_UP_SHARE, 80)
                .with(Term.OPEN_UP_HOURS, 6);
        DealCase mayStop = SampleDeals.timingChain().withMethod(DealCase.Method.USUAL);
        Assessment a = DealEngine.assess(mayStop, terms, RULE, ASK);
        assertThat(a.chanceOfStopping()).isCloseTo(.15, within(1e-12));
        double roller = 6_200 * .40 - 188 - 6 * 35 - 230 - 95 - 2_438;
        assertThat(a.way(WayOut.REPAIR_AND_SELL).expectedProfit())
                .isCloseTo(.55 * 1_785 + .30 * 495 + .15 * roller, within(0.01));
    }

    @Test
    void what_cannot_be_mended_leaves_by_another_way() {
        DealCase sound = SampleDeals.timingChain();
        Repairs none = failed -> failed.contains("BEARINGS") ? Optional.empty() : sound.repairs().planFor(failed);
        DealCase partly = SampleDeals.car(sound.patterns(), none, sound.value()).withMethod(sound.method());
        Assessment a = DealEngine.assess(partly, SampleDeals.timingChainTerms(), RULE, ASK);
        assertThat(a.chanceUnmendable()).isCloseTo(.15, within(1e-12));
        assertThat(a.way(WayOut.REPAIR_AND_SELL).profit().least()).isCloseTo(-2_438 - 230 - 95, within(0.01));
    }

    @Test
    void a_way_that_breaks_the_rule_is_not_the_one_to_plan_for() {
        DealTerms gamble = SampleDeals.timingChainTerms()
                .with(Term.PARTOUT_GROSS, new Range(0, 1_000, 24_000), Source.guess("invented"));
        Assessment a = DealEngine.assess(SampleDeals.timingChain(), gamble, RULE, ASK);
        assertThat(a.way(WayOut.PART_OUT).expectedProfit()).isGreaterThan(1_500);
        assertThat(a.way(WayOut.PART_OUT).chanceOfLoss()).isGreaterThan(.20);
        assertThat(a.best()).isEqualTo(WayOut.REPAIR_AND_SELL);
        Assessment bold = DealEngine.assess(
                SampleDeals.timingChain(), gamble, BuyerRule.of(usd(1_000), 1), ASK);
        assertThat(bold.best()).isEqualTo(WayOut.PART_OUT);
    }

    @Test
    void the_cost_of_mending_stands_alone() {
        Outcome cost = DealEngine.prepare(SampleDeals.timingChain()).repairCost(SampleDeals.timingChainTerms())
                .orElseThrow();
        assertThat(cost.mean()).isCloseTo(1_917, within(1e-6));
        assertThat(cost.greatest()).isCloseTo(3_740, within(1e-9));
        DealCase hopeless = SampleDeals.car(SampleDeals.timingChain().patterns(), failed -> Optional.empty(),
                SampleDeals.exactly(6_200));
        assertThat(DealEngine.prepare(hopeless).repairCost(SampleDeals.timingChainTerms())).isEmpty();
    }

    @Test
    void faults_that_usual_cars_have_and_this_one_has_no_more_come_back_in_the_sale() {
        DealCase c = SampleDeals.timingChain();
        DealCase spared = new DealCase(c.patterns(), c.repairs(), c.labour(), c.value(), c.towMiles(), c.title(),
                c.items(), usd(400), Optional.empty(), c.method(), Map.of());
        DealTerms terms = SampleDeals.timingChainTerms().with(Term.USUAL_FAULTS_SHARE, 75);
        double profit = DealEngine.prepare(spared).expectedProfit(terms, WayOut.REPAIR_AND_SELL, usd(2_300));
        assertThat(profit - 1_008).isCloseTo(.75 * 400 * .98, within(0.005));
    }

    @Test
    void a_resale_as_it_stands_never_beats_the_price_it_is_offered_at() {
        DealCase c = SampleDeals.timingChain();
        DealCase offered = new DealCase(c.patterns(), c.repairs(), c.labour(), c.value(), c.towMiles(), c.title(),
                c.items(), usd(0), Optional.of(usd(1_200)), c.method(), Map.of());
        DealTerms terms = SampleDeals.timingChainTerms().with(Term.ASIS_SHARE, 50);
        double profit = DealEngine.prepare(offered).expectedProfit(terms, WayOut.SELL_AS_IT_STANDS, usd(1_000));
        assertThat(profit).isCloseTo(1_200 - 188 - 230 - 95 - 1_060, within(0.005));
    }

    @Test
    void a_tenth_more_value_is_worth_it_less_the_reserve() {
        PreparedDeal car = DealEngine.prepare(SampleDeals.timingChain());
        double dearer = car.withValueTimes(1.1)
                .expectedProfit(SampleDeals.timingChainTerms(), WayOut.REPAIR_AND_SELL, usd(2_300));
        assertThat(dearer - 1_008).isCloseTo(607.60, within(0.005));
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void profits_by_pattern_add_up_to_the_drawn_mean(boolean mayStop) {
        DealCase car = SampleDeals.eightItems(new Range(4_000, 6_500, 9_500).asPert(),
                .6, .3, .25, .2, .15, .1, .08, .05).withMethod(new DealCase.Method(4_096, Seed.DEFAULT, mayStop));
        Assessment a = DealEngine.assess(car, DealTerms.usual(Money.USD), RULE, ASK);
        for (WayOut way : WayOut.values()) {
            double sum = a.patternProfits().stream().mapToDouble(p -> p.weight() * p.profit()[way.ordinal()]).sum();
            assertThat(sum).as(way.label()).isCloseTo(a.way(way).expectedProfit(), within(3.0));
        }
    }

    @Test
    void stopping_when_it_pays_never_hurts() {
        DealCase car = SampleDeals.eightItems(new Range(2_500, 4_000, 6_000).asPert(),
                .9, .6, .5, .5, .4, .3, .3, .3);
        DealTerms terms = DealTerms.usual(Money.USD);
        double committed = DealEngine.assess(car.withMethod(DealCase.Method.USUAL.committed()), terms, RULE, ASK)
                .way(WayOut.REPAIR_AND_SELL).expectedProfit();
        Assessment mayStop = DealEngine.assess(car, terms, RULE, ASK);
        assertThat(mayStop.chanceOfStopping()).isGreaterThan(0.05);
        assertThat(mayStop.way(WayOut.REPAIR_AND_SELL).expectedProfit()).isGreaterThan(committed);
    }

    @Test
    void a_slider_moves_the_result_and_not_the_numbers() {
        PreparedDeal car = DealEngine.prepare(SampleDeals.eightItems(new Range(4_000, 6_500, 9_500).asPert(),
                .6, .3, .25, .2, .15, .1, .08, .05));
        DealTerms terms = DealTerms.usual(Money.USD).with(Term.CAPITAL_RATE, 0).with(Term.DETAILING, 120);
        double now = car.expectedProfit(terms, WayOut.REPAIR_AND_SELL, usd(2_000));
        double more = car.expectedProfit(terms.with(Term.DETAILING, 121), WayOut.REPAIR_AND_SELL, usd(2_000));
        double finishing = 1 - car.assess(terms, RULE, ASK).chanceOfStopping();
        assertThat(now - more).isCloseTo(finishing, within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 8})
    void the_same_on_any_number_of_threads(int threads) throws Exception {
        DealCase car = SampleDeals.eightItems(new Range(4_000, 6_500, 9_500).asPert(),
                .6, .3, .25, .2, .15, .1, .08, .05);
        DealTerms terms = DealTerms.usual(Money.USD);
        double expected = DealEngine.assess(car, terms, RULE, ASK).bestWay().expectedProfit();
        ForkJoinPool pool = new ForkJoinPool(threads);
        List<Double> all = pool.submit(() -> IntStream.range(0, 16).parallel()
                .mapToObj(i -> DealEngine.assess(car, terms, RULE, ASK).bestWay().expectedProfit()).toList()).get();
        pool.shutdown();
        assertThat(Set.copyOf(all)).containsExactly(expected);
    }
}
