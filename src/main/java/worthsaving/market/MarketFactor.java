package worthsaving.market;

import java.util.Locale;
import java.util.Objects;
import worthsaving.quantity.Range;
import worthsaving.quantity.Source;

/**
 * A factor or share of the market with its range and where it comes from.
 *
 * @param range low, most likely, high
 * @param cars cars it was measured on, 0 when it was not measured
 */
public record MarketFactor(String key, Range range, int cars, Source source) {

    public MarketFactor {
        Objects.requireNonNull(key, "key");
        Objects.requireNonNull(source, "source");
    }

    public double value() {
        return range.mode();
    }

    /** The figure as the user sets it. */
    public MarketFactor setByUser(double value) {
        return new MarketFactor(key, Range.exactly(value), 0, Source.user());
    }

    /** Label, range and source in one line. */
    public String why() {
        String measured = cars > 0 ? ", " + cars + " cars" : "";
        String label = source.label().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        String span = range.width() == 0 ? "" : String.format(
                Locale.ROOT, ", %.2f to %.2f", range.low(), range.high());
        return label + measured + span + ": " + source.text();
    }
}
