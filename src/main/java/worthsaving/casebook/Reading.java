package worthsaving.casebook;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.quantity.Probability;
import worthsaving.quantity.Seed;
import worthsaving.record.Ensemble;
import worthsaving.record.Quantity;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;

/** Rows as the records of the casebook. */
final class Reading {

    private static final ObjectMapper JSON = new ObjectMapper();

    private final Database database;

    Reading(Database database) {
        this.database = database;
    }

    /** All cases in the order in which they were added. */
    List<CaseFile> cases() throws SQLException {
        Map<String, List<Row>> observations = byCase("SELECT * FROM observation ORDER BY case_id, seq");
        Map<String, List<Row>> entries = byCase("SELECT * FROM entry ORDER BY id");
        Map<String, List<Row>> photos = byCase("SELECT * FROM photo ORDER BY id");
        Map<String, List<Row>> forecasts = byCase("SELECT * FROM forecast ORDER BY id");
        Map<String, List<Row>> actuals = byCase("SELECT * FROM actual");
        List<CaseFile> cases = new ArrayList<>();
        for (Row row : database.rows("SELECT * FROM cases ORDER BY seq")) {
            String id = row.text("id");
            cases.add(new CaseFile(
                    listing(row, observations.getOrDefault(id, List.of())),
                    Instant.parse(row.text("added")),
                    entries.getOrDefault(id, List.of()).stream()
                            .map(r -> new Numbered<>(r.whole("id"), EntryRows.entry(r))).toList(),
                    photos.getOrDefault(id, List.of()).stream()
                            .map(r -> new Numbered<>(r.whole("id"), photo(r))).toList(),
                    forecasts.getOrDefault(id, List.of()).stream().map(Reading::forecast).toList(),
                    actuals.getOrDefault(id, List.of()).stream().map(Reading::actual).findFirst()));
        }
        return cases;
    }

    Map<String, String> settings() throws SQLException {
        Map<String, String> settings = new TreeMap<>();
        database.rows("SELECT * FROM setting").forEach(r -> settings.put(r.text("name"), r.text("value")));
        return settings;
    }

    private Map<String, List<Row>> byCase(String sql) throws SQLException {
        Map<String, List<Row>> rows = new LinkedHashMap<>();
        for (Row row : database.rows(sql)) {
            rows.computeIfAbsent(row.text("case_id"), id -> new ArrayList<>()).add(row);
        }
        return rows;
    }

    private static Listing listing(Row row, List<Row> seen) {
        List<Observation> observations = seen.stream().map(EntryRows::observation).toList();
        try {
            return ListingJson.read(row.text("id"), row.text("listing"), observations);
        } catch (JsonProcessingException e) {
            throw unreadable(row.text("id"), e);
        }
    }

    private static Photo photo(Row row) {
        return new Photo(Instant.parse(row.text("at")), row.text("stage"), row.text("path"), row.text("sha256"),
                row.text("caption"), Optional.ofNullable(row.values().get("entry")).map(Long.class::cast));
    }

    private static Forecast forecast(Row row) {
        Map<Quantity, Ensemble> spreads = new EnumMap<>(Quantity.class);
        Map<String, Probability> items = new LinkedHashMap<>();
        try {
            JSON.readTree(row.text("spreads")).properties().forEach(e -> spreads.put(
                    Quantity.valueOf(e.getKey()), Ensemble.of(JSON.convertValue(e.getValue(), double[].class))));
            JSON.readTree(row.text("items")).properties().forEach(
                    e -> items.put(e.getKey(), Probability.of(e.getValue().doubleValue())));
        } catch (JsonProcessingException e) {
            throw unreadable(row.text("case_id"), e);
        }
        return new Forecast(Instant.parse(row.text("made")), row.text("catalogue"), row.text("model"),
                row.text("program"), new Seed(row.whole("seed")), Currency.getInstance(row.text("currency")),
                spreads, items);
    }

    private static Actual actual(Row row) {
        String currency = row.text("currency");
        Optional<Double> days = row.maybeNumber("days_to_sell");
        Map<String, Boolean> items = new LinkedHashMap<>();
        try {
            JSON.readTree(row.text("items")).properties().forEach(
                    e -> items.put(e.getKey(), e.getValue().booleanValue()));
        } catch (JsonProcessingException e) {
            throw unreadable(row.text("case_id"), e);
        }
        return new Actual(LocalDate.parse(row.text("bought")), LocalDate.parse(row.text("sold")),
                Money.of(row.number("paid"), currency), Money.of(row.number("sale"), currency),
                Money.of(row.number("cost"), currency), Hours.of(row.number("hours")),
                days.map(OptionalDouble::of).orElse(OptionalDouble.empty()), items);
    }

    private static CasebookException unreadable(String id, JsonProcessingException e) {
        return new CasebookException(
                new Trouble("the case " + id + " holds something unreadable", "restore a backup"), e);
    }
}
