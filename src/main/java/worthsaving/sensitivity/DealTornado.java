package worthsaving.sensitivity;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;
import worthsaving.deal.DealTerms;
import worthsaving.deal.Outcome;
import worthsaving.deal.PreparedDeal;
import worthsaving.deal.Term;
import worthsaving.deal.WayOut;
import worthsaving.quantity.Distribution;
import worthsaving.quantity.Money;
import worthsaving.quantity.Range;

/**
 * What the expected profit of one way out hangs on: the sale value between its 10 % and 90 % quantiles,
 * every money line between its low and high end and some items between sound and failed, moved one at a
 * time. The other figures keep their whole distributions, so the base is the expected profit that an
 * assessment shows.
 */
public final class DealTornado {

    /** Name of the first input; it is the sale value as a share of its mean. */
    public static final String SALE_VALUE = "sale value, share of its mean";

    /** Parts and hours together, moved by one factor; for maps only, since both stand in a tornado by themselves. */
    public static final String REPAIR_COST = "repair cost, share of its mean";

    /** Where one time in ten nothing is broken, the repair is not moved to nought: no speed of work is. */
    private static final double LEAST_REPAIR = 0.01;

    /** What a figure is, and so what its numbers count. */
    public enum Kind { SALE_VALUE, REPAIR_COST, TERM, ITEM }

    /**
     * A figure that can be moved.
     *
     * @param id of the term or item; empty for the others
     */
    public record Figure(Kind kind, String id, Input input) {}

    /** A deal and its terms on the way to a changed one. */
    private record State(PreparedDeal deal, DealTerms terms) {}

    private final State base;
    private final WayOut way;
    private final Money price;
    private final List<Figure> figures = new ArrayList<>();
    private final List<DoubleFunction<UnaryOperator<State>>> changes = new ArrayList<>();
    private Optional<Figure> repairCost = Optional.empty();

    public DealTornado(PreparedDeal deal, DealTerms terms, WayOut way, Money price) {
        this(deal, terms, way, price, Map.of());
    }

    /** @param items name by id of the items to be moved too */
    public DealTornado(PreparedDeal deal, DealTerms terms, WayOut way, Money price, Map<String, String> items) {
        this.base = new State(deal, terms);
        this.way = way;
        this.price = price;
        Distribution value = deal.deal().value().saleValue();
        add(Kind.SALE_VALUE, "", SALE_VALUE, value.quantile(0.1) / value.mean(), 1, value.quantile(0.9) / value.mean(),
                x -> s -> new State(s.deal().withValueTimes(x), s.terms()));
        for (Term term : Term.values()) {
            Range range = terms.get(term);
            if (range.width() > 0) {
                add(Kind.TERM, term.id(), term.label(), range.low(), range.mean(), range.high(),
                        x -> s -> new State(s.deal(), s.terms().with(term, x)));
            }
        }
        items.forEach((id, name) -> {
            double chance = deal.chance(id);
            if (chance > 0 && chance < 1) {
                add(Kind.ITEM, id, name, 0, chance, 1,
                        x -> s -> new State(s.deal().withChances(Map.of(id, x)), s.terms()));
            }
        });
        deal.repairCost(terms).filter(cost -> cost.mean() > 0).ifPresent(this::addRepairCost);
    }

    private void addRepairCost(Outcome cost) {
        double low = Math.max(LEAST_REPAIR, cost.quantile(0.1) / cost.mean());
        add(Kind.REPAIR_COST, "", REPAIR_COST, low, 1, cost.quantile(0.9) / cost.mean(),
                x -> s -> new State(s.deal(), times(times(s.terms(), Term.PARTS_PRICE, x), Term.SPEED, x)));
        repairCost = Optional.of(figures.get(figures.size() - 1));
    }

    private static DealTerms times(DealTerms terms, Term term, double factor) {
        return terms.with(term, terms.get(term).times(factor), terms.sources().get(term));
    }

    private void add(Kind kind, String id, String name, double low, double usual, double high,
            DoubleFunction<UnaryOperator<State>> change) {
        figures.add(new Figure(kind, id, new Input(name, Math.min(usual, low), usual, Math.max(usual, high))));
        changes.add(change);
    }

    /** All figures that can be moved, for maps. */
    public List<Figure> figures() {
        return List.copyOf(figures);
    }

    /** Those of the tornado, in the order of {@link #figures}. */
    public List<Input> inputs() {
        return figures.stream().filter(f -> repairCost.filter(f::equals).isEmpty()).map(Figure::input).toList();
    }

    public Tornado tornado() {
        return Tornado.of(inputs(), this::profit);
    }

    /** Where an input would bring the expected profit to just the target; empty if it cannot within its range. */
    public OptionalDouble breakEven(Input input, Money target) {
        return Tornado.breakEven(inputs(), inputs().indexOf(input), this::profit, target.amount());
    }

    /**
     * Expected profit over two figures moved together.
     *
     * @param onResult told after each result; may throw to end the work
     */
    public TwoWayMap map(Figure across, Figure up, int steps, Runnable onResult) {
        int a = figures.indexOf(across);
        int u = figures.indexOf(up);
        return TwoWayMap.of(across.input(), up.input(), steps, (x, y) -> {
            double profit = profit(changed(u, y, changed(a, x, base)));
            onResult.run();
            return profit;
        });
    }

    /** Inputs left at their base keep their distribution; a moved one is certain. */
    private double profit(double[] values) {
        State state = base;
        for (int i = 0; i < values.length; i++) {
            state = changed(i, values[i], state);
        }
        return profit(state);
    }

    private State changed(int figure, double value, State state) {
        return value == figures.get(figure).input().base() ? state : changes.get(figure).apply(value).apply(state);
    }

    private double profit(State state) {
        return state.deal().expectedProfit(state.terms(), way, price);
    }
}
