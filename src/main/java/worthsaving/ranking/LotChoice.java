package worthsaving.ranking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import worthsaving.deal.Outcome;
import worthsaving.deal.Verdict;
import worthsaving.deal.WayOut;
import worthsaving.quantity.Money;
import worthsaving.quantity.Seed;

/**
 * Which cars of a judged lot to buy together, and why not the others.
 *
 * @param chosen standings of the chosen cars, best expected profit first
 * @param leftOut the others, best expected profit first
 * @param together distribution of the set's profit with the market's common part in it
 * @param apart the same if every car had its luck for itself
 */
public record LotChoice(
        ChosenSet set, List<Standing> chosen, List<LeftOut> leftOut, Budget budget, Settings settings,
        Outcome together, Outcome apart) {

    /** Why a car is not in the set; the first that applies. */
    public enum Reason { HARD_STOP, NOT_WORTH_IT, ABOVE_LIMIT, CASH, BAYS, HOURS, TOOLS }

    /**
     * A car that is not chosen.
     *
     * @param reasons a car fit to be chosen has every limit that it would break beside the chosen ones
     * @param words the same in words, with the figures
     * @param costOfForcing what the best set that holds it earns less; empty when it may not or cannot be held
     */
    public record LeftOut(Standing standing, List<Reason> reasons, String words, OptionalDouble costOfForcing) {

        public LeftOut {
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * @param aboveLimit whether cars count that ask more than the most to pay
     * @param marketSpread common part of all sale values, see {@link MarketRisk}
     */
    public record Settings(boolean aboveLimit, double marketSpread, Seed seed) {

        public static Settings usual(Seed seed) {
            return new Settings(false, MarketRisk.USUAL_SPREAD, seed);
        }
    }

    public LotChoice {
        chosen = List.copyOf(chosen);
        leftOut = List.copyOf(leftOut);
    }

    /** Chooses among the listings of a lot, all judged at their asking price. */
    public static LotChoice of(List<Standing> lot, Budget budget, Settings settings) {
        Map<String, Standing> byId = lot.stream().collect(Collectors.toMap(s -> s.listing().id(), s -> s));
        List<Candidate> fit = lot.stream().filter(s -> unfit(s, settings).isEmpty()).map(Candidate::of).toList();
        ChosenSet set = SetChoice.best(fit, budget);
        Comparator<Standing> best = Comparator.<Standing>comparingDouble(s -> -s.expectedProfit().amount())
                .thenComparing(s -> s.listing().id());
        List<LeftOut> left = lot.stream().filter(s -> !set.holds(s.listing().id())).sorted(best)
                .map(s -> unfit(s, settings).orElseGet(() -> crowdedOut(s, fit, set, budget))).toList();
        return new LotChoice(set, set.cars().stream().map(c -> byId.get(c.id())).sorted(best).toList(), left, budget,
                settings, MarketRisk.of(set, settings.marketSpread(), settings.seed()),
                MarketRisk.of(set, 0, settings.seed()));
    }

    private static Optional<LeftOut> unfit(Standing s, Settings settings) {
        if (s.verdict().kind() == Verdict.Kind.HARD_STOP) {
            return Optional.of(unfit(s, Reason.HARD_STOP, s.verdict().headline()));
        }
        if (s.way() == WayOut.WALK_AWAY || s.expectedProfit().amount() <= 0) {
            return Optional.of(unfit(s, Reason.NOT_WORTH_IT, "no way out earns anything at the ask"));
        }
        Optional<Money> ask = s.listing().ask().get();
        double most = s.mostToPay().limit().map(Money::amount).orElse(0.0);
        if (!settings.aboveLimit() && ask.isPresent() && ask.get().amount() > most) {
            return Optional.of(unfit(s, Reason.ABOVE_LIMIT, s.mostToPay().limit().isPresent()
                    ? "asks " + whole(ask.get().amount()) + ", most to pay " + whole(most)
                    : "breaks your rule at any price"));
        }
        return Optional.empty();
    }

    private static LeftOut unfit(Standing s, Reason reason, String words) {
        return new LeftOut(s, List.of(reason), words, OptionalDouble.empty());
    }

    private static LeftOut crowdedOut(Standing s, List<Candidate> fit, ChosenSet set, Budget budget) {
        Candidate car = fit.stream().filter(c -> c.id().equals(s.listing().id())).findFirst().orElseThrow();
        Optional<ChosenSet> with = SetChoice.bestWith(car.id(), fit, budget);
        List<Candidate> more = new ArrayList<>(with.isPresent() ? set.cars() : List.of());
        more.add(car);
        ChosenSet tried = SetChoice.all(more);
        List<Reason> reasons = new ArrayList<>();
        List<String> words = new ArrayList<>();
        over(Reason.CASH, tried.cash(), budget.cash(), reasons, words);
        over(Reason.BAYS, tried.bays(), budget.bays(), reasons, words);
        over(Reason.HOURS, tried.hours(), budget.hours(), reasons, words);
        String lead = with.isPresent() ? "with the chosen ones it takes " : "alone it takes ";
        if (reasons.isEmpty()) {
            return new LeftOut(s, List.of(Reason.TOOLS), "its tools cost more than it earns", OptionalDouble.empty());
        }
        OptionalDouble cost = with.isPresent()
                ? OptionalDouble.of(Math.max(0, set.profit() - with.get().profit())) : OptionalDouble.empty();
        return new LeftOut(s, reasons, lead + String.join(", ", words), cost);
    }

    private static void over(Reason reason, double needed, double limit, List<Reason> reasons, List<String> words) {
        if (needed > limit) {
            reasons.add(reason);
            words.add(whole(Math.ceil(needed)) + " of " + whole(limit) + (reason == Reason.CASH ? " cash"
                    : reason == Reason.BAYS ? " bays" : " hours"));
        }
    }

    private static String whole(double amount) {
        return String.format(Locale.ROOT, "%,d", (long) Math.floor(amount + 1e-6));
    }
}
