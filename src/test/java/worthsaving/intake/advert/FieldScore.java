package worthsaving.intake.advert;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import worthsaving.vehicle.Observation.Sight;

/** Counts, field by field, how many readings equal the expectation exactly; lists are compared as sets. */
final class FieldScore {

    static final List<String> FIELDS = List.of("year", "make", "model", "trim", "miles", "odometer_unit_in_text",
            "price",
            "currency", "price_negotiable", "title_brand", "running_state", "symptoms", "failures_claimed", "location");

    private final Map<String, Integer> exact = new LinkedHashMap<>();
    private final List<String> misses = new ArrayList<>();
    private int adverts;

    static FieldScore of(BufferedReader lines) throws IOException {
        FieldScore score = new FieldScore();
        ObjectMapper mapper = new ObjectMapper();
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            if (!line.isBlank()) {
                JsonNode advert = mapper.readTree(line);
                score.add(advert.get("id").asText(), advert.get("text").asText(), advert.get("fields"));
            }
        }
        return score;
    }

    private void add(String id, String text, JsonNode wanted) {
        adverts++;
        Map<String, Object> read = read(text);
        for (String field : FIELDS) {
            Object want = expected(field, wanted);
            if (Objects.equals(want, read.get(field))) {
                exact.merge(field, 1, Integer::sum);
            } else {
                misses.add(id + " " + field + ": wanted " + want + ", read " + read.get(field));
            }
        }
    }

    /** A field left out of the expectation means: nothing there. */
    private static Object expected(String field, JsonNode wanted) {
        JsonNode node = wanted.get(field);
        boolean none = node == null || node.isNull();
        return switch (field) {
            case "year", "miles", "price" -> none ? null : Math.round(node.asDouble());
            case "price_negotiable" -> !none && node.asBoolean();
            case "running_state" -> none ? "unknown" : node.asText();
            case "currency" -> none ? "USD" : node.asText();
            case "title_brand" -> none ? "unknown" : node.asText();
            case "symptoms", "failures_claimed" -> {
                TreeSet<String> words = new TreeSet<>();
                if (!none) {
                    node.forEach(word -> words.add(word.asText()));
                }
                yield words;
            }
            default -> none ? null : node.asText();
        };
    }

    static Map<String, Object> read(String text) {
        AdvertReading r = Vocabularies.read(text);
        Map<String, Object> read = new LinkedHashMap<>();
        read.put("year", r.car().year().map(f -> (long) f.value()).orElse(null));
        read.put("make", r.car().make().map(Found::value).orElse(null));
        read.put("model", r.car().model().map(Found::value).orElse(null));
        read.put("trim", r.car().trim().map(Found::value).orElse(null));
        read.put("miles",
                r.car().mileage().flatMap(f -> f.value().distance()).map(d -> Math.round(d.miles())).orElse(null));
        read.put("odometer_unit_in_text",
                r.car().mileage().map(f -> f.value().unit()).filter(u -> !u.isEmpty()).orElse(null));
        read.put("price", r.offer().price().map(f -> Math.round(f.value().amount())).orElse(null));
        read.put("currency", r.offer().price().map(f -> f.value().currency().getCurrencyCode()).orElse("USD"));
        read.put("price_negotiable", r.offer().negotiable().value());
        read.put("title_brand", r.offer().title().value().name().toLowerCase(java.util.Locale.ROOT));
        read.put("running_state", r.condition().runningState().value());
        TreeSet<String> symptoms = new TreeSet<>();
        r.condition().symptoms().stream().filter(s -> s.value().sight() == Sight.PRESENT)
                .forEach(s -> symptoms.add(s.value().word()));
        read.put("symptoms", symptoms);
        TreeSet<String> claims = new TreeSet<>();
        r.condition().claims().stream().filter(c -> c.value().held()).forEach(c -> claims.add(c.value().item()));
        read.put("failures_claimed", claims);
        read.put("location", r.offer().location().map(Found::value).orElse(null));
        return read;
    }

    int adverts() {
        return adverts;
    }

    double rate() {
        return exact.values().stream().mapToInt(Integer::intValue).sum() / (double) (adverts * FIELDS.size());
    }

    double rate(String field) {
        return exact.getOrDefault(field, 0) / (double) adverts;
    }

    List<String> misses() {
        return List.copyOf(misses);
    }

    String report() {
        StringBuilder text = new StringBuilder(String.format(java.util.Locale.ROOT,
                "%d adverts, %.1f %% of fields exact%n", adverts, 100 * rate()));
        for (String field : FIELDS) {
            text.append(String.format(java.util.Locale.ROOT, "  %-22s %5.1f %%%n", field, 100 * rate(field)));
        }
        misses.forEach(miss -> text.append("  ").append(miss).append('\n'));
        return text.toString();
    }
}
