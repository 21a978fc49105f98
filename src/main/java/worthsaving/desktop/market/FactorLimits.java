package worthsaving.desktop.market;

import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.market.MarketFactor;
import worthsaving.market.MarketSettings;

/**
 * Between which figures a factor may be set: its own range, or where it is one figure only, the ends that still make
 * sense (guess).
 */
record FactorLimits(double low, double high) {

    static FactorLimits of(MarketFactor usual) {
        if (usual.range().width() > 0) {
            return new FactorLimits(usual.range().low(), usual.range().high());
        }
        return switch (usual.key()) {
            case MarketSettings.LOCAL -> new FactorLimits(0.5, 1.5);
            case MarketSettings.LEVEL_SPREAD -> new FactorLimits(0.01, 0.5);
            default -> new FactorLimits(usual.value(), usual.value());
        };
    }

    boolean holds(double value) {
        return value >= low && value <= high;
    }

    /** Whether there is anything to set. */
    boolean open() {
        return high > low;
    }

    String words() {
        return Texts.of("market.factor.between", Figures.number(low, 3), Figures.number(high, 3));
    }
}
