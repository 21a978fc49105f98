package worthsaving.desktop.market;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** The user's changes of a market as JSON, to be kept between starts. */
final class MarketEditsText {

    private static final int VERSION = 1;
    private static final ObjectMapper JSON = new ObjectMapper();

    private MarketEditsText() {}

    static String write(MarketEdits edits) {
        ObjectNode root = JSON.createObjectNode().put("version", VERSION);
        ObjectNode index = root.putObject("index");
        edits.index().forEach((month, level) -> level.ifPresentOrElse(
                l -> index.put(month.toString(), l), () -> index.putNull(month.toString())));
        ObjectNode factors = root.putObject("factors");
        edits.factors().forEach(factors::put);
        ArrayNode tables = root.putArray("tables");
        for (OwnTable table : edits.tables()) {
            ObjectNode one = tables.addObject().put("name", table.name()).put("day", table.day().toString())
                    .put("text", table.text());
            ArrayNode leftOut = one.putArray("left_out");
            new TreeSet<>(table.leftOut()).forEach(leftOut::add);
        }
        return root.toString();
    }

    /** @throws IllegalArgumentException when it is not what {@link #write} wrote */
    static MarketEdits read(String text) {
        try {
            JsonNode root = JSON.readTree(text);
            if (root.path("version").asInt() != VERSION) {
                throw new IllegalArgumentException("it is of version " + root.path("version") + ", not " + VERSION);
            }
            SortedMap<YearMonth, Optional<Double>> index = new TreeMap<>();
            root.path("index").properties().forEach(e -> index.put(YearMonth.parse(e.getKey()),
                    e.getValue().isNull() ? Optional.empty() : Optional.of(e.getValue().asDouble())));
            SortedMap<String, Double> factors = new TreeMap<>();
            root.path("factors").properties().forEach(e -> factors.put(e.getKey(), e.getValue().asDouble()));
            List<OwnTable> tables = new ArrayList<>();
            root.path("tables").forEach(t -> tables.add(table(t)));
            return new MarketEdits(index, factors, tables);
        } catch (JsonProcessingException | DateTimeException e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }

    private static OwnTable table(JsonNode node) {
        Set<Long> leftOut = new TreeSet<>();
        node.path("left_out").forEach(n -> leftOut.add(n.asLong()));
        return new OwnTable(node.path("name").asText(), LocalDate.parse(node.path("day").asText()),
                node.path("text").asText(), leftOut);
    }
}
