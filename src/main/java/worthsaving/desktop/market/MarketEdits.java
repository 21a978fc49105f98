package worthsaving.desktop.market;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import worthsaving.desktop.Texts;
import worthsaving.market.Comparable;
import worthsaving.market.MarketSettings;
import worthsaving.market.PriceIndex;
import worthsaving.quantity.Source;

/**
 * What the user has changed of one market's settings; immutable, so that undo is a stack of them.
 *
 * @param index levels by month, empty for a month taken out
 * @param factors values by key
 */
public record MarketEdits(
        SortedMap<YearMonth, Optional<Double>> index, SortedMap<String, Double> factors, List<OwnTable> tables) {

    static final MarketEdits NONE = new MarketEdits(new TreeMap<>(), new TreeMap<>(), List.of());

    public MarketEdits {
        index = Collections.unmodifiableSortedMap(new TreeMap<>(index));
        factors = Collections.unmodifiableSortedMap(new TreeMap<>(factors));
        tables = List.copyOf(tables);
    }

    /** @param level empty to take the month out */
    MarketEdits withLevel(YearMonth month, Optional<Double> level) {
        SortedMap<YearMonth, Optional<Double>> changed = new TreeMap<>(index);
        changed.put(month, level);
        return new MarketEdits(changed, factors, tables);
    }

    /** The index as it was published. */
    MarketEdits withPublishedIndex() {
        return new MarketEdits(new TreeMap<>(), factors, tables);
    }

    /** @param value empty for the usual one */
    MarketEdits withFactor(String key, Optional<Double> value) {
        SortedMap<String, Double> changed = new TreeMap<>(factors);
        value.ifPresentOrElse(v -> changed.put(key, v), () -> changed.remove(key));
        return new MarketEdits(index, changed, tables);
    }

    MarketEdits with(OwnTable table) {
        List<OwnTable> more = new ArrayList<>(tables);
        more.add(table);
        return new MarketEdits(index, factors, more);
    }

    MarketEdits without(OwnCars.Row row) {
        return new MarketEdits(index, factors,
                tables.stream().map(t -> t.equals(row.table()) ? t.without(row.line()) : t).toList());
    }

    MarketEdits withoutTables() {
        return new MarketEdits(index, factors, List.of());
    }

    boolean isEmpty() {
        return equals(NONE);
    }

    /** The market's settings with all this. */
    MarketSettings on(MarketSettings shipped, List<Comparable> own) {
        MarketSettings settings = shipped.with(index(shipped.index())).withComparables(own);
        for (Map.Entry<String, Double> factor : factors.entrySet()) {
            if (settings.factors().containsKey(factor.getKey())) {
                settings = settings.with(factor.getKey(), factor.getValue());
            }
        }
        return settings;
    }

    private PriceIndex index(PriceIndex shipped) {
        PriceIndex changed = shipped;
        for (Map.Entry<YearMonth, Optional<Double>> entry : index.entrySet()) {
            changed = entry.getValue().isPresent()
                    ? changed.with(entry.getKey(), entry.getValue().get()) : without(changed, entry.getKey());
        }
        return index.isEmpty() ? shipped : changed.with(new Source(Source.Label.USER,
                Texts.of("market.index.changed", index.size(), shipped.source().text())));
    }

    /** A last month stays: an index has at least one. */
    private static PriceIndex without(PriceIndex index, YearMonth month) {
        return index.tells() ? index.without(month) : index;
    }
}
