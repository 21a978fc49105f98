package worthsaving.deal;

import java.util.Currency;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import worthsaving.quantity.Range;
import worthsaving.quantity.Source;

/**
 * Terms that belong to a place or a kind of purchase: an example to start from, not advice.
 *
 * @param currency of those figures that are money
 * @param figures the terms it sets; the others stay as they are
 */
public record Place(String id, String name, Currency currency, Map<Term, Figure> figures) {

    /** Shown beside every place. */
    public static final String CAUTION = "An example from memory; check your local rules.";

    /** A figure and where it comes from. */
    public record Figure(Range range, Source source) {}

    public Place {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(currency, "currency");
        figures = Map.copyOf(figures);
    }

    /** @throws IllegalArgumentException when it sets money in another currency than that of the terms */
    public DealTerms applyTo(DealTerms terms) {
        if (!currency.equals(terms.currency()) && figures.keySet().stream().anyMatch(t -> t.unit().isMoney())) {
            throw new IllegalArgumentException("place '" + id + "' has money in " + currency + ", the deal's is in "
                    + terms.currency() + "; choose a place of the same market, or add one");
        }
        DealTerms changed = terms;
        for (Map.Entry<Term, Figure> figure : new EnumMap<>(figures).entrySet()) {
            changed = changed.with(figure.getKey(), figure.getValue().range(), figure.getValue().source());
        }
        return changed;
    }
}
