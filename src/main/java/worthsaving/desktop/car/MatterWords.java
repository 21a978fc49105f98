package worthsaving.desktop.car;

import java.util.Currency;
import worthsaving.deal.Term;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.sensitivity.DealTornado.Figure;
import worthsaving.sensitivity.DealTornado.Kind;

/**
 * Names and values of the figures that a deal hangs on, as they are read.
 *
 * @param value mean sale value, and {@code cost} mean cost of the repair: what the shares are of
 */
record MatterWords(double value, double cost, Currency currency) {

    String name(Figure figure) {
        return figure.kind() == Kind.SALE_VALUE || figure.kind() == Kind.REPAIR_COST
                ? Texts.of("matters.figure", figure.kind())
                : figure.input().name();
    }

    String value(Figure figure, double x) {
        return switch (figure.kind()) {
            case SALE_VALUE -> money(x * value);
            case REPAIR_COST -> money(x * cost);
            case ITEM -> x == 0 ? Texts.of("matters.sound") : x == 1 ? Texts.of("matters.failed") : Figures.percent(x);
            case TERM -> term(Term.ofId(figure.id()).orElseThrow(), x);
        };
    }

    private String term(Term term, double x) {
        return switch (term.unit()) {
            case PERCENT, PERCENT_PER_YEAR -> Texts.of("matters.percent", Figures.number(x, x < 10 ? 1 : 0));
            case DAYS -> Texts.of("matters.days", Figures.days(x));
            case HOURS -> Texts.of("matters.hours", Figures.hours(x));
            case TONS -> Figures.number(x, 1);
            default -> money(x);
        };
    }

    private String money(double amount) {
        return amount < 20 ? Figures.number(amount, amount == Math.rint(amount) ? 0 : 1) : Figures.amount(amount);
    }
}
