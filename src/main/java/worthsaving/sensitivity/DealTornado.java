package worthsaving.sensitivity;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import worthsaving.deal.DealTerms;
import worthsaving.deal.PreparedDeal;
import worthsaving.deal.Term;
import worthsaving.deal.WayOut;
import worthsaving.quantity.Distribution;
import worthsaving.quantity.Money;
import worthsaving.quantity.Range;

/**
 * What the expected profit of one way out hangs on: the sale value between its 10 % and 90 % quantiles
 * and every money line between its low and high end, moved one at a time. The other figures keep their
 * whole distributions, so the base is the expected profit that an assessment shows.
 */
public final class DealTornado {

    /** Name of the first input; it is the sale value as a share of its mean. */
    public static final String SALE_VALUE = "sale value, share of its mean";

    private final PreparedDeal deal;
    private final DealTerms terms;
    private final WayOut way;
    private final Money price;
    private final List<Input> inputs = new ArrayList<>();
    private final List<Term> moved = new ArrayList<>();

    public DealTornado(PreparedDeal deal, DealTerms terms, WayOut way, Money price) {
        this.deal = deal;
        this.terms = terms;
        this.way = way;
        this.price = price;
        Distribution value = deal.deal().value().saleValue();
        double low = value.quantile(0.1) / value.mean();
        double high = value.quantile(0.9) / value.mean();
        inputs.add(new Input(SALE_VALUE, Math.min(1, low), 1, Math.max(1, high)));
        for (Term term : Term.values()) {
            Range range = terms.get(term);
            if (range.width() > 0) {
                moved.add(term);
                inputs.add(new Input(term.label(), range.low(), range.mean(), range.high()));
            }
        }
    }

    public List<Input> inputs() {
        return List.copyOf(inputs);
    }

    public Tornado tornado() {
        return Tornado.of(inputs, this::profit);
    }

    /** Where an input would bring the expected profit to just the target; empty if it cannot within its range. */
    public OptionalDouble breakEven(Input input, Money target) {
        return Tornado.breakEven(inputs, inputs.indexOf(input), this::profit, target.amount());
    }

    /** Inputs left at their base keep their distribution; a moved one is certain. */
    private double profit(double[] values) {
        DealTerms changed = terms;
        for (int i = 0; i < moved.size(); i++) {
            if (values[i + 1] != inputs.get(i + 1).base()) {
                changed = changed.with(moved.get(i), values[i + 1]);
            }
        }
        PreparedDeal car = values[0] == 1 ? deal : deal.withValueTimes(values[0]);
        return car.expectedProfit(changed, way, price);
    }
}
