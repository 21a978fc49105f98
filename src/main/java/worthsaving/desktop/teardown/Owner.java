package worthsaving.desktop.teardown;

import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import worthsaving.casebook.Edit;
import worthsaving.desktop.Texts;
import worthsaving.desktop.book.CarSettings;
import worthsaving.quantity.Money;

/**
 * That a car is taken apart for its owner, as settings of the casebook keep it.
 *
 * @param rate the workshop's hour; empty for the catalogue's
 * @param agreed most that the owner agreed to; empty when nothing is agreed yet
 */
public record Owner(Optional<Money> rate, Optional<Money> agreed) {

    private static final String OWNER = "owner";
    private static final String RATE = "owner.rate";
    private static final String AGREED = "owner.agreed";
    private static final String YES = "yes";

    static Optional<Owner> of(String car, Map<String, String> settings, Currency currency) {
        String prefix = CarSettings.of(car);
        return settings.containsKey(prefix + OWNER)
                ? Optional.of(new Owner(money(settings.get(prefix + RATE), currency),
                        money(settings.get(prefix + AGREED), currency)))
                : Optional.empty();
    }

    /** What keeps it, or forgets it. */
    static Edit keep(String car, Optional<Owner> owner) {
        String prefix = CarSettings.of(car);
        return new Edit.Several(Texts.of("teardown.owner.kept", car), List.of(
                new Edit.Set(prefix + OWNER, owner.map(o -> YES)),
                new Edit.Set(prefix + RATE, owner.flatMap(Owner::rate).map(m -> Double.toString(m.amount()))),
                new Edit.Set(prefix + AGREED, owner.flatMap(Owner::agreed).map(m -> Double.toString(m.amount())))));
    }

    private static Optional<Money> money(String text, Currency currency) {
        return CarSettings.positive(text).filter(a -> a < 1e7).map(a -> new Money(a, currency));
    }
}
