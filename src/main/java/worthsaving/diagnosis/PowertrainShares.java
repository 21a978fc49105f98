package worthsaving.diagnosis;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import worthsaving.quantity.Source;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Powertrain;
import worthsaving.vehicle.Powertrain.Drive;
import worthsaving.vehicle.Powertrain.Engine;
import worthsaving.vehicle.Powertrain.Gearbox;
import worthsaving.vehicle.Powertrain.TimingDrive;

/**
 * How common each kind of powertrain is among cars on offer, used for what an advert leaves out.
 *
 * @param gearboxes by engine, each row summing to 1
 */
public record PowertrainShares(
        Map<Engine, Double> engines,
        Map<TimingDrive, Double> timings,
        Map<Engine, Map<Gearbox, Double>> gearboxes,
        Map<Drive, Double> drives,
        Source source) {

    private static final Map<Gearbox, Double> USUAL_GEARBOXES = Map.of(
            Gearbox.AUTOMATIC, 0.68,
            Gearbox.CVT, 0.17,
            Gearbox.MANUAL, 0.10,
            Gearbox.DUAL_CLUTCH, 0.05);

    private static final Map<Gearbox, Double> ELECTRIC_DRIVE_ONLY = Map.of(Gearbox.ELECTRIC_DRIVE, 1.0);

    public static final PowertrainShares USUAL = new PowertrainShares(
            Map.of(
                    Engine.PETROL, 0.68,
                    Engine.PETROL_TURBO, 0.20,
                    Engine.DIESEL, 0.04,
                    Engine.HYBRID, 0.06,
                    Engine.ELECTRIC, 0.02),
            Map.of(TimingDrive.CHAIN, 0.75, TimingDrive.BELT, 0.25),
            Map.of(
                    Engine.PETROL, USUAL_GEARBOXES,
                    Engine.PETROL_TURBO, USUAL_GEARBOXES,
                    Engine.DIESEL, USUAL_GEARBOXES,
                    Engine.HYBRID, Map.of(Gearbox.ELECTRIC_DRIVE, 0.85, Gearbox.AUTOMATIC, 0.15),
                    Engine.ELECTRIC, ELECTRIC_DRIVE_ONLY),
            Map.of(Drive.FRONT, 0.60, Drive.REAR, 0.15, Drive.ALL, 0.25),
            Source.guess("shares of powertrains among used cars of the United States, from memory; not measured"));

    public PowertrainShares {
        engines = Map.copyOf(engines);
        timings = Map.copyOf(timings);
        gearboxes = Map.copyOf(gearboxes);
        drives = Map.copyOf(drives);
    }

    /**
     * Probability of each kind of engine given what is known of the rest: a gearbox counts by how common
     * it is with that engine, a stated timing drive rules an electric car out.
     */
    Map<Engine, Double> engines(Powertrain car) {
        if (car.engine().get().isPresent()) {
            return Map.of(car.engine().get().get(), 1.0);
        }
        Map<Engine, Double> weights = new EnumMap<>(Engine.class);
        for (Engine engine : engines.keySet()) {
            double weight = engines.get(engine)
                    * car.gearbox().map(g -> gearboxes.get(engine).getOrDefault(g, 0.0)).orElse(1.0);
            if (weight > 0 && !(engine == Engine.ELECTRIC && car.timing().get().isPresent())) {
                weights.put(engine, weight);
            }
        }
        double sum = weights.values().stream().mapToDouble(Double::doubleValue).sum();
        weights.replaceAll((engine, weight) -> weight / sum);
        return weights;
    }

    /** What has to be weighed by share because it is unknown, in words. */
    List<String> assumptions(Powertrain car) {
        Map<String, Fact<?>> facts = new LinkedHashMap<>();
        facts.put("engine", car.engine());
        facts.put("timing drive", car.engine().get().filter(Engine.ELECTRIC::equals).isPresent()
                ? car.engine()
                : car.timing());
        facts.put("gearbox", car.gearbox());
        facts.put("driven wheels", car.drive());
        return facts.entrySet().stream()
                .filter(f -> f.getValue().get().isEmpty())
                .map(f -> f.getKey() + " unknown: every kind weighed by how common it is (a guess)")
                .toList();
    }
}
