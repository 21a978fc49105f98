package worthsaving.deal;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import worthsaving.quantity.Range;
import worthsaving.quantity.Source;

/**
 * Terms that belong to a place or a kind of purchase: an example to start from, not advice.
 *
 * @param figures the terms it sets; the others stay as they are
 */
public record Place(String id, String name, Map<Term, Figure> figures) {

    /** Shown beside every place. */
    public static final String CAUTION = "An example from memory; check your local rules.";

    /** A figure and where it comes from. */
    public record Figure(Range range, Source source) {}

    public Place {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(name, "name");
        figures = Map.copyOf(figures);
    }

    public DealTerms applyTo(DealTerms terms) {
        DealTerms changed = terms;
        for (Map.Entry<Term, Figure> figure : new EnumMap<>(figures).entrySet()) {
            changed = changed.with(figure.getKey(), figure.getValue().range(), figure.getValue().source());
        }
        return changed;
    }
}
