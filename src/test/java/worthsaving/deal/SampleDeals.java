package worthsaving.deal;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import worthsaving.catalog.Applicability;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.Flag;
import worthsaving.catalog.Onset;
import worthsaving.catalog.PartSource;
import worthsaving.diagnosis.FailurePatterns;
import worthsaving.quantity.Distribution;
import worthsaving.quantity.Hours;
import worthsaving.quantity.HoursRange;
import worthsaving.quantity.Money;
import worthsaving.quantity.MoneyRange;
import worthsaving.quantity.Probability;
import worthsaving.quantity.Range;
import worthsaving.quantity.Source;
import worthsaving.repair.RepairPlan;
import worthsaving.valuation.ValueForecast;
import worthsaving.vehicle.TitleBrand;

/** Invented cars for the tests of the deal. */
public final class SampleDeals {

    static final MoneyRange NO_MONEY = MoneyRange.usd(0, 0, 0);

    private SampleDeals() {}

    static BitSet bits(int... set) {
        BitSet bits = new BitSet();
        for (int i : set) {
            bits.set(i);
        }
        return bits;
    }

    static FailurePatterns enumerated(List<String> items, List<BitSet> patterns, double... weights) {
        return new FailurePatterns(items, patterns, weights, 1, false);
    }

    static RepairPlan.Job job(String id, MoneyRange parts, HoursRange hours, double success, double comeback) {
        return new RepairPlan.Job(id, id, Set.of(id), PartSource.USED, parts, NO_MONEY, hours,
                Probability.of(success), Probability.of(comeback), false);
    }

    static RepairPlan plan(Set<String> failed, RepairPlan.Job... jobs) {
        return plan(failed, List.of(jobs), List.of());
    }

    static RepairPlan plan(Set<String> failed, List<RepairPlan.Job> jobs, List<RepairPlan.PaidStep> access) {
        Hours hours = Hours.NONE;
        Money cost = Money.usd(0);
        for (RepairPlan.Job job : jobs) {
            hours = hours.plus(job.hours().mean());
            cost = cost.plus(job.parts().mean());
        }
        for (RepairPlan.PaidStep step : access) {
            hours = hours.plus(step.hours().mean());
        }
        return new RepairPlan(failed, jobs, access, List.of(), hours, cost, hours);
    }

    static ValueForecast value(Distribution distribution) {
        return new ValueForecast(distribution, Money.USD, List.of(), List.of(), List.of(), "invented");
    }

    static ValueForecast exactly(double value) {
        return value(Range.exactly(value).asPert());
    }

    /** Terms with every line at zero that can be zero. */
    public static DealTerms nothingElse() {
        DealTerms terms = DealTerms.usual(Money.USD);
        for (Term term : Term.values()) {
            terms = terms.with(term, switch (term) {
                case SPEED, PARTS_PRICE, REPEAT_BORNE -> 100;
                case WORK_PER_DAY -> 8;
                case OWN_HOURLY -> 35;
                default -> 0;
            });
        }
        return terms;
    }

    static DealCase car(FailurePatterns patterns, Repairs repairs, ValueForecast value) {
        return new DealCase(patterns, repairs, Labour.own(Money.usd(35)), value, 30, TitleBrand.CLEAN, Map.of(),
                DealCase.Method.USUAL);
    }

    /** The timing-chain car of {@link TradeCases}, every figure certain. */
    public static DealCase timingChain() {
        FailurePatterns patterns = enumerated(List.of("CHAIN", "VALVES", "BEARINGS"),
                List.of(bits(0), bits(0, 1), bits(0, 2)), .55, .30, .15);
        Repairs repairs = failed -> Optional.of(
                failed.contains("BEARINGS") ? certain(failed, 2_900, 24)
                        : failed.contains("VALVES") ? certain(failed, 1_450, 28)
                        : certain(failed, 650, 14));
        return car(patterns, repairs, exactly(6_200)).withMethod(DealCase.Method.USUAL.committed());
    }

    public static DealTerms timingChainTerms() {
        return nothingElse()
                .with(Term.SALES_TAX, 6)
                .with(Term.TOW_HOOK_UP, 110)
                .with(Term.TOW_PER_MILE, 4)
                .with(Term.TITLE_TRANSFER, 95)
                .with(Term.DETAILING, 200)
                .with(Term.LISTING_FEE, 35 * 4 + 48)
                .with(Term.COMEBACK_RESERVE, 2);
    }

    /** A wider invented car: eight items that fail on their own, uncertain money, hours and value. */
    public static DealCase eightItems(Distribution value, double... chance) {
        List<String> items = new ArrayList<>();
        for (int i = 0; i < chance.length; i++) {
            items.add("ITEM_" + i);
        }
        List<BitSet> patterns = new ArrayList<>();
        List<Double> weights = new ArrayList<>();
        for (long set = 0; set < 1L << chance.length; set++) {
            BitSet bits = BitSet.valueOf(new long[] {set});
            double p = 1;
            for (int i = 0; i < chance.length; i++) {
                p *= bits.get(i) ? chance[i] : 1 - chance[i];
            }
            patterns.add(bits);
            weights.add(p);
        }
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < weights.size(); i++) {
            order.add(i);
        }
        order.sort((a, b) -> Double.compare(weights.get(b), weights.get(a)));
        FailurePatterns sorted = enumerated(items, order.stream().map(patterns::get).toList(),
                order.stream().mapToDouble(weights::get).toArray());
        return car(sorted, SampleDeals::eightItemPlan, value(value));
    }

    private static Optional<RepairPlan> eightItemPlan(Set<String> failed) {
        List<RepairPlan.Job> jobs = new ArrayList<>();
        for (String id : failed.stream().sorted().toList()) {
            int i = Integer.parseInt(id.substring(5));
            jobs.add(job(id, MoneyRange.usd(80 + 60 * i, 150 + 110 * i, 400 + 260 * i),
                    HoursRange.of(1 + i, 2 + 1.5 * i, 4 + 3 * i), .95, .08));
        }
        List<RepairPlan.PaidStep> access = failed.isEmpty() ? List.of()
                : List.of(new RepairPlan.PaidStep("FRONT_COVER", "front cover", HoursRange.of(3, 5, 9)));
        return Optional.of(plan(failed, jobs, access));
    }

    static FailureItem item(String id, Flag... flags) {
        return new FailureItem(id, "engine", id.toLowerCase(Locale.ROOT), Applicability.ALL,
                new Onset(1, 100, 0.5, Probability.NEVER), Range.exactly(1), "",
                Map.of(PartSource.USED, MoneyRange.usd(1, 2, 3)), Set.of(), HoursRange.NONE, NO_MONEY, List.of(),
                Set.of(), Set.of(flags), "", Source.guess("invented"));
    }

    private static RepairPlan certain(Set<String> failed, double parts, double hours) {
        MoneyRange money = MoneyRange.usd(parts, parts, parts);
        return plan(failed, job("WHOLE", money, HoursRange.of(hours, hours, hours), 1, 0));
    }
}
