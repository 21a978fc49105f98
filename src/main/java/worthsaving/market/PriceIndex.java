package worthsaving.market;

import java.io.IOException;
import java.io.Reader;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Collections;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import worthsaving.quantity.Source;

/**
 * Level of used-car prices of one market over time. Between entries the index is interpolated by days; before
 * the first and after the last it stays.
 */
public record PriceIndex(String market, NavigableMap<LocalDate, Double> levels, Source source) {

    private static final int MID_MONTH = 15;

    public PriceIndex {
        levels = Collections.unmodifiableNavigableMap(new TreeMap<>(levels));
        if (levels.isEmpty()) {
            throw new IllegalArgumentException("the price index of market " + market + " has no entry");
        }
    }

    /**
     * Reads one market from CSV with the header market,month,index,label,source.
     *
     * @throws IllegalArgumentException naming the line of a bad entry, or when the market is not in the table
     */
    public static PriceIndex read(Reader reader, String market) throws IOException {
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).setTrim(true).get();
        NavigableMap<LocalDate, Double> levels = new TreeMap<>();
        Source source = null;
        try (CSVParser parser = CSVParser.parse(reader, format)) {
            for (CSVRecord row : parser) {
                if (!row.get("market").equals(market)) {
                    continue;
                }
                try {
                    double level = Double.parseDouble(row.get("index"));
                    if (!(level > 0)) {
                        throw new IllegalArgumentException("an index must be above zero, not " + level);
                    }
                    levels.put(YearMonth.parse(row.get("month")).atDay(MID_MONTH), level);
                    source = new Source(
                            Source.Label.valueOf(row.get("label").toUpperCase(Locale.ROOT)), row.get("source"));
                } catch (RuntimeException e) {
                    throw new IllegalArgumentException(
                            "price index, line " + parser.getCurrentLineNumber() + ": " + e.getMessage(), e);
                }
            }
        }
        return new PriceIndex(market, levels, source);
    }

    /** What a price of {@code from} becomes on {@code to}. */
    public double factor(LocalDate from, LocalDate to) {
        return level(to) / level(from);
    }

    /** With the level of a month set by the user. */
    public PriceIndex with(YearMonth month, double level) {
        if (!(level > 0) || Double.isInfinite(level)) {
            throw new IllegalArgumentException("an index must be above zero, not " + level);
        }
        NavigableMap<LocalDate, Double> changed = new TreeMap<>(levels);
        changed.put(month.atDay(MID_MONTH), level);
        return new PriceIndex(market, changed, source);
    }

    /** @throws IllegalArgumentException when it is the only one */
    public PriceIndex without(YearMonth month) {
        NavigableMap<LocalDate, Double> changed = new TreeMap<>(levels);
        changed.remove(month.atDay(MID_MONTH));
        return new PriceIndex(market, changed, source);
    }

    public PriceIndex with(Source other) {
        return new PriceIndex(market, levels, other);
    }

    /** Whether prices of different days differ at all. */
    public boolean tells() {
        return levels.size() > 1;
    }

    /** Day of the last entry. */
    public LocalDate lastDay() {
        return levels.lastKey();
    }

    private double level(LocalDate day) {
        Map.Entry<LocalDate, Double> before = levels.floorEntry(day);
        Map.Entry<LocalDate, Double> after = levels.ceilingEntry(day);
        if (before == null || after == null) {
            return (before == null ? levels.firstEntry() : levels.lastEntry()).getValue();
        }
        long span = after.getKey().toEpochDay() - before.getKey().toEpochDay();
        double share = span == 0 ? 0 : (double) (day.toEpochDay() - before.getKey().toEpochDay()) / span;
        return before.getValue() * (1 - share) + after.getValue() * share;
    }
}
