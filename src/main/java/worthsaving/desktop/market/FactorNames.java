package worthsaving.desktop.market;

import java.util.Locale;
import worthsaving.desktop.Texts;
import worthsaving.market.MarketFactor;
import worthsaving.market.MarketSettings;
import worthsaving.vehicle.TitleBrand;

/** What factors are called and what they are applied to. */
public enum FactorNames {
    SALE,
    TITLE,
    CATALOGUE,
    TOLD;

    private static final String TITLES = "title.";

    static FactorNames of(MarketFactor factor) {
        if (factor.key().startsWith(TITLES)) {
            return TITLE;
        }
        return switch (factor.key()) {
            case MarketSettings.HAIRCUT, MarketSettings.LOCAL, MarketSettings.LEVEL_SPREAD -> SALE;
            case MarketSettings.CATALOGUE_MONEY -> CATALOGUE;
            default -> TOLD;
        };
    }

    static String name(MarketFactor factor) {
        String key = factor.key();
        if (key.startsWith(TITLES)) {
            return Texts.of("market.factor.title", Texts.of("title", TitleBrand.valueOf(
                    key.substring(TITLES.length()).toUpperCase(Locale.ROOT).replace('-', '_'))));
        }
        return switch (of(factor)) {
            case TOLD -> Texts.of("market.factor.told", key.replace('.', ' '));
            default -> Texts.of("market.factor." + key.replace('-', '_'));
        };
    }
}
