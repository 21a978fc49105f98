package worthsaving.casebook;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One row of a table by column name: text, whole numbers (Long), other numbers (Double) or null. */
final class Row {

    private static final ObjectMapper JSON =
            new ObjectMapper().enable(DeserializationFeature.USE_LONG_FOR_INTS);

    private final Map<String, Object> values = new LinkedHashMap<>();

    Row with(String column, Object value) {
        values.put(column, value instanceof Integer i ? Long.valueOf(i) : value);
        return this;
    }

    Map<String, Object> values() {
        return values;
    }

    String text(String column) {
        return (String) values.get(column);
    }

    Optional<String> maybeText(String column) {
        return Optional.ofNullable(text(column));
    }

    long whole(String column) {
        return (Long) values.get(column);
    }

    double number(String column) {
        return ((Number) values.get(column)).doubleValue();
    }

    Optional<Double> maybeNumber(String column) {
        return Optional.ofNullable(values.get(column)).map(v -> ((Number) v).doubleValue());
    }

    /** Whether every column of the other row is here with the same value; columns it lacks do not matter. */
    boolean agreesWith(Row image) {
        return image.values.entrySet().stream()
                .allMatch(e -> values.containsKey(e.getKey()) && same(values.get(e.getKey()), e.getValue()));
    }

    private static boolean same(Object a, Object b) {
        if (a instanceof Number x && b instanceof Number y) {
            return x.doubleValue() == y.doubleValue();
        }
        return a == null ? b == null : a.equals(b);
    }

    static String json(Object value) {
        try {
            return JSON.writeValueAsString(value);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("cannot be written as JSON: " + value, e);
        }
    }

    static Row ofJson(String json) {
        Row row = new Row();
        try {
            for (Object entry : JSON.readValue(json, Map.class).entrySet()) {
                Map.Entry<?, ?> e = (Map.Entry<?, ?>) entry;
                row.with((String) e.getKey(), e.getValue());
            }
        } catch (JsonProcessingException e) {
            throw unreadable(json, e);
        }
        return row;
    }

    static List<Object> listOfJson(String json) {
        try {
            return List.of(JSON.readValue(json, Object[].class));
        } catch (JsonProcessingException e) {
            throw unreadable(json, e);
        }
    }

    private static CasebookException unreadable(String json, JsonProcessingException e) {
        return new CasebookException(new Trouble("the casebook's log of edits holds something unreadable: " + json,
                "restore a backup"), e);
    }
}
