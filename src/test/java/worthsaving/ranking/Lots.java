package worthsaving.ranking;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.ShippedCatalogue;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Money;
import worthsaving.quantity.Range;
import worthsaving.quantity.Seed;
import worthsaving.valuation.ValueForecast;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;
import worthsaving.vehicle.Powertrain;
import worthsaving.vehicle.TitleBrand;
import worthsaving.vehicle.Vehicle;

/** Invented listings of one invented car, valued the same everywhere. */
final class Lots {

    static final Catalogue CATALOGUE = ShippedCatalogue.load();
    static final LocalDate TODAY = LocalDate.of(2026, 1, 15);
    static final JudgeSettings SETTINGS = JudgeSettings.usual(CATALOGUE, Seed.DEFAULT);

    /** About 8,000 dollars running, whatever the car. */
    static final ValueSource EIGHT_THOUSAND = (car, on) -> new ValueForecast(
            new Range(6_000, 8_000, 10_000).asPert(), Money.USD, List.of(), List.of(), List.of(), "invented");

    static final Judge JUDGE = new Judge(CATALOGUE, EIGHT_THOUSAND, SETTINGS);

    private Lots() {}

    static Vehicle car(int year) {
        return Vehicle.builder()
                .year(Fact.known(year))
                .make(Fact.known("invented"))
                .odometer(Fact.known(Distance.ofMiles(110_000)))
                .title(TitleBrand.CLEAN)
                .powertrain(new Powertrain(Fact.known(Powertrain.Engine.PETROL_TURBO),
                        Fact.known(Powertrain.TimingDrive.CHAIN), Fact.known(Powertrain.Gearbox.AUTOMATIC),
                        Fact.known(Powertrain.Drive.FRONT)))
                .build();
    }

    static Listing listing(String id, double ask, Observation... seen) {
        return listing(id, car(2015), Money.usd(ask), seen);
    }

    static Listing listing(String id, Vehicle car, Money ask, Observation... seen) {
        return new Listing(id, car, Fact.ofNullable(ask), TODAY, Fact.known(20.0), new Exposure(Map.of()), List.of(seen),
                "invented", "invented, row " + id);
    }

    static Appraisal appraise(Listing listing) {
        return ((Judged.Done) JUDGE.judge(listing)).appraisal();
    }
}
