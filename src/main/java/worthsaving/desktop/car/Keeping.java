package worthsaving.desktop.car;

import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import worthsaving.casebook.Edit;
import worthsaving.desktop.Texts;
import worthsaving.desktop.book.CarSettings;
import worthsaving.quantity.Money;
import worthsaving.ranking.RescueTerms;

/**
 * How long and how far an owner would keep a car, and what others ask and offer, as settings of the casebook keep it.
 *
 * @param years 1 to {@value RescueTerms#MOST_YEARS}
 * @param milesPerYear above 0
 * @param quote a shop's price for the repair; empty when none is known
 * @param offer what somebody offers for the car unmended; empty for a guess from its value
 */
record Keeping(int years, double milesPerYear, Optional<Money> quote, Optional<Money> offer) {

    static final Keeping USUAL = new Keeping(3, 12_000, Optional.empty(), Optional.empty());

    private static final String YEARS = "keep.years";
    private static final String MILES = "keep.miles";
    private static final String QUOTE = "keep.quote";
    private static final String OFFER = "keep.offer";
    private static final double MOST_MONEY = 1e7;

    /** Settings that cannot be read count as not there. */
    static Keeping of(String car, Map<String, String> settings, Currency currency) {
        String prefix = CarSettings.of(car);
        return new Keeping(
                number(settings.get(prefix + YEARS), RescueTerms.MOST_YEARS).filter(y -> y >= 1).map(Double::intValue)
                        .orElse(USUAL.years),
                number(settings.get(prefix + MILES), RescueTerms.MOST_MILES_PER_YEAR).orElse(USUAL.milesPerYear),
                number(settings.get(prefix + QUOTE), MOST_MONEY).map(a -> new Money(a, currency)),
                number(settings.get(prefix + OFFER), MOST_MONEY).map(a -> new Money(a, currency)));
    }

    /** What keeps it; usual figures are not written down. */
    Edit edit(String car) {
        String prefix = CarSettings.of(car);
        return new Edit.Several(Texts.of("keep.kept", car), List.of(
                new Edit.Set(prefix + YEARS, Optional.of(Integer.toString(years)).filter(t -> years != USUAL.years)),
                new Edit.Set(prefix + MILES, Optional.of(Double.toString(milesPerYear))
                        .filter(t -> milesPerYear != USUAL.milesPerYear)),
                new Edit.Set(prefix + QUOTE, quote.map(m -> Double.toString(m.amount()))),
                new Edit.Set(prefix + OFFER, offer.map(m -> Double.toString(m.amount())))));
    }

    RescueTerms terms() {
        RescueTerms terms = RescueTerms.of(years, milesPerYear);
        terms = quote.isPresent() ? terms.withQuote(quote.get()) : terms;
        return offer.isPresent() ? terms.withAsItStands(offer.get()) : terms;
    }

    private static Optional<Double> number(String text, double most) {
        return CarSettings.positive(text).filter(a -> a <= most);
    }
}
