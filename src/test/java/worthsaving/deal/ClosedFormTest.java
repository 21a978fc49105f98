package worthsaving.deal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static worthsaving.deal.SampleDeals.bits;
import static worthsaving.quantity.Money.usd;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.LogNormalDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import worthsaving.diagnosis.FailurePatterns;
import worthsaving.quantity.Distribution;
import worthsaving.quantity.HoursRange;
import worthsaving.quantity.Money;
import worthsaving.quantity.MoneyRange;
import worthsaving.quantity.Normal;
import worthsaving.quantity.Range;
import worthsaving.repair.RepairPlan;

/** The whole engine against distributions whose figures are known in closed form. */
class ClosedFormTest {

    private static final BuyerRule FREE = BuyerRule.of(usd(0), 1);
    private static final FailurePatterns ONE = SampleDeals.enumerated(List.of("A"), List.of(bits(0)), 1);
    private static final HoursRange NO_TIME = HoursRange.NONE;

    /** Chain of a turbo, low oil and a bearing, smoke seen; figures enumerated independently. */
    @Test
    void costs_of_items_that_fail_together() {
        List<BitSet> patterns = new ArrayList<>();
        double[] weights = new double[8];
        double sum = 0;
        for (int set = 0; set < 8; set++) {
            boolean turbo = (set & 1) != 0;
            boolean lowOil = (set & 2) != 0;
            boolean bearing = (set & 4) != 0;
            double oil = turbo ? .50 : .04;
            double worn = lowOil ? .60 : .02;
            weights[set] = (turbo ? .15 * .80 : .85 * .10) * (lowOil ? oil : 1 - oil) * (bearing ? worn : 1 - worn);
            sum += weights[set];
            patterns.add(BitSet.valueOf(new long[] {set}));
        }
        for (int i = 0; i < 8; i++) {
            weights[i] /= sum;
        }
        Repairs repairs = failed -> {
            List<RepairPlan.Job> jobs = new ArrayList<>();
            if (failed.contains("TURBO")) {
                jobs.add(SampleDeals.job("TURBO", MoneyRange.usd(1_400, 1_400, 1_400), NO_TIME, 1, 0));
            }
            if (failed.contains("BEARING")) {
                jobs.add(SampleDeals.job("BEARING", MoneyRange.usd(2_600, 2_600, 2_600), NO_TIME, 1, 0));
            }
            return Optional.of(SampleDeals.plan(failed, jobs, List.of()));
        };
        FailurePatterns joint = SampleDeals.enumerated(List.of("TURBO", "LOW_OIL", "BEARING"), patterns, weights);
        Assessment assessed = DealEngine.assess(
                committed(SampleDeals.car(joint, repairs, SampleDeals.exactly(10_000))),
                SampleDeals.nothingElse(), FREE, Optional.of(usd(0)));
        Outcome profit = assessed.way(WayOut.REPAIR_AND_SELL).profit();
        assertThat(10_000 - profit.mean()).isCloseTo(1337.888780487805, within(1e-6));
        assertThat(profit.standardDeviation()).isCloseTo(1423.4477386625022, within(1e-6));
        double apart = alone(assessed, "TURBO", 1_400) + alone(assessed, "BEARING", 2_600);
        assertThat(Math.sqrt(apart)).as("if they failed apart").isCloseTo(1246.9088470745526, within(1e-6));
        assertThat(Math.pow(profit.standardDeviation(), 2) - apart).isCloseTo(471421.79179060087, within(1e-4));
    }

    private static double alone(Assessment a, String item, double cost) {
        double p = a.effects().stream().filter(e -> e.item().equals(item)).findFirst().orElseThrow().probability();
        return cost * cost * p * (1 - p);
    }

    @Test
    void a_normal_value_gives_a_normal_profit() {
        Outcome profit = profit(committed(car(normal(4_000, 800), 3_000)));
        assertThat(profit.mean()).isCloseTo(1_000, within(0.5));
        assertThat(profit.standardDeviation()).isCloseTo(800, within(1.0));
        assertThat(profit.meanOfWorst(.05)).isCloseTo(-650.17, within(2.0));
        assertThat(profit.chanceOfLoss()).isCloseTo(0.10565, within(3e-4));
    }

    @Test
    void a_lognormal_value_keeps_its_mean_and_its_tail() {
        LogNormalDistribution lognormal = LogNormalDistribution.of(8.7, 0.35);
        Outcome profit = profit(committed(car(of(lognormal), 0)));
        assertThat(profit.mean() / lognormal.getMean()).isCloseTo(1, within(3e-4));
        double z = NormalDistribution.of(0, 1).inverseCumulativeProbability(.05);
        double tail = lognormal.getMean() * NormalDistribution.of(0, 1).cumulativeProbability(z - 0.35) / .05;
        assertThat(profit.meanOfWorst(.05) / tail).isCloseTo(1, within(1e-3));
    }

    /** Value 8,000, repair 3,000, fixed 300, fee 10 % of the bid; bid (1 + f) + F. */
    @Test
    void greatest_bid_with_a_buyer_fee() {
        SaleLedger ledger = SaleLedger.of(usd(8_000)).less("fixed", usd(300));
        ScenarioDeal deal = new ScenarioDeal(ledger, new PriceTerms(.10, 0, usd(0)), usd(35),
                List.of(Scenario.mend("certain", 1, usd(3_000), 0)));
        assertThat(deal.mostToPay(usd(0)).amount()).isCloseTo(4272.727272727272, within(1e-6));

        assertThat(new PriceTerms(.10, 0, usd(0)).priceFor(usd(new Normal(4_700, 800).quantile(.10))).amount())
                .isCloseTo(3340.6897705130173, within(1e-6));

        DealTerms terms = SampleDeals.nothingElse().with(Term.AUCTION_PREMIUM, 10).with(Term.TITLE_TRANSFER, 300);
        DealCase uncertain = committed(car(normal(8_000, 800), 3_000));
        Assessment even = DealEngine.assess(uncertain, terms, FREE, Optional.empty());
        assertThat(even.way(WayOut.REPAIR_AND_SELL).mostToPay().orElseThrow().amount())
                .isCloseTo(4272.73, within(0.5));
        Assessment safe = DealEngine.assess(uncertain, terms, BuyerRule.of(usd(-1_000_000), .10), Optional.empty());
        assertThat(safe.way(WayOut.REPAIR_AND_SELL).mostToPay().orElseThrow().amount())
                .isCloseTo(3340.6897705130173, within(1.5));
        assertThat(safe.mostToPay().binding()).isEqualTo(MostToPay.Binding.CHANCE_OF_LOSS);
    }

    @Test
    void independent_parts_add_their_means_and_variances() {
        List<RepairPlan.Job> jobs = new ArrayList<>();
        double mean = 0;
        double variance = 0;
        for (int i = 0; i < 12; i++) {
            Range parts = new Range(50 + 10 * i, 120 + 25 * i, 400 + 90 * i);
            Range hours = new Range(0.5, 1 + 0.3 * i, 3 + i);
            jobs.add(SampleDeals.job("JOB_" + i, new MoneyRange(parts, Money.USD), new HoursRange(hours), 1, 0));
            mean += parts.mean() + 35 * hours.mean();
            variance += parts.variance() + 35 * 35 * hours.variance();
        }
        DealCase car = SampleDeals.car(ONE, f -> Optional.of(SampleDeals.plan(f, jobs, List.of())),
                SampleDeals.exactly(20_000));
        Outcome profit = profit(committed(car));
        assertThat(20_000 - profit.mean()).isCloseTo(mean, within(1e-6 * mean));
        assertThat(profit.standardDeviation() / Math.sqrt(variance)).isCloseTo(1, within(0.005));
    }

    /** A job that works with chance s and comes back with chance c: mean (1 + 1 - s + s c) x cost. */
    @Test
    void repeats_are_paid_at_their_chance_access_included() {
        RepairPlan.Job bare = SampleDeals.job("ENGINE", MoneyRange.usd(2_000, 2_000, 2_000),
                HoursRange.of(10, 10, 10), .9, .12);
        RepairPlan.Job job = new RepairPlan.Job(bare.id(), bare.name(), bare.closes(), bare.partSource(), bare.parts(),
                bare.consumables(), bare.hours(), bare.success(), bare.comeback(), true, Set.of("ENGINE_OUT"));
        List<RepairPlan.PaidStep> steps = List.of(
                new RepairPlan.PaidStep("ENGINE_OUT", "engine out", HoursRange.of(8, 8, 8)),
                new RepairPlan.PaidStep("DASH_OUT", "dashboard out", HoursRange.of(4, 4, 4)));
        DealCase car = SampleDeals.car(ONE, f -> Optional.of(SampleDeals.plan(f, List.of(job), steps)),
                SampleDeals.exactly(10_000));
        Outcome profit = profit(committed(car));
        double once = 2_000 + (10 + 8 + 4) * 35;
        double again = 2_000 + (10 + 8) * 35;
        assertThat(10_000 - profit.mean()).isCloseTo(once + (.1 + .9 * .12) * again, within(1e-6));
        assertThat(profit.below(10_000 - once - 1)).isCloseTo(.1 + .9 * .12, within(1e-3));
        assertThat(profit.least()).isCloseTo(10_000 - once - again, within(5.0));
    }

    private static Outcome profit(DealCase car) {
        return DealEngine.assess(car, SampleDeals.nothingElse(), FREE, Optional.of(usd(0)))
                .way(WayOut.REPAIR_AND_SELL).profit();
    }

    private static DealCase committed(DealCase car) {
        return car.withMethod(DealCase.Method.USUAL.committed());
    }

    private static DealCase car(Distribution value, double repair) {
        RepairPlan.Job job = SampleDeals.job("A", MoneyRange.usd(repair, repair, repair), NO_TIME, 1, 0);
        return SampleDeals.car(ONE, f -> Optional.of(SampleDeals.plan(f, job)), SampleDeals.value(value));
    }

    private static Distribution normal(double mean, double sd) {
        return of(NormalDistribution.of(mean, sd));
    }

    private static Distribution of(ContinuousDistribution d) {
        return new Distribution() {
            @Override
            public double mean() {
                return d.getMean();
            }

            @Override
            public double variance() {
                return d.getVariance();
            }

            @Override
            public double quantile(double p) {
                return d.inverseCumulativeProbability(p);
            }

            @Override
            public double cumulative(double x) {
                return d.cumulativeProbability(x);
            }
        };
    }
}
