package worthsaving.deal;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import worthsaving.catalog.PartSource;
import worthsaving.diagnosis.FailurePatterns;
import worthsaving.quantity.Distribution;
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
 * Error of the outcome at 4,096 quasi-random points against a reference of 65,536 points with 32 other
 * seeds, and the time of one judgement. Writes the table of docs/deal-accuracy.md to standard output.
 */
public final class DealAccuracy {

    private static final int REPEATS = 32;
    private static final BuyerRule RULE = BuyerRule.of(Money.usd(1_000), 0.20);

    private DealAccuracy() {}

    /** One invented car with its ask. */
    private record Sample(DealCase car, DealTerms terms, Money ask) {}

    public static void main(String[] args) {
        Map<String, Sample> samples = new LinkedHashMap<>();
        samples.put("timing chain, certain value", timingChain(Range.exactly(6_200).asPert()));
        samples.put("timing chain", timingChain(new Range(4_800, 6_200, 7_600).asPert()));
        samples.put("hybrid battery", hybrid());
        samples.put("turbo at a shop", turbo());
        samples.put("eight items, 256 patterns", manyItems(8));
        samples.put("twelve items, 4,096 patterns", manyItems(12));
        System.out.println("| sample | mode | mean | RMS error of mean, % | mean of worst 5 % | RMS error, % of mean"
                + " | chance of loss | RMS error | most to pay | RMS error, $ | pseudo-random error of mean, % |");
        System.out.println("|---|---|---|---|---|---|---|---|---|---|---|");
        samples.forEach((name, sample) -> {
            row(name, "committed", sample, DealCase.Method.USUAL.committed());
            row(name, "may stop", sample, DealCase.Method.USUAL);
        });
        samples.forEach(DealAccuracy::time);
    }

    private static void row(String name, String mode, Sample sample, DealCase.Method method) {
        List<Assessment> reference = run(sample, method.withPoints(65_536), 1_000);
        List<Assessment> usual = run(sample, method.withPoints(4_096), 1);
        ToDoubleFunction<Assessment> mean = a -> a.way(WayOut.REPAIR_AND_SELL).expectedProfit();
        ToDoubleFunction<Assessment> tail = a -> a.way(WayOut.REPAIR_AND_SELL).meanOfWorstTwentieth();
        ToDoubleFunction<Assessment> loss = a -> a.way(WayOut.REPAIR_AND_SELL).chanceOfLoss();
        ToDoubleFunction<Assessment> most =
                a -> a.way(WayOut.REPAIR_AND_SELL).mostToPay().map(Money::amount).orElse(0.0);
        double m = average(reference, mean);
        double sd = reference.get(0).way(WayOut.REPAIR_AND_SELL).profit().standardDeviation();
        System.out.printf(Locale.ROOT,
                "| %s | %s | %.2f | %.4f | %.0f | %.3f | %.4f | %.5f | %.2f | %.2f | %.2f |%n",
                name, mode, m, 100 * rms(usual, mean, m) / Math.abs(m),
                average(reference, tail), 100 * rms(usual, tail, average(reference, tail)) / Math.abs(m),
                average(reference, loss), rms(usual, loss, average(reference, loss)),
                average(reference, most), rms(usual, most, average(reference, most)), 100 * sd / 64 / Math.abs(m));
    }

    private static List<Assessment> run(Sample sample, DealCase.Method method, long firstSeed) {
        List<Assessment> all = new ArrayList<>();
        for (int i = 0; i < REPEATS; i++) {
            DealCase.Method seeded =
                    new DealCase.Method(method.points(), new Seed(firstSeed + i), method.mayStop());
            all.add(DealEngine.assess(
                    sample.car().withMethod(seeded), sample.terms(), RULE, Optional.of(sample.ask())));
        }
        return all;
    }

    private static void time(String name, Sample sample) {
        PreparedDeal prepared = DealEngine.prepare(sample.car());
        for (int i = 0; i < 300; i++) {
            DealEngine.prepare(sample.car()).assess(sample.terms(), RULE, Optional.of(sample.ask()));
        }
        int times = 200;
        long start = System.nanoTime();
        for (int i = 0; i < times; i++) {
            prepared = DealEngine.prepare(sample.car());
        }
        long middle = System.nanoTime();
        for (int i = 0; i < times; i++) {
            prepared.assess(sample.terms(), RULE, Optional.of(sample.ask()));
        }
        long end = System.nanoTime();
        System.err.printf(Locale.ROOT, "%s: prepare %.2f ms, assess %.2f ms%n", name,
                (middle - start) / 1e6 / times, (end - middle) / 1e6 / times);
    }

    private static Sample timingChain(Distribution value) {
        List<BitSet> patterns = List.of(bits(1), bits(3), bits(5));
        FailurePatterns failures = new FailurePatterns(
                List.of("CHAIN", "VALVES", "BEARINGS"), patterns, new double[] {.55, .30, .15}, 1, false);
        Repairs repairs = failed -> Optional.of(failed.contains("BEARINGS")
                ? plan(failed, job("USED_ENGINE", 2_000, 2_900, 4_200, 18, 24, 36, .9, .12))
                : failed.contains("VALVES")
                        ? plan(failed, job("HEAD", 1_000, 1_450, 2_300, 20, 28, 44, .95, .08))
                        : plan(failed, job("CHAIN", 450, 650, 1_100, 10, 14, 24, .97, .05)));
        return new Sample(car(failures, repairs, value), DealTerms.usual(Money.USD), Money.usd(1_500));
    }

    private static Sample hybrid() {
        FailurePatterns failures = new FailurePatterns(List.of("PACK", "FAN", "AUX_BATTERY", "INVERTER"),
                List.of(bits(1), bits(2), bits(8), bits(4)), new double[] {.70, .15, .10, .05}, 1, false);
        Repairs repairs = failed -> Optional.of(failed.contains("PACK")
                ? plan(failed, job("PACK", 800, 1_150, 1_900, 3, 5, 8, .95, .10))
                : failed.contains("FAN") ? plan(failed, job("FAN", 40, 90, 200, 3, 5, 8, .95, .05))
                : failed.contains("INVERTER") ? plan(failed, job("INVERTER", 450, 750, 1_400, 5, 8, 14, .9, .08))
                : plan(failed, job("AUX_BATTERY", 150, 220, 320, .3, .5, 1, 1, .02)));
        return new Sample(
                car(failures, repairs, new Range(5_200, 6_800, 8_200).asPert()), DealTerms.usual(Money.USD),
                Money.usd(2_000));
    }

    private static Sample turbo() {
        FailurePatterns failures = new FailurePatterns(List.of("LINE", "TURBO", "ENGINE"),
                List.of(bits(3), bits(1), bits(7)), new double[] {.64, .20, .16}, 1, false);
        Repairs repairs = failed -> Optional.of(failed.contains("ENGINE")
                ? plan(failed, job("ENGINE", 3_300, 4_500, 6_500, 15, 20, 30, .9, .12),
                        job("TURBO", 800, 1_188, 1_800, 3, 4.5, 7, .95, .05))
                : failed.contains("TURBO")
                        ? plan(failed, job("TURBO", 800, 1_188, 1_800, 3, 4.5, 7, .95, .05))
                        : plan(failed, job("LINE", 80, 160, 300, 1, 1.5, 3, .95, .03)));
        DealCase own = car(failures, repairs, new Range(6_500, 8_000, 9_800).asPert());
        DealCase shop = new DealCase(own.patterns(), own.repairs(), Labour.shop(Money.usd(130)), own.value(), 20,
                TitleBrand.CLEAN, Map.of(), own.method());
        return new Sample(shop, DealTerms.usual(Money.USD), Money.usd(3_000));
    }

    private static Sample manyItems(int count) {
        List<String> items = new ArrayList<>();
        List<double[]> weighted = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            items.add("ITEM_" + i);
        }
        for (int set = 0; set < 1 << count; set++) {
            double p = 1;
            for (int i = 0; i < count; i++) {
                double chance = 0.5 / (1 + 0.6 * i);
                p *= (set >> i & 1) == 1 ? chance : 1 - chance;
            }
            weighted.add(new double[] {p, set});
        }
        weighted.sort((a, b) -> Double.compare(b[0], a[0]));
        FailurePatterns failures = new FailurePatterns(items, weighted.stream().map(w -> bits((int) w[1])).toList(),
                weighted.stream().mapToDouble(w -> w[0]).toArray(), 1, false);
        Repairs repairs = failed -> Optional.of(plan(failed, failed.stream().sorted().map(id -> {
            int i = Integer.parseInt(id.substring(5));
            return job(id, 60 + 50 * i, 130 + 90 * i, 350 + 200 * i, 1 + i, 2 + 1.2 * i, 4 + 2.4 * i, .95, .08);
        }).toArray(RepairPlan.Job[]::new)));
        return new Sample(car(failures, repairs, new Range(4_800, 7_000, 10_500).asPert()),
                DealTerms.usual(Money.USD), Money.usd(2_000));
    }

    private static DealCase car(FailurePatterns failures, Repairs repairs, Distribution value) {
        ValueForecast forecast = new ValueForecast(value, Money.USD, List.of(), List.of(), List.of(), "invented");
        return new DealCase(failures, repairs, Labour.own(Money.usd(35)), forecast, 30, TitleBrand.CLEAN, Map.of(),
                DealCase.Method.USUAL);
    }

    private static RepairPlan plan(Set<String> failed, RepairPlan.Job... jobs) {
        List<RepairPlan.PaidStep> access = failed.isEmpty() ? List.of()
                : List.of(new RepairPlan.PaidStep("FRONT_COVER", "front cover", HoursRange.of(2, 3, 5)));
        return new RepairPlan(failed, List.of(jobs), access, List.of(), Hours.NONE, Money.usd(0), Hours.NONE);
    }

    private static RepairPlan.Job job(String id, double low, double mode, double high, double fast, double usual,
            double slow, double success, double comeback) {
        return new RepairPlan.Job(id, id, Set.of(id), PartSource.USED, MoneyRange.usd(low, mode, high),
                MoneyRange.usd(10, 20, 60), HoursRange.of(fast, usual, slow), Probability.of(success),
                Probability.of(comeback), false);
    }

    private static BitSet bits(int set) {
        return BitSet.valueOf(new long[] {set});
    }

    private static double average(List<Assessment> all, ToDoubleFunction<Assessment> of) {
        return all.stream().mapToDouble(of).average().orElseThrow();
    }

    private static double rms(List<Assessment> all, ToDoubleFunction<Assessment> of, double truth) {
        return Math.sqrt(all.stream().mapToDouble(of).map(x -> (x - truth) * (x - truth)).average().orElseThrow());
    }
}
