package worthsaving.intake.advert;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import worthsaving.quantity.Distance;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;
import worthsaving.vehicle.Observation.Sight;
import worthsaving.vehicle.Observation.Witness;
import worthsaving.vehicle.Powertrain;
import worthsaving.vehicle.TitleBrand;
import worthsaving.vehicle.Vehicle;

/** Turns a reading into a listing. */
final class ListingMaker {

    private static final String PAPERS = "TITLE_NOT_IN_HAND";

    private ListingMaker() {}

    static Listing listing(AdvertReading reading, String id, String origin) {
        CarReading car = reading.car();
        Vehicle vehicle = Vehicle.builder()
                .year(fact(car.year()))
                .make(priced(fact(car.make()), reading.pricedAs(), 0))
                .model(priced(fact(car.model()), reading.pricedAs(), 1))
                .trim(fact(car.trim()))
                .odometer(odometer(car.mileage()))
                .powertrain(new Powertrain(fact(car.engine()), Fact.unknown(), fact(car.gearbox()), fact(car.drive())))
                .engineLitres(fact(car.litres()))
                .cylinders(fact(car.cylinders()))
                .body(fact(car.body()))
                .title(reading.offer().title().value())
                .vin(fact(car.vin()))
                .build();
        return new Listing(id, vehicle, fact(reading.offer().price()), reading.on(), Fact.unknown(),
                reading.condition().exposure(), observations(reading), reading.text(), origin);
    }

    private static <T> Fact<T> fact(Optional<Found<T>> found) {
        return found.map(Found::toFact).orElseGet(Fact::unknown);
    }

    /** In lower case, and under the name by which price data hold the car. */
    private static Fact<String> priced(Fact<String> name, Optional<String> pricedAs, int part) {
        return name.map(n -> pricedAs.map(p -> p.split("/", 2)[part]).orElse(n.toLowerCase(Locale.ROOT)));
    }

    private static Fact<Distance> odometer(Optional<Found<Mileage>> mileage) {
        return mileage.filter(m -> m.value().distance().isPresent())
                .map(m -> m.toFact().map(value -> value.distance().orElseThrow()))
                .orElseGet(Fact::unknown);
    }

    private static List<Observation> observations(AdvertReading reading) {
        Map<String, Sight> sights = new LinkedHashMap<>();
        for (Found<Symptom> symptom : reading.condition().symptoms()) {
            symptom.value().finding().ifPresent(finding ->
                    sights.merge(finding, symptom.value().sight(), (a, b) -> a == Sight.PRESENT ? a : b));
        }
        for (Found<SaidCode> code : reading.condition().codes()) {
            code.value().finding().ifPresent(finding ->
                    sights.merge(finding, code.value().sight(), (a, b) -> a == Sight.PRESENT ? a : b));
        }
        for (Found<Claim> claim : reading.condition().claims()) {
            switch (claim.value().standing()) {
                case FAILED -> sights.put(claim.value().item(), Sight.PRESENT);
                case DOUBTED -> sights.put(claim.value().item(), Sight.UNSURE);
                case DENIED, REPAIRED -> sights.put(claim.value().item(), Sight.ABSENT);
                case MENTIONED, IMPLIED -> { }
            }
        }
        TitleBrand title = reading.offer().title().value();
        if (title == TitleBrand.LIEN || title == TitleBrand.LOST) {
            sights.put(PAPERS, Sight.PRESENT);
        }
        return sights.entrySet().stream()
                .map(e -> new Observation(e.getKey(), e.getValue(), Witness.SELLER)).toList();
    }
}
