package worthsaving.ranking;

import java.util.List;
import java.util.Optional;
import worthsaving.deal.KeeperOption;
import worthsaving.deal.KeeperPlan;
import worthsaving.deal.Verdict;
import worthsaving.quantity.Money;
import worthsaving.quantity.Source;

/**
 * An owner's car mended or replaced, side by side.
 *
 * @param plan every way, the quote first where there is one, replacing last
 * @param replace selling it as it stands and buying another
 * @param quote what the shop asks
 * @param breakEvenQuote the quote at which paying it costs as much as replacing the car; below zero when even a
 *     free repair would not pay
 * @param breakEvenAgainstBest the quote at which paying it costs as much as the cheapest other way
 * @param asItStands what the car fetches unmended: given up by mending, received by replacing
 * @param valueMended what it is worth once it runs
 * @param left remaining life of what the repair leaves alone, the greatest expected cost first
 * @param assumptions every figure that the owner has not given, with its label
 */
public record Rescue(
        Appraisal appraisal, KeeperPlan plan, KeeperOption replace, Optional<Money> quote, Money breakEvenQuote,
        Money breakEvenAgainstBest, Money asItStands, Money valueMended, List<RemainingLife> left,
        List<Assumption> assumptions) {

    /** Something taken for granted, and how far it can be trusted. */
    public record Assumption(String text, Source.Label label) {}

    public Rescue {
        left = List.copyOf(left);
        assumptions = List.copyOf(assumptions);
    }

    /** What rules the car out whatever it costs, such as structural rust or a lost title; the sums leave it out. */
    public Optional<String> hardStop() {
        return appraisal.verdict().kind() == Verdict.Kind.HARD_STOP
                ? Optional.of(appraisal.verdict().reasons().get(0)) : Optional.empty();
    }

    /** What is expected to come up meanwhile, item by item; beside the yearly repairs that the plan reckons with. */
    public Money expectedMeanwhile() {
        return left.stream().map(RemainingLife::expected).reduce(Money.zero(valueMended.currency()), Money::plus);
    }

    /** How much dearer the cheapest way may get before another one is as cheap. */
    public Money margin() {
        KeeperOption best = plan.cheapest();
        return plan.options().stream().filter(o -> o != best).map(o -> plan.saving(best, o))
                .min(Money::compareTo).orElseThrow();
    }
}
