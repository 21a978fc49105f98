package worthsaving.market;

import java.io.IOException;
import java.io.Reader;
import java.time.LocalDate;
import java.util.Collections;
import java.util.Currency;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import worthsaving.quantity.Distance;

/**
 * Finds out how a user's own price table is to be read: which column holds which field, by name and by content,
 * and in which currency and units. What cannot be told is asked for, not assumed.
 */
public final class TableMatcher {

    private final List<Market> markets;
    private final Map<Field, Map<String, String>> words;
    private final List<CSVRecord> names;
    private final Map<Field, Set<String>> known;

    /**
     * @param names CSV with the header field,header: names that columns go by
     * @param words CSV with the header field,word,ours: how words of such tables translate into ours
     * @param makes names of makes, lower case, that tell a column of makes by its content
     * @param models the same of models
     */
    public TableMatcher(List<Market> markets, Reader names, Reader words, Set<String> makes, Set<String> models)
            throws IOException {
        this.markets = List.copyOf(markets);
        this.names = rows(names);
        this.words = new EnumMap<>(Field.class);
        for (CSVRecord row : rows(words)) {
            this.words.computeIfAbsent(Field.ofKey(row.get("field")), f -> new HashMap<>())
                    .put(row.get("word"), row.get("ours"));
        }
        this.known = Map.of(Field.MAKE, Set.copyOf(makes), Field.MODEL, Set.copyOf(models));
    }

    private static List<CSVRecord> rows(Reader reader) throws IOException {
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
        try (CSVParser parser = CSVParser.parse(reader, format)) {
            return parser.getRecords();
        }
    }

    /**
     * Looks at the first rows of a table.
     *
     * @throws IllegalArgumentException saying all that cannot be told, and what would tell it
     */
    public MatchedTable match(Reader table, MatchWishes wishes) throws IOException {
        return new Run(TableSample.read(table), wishes).match();
    }

    /** One table being matched. */
    private final class Run {
        private final TableSample sample;
        private final MatchWishes wishes;
        private final ColumnFinder found;
        private final Map<Field, String> columns;
        private final Map<Field, String> units = new EnumMap<>(Field.class);
        private final List<String> notes;
        private final List<String> faults;

        private Run(TableSample sample, MatchWishes wishes) {
            this.sample = sample;
            this.wishes = wishes;
            this.found = new ColumnFinder(sample, known);
            this.columns = found.columns;
            this.notes = found.notes;
            this.faults = found.faults;
        }

        private MatchedTable match() {
            found.find(wishes, names);
            Optional<Currency> currency = currency();
            Market market = currency.map(this::market).orElse(null);
            if (!faults.isEmpty()) {
                throw new IllegalArgumentException(String.join("\n  ", faults) + "\n  It has the columns "
                        + String.join(", ", sample.header()));
            }
            return table(currency.orElseThrow(), market);
        }

        private Optional<Currency> currency() {
            String header = columns.get(Field.PRICE);
            if (header == null) {
                return wishes.currency();
            }
            Optional<ColumnUnits.Found<Currency>> seen = ColumnUnits.currency(header, sample);
            if (wishes.currency().isPresent()) {
                seen.filter(f -> !f.unit().equals(wishes.currency().get())).ifPresent(f -> notes.add("prices are taken as "
                        + wishes.currency().get() + " as you say, though of '" + header + "' " + f.why()));
                units.put(Field.PRICE, wishes.currency().get() + " (as you say)");
                return wishes.currency();
            }
            if (seen.isEmpty()) {
                faults.add("nothing tells the currency of '" + header + "'; say it: --currency USD, EUR or GBP");
                return Optional.empty();
            }
            units.put(Field.PRICE, seen.get().unit() + " (" + seen.get().why() + ")");
            return seen.map(ColumnUnits.Found::unit);
        }

        private Market market(Currency currency) {
            String all = markets.stream().map(m -> m.code() + " (" + m.currency() + ")").collect(Collectors.joining(", "));
            Optional<Market> market = wishes.market().isPresent()
                    ? Market.named(markets, wishes.market().get())
                    : markets.stream().filter(m -> m.currency().equals(currency)).findFirst();
            String mend = "; known are " + all + "; add yours to shared/market/markets.csv, market_settings.csv and "
                    + "price_index.csv";
            if (market.isEmpty()) {
                faults.add((wishes.market().isPresent() ? "there is no market '" + wishes.market().get() + "'"
                        : "no market has prices in " + currency) + mend);
                return null;
            }
            if (!market.get().currency().equals(currency)) {
                faults.add("market " + market.get().code() + " has prices in " + market.get().currency() + ", the table in "
                        + currency + mend);
                return null;
            }
            notes.add("market " + market.get().code() + " (" + market.get().name() + "), "
                    + (wishes.market().isPresent() ? "as you say" : "the first whose currency it is; --market for another"));
            return market.get();
        }

        private MatchedTable table(Currency currency, Market market) {
            Distance.Unit unit = distance(market);
            Map<Field, Double> factors = new EnumMap<>(Field.class);
            if (columns.containsKey(Field.POWER)) {
                double factor = ColumnUnits.power(columns.get(Field.POWER), sample);
                factors.put(Field.POWER, factor);
                units.put(Field.POWER, factor == 1 ? "hp" : "kW, turned into hp");
            }
            if (columns.containsKey(Field.ENGINE_LITRES)) {
                units.put(Field.ENGINE_LITRES, "litres, cm3 where above 100");
            }
            CellStyle style = new CellStyle(sample.separator(), true, factors, dayFirst(market));
            LocalDate fixed = columns.containsKey(Field.DATE) ? null : wishes.date().orElseThrow();
            if (fixed != null) {
                notes.add("all prices are taken as of " + fixed + ", as you say");
            }
            DatasetShape shape = new DatasetShape(wishes.name(), market.code(), currency, unit, kind(), columns,
                    Collections.emptySortedMap(), Map.of(), words, fixed, Double.NaN,
                    "the user's own table " + wishes.name(), "none stated");
            List<MatchedTable.Match> matches = columns.entrySet().stream()
                    .map(e -> new MatchedTable.Match(e.getKey(), e.getValue(), units.getOrDefault(e.getKey(), ""),
                            found.reasons.get(e.getKey())))
                    .toList();
            List<String> ignored = sample.header().stream().filter(h -> !columns.containsValue(h) && !h.isBlank()).toList();
            return new MatchedTable(shape, style, matches, ignored, notes);
        }

        private Distance.Unit distance(Market market) {
            String header = columns.get(Field.ODOMETER);
            if (header == null) {
                notes.add("no column holds the odometer: the model will not know mileage");
                return market.odometer();
            }
            Optional<ColumnUnits.Found<Distance.Unit>> seen = ColumnUnits.distance(header, sample);
            Distance.Unit unit = wishes.unit().or(() -> seen.map(ColumnUnits.Found::unit)).orElse(market.odometer());
            units.put(Field.ODOMETER, (unit == Distance.Unit.MILES ? "miles" : "km") + " (" + (wishes.unit().isPresent()
                    ? "as you say" : seen.map(ColumnUnits.Found::why)
                            .orElse("usual in market " + market.code() + ", nothing says so; --units to change")) + ")");
            return unit;
        }

        private PriceKind kind() {
            boolean sold = columns.get(Field.PRICE).toLowerCase(Locale.ROOT).matches(".*\\b(sold|sale|paid)\\b.*");
            PriceKind kind = wishes.kind().orElse(sold ? PriceKind.SALE : PriceKind.ASKING);
            notes.add("prices are taken as " + (kind == PriceKind.SALE ? "paid" : "asked") + (wishes.kind().isPresent()
                    ? ", as you say" : sold ? ", by the column's name; --kind asked if not" : "; --kind sold if not"));
            return kind;
        }

        /** By the cells where one of the numbers is above 12, else as the market writes. */
        private boolean dayFirst(Market market) {
            String header = columns.get(Field.DATE);
            List<Matcher> slashes = header == null ? List.of() : sample.cells(header).stream()
                    .map(CellStyle.SLASHES::matcher).filter(Matcher::matches).toList();
            if (slashes.isEmpty()) {
                return false;
            }
            long day = slashes.stream().filter(m -> Integer.parseInt(m.group(1)) > 12).count();
            long month = slashes.stream().filter(m -> Integer.parseInt(m.group(2)) > 12).count();
            boolean usual = !market.currency().getCurrencyCode().equals("USD");
            boolean first = day != month ? day > month : usual;
            notes.add("days such as 3/4/2025 are read " + (first ? "day" : "month") + " first, "
                    + (day != month ? "as other cells tell" : "as is usual in market " + market.code()));
            return first;
        }
    }
}
