package worthsaving.deal;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import worthsaving.deal.PriceLimit.Limit;
import worthsaving.quantity.Money;

/** One prepared car under one set of terms and one buyer's rule. */
final class Judgement {

    private final PreparedDeal prepared;
    private final DealTerms terms;
    private final BuyerRule rule;
    private final double[] weights;
    private final FlowSet flows;
    private final Map<WayOut, PriceLimit> limits = new EnumMap<>(WayOut.class);
    /** By way out that the rule leaves open: the most to pay. */
    private final Map<WayOut, Limit> under = new EnumMap<>(WayOut.class);
    private final OptionalDouble breakEven;

    Judgement(PreparedDeal prepared, DealTerms terms, BuyerRule rule) {
        this.prepared = prepared;
        this.terms = terms;
        this.rule = rule;
        this.weights = prepared.weights();
        this.flows = new FlowSet(prepared, terms);
        for (WayOut way : WayOut.values()) {
            limits.put(way, flows.limit(way));
        }
        buying().forEach(way -> under.put(way, limits.get(way).under(rule)));
        breakEven = buying()
                .map(w -> limits.get(w).breakEven())
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .max();
    }

    /** Whether this judges by these very terms and this very rule. */
    boolean isBy(DealTerms otherTerms, BuyerRule otherRule) {
        return terms == otherTerms && rule == otherRule;
    }

    Assessment at(Optional<Money> ask) {
        MostToPay most = mostToPay(ask);
        Money price = ask.or(most::limit).orElse(Money.zero(terms.currency()));
        WayOut best = bestAt(price.amount());
        List<WayResult> ways = Stream.of(WayOut.values())
                .map(way -> result(way, price, Optional.ofNullable(under.get(way)))).toList();
        // Walking away is explained by what repairing would have brought.
        WayOut explained = best == WayOut.WALK_AWAY ? WayOut.REPAIR_AND_SELL : best;
        List<PatternProfit> byPattern = flows.byPattern(price.amount());
        List<ItemEffect> effects = new ItemEffects(prepared, byPattern, explained).heaviestFirst();
        Money knowing = new Money(valueOfKnowing(byPattern), terms.currency());
        Verdict verdict = new VerdictWriter(
                prepared.deal(), rule, ask, ways.get(explained.ordinal()), most, effects, knowing).write();
        return new Assessment(ask, price, ways, best, most, verdict, effects, flows.chanceOfStopping(),
                flows.chanceUnmendable(), knowing, byPattern, rule, terms, prepared.deal().method(),
                flows.toolNeeds(terms));
    }

    private Stream<WayOut> buying() {
        return Stream.of(WayOut.values()).filter(w -> w != WayOut.WALK_AWAY && rule.ways().contains(w));
    }

    private MostToPay mostToPay(Optional<Money> ask) {
        WayOut way = WayOut.WALK_AWAY;
        Limit limit = new Limit(OptionalDouble.empty(), MostToPay.Binding.TARGET_PROFIT);
        for (Map.Entry<WayOut, Limit> entry : under.entrySet()) {
            if (entry.getValue().price().orElse(-1) > limit.price().orElse(-1)) {
                way = entry.getKey();
                limit = entry.getValue();
            } else if (way == WayOut.WALK_AWAY && entry.getKey() == WayOut.REPAIR_AND_SELL) {
                limit = entry.getValue();
            }
        }
        Optional<Money> price = money(limit.price());
        Optional<Money> opening = price.map(p -> opening(p.amount(), ask));
        return new MostToPay(price, opening, money(breakEven), way, limit.binding());
    }

    private Money opening(double limit, Optional<Money> ask) {
        double from = Math.min(limit, ask.map(Money::amount).orElse(limit));
        double round = Math.round(from * rule.openingShare() / 50) * 50.0;
        return new Money(Math.min(round, Math.floor(from)), terms.currency());
    }

    /**
     * Among the ways that are open and meet the rule at this price, or else among all that are open, the one
     * whose profit is worth most to the buyer; not buying when none is worth anything.
     */
    private WayOut bestAt(double price) {
        List<WayOut> meeting = buying().filter(w -> under.get(w).price().orElse(-1) >= price).toList();
        return (meeting.isEmpty() ? buying() : meeting.stream())
                .filter(w -> limits.get(w).worth(price, rule) > 0)
                .max(Comparator.comparingDouble(w -> limits.get(w).worth(price, rule)))
                .orElse(WayOut.WALK_AWAY);
    }

    /** E[max(0, profit given the pattern - target)] - max(0, expected profit - target), repairing and selling. */
    private double valueOfKnowing(List<PatternProfit> byPattern) {
        int way = WayOut.REPAIR_AND_SELL.ordinal();
        double target = rule.targetProfit().amount();
        double knowing = 0;
        double now = 0;
        for (PatternProfit p : byPattern) {
            knowing += p.weight() * Math.max(0, p.profit()[way] - target);
            now += p.weight() * (p.profit()[way] - target);
        }
        return Math.max(0, knowing - Math.max(0, now));
    }

    private WayResult result(WayOut way, Money price, Optional<Limit> limit) {
        Flow flow = flows.of(way);
        double paid = way == WayOut.WALK_AWAY ? 0 : price.amount();
        double[] cash = IntStream.range(0, flow.size())
                .mapToDouble(i -> flow.cashOut()[i] + flow.priceFactor()[i] * paid).toArray();
        Outcome profit = Outcome.of(flow.profits(paid, flows.incomeTax()), weights);
        double hours = PatternMeans.mean(flow.ownHours(), weights);
        double labour = PatternMeans.mean(flow.ownLabour(), weights);
        OptionalDouble perHour = hours > 0 ? OptionalDouble.of((profit.mean() + labour) / hours)
                : OptionalDouble.empty();
        return new WayResult(way, profit, Outcome.of(cash, weights), Outcome.of(flow.ownHours(), weights), perHour,
                Outcome.of(flow.days(), weights), limit.flatMap(l -> money(l.price())));
    }

    private Optional<Money> money(OptionalDouble amount) {
        return amount.isPresent() ? Optional.of(new Money(amount.getAsDouble(), terms.currency())) : Optional.empty();
    }
}
