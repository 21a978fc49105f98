package worthsaving.desktop.car;

import java.time.LocalDate;
import java.util.List;
import worthsaving.desktop.Ground;
import worthsaving.desktop.InventedValues;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;
import worthsaving.vehicle.Observation.Sight;
import worthsaving.vehicle.Observation.Witness;
import worthsaving.vehicle.Vehicle;

/** An invented car for the tests of the car screen. */
public final class Cars {

    static final Ground GROUND = InventedValues.ground();

    private Cars() {}

    public static Listing overheated() {
        return new Listing("T1",
                Vehicle.builder().year(Fact.known(2012)).make(Fact.known("ford")).model(Fact.known("focus"))
                        .odometer(Fact.known(Distance.ofMiles(104_000))).build(),
                Fact.known(Money.usd(1_300)), LocalDate.of(2025, 11, 14), Fact.known(20.0), Exposure.UNKNOWN,
                List.of(Observation.present("OVERHEATS"),
                        new Observation("WATER_PUMP", Sight.PRESENT, Witness.SELLER)),
                "ran hot", "invented");
    }
}
