package worthsaving.casebook;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;
import worthsaving.vehicle.Powertrain;
import worthsaving.vehicle.TitleBrand;
import worthsaving.vehicle.Vehicle;
import worthsaving.vehicle.Vin;

/**
 * A listing without its observations as JSON. A known fact is its value, an assumed one an object with
 * {@code assumed} and {@code why}, an unknown one is left out.
 */
final class ListingJson {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private ListingJson() {}

    static String write(Listing listing) {
        ObjectNode json = NODES.objectNode();
        Vehicle v = listing.vehicle();
        fact(json, "year", v.year(), NODES::numberNode);
        fact(json, "make", v.make(), NODES::textNode);
        fact(json, "model", v.model(), NODES::textNode);
        fact(json, "trim", v.trim(), NODES::textNode);
        fact(json, "odometer", v.odometer(), d -> NODES.objectNode().put("value", d.value()).put("unit", d.unit().name()));
        fact(json, "engine", v.powertrain().engine(), ListingJson::name);
        fact(json, "timing", v.powertrain().timing(), ListingJson::name);
        fact(json, "gearbox", v.powertrain().gearbox(), ListingJson::name);
        fact(json, "drive", v.powertrain().drive(), ListingJson::name);
        fact(json, "engine_litres", v.engineLitres(), NODES::numberNode);
        fact(json, "cylinders", v.cylinders(), NODES::numberNode);
        fact(json, "body", v.body(), NODES::textNode);
        fact(json, "condition", v.condition(), NODES::textNode);
        json.put("title", v.title().name());
        fact(json, "vin", v.vin(), vin -> NODES.textNode(vin.text()));
        fact(json, "ask", listing.ask(),
                m -> NODES.objectNode().put("amount", m.amount()).put("currency", m.currency().getCurrencyCode()));
        json.put("seen", listing.seen().toString());
        fact(json, "tow_miles", listing.towMiles(), NODES::numberNode);
        ObjectNode exposure = json.putObject("exposure");
        listing.exposure().levels().forEach((hazard, level) -> exposure.put(hazard.name(), level.name()));
        json.put("story", listing.story());
        json.put("origin", listing.origin());
        return json.toString();
    }

    static Listing read(String id, String text, List<Observation> observations) throws JsonProcessingException {
        JsonNode json = JSON.readTree(text);
        Vehicle vehicle = Vehicle.builder()
                .year(fact(json, "year", JsonNode::intValue))
                .make(fact(json, "make", JsonNode::textValue))
                .model(fact(json, "model", JsonNode::textValue))
                .trim(fact(json, "trim", JsonNode::textValue))
                .odometer(fact(json, "odometer", n -> new Distance(
                        n.get("value").doubleValue(), Distance.Unit.valueOf(n.get("unit").textValue()))))
                .powertrain(new Powertrain(
                        fact(json, "engine", n -> Powertrain.Engine.valueOf(n.textValue())),
                        fact(json, "timing", n -> Powertrain.TimingDrive.valueOf(n.textValue())),
                        fact(json, "gearbox", n -> Powertrain.Gearbox.valueOf(n.textValue())),
                        fact(json, "drive", n -> Powertrain.Drive.valueOf(n.textValue()))))
                .engineLitres(fact(json, "engine_litres", JsonNode::doubleValue))
                .cylinders(fact(json, "cylinders", JsonNode::intValue))
                .body(fact(json, "body", JsonNode::textValue))
                .condition(fact(json, "condition", JsonNode::textValue))
                .title(TitleBrand.valueOf(json.get("title").textValue()))
                .vin(fact(json, "vin", n -> new Vin(n.textValue())))
                .build();
        return new Listing(id, vehicle,
                fact(json, "ask", n -> Money.of(n.get("amount").doubleValue(), n.get("currency").textValue())),
                LocalDate.parse(json.get("seen").textValue()),
                fact(json, "tow_miles", JsonNode::doubleValue),
                exposure(json.get("exposure")),
                observations,
                json.get("story").textValue(),
                json.get("origin").textValue());
    }

    private static Exposure exposure(JsonNode json) {
        Map<Exposure.Hazard, Exposure.Level> levels = new EnumMap<>(Exposure.Hazard.class);
        json.properties().forEach(e -> levels.put(
                Exposure.Hazard.valueOf(e.getKey()), Exposure.Level.valueOf(e.getValue().textValue())));
        return new Exposure(levels);
    }

    private static JsonNode name(Enum<?> value) {
        return NODES.textNode(value.name());
    }

    private static <T> void fact(ObjectNode into, String name, Fact<T> fact, Function<T, JsonNode> writing) {
        if (fact instanceof Fact.Known<T> known) {
            into.set(name, writing.apply(known.value()));
        } else if (fact instanceof Fact.Assumed<T> assumed) {
            into.putObject(name).put("why", assumed.why()).set("assumed", writing.apply(assumed.value()));
        }
    }

    private static <T> Fact<T> fact(JsonNode from, String name, Function<JsonNode, T> reading) {
        JsonNode node = from.get(name);
        if (node == null) {
            return Fact.unknown();
        }
        return node.has("assumed")
                ? Fact.assumed(reading.apply(node.get("assumed")), node.get("why").textValue())
                : Fact.known(reading.apply(node));
    }
}
