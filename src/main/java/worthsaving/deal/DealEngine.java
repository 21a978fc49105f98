package worthsaving.deal;

import java.util.Optional;
import worthsaving.quantity.Money;

/** Entry to the judging of cars. */
public final class DealEngine {

    private DealEngine() {}

    /** Draws repairs and sale values once, so that prices and money lines can be moved quickly. */
    public static PreparedDeal prepare(DealCase deal) {
        return new PreparedDeal(deal);
    }

    /** Judges a car at its asking price; without one, at the most to pay. */
    public static Assessment assess(DealCase deal, DealTerms terms, BuyerRule rule, Optional<Money> ask) {
        return prepare(deal).assess(terms, rule, ask);
    }
}
