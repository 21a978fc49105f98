package worthsaving.diagnosis;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import worthsaving.catalog.Catalogue;
import worthsaving.quantity.Distance;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Powertrain;
import worthsaving.vehicle.Vehicle;

/** Reads a car with its evidence as src/bench/diagnosis/reference.py writes it. */
public final class ReferenceCar {

    private ReferenceCar() {}

    public static FailureNetwork network(Catalogue catalogue, JsonNode car) {
        return FailureNetwork.of(catalogue, vehicle(car), exposure(car), LocalDate.of(2026, 1, 1));
    }

    public static Vehicle vehicle(JsonNode car) {
        JsonNode powertrain = car.get("powertrain");
        return Vehicle.builder()
                .year(Fact.known(car.get("year").asInt()))
                .odometer(Fact.known(Distance.ofMiles(car.get("miles").asDouble())))
                .powertrain(new Powertrain(
                        fact(powertrain, "engine", Powertrain.Engine.class),
                        fact(powertrain, "timing", Powertrain.TimingDrive.class),
                        fact(powertrain, "gearbox", Powertrain.Gearbox.class),
                        fact(powertrain, "drive", Powertrain.Drive.class)))
                .build();
    }

    public static Exposure exposure(JsonNode car) {
        Map<Exposure.Hazard, Exposure.Level> levels = new HashMap<>();
        car.get("exposure").properties().forEach(e -> levels.put(
                Exposure.Hazard.valueOf(e.getKey()), Exposure.Level.valueOf(e.getValue().asText())));
        return new Exposure(levels);
    }

    private static <E extends Enum<E>> Fact<E> fact(JsonNode powertrain, String name, Class<E> type) {
        JsonNode value = powertrain.get(name);
        return value == null ? Fact.unknown() : Fact.known(Enum.valueOf(type, value.asText()));
    }

    public static Evidence evidence(JsonNode car) {
        return new Evidence(likelihoods(car.get("findings")), likelihoods(car.get("items")));
    }

    private static Map<String, Likelihood> likelihoods(JsonNode seen) {
        Map<String, Likelihood> likelihoods = new HashMap<>();
        seen.properties().forEach(e -> likelihoods.put(
                e.getKey(), new Likelihood(e.getValue().get(0).asDouble(), e.getValue().get(1).asDouble())));
        return likelihoods;
    }
}
