package worthsaving.market;

import java.io.IOException;
import java.io.Reader;
import java.util.HashMap;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * What people of a market call things that all price data have one word for: petrol for gas.
 *
 * @param words the data's word, and the market's
 */
public record MarketWords(Map<String, String> words) {

    /** Every word as the price data have it. */
    public static final MarketWords OF_THE_DATA = new MarketWords(Map.of());

    public MarketWords {
        words = Map.copyOf(words);
    }

    /** Reads one market from CSV with the header market,word,said. */
    public static MarketWords read(Reader reader, String market) throws IOException {
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).setTrim(true).get();
        Map<String, String> words = new HashMap<>();
        try (CSVParser parser = CSVParser.parse(reader, format)) {
            for (CSVRecord row : parser) {
                if (row.get("market").equals(market)) {
                    words.put(row.get("word"), row.get("said"));
                }
            }
        }
        return new MarketWords(words);
    }

    /** The market's word, or the same where it has none of its own. */
    public String of(String word) {
        return words.getOrDefault(word, word);
    }
}
