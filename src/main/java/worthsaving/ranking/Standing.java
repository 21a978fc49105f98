package worthsaving.ranking;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import worthsaving.deal.Assessment;
import worthsaving.deal.MostToPay;
import worthsaving.deal.Verdict;
import worthsaving.deal.WayOut;
import worthsaving.deal.WayResult;
import worthsaving.diagnosis.Belief;
import worthsaving.inspection.CheckValue;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Listing;

/**
 * What a lot shows of one listing: the figures of an {@link Appraisal} without its thousands of outcomes, so
 * that ten thousand listings fit in memory. Figures are for {@code way} at the asking price (at the most to pay
 * where there is no ask). A car not worth buying has those of repairing and selling it all the same, which say how
 * far off it is; see {@link #figuresFor()}.
 *
 * @param value mean sale value once it runs, and its 10 % and 90 % quantiles
 * @param strip profit quantiles at 5, 15, ... 95 %
 * @param worstTwentieth mean of the worst 5 % of profits (conditional value at risk)
 * @param profitPerHour own hours counted at nothing; empty without own hours
 * @param likely the items that moved furthest above their prior, most probable first
 * @param nextCheck the check worth making next, if any is worth its cost
 * @param stake what a choice among several cars needs beside it
 */
public record Standing(
        Listing listing,
        Verdict verdict,
        MostToPay mostToPay,
        WayOut way,
        Money value,
        Money valueLow,
        Money valueHigh,
        Money expectedProfit,
        double chanceOfLoss,
        Money worstTwentieth,
        List<Double> strip,
        Hours ownHours,
        OptionalDouble profitPerHour,
        Money cashOut,
        double days,
        List<Belief> likely,
        Optional<CheckValue> nextCheck,
        List<String> warnings,
        Stake stake) {

    private static final int LIKELY_SHOWN = 5;

    public Standing {
        strip = List.copyOf(strip);
        likely = List.copyOf(likely);
        warnings = List.copyOf(warnings);
    }

    /** A standing whose distribution is known by its strip only, and without tools to buy. */
    public Standing(
            Listing listing, Verdict verdict, MostToPay mostToPay, WayOut way, Money value, Money valueLow,
            Money valueHigh, Money expectedProfit, double chanceOfLoss, Money worstTwentieth, List<Double> strip,
            Hours ownHours, OptionalDouble profitPerHour, Money cashOut, double days, List<Belief> likely,
            Optional<CheckValue> nextCheck, List<String> warnings) {
        this(listing, verdict, mostToPay, way, value, valueLow, valueHigh, expectedProfit, chanceOfLoss,
                worstTwentieth, strip, ownHours, profitPerHour, cashOut, days, likely, nextCheck, warnings,
                Stake.of(strip, expectedProfit.plus(cashOut)));
    }

    public static Standing of(Appraisal appraisal) {
        Assessment a = appraisal.assessment();
        WayResult best = a.way(figuresFor(a.best()));
        return new Standing(
                appraisal.listing(),
                appraisal.verdict(),
                a.mostToPay(),
                a.best(),
                appraisal.value().mean(),
                appraisal.value().quantile(0.1),
                appraisal.value().quantile(0.9),
                new Money(best.expectedProfit(), a.price().currency()),
                best.chanceOfLoss(),
                new Money(best.meanOfWorstTwentieth(), a.price().currency()),
                IntStream.range(0, 10).mapToObj(i -> best.profit().quantile(0.05 + 0.1 * i)).toList(),
                best.ownHours(),
                best.profitPerHour(),
                new Money(best.cashOut().mean(), a.price().currency()),
                best.days().mean(),
                likely(appraisal),
                appraisal.nextCheck(),
                appraisal.value().warnings(),
                Stake.of(appraisal));
    }

    private static List<Belief> likely(Appraisal appraisal) {
        return appraisal.diagnosis().beliefs().stream()
                .filter(b -> b.posterior().value() > 1.2 * b.prior().value() && b.posterior().value() >= 0.05)
                .sorted(Comparator.comparing(Belief::posterior).reversed().thenComparing(Belief::item))
                .limit(LIKELY_SHOWN)
                .toList();
    }

    /** The way out that the figures are for: {@code way}, or repairing and selling when that is not to buy. */
    public WayOut figuresFor() {
        return figuresFor(way);
    }

    private static WayOut figuresFor(WayOut way) {
        return way == WayOut.WALK_AWAY ? WayOut.REPAIR_AND_SELL : way;
    }
}
