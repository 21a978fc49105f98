package worthsaving.deal;

import java.util.Arrays;
import worthsaving.quantity.Range;

/** The money lines at every point. Percentages come out as shares. */
final class TermDraws {

    private final DealTerms terms;
    private final double[][] values = new double[Term.values().length][];
    private final char[][] columns = new char[values.length][];

    /** @param like an earlier draw of the same car, whose lines that have not changed are used again; or null */
    TermDraws(DealTerms terms, QuasiPoints points, PertTable pert, int atoms, TermDraws like) {
        this.terms = terms;
        for (Term term : Term.values()) {
            double scale = switch (term.unit()) {
                case PERCENT, PERCENT_PER_YEAR -> 0.01;
                default -> 1;
            };
            Range range = terms.get(term).times(scale);
            char[] column = range.width() > 0 ? points.column(name(term)) : new char[0];
            columns[term.ordinal()] = column;
            values[term.ordinal()] = like != null && like.isFor(term, terms.get(term), column)
                    ? like.values[term.ordinal()] : draw(range, column, pert, atoms);
        }
        if (!terms.valueIsAsk()) {
            values[Term.HAGGLE.ordinal()] = new double[atoms];
        }
    }

    private static double[] draw(Range range, char[] column, PertTable pert, int atoms) {
        double[] drawn = new double[atoms];
        if (range.width() > 0) {
            Arrays.setAll(drawn, pert.draw(range, column)::at);
        } else {
            Arrays.fill(drawn, range.low());
        }
        return drawn;
    }

    private boolean isFor(Term term, Range range, char[] column) {
        return term != Term.HAGGLE && terms.get(term).equals(range)
                && Arrays.equals(columns[term.ordinal()], column);
    }

    static String name(Term term) {
        return "term:" + term.id();
    }

    /** Not to be changed. */
    double[] get(Term term) {
        return values[term.ordinal()];
    }
}
