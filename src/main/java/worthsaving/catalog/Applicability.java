package worthsaving.catalog;

import java.util.EnumSet;
import java.util.Set;
import worthsaving.vehicle.Powertrain.Drive;
import worthsaving.vehicle.Powertrain.Engine;
import worthsaving.vehicle.Powertrain.Gearbox;
import worthsaving.vehicle.Powertrain.TimingDrive;

/** The powertrains an item can exist on. */
public record Applicability(
        Set<Engine> engines, Set<TimingDrive> timings, Set<Gearbox> gearboxes, Set<Drive> drives) {

    public static final Applicability ALL = new Applicability(
            EnumSet.allOf(Engine.class),
            EnumSet.allOf(TimingDrive.class),
            EnumSet.allOf(Gearbox.class),
            EnumSet.allOf(Drive.class));

    public Applicability {
        engines = Set.copyOf(engines);
        timings = Set.copyOf(timings);
        gearboxes = Set.copyOf(gearboxes);
        drives = Set.copyOf(drives);
    }
}
