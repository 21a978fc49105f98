package worthsaving.market;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import worthsaving.quantity.Distance;

/**
 * A market that price models belong to.
 *
 * @param code short name, such as {@code US}
 * @param odometer unit its odometers show
 */
public record Market(String code, String name, Currency currency, Distance.Unit odometer) {

    public Market {
        Objects.requireNonNull(currency, "currency");
        Objects.requireNonNull(odometer, "odometer");
    }

    /**
     * Reads all markets from CSV with the header market,name,currency,odometer.
     *
     * @throws IllegalArgumentException naming the line of a bad entry
     */
    public static List<Market> read(Reader reader) throws IOException {
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).setTrim(true).get();
        List<Market> markets = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(reader, format)) {
            for (CSVRecord row : parser) {
                try {
                    markets.add(new Market(row.get("market"), row.get("name"), Currency.getInstance(row.get("currency")),
                            Distance.Unit.valueOf(row.get("odometer").toUpperCase(Locale.ROOT))));
                } catch (IllegalArgumentException e) {
                    throw new IllegalArgumentException("markets, line " + parser.getCurrentLineNumber()
                            + ": needs a market, its name, a currency code and miles or kilometres", e);
                }
            }
        }
        return markets;
    }

    public static Optional<Market> named(List<Market> markets, String code) {
        return markets.stream().filter(m -> m.code().equalsIgnoreCase(code)).findFirst();
    }

    /** Short form of the odometer's unit. */
    public String unit() {
        return odometer == Distance.Unit.MILES ? "miles" : "km";
    }
}
