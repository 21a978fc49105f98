package worthsaving.deal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static worthsaving.quantity.Money.usd;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.quantity.Range;

/** A buyer who cannot stand to lose much: exponential utility. */
class RiskToleranceTest {

    /** Exponential utility in Clemen, Making Hard Decisions, and Howard; an even lottery, run independently. */
    @Test
    void an_even_lottery() {
        assertThat(Outcome.equallyLikely(2_000, -500).certaintyEquivalent(2_000))
                .isCloseTo(382.43619842914495, within(1e-9));
    }

    /** The same source: mean - variance / 2R of a normal profit, here as 60 Gauss-Hermite points that weigh as it. */
    @Test
    void a_normal_profit() {
        GaussIntegrator hermite = new GaussIntegratorFactory().hermite(60);
        double[] profit = new double[60];
        double[] weight = new double[60];
        for (int i = 0; i < 60; i++) {
            profit[i] = 1_000 + 800 * Math.sqrt(2) * hermite.getPoint(i);
            weight[i] = hermite.getWeight(i);
        }
        assertThat(Outcome.of(profit, weight).certaintyEquivalent(2_000)).isCloseTo(840, within(1e-9));
    }

    /** Oil wildcatter of the SAS/OR user's guide, DTREE procedure; certainty equivalents run independently. */
    @ParameterizedTest
    @CsvSource({"700000, -13580.107808384982", "1200000, 44498.842241954095"})
    void drilling_for_oil(double tolerance, double expected) {
        double[] cost = {150_000, 300_000, 500_000};
        double[] costChance = {.2, .6, .2};
        double[] oil = {0, 700_000, 1_200_000};
        double[] oilChance = {.5, .3, .2};
        List<DecisionTree.Branch> costs = new ArrayList<>();
        for (int c = 0; c < 3; c++) {
            List<DecisionTree.Branch> finds = new ArrayList<>();
            for (int o = 0; o < 3; o++) {
                finds.add(DecisionTree.branch("oil", oilChance[o], DecisionTree.end("drilled", oil[o] - cost[c])));
            }
            costs.add(DecisionTree.branch("cost", costChance[c], new DecisionTree.Chance("oil", finds)));
        }
        Outcome drill = new DecisionTree.Chance("cost", costs).outcome();
        assertThat(drill.mean()).isCloseTo(140_000, within(1e-9));
        assertThat(drill.certaintyEquivalent(tolerance)).isCloseTo(expected, within(1e-4));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 50, 3_000, 1e9})
    void lies_between_the_worst_and_the_mean_and_moves_with_the_profit(double tolerance) {
        Outcome some = Outcome.of(new double[] {-4_000, 500, 900, 2_500}, new double[] {1, 3, 4, 2});
        double sure = some.certaintyEquivalent(tolerance);
        assertThat(sure).isBetween(some.least(), some.mean());
        assertThat(some.certaintyEquivalent(2 * tolerance)).isGreaterThan(sure);
        Outcome more = Outcome.of(new double[] {-3_900, 600, 1_000, 2_600}, new double[] {1, 3, 4, 2});
        assertThat(more.certaintyEquivalent(tolerance)).isCloseTo(sure + 100, within(1e-4));
    }

    @ParameterizedTest
    @ValueSource(doubles = {500, 2_000, 5_000, 50_000})
    void the_most_to_pay_is_where_the_sure_amount_meets_the_target(double tolerance) {
        DealCase car = car();
        BuyerRule rule = BuyerRule.of(usd(500), 1).withWays(Set.of(WayOut.REPAIR_AND_SELL))
                .withRiskTolerance(usd(tolerance));
        Assessment a = DealEngine.assess(car, DealTerms.usual(usd(0).currency()), rule, Optional.empty());
        assertThat(a.mostToPay().binding()).isEqualTo(MostToPay.Binding.RISK_TOLERANCE);
        assertThat(a.certaintyEquivalent(WayOut.REPAIR_AND_SELL).orElseThrow().amount()).isCloseTo(500, within(0.01));
        assertThat(a.way(WayOut.REPAIR_AND_SELL).expectedProfit()).isGreaterThan(500);
        assertThat(a.verdict().reasons().get(0)).contains("risk tolerance of USD", "a sure USD 500");
    }

    @Test
    void who_can_stand_less_pays_less() {
        List<Double> limits = DoubleStream.of(400, 1_000, 5_000, 100_000).mapToObj(r -> DealEngine.assess(car(),
                DealTerms.usual(usd(0).currency()), BuyerRule.of(usd(500), 1).withRiskTolerance(usd(r)),
                Optional.empty()).mostToPay().limit().map(m -> m.amount()).orElse(-1.0)).toList();
        assertThat(limits).isSorted().doesNotHaveDuplicates();
        double neutral = DealEngine.assess(car(), DealTerms.usual(usd(0).currency()), BuyerRule.of(usd(500), 1),
                Optional.empty()).mostToPay().limit().orElseThrow().amount();
        assertThat(limits.get(3)).isCloseTo(neutral, within(30.0)).isLessThan(neutral);
    }

    @Test
    void what_is_no_tolerance_is_refused() {
        assertThatThrownBy(() -> Outcome.equallyLikely(1).certaintyEquivalent(0)).hasMessageContaining("above zero");
        assertThatThrownBy(() -> BuyerRule.of(usd(0), 1).withRiskTolerance(usd(-1))).hasMessageContaining("above zero");
        assertThat(DealEngine.assess(car(), DealTerms.usual(usd(0).currency()), BuyerRule.of(usd(0), 1),
                Optional.empty()).certaintyEquivalent(WayOut.SCRAP)).isEmpty();
    }

    private static DealCase car() {
        return SampleDeals.eightItems(new Range(5_000, 8_000, 11_000).asPert(), .3, .2, .1, .4, .1, .2, .1, .3);
    }
}
