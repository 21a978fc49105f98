package worthsaving.market;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import worthsaving.quantity.Range;
import worthsaving.quantity.Source;
import worthsaving.vehicle.TitleBrand;

/**
 * Everything between the model's asking price and the sale value that the user may change.
 *
 * @param factors by key: haircut, local, level-spread, catalogue-money, title.BRAND
 * @param comparables the user's own prices of alike cars
 */
public record MarketSettings(PriceIndex index, Map<String, MarketFactor> factors, List<Comparable> comparables) {

    /** Share of the asking price that is haggled away. */
    public static final String HAIRCUT = "haircut";

    /** Local price level against the market's. */
    public static final String LOCAL = "local";

    /** Spread of ln price by which the market level may be off before any comparable is seen. */
    public static final String LEVEL_SPREAD = "level-spread";

    /** Units of the market's currency for each unit of the catalogue's. */
    public static final String CATALOGUE_MONEY = "catalogue-money";

    private static final String EVERY_MARKET = "*";

    public MarketSettings {
        factors = Map.copyOf(factors);
        comparables = List.copyOf(comparables);
        List<String> missing = new ArrayList<>(List.of(HAIRCUT, LOCAL, LEVEL_SPREAD));
        for (TitleBrand brand : TitleBrand.values()) {
            missing.add(titleKey(brand));
        }
        missing.removeAll(factors.keySet());
        if (!missing.isEmpty()) {
            throw new IllegalArgumentException("market settings lack " + missing);
        }
    }

    /**
     * Reads one market from CSV with the header market,key,low,mode,high,n,label,source; the market {@code *}
     * stands for all and gives way to the market's own rows.
     *
     * @throws IllegalArgumentException listing every bad line
     */
    public static MarketSettings read(Reader factors, Reader index, String market) throws IOException {
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).setTrim(true).get();
        Map<String, MarketFactor> common = new TreeMap<>();
        Map<String, MarketFactor> own = new TreeMap<>();
        List<String> faults = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(factors, format)) {
            for (CSVRecord row : parser) {
                String of = row.get("market");
                if (!of.equals(market) && !of.equals(EVERY_MARKET)) {
                    continue;
                }
                try {
                    (of.equals(market) ? own : common).put(row.get("key"), factor(row));
                } catch (IllegalArgumentException e) {
                    faults.add("line " + parser.getCurrentLineNumber() + ": " + e.getMessage());
                }
            }
        }
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException("market settings: " + String.join("; ", faults));
        }
        common.putAll(own);
        return new MarketSettings(PriceIndex.read(index, market), common, List.of());
    }

    private static MarketFactor factor(CSVRecord row) {
        return new MarketFactor(
                row.get("key"),
                new Range(
                        Double.parseDouble(row.get("low")),
                        Double.parseDouble(row.get("mode")),
                        Double.parseDouble(row.get("high"))),
                row.get("n").isEmpty() ? 0 : Integer.parseInt(row.get("n")),
                new Source(Source.Label.valueOf(row.get("label").toUpperCase(Locale.ROOT)), row.get("source")));
    }

    public MarketFactor factor(String key) {
        MarketFactor factor = factors.get(key);
        if (factor == null) {
            throw new IllegalArgumentException("market settings have no '" + key + "'");
        }
        return factor;
    }

    public MarketFactor title(TitleBrand brand) {
        return factor(titleKey(brand));
    }

    private static String titleKey(TitleBrand brand) {
        return "title." + brand.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The settings with one figure set by the user. */
    public MarketSettings with(String key, double value) {
        Map<String, MarketFactor> changed = new TreeMap<>(factors);
        changed.put(key, factor(key).setByUser(value));
        return new MarketSettings(index, changed, comparables);
    }

    public MarketSettings with(MarketFactor factor) {
        Map<String, MarketFactor> changed = new TreeMap<>(factors);
        changed.put(factor.key(), factor);
        return new MarketSettings(index, changed, comparables);
    }

    public MarketSettings with(PriceIndex other) {
        return new MarketSettings(other, factors, comparables);
    }

    public MarketSettings withComparables(List<Comparable> others) {
        return new MarketSettings(index, factors, others);
    }
}
