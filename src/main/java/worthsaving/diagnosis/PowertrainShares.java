package worthsaving.diagnosis;

import java.util.Map;
import worthsaving.quantity.Source;
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
}
