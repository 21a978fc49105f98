package worthsaving.intake.advert;

import java.util.Optional;
import worthsaving.vehicle.Powertrain;
import worthsaving.vehicle.Vin;

/** The car itself; names as people write them ("Volkswagen", "F-150"). */
public record CarReading(
        Optional<Found<Integer>> year,
        Optional<Found<String>> make,
        Optional<Found<String>> model,
        Optional<Found<String>> trim,
        Optional<Found<Mileage>> mileage,
        Optional<Found<Double>> litres,
        Optional<Found<Integer>> cylinders,
        Optional<Found<Powertrain.Engine>> engine,
        Optional<Found<Powertrain.Gearbox>> gearbox,
        Optional<Found<Powertrain.Drive>> drive,
        Optional<Found<String>> body,
        Optional<Found<Vin>> vin) {}
