package worthsaving.desktop.market;

import java.time.DateTimeException;
import java.time.YearMonth;
import java.util.Optional;
import worthsaving.desktop.Texts;
import worthsaving.market.MarketFactor;
import worthsaving.market.PriceIndex;

/** Changes as they are typed; what cannot be taken is an IllegalArgumentException that says why. */
final class Typed {

    private Typed() {}

    /** @param month such as 2026-07 */
    static MarketEdits level(MarketEdits edits, String month, String level) {
        double value = number(level.replace(",", ""), Texts.of("market.index.bad_level", level));
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(Texts.of("market.index.bad_level", level));
        }
        try {
            return edits.withLevel(YearMonth.parse(month.strip()), Optional.of(value));
        } catch (DateTimeException e) {
            throw new IllegalArgumentException(Texts.of("market.index.bad_month", month), e);
        }
    }

    static MarketEdits withoutLevel(MarketEdits edits, YearMonth month, PriceIndex index) {
        if (!index.tells()) {
            throw new IllegalArgumentException(Texts.of("market.index.last"));
        }
        return edits.withLevel(month, Optional.empty());
    }

    /** @param typed blank for the usual value */
    static MarketEdits factor(MarketEdits edits, MarketFactor usual, String typed) {
        if (typed.isBlank()) {
            return edits.withFactor(usual.key(), Optional.empty());
        }
        FactorLimits limits = FactorLimits.of(usual);
        double value = number(typed, Texts.of("market.factor.no_number", typed.strip(), limits.words()));
        if (!limits.holds(value)) {
            throw new IllegalArgumentException(Texts.of("market.factor.outside", typed.strip(), limits.words()));
        }
        return edits.withFactor(usual.key(), Optional.of(value).filter(v -> v != usual.value()));
    }

    private static double number(String typed, String otherwise) {
        try {
            return Double.parseDouble(typed.strip());
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(otherwise, e);
        }
    }
}
