package worthsaving.deal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.Flag;
import worthsaving.quantity.Money;
import worthsaving.quantity.Probability;
import worthsaving.vehicle.TitleBrand;

/**
 * Puts a judgement into words. Hard stops come before any profit: papers that cannot be sold on, and
 * items that must never be bought.
 */
final class VerdictWriter {

    /** Below this share of the ask an offer is no longer worth the drive; common practice, no source. */
    private static final double WORTH_OFFERING = 0.5;

    /** Items less likely than this are no reason of their own; common practice, no source. */
    private static final double WORTH_NAMING = 0.05;

    /** An ask below this share of the running value is more often a deposit or a slip; common practice, no source. */
    private static final double HARDLY_A_PRICE = 0.05;

    private final DealCase deal;
    private final BuyerRule rule;
    private final Optional<Money> ask;
    private final WayResult best;
    private final MostToPay most;
    private final List<ItemEffect> effects;
    private final Money knowing;

    VerdictWriter(DealCase deal, BuyerRule rule, Optional<Money> ask, WayResult best, MostToPay most,
            List<ItemEffect> effects, Money knowing) {
        this.deal = deal;
        this.rule = rule;
        this.ask = ask;
        this.best = best;
        this.most = most;
        this.effects = effects;
        this.knowing = knowing;
    }

    Verdict write() {
        List<String> stops = hardStops();
        if (!stops.isEmpty()) {
            return new Verdict(Verdict.Kind.HARD_STOP, "Do not buy, whatever the profit: " + stops.get(0),
                    firstThree(stops, reasons()), List.of("Proof that the hard stop does not hold."));
        }
        List<String> reviews = reviews();
        Verdict.Kind kind = kind();
        Optional<String> doubt = doubtfulPrice();
        if (doubt.isPresent()) {
            return decided(kind, reviews).afterCheck(doubt.get());
        }
        return decided(kind, reviews);
    }

    private Verdict decided(Verdict.Kind kind, List<String> reviews) {
        if (kind == Verdict.Kind.BUY && !reviews.isEmpty()) {
            return new Verdict(Verdict.Kind.CHECK_FIRST, "Look before paying: " + reviews.get(0),
                    firstThree(reviews, reasons()), wouldChange(kind));
        }
        return new Verdict(kind, headline(kind), firstThree(List.of(), reasons()), wouldChange(kind));
    }

    private Verdict.Kind kind() {
        double limit = most.limit().map(Money::amount).orElse(-1.0);
        if (limit < 1) {
            return Verdict.Kind.WALK_AWAY;
        }
        if (ask.isEmpty()) {
            return Verdict.Kind.BUY_BELOW;
        }
        double asked = ask.get().amount();
        if (asked <= limit) {
            return Verdict.Kind.BUY;
        }
        return limit >= WORTH_OFFERING * asked ? Verdict.Kind.BUY_BELOW : Verdict.Kind.WALK_AWAY;
    }

    private String headline(Verdict.Kind kind) {
        String limit = most.wholeLimit().map(VerdictWriter::plain).orElse("nothing");
        return switch (kind) {
            case BUY -> "Buy at " + plain(ask.orElseThrow()) + " or less, to " + most.way().label()
                    + "; walk away above " + limit + ".";
            case BUY_BELOW -> "Buy only at " + limit + " or less, to " + most.way().label() + ".";
            default -> most.limit().isEmpty()
                    ? "Walk away: no price meets your rule."
                    : "Walk away: your rule allows " + limit + " at most.";
        };
    }

    private List<String> reasons() {
        List<String> reasons = new ArrayList<>();
        String profit = "To " + best.way().label() + " is expected to leave " + plain(best.profit().mean())
                + " against a target of " + plain(rule.targetProfit()) + ".";
        String risk = "The chance of a loss is " + percent(best.chanceOfLoss()) + " (your limit "
                + percent(rule.mostChanceOfLoss().value()) + "); the worst twentieth of outcomes averages "
                + plain(best.meanOfWorstTwentieth()) + ".";
        if (rule.riskTolerance().isPresent()) {
            double tolerance = rule.riskTolerance().get().amount();
            risk += " To your risk tolerance of " + plain(tolerance) + " it is worth a sure "
                    + plain(best.profit().certaintyEquivalent(tolerance)) + ".";
        }
        boolean riskFirst = most.binding() == MostToPay.Binding.CHANCE_OF_LOSS
                || most.binding() == MostToPay.Binding.RISK_TOLERANCE;
        reasons.add(riskFirst ? risk : profit);
        unusual().findFirst().ifPresent(e -> reasons.add(
                e.name() + " is " + percent(e.probability()) + " likely to have failed, which takes "
                        + plain(e.profitIfSound() - e.profitIfFailed()) + " off the profit."));
        reasons.add(riskFirst ? profit : risk);
        best.profitPerHour().ifPresent(p -> reasons.add(
                "It takes " + Math.round(best.ownHours().value()) + " own hours and earns " + plain(p) + " in each."));
        return reasons;
    }

    /** Items by how much expected profit hangs on what is known of them beyond the usual, heaviest first. */
    private Stream<ItemEffect> unusual() {
        return effects.stream()
                .filter(e -> e.probability() >= WORTH_NAMING && excess(e) > 0 && !everyday(e))
                .sorted(Comparator.comparingDouble(this::excess).reversed());
    }

    private double excess(ItemEffect e) {
        double beyond = e.probability() - deal.usual().getOrDefault(e.item(), 0.0);
        return e.probability() > 0 ? e.weight() * beyond / e.probability() : 0;
    }

    /** Work that every used car wants: no reason for or against this one. */
    private boolean everyday(ItemEffect e) {
        return isFlagged(e, Flag.SALE_PREPARATION) || isFlagged(e, Flag.WHILE_IN_THERE);
    }

    private List<String> wouldChange(Verdict.Kind kind) {
        List<String> changes = new ArrayList<>();
        most.wholeLimit().ifPresent(limit -> changes.add(
                (kind == Verdict.Kind.BUY ? "A price above " : "A price of at most ") + plain(limit) + "."));
        double target = rule.targetProfit().amount();
        for (ItemEffect e : unusual().toList()) {
            if (kind == Verdict.Kind.BUY && e.profitIfFailed() < target && e.probability() < 1) {
                changes.add("Finding that " + e.name() + " has failed: expected profit "
                        + plain(e.profitIfFailed()) + ".");
                break;
            }
            if (kind != Verdict.Kind.BUY && e.profitIfSound() >= target) {
                changes.add("Proof that " + e.name() + " is sound: expected profit " + plain(e.profitIfSound()) + ".");
                break;
            }
        }
        if (knowing.amount() >= 1) {
            changes.add("Knowing what has failed before paying, worth up to " + plain(knowing) + ".");
        }
        return changes;
    }

    private List<String> hardStops() {
        List<String> stops = new ArrayList<>();
        if (deal.title() == TitleBrand.LOST) {
            stops.add("the title is lost; clear it with the title office first.");
        } else if (deal.title() == TitleBrand.PARTS_ONLY) {
            stops.add("the car may be used for parts only and cannot be titled again.");
        } else if (deal.title() == TitleBrand.LIEN) {
            stops.add("somebody else holds a lien on the car; have it released first.");
        }
        flagged(Flag.HARD_STOP, rule.hardStopAbove()).forEach(e -> stops.add(
                e.name() + " is " + percent(e.probability()) + " likely and is never worth buying."));
        return stops;
    }

    private List<String> reviews() {
        List<String> reviews = new ArrayList<>();
        if (deal.value().unknownModel()) {
            reviews.add("the price data hold no such model; look up what like cars fetch.");
        }
        if (deal.title() == TitleBrand.UNKNOWN) {
            reviews.add("nothing is known of the title, and unknown is not clean.");
        }
        flagged(Flag.HARD_STOP, rule.reviewAbove()).forEach(e -> reviews.add(
                e.name() + " is " + percent(e.probability()) + " likely and would rule the car out."));
        flagged(Flag.REVIEW, rule.reviewAbove()).stream()
                .filter(e -> !isFlagged(e, Flag.HARD_STOP))
                .forEach(e -> reviews.add(e.name() + " is " + percent(e.probability())
                        + " likely and wants your own look and your yes."));
        return reviews;
    }

    private Optional<String> doubtfulPrice() {
        return deal.offeredAt()
                .filter(price -> price.amount() < HARDLY_A_PRICE * deal.value().mean().amount())
                .map(price -> "Ask whether " + price + " is the price: it is under " + Math.round(100 * HARDLY_A_PRICE)
                        + " % of what the car is worth running, as a deposit would be.");
    }

    private List<ItemEffect> flagged(Flag flag, Probability above) {
        return effects.stream()
                .filter(e -> e.probability() > above.value())
                .filter(e -> isFlagged(e, flag))
                .toList();
    }

    private boolean isFlagged(ItemEffect e, Flag flag) {
        FailureItem item = deal.items().get(e.item());
        return item != null && item.flags().contains(flag);
    }

    private static List<String> firstThree(List<String> first, List<String> then) {
        List<String> all = new ArrayList<>(first);
        all.addAll(then);
        return all.subList(0, Math.min(3, all.size()));
    }

    private String plain(double amount) {
        return plain(new Money(amount, rule.targetProfit().currency()));
    }

    private static String plain(Money money) {
        return String.format(Locale.ROOT, "%s %,d", money.currency().getCurrencyCode(), Math.round(money.amount()));
    }

    private static String percent(double p) {
        return String.format(Locale.ROOT, p > 0 && p < 0.1 ? "%.1f %%" : "%.0f %%", 100 * p);
    }
}
