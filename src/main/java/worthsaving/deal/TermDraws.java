package worthsaving.deal;

import java.util.Arrays;
import worthsaving.quantity.Range;

/** The money lines at every point. Percentages come out as shares. */
final class TermDraws {

    private final double[][] values = new double[Term.values().length][];

    TermDraws(DealTerms terms, QuasiPoints points, PertTable pert, int atoms) {
        for (Term term : Term.values()) {
            double scale = switch (term.unit()) {
                case PERCENT, PERCENT_PER_YEAR -> 0.01;
                default -> 1;
            };
            Range range = terms.get(term).times(scale);
            double[] drawn = new double[atoms];
            if (range.width() > 0) {
                Arrays.setAll(drawn, pert.draw(range, points.column(name(term)))::at);
            } else {
                Arrays.fill(drawn, range.low());
            }
            values[term.ordinal()] = drawn;
        }
        if (!terms.valueIsAsk()) {
            values[Term.HAGGLE.ordinal()] = new double[atoms];
        }
    }

    static String name(Term term) {
        return "term:" + term.id();
    }

    /** Not to be changed. */
    double[] get(Term term) {
        return values[term.ordinal()];
    }
}
