package worthsaving.deal;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import worthsaving.catalog.PartSource;
import worthsaving.diagnosis.FailurePatterns;
import worthsaving.quantity.Hours;
import worthsaving.quantity.HoursRange;
import worthsaving.quantity.Money;
import worthsaving.quantity.MoneyRange;
import worthsaving.quantity.Probability;
import worthsaving.quantity.Range;
import worthsaving.quantity.Seed;
import worthsaving.repair.RepairPlan;
import worthsaving.valuation.ValueForecast;
import worthsaving.vehicle.TitleBrand;

/**
 * Rules of thumb and the whole sum on 2,000 invented cars with a known truth. Every buyer sees the same
 * ask, value and quote; the quote is for the one most probable set of failed items, as a seller or a
 * shop gives it. Whoever buys repairs and may stop. What happens is one draw from the true distribution.
 * Profit above target takes the target off every purchase: it is what the place, the money and the weeks
 * of one car could earn elsewhere. In the second run the tool's probabilities are
 * wrong by a random factor of their odds.
 */
public final class RulesCompared {

    private static final int CARS = 2_000;
    private static final int ITEMS = 7;
    private static final Money TARGET = Money.usd(1_000);
    private static final BuyerRule RULE =
            BuyerRule.of(TARGET, 0.25).withWays(Set.of(WayOut.REPAIR_AND_SELL));
    private static final DealTerms TERMS = DealTerms.usual(Money.USD);
    private static final DealCase.Method METHOD = DealCase.Method.USUAL.withPoints(1_024);

    private RulesCompared() {}

    /** What one strategy came to. */
    private static final class Score {
        private final String name;
        private int bought;
        private int losses;
        private int missed;
        private double missedMoney;
        private double sum;
        private final double[] above = new double[CARS];
        private int seen;

        Score(String name) {
            this.name = name;
        }

        void see(boolean buys, double happened, double trulyExpected) {
            double money = buys ? happened : 0;
            sum += money;
            above[seen++] = buys ? happened - TARGET.amount() : 0;
            if (buys) {
                bought++;
                losses += happened < 0 ? 1 : 0;
            } else if (trulyExpected >= TARGET.amount()) {
                missed++;
                missedMoney += trulyExpected;
            }
        }

        String row(Score against) {
            double[] behind = new double[CARS];
            for (int i = 0; i < CARS; i++) {
                behind[i] = above[i] - against.above[i];
            }
            return String.format(Locale.ROOT, "| %s | %d | %.0f | %s | %s | %.0f | %.1f %% | %d | %.0f |", name, bought,
                    sum / CARS, mean(above), against == this ? "" : mean(behind), bought == 0 ? 0 : sum / bought,
                    bought == 0 ? 0 : 100.0 * losses / bought, missed, missed == 0 ? 0 : missedMoney / missed);
        }
    }

    private static String mean(double[] values) {
        double sum = 0;
        double squares = 0;
        for (double v : values) {
            sum += v;
            squares += v * v;
        }
        double mean = sum / CARS;
        return String.format(Locale.ROOT, "%.0f ± %.0f", mean, Math.sqrt((squares / CARS - mean * mean) / CARS));
    }

    public static void main(String[] args) {
        for (double sigma : new double[] {0, 0.7}) {
            System.out.println(sigma == 0 ? "Right probabilities:" : "Odds wrong by a factor of about two:");
            System.out.println();
            System.out.println("| buyer | bought | profit per car seen"
                    + " | above target per car seen ± s.e. | against the last row ± s.e."
                    + " | per car bought | losses among bought"
                    + " | missed bargains | mean profit missed |");
            System.out.println("|---|---|---|---|---|---|---|---|---|");
            List<Score> scores = compare(sigma);
            scores.forEach(s -> System.out.println(s.row(scores.get(scores.size() - 1))));
            System.out.println();
        }
    }

    private static List<Score> compare(double sigma) {
        Score half = new Score("quote at most half the value");
        Score share = new Score("ask at most 65 % of value less quote");
        Score tool = new Score("the whole sum: target 1,000, chance of loss at most 25 %");
        Score anyProfit = new Score("the whole sum, any expected profit");
        BuyerRule nothing = BuyerRule.of(Money.usd(0), 1).withWays(RULE.ways());
        Score profitOnly = new Score("the whole sum, target 1,000 alone");
        BuyerRule targetAlone = BuyerRule.of(TARGET, 1).withWays(RULE.ways());
        for (int i = 0; i < CARS; i++) {
            SplittableRandom random = new Seed(77).derive("car " + i).generator();
            double[] chance = random.doubles(ITEMS).map(u -> 0.03 + 0.6 * u * u).toArray();
            double value = 3_500 + 9_000 * random.nextDouble();
            double ask = value * (0.08 + 0.42 * random.nextDouble());
            double[] believed = new double[ITEMS];
            for (int j = 0; j < ITEMS; j++) {
                double odds = chance[j] / (1 - chance[j]) * Math.exp(sigma * random.nextGaussian());
                believed[j] = odds / (1 + odds);
            }
            Money price = Money.usd(ask);
            Assessment truth = DealEngine.assess(
                    car(chance, value, new Seed(4_000 + i)), TERMS, RULE, Optional.of(price));
            PreparedDeal seen = DealEngine.prepare(car(believed, value, Seed.DEFAULT));
            Outcome profit = truth.way(WayOut.REPAIR_AND_SELL).profit();
            double happened = profit.quantile(random.nextDouble());
            double quote = quote(believed);
            half.see(quote <= value / 2, happened, profit.mean());
            share.see(price.compareTo(RulesOfThumb.mostToPay(Money.usd(value), .65, Money.usd(quote))) <= 0, happened,
                    profit.mean());
            tool.see(buys(seen.assess(TERMS, RULE, Optional.of(price))), happened, profit.mean());
            anyProfit.see(buys(seen.assess(TERMS, nothing, Optional.of(price))), happened, profit.mean());
            profitOnly.see(buys(seen.assess(TERMS, targetAlone, Optional.of(price))), happened, profit.mean());
        }
        return List.of(half, share, anyProfit, profitOnly, tool);
    }

    private static boolean buys(Assessment a) {
        return a.verdict().kind() == Verdict.Kind.BUY;
    }

    /** Mean cost of the most probable set of failed items. */
    private static double quote(double[] chance) {
        double sum = 0;
        for (int j = 0; j < ITEMS; j++) {
            if (chance[j] > 0.5) {
                sum += parts(j).mean() + 35 * hours(j).mean();
            }
        }
        return sum > 0 ? sum + 35 * ACCESS.mean() : cheapestLikely(chance);
    }

    /** Something has failed: when no item is more likely than not, the likeliest one is quoted. */
    private static double cheapestLikely(double[] chance) {
        int best = 0;
        for (int j = 1; j < ITEMS; j++) {
            best = chance[j] > chance[best] ? j : best;
        }
        return parts(best).mean() + 35 * (hours(best).mean() + ACCESS.mean());
    }

    private static final Range ACCESS = new Range(2, 4, 8);

    private static Range parts(int j) {
        return new Range(60 + 70 * j, 130 + 150 * j, 400 + 420 * j);
    }

    private static Range hours(int j) {
        return new Range(1 + j, 2 + 1.8 * j, 4 + 4 * j);
    }

    private static DealCase car(double[] chance, double value, Seed seed) {
        List<String> items = new ArrayList<>();
        List<double[]> weighted = new ArrayList<>();
        for (int j = 0; j < ITEMS; j++) {
            items.add("ITEM_" + j);
        }
        for (int set = 1; set < 1 << ITEMS; set++) {
            double p = 1;
            for (int j = 0; j < ITEMS; j++) {
                p *= (set >> j & 1) == 1 ? chance[j] : 1 - chance[j];
            }
            weighted.add(new double[] {p, set});
        }
        weighted.sort((a, b) -> Double.compare(b[0], a[0]));
        double total = weighted.stream().mapToDouble(w -> w[0]).sum();
        FailurePatterns patterns = new FailurePatterns(items,
                weighted.stream().map(w -> BitSet.valueOf(new long[] {(long) w[1]})).toList(),
                weighted.stream().mapToDouble(w -> w[0] / total).toArray(), 1, false);
        Range spread = new Range(.75 * value, value, 1.3 * value);
        return new DealCase(patterns, RulesCompared::plan, Labour.own(Money.usd(35)),
                new ValueForecast(spread.asPert(), Money.USD, List.of(), List.of(), List.of(), "invented"), 30,
                TitleBrand.CLEAN, Map.of(), new DealCase.Method(METHOD.points(), seed, true));
    }

    private static Optional<RepairPlan> plan(Set<String> failed) {
        List<RepairPlan.Job> jobs = new ArrayList<>();
        for (String id : failed.stream().sorted().toList()) {
            int j = Integer.parseInt(id.substring(5));
            jobs.add(new RepairPlan.Job(id, id, Set.of(id), PartSource.USED, new MoneyRange(parts(j), Money.USD),
                    MoneyRange.usd(0, 0, 0), new HoursRange(hours(j)),
                    Probability.of(.95), Probability.of(.06), false));
        }
        return Optional.of(new RepairPlan(failed, jobs,
                List.of(new RepairPlan.PaidStep("ACCESS", "access", new HoursRange(ACCESS))), List.of(), Hours.NONE,
                Money.usd(0), Hours.NONE));
    }
}
