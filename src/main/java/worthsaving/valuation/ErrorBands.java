package worthsaving.valuation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Distribution;

/**
 * The scatter that a model holds, for cars that differ from its typical one in a single thing: in age with the
 * mileage that goes with it, in mileage, or in make, of which the commonest model stands for all.
 */
final class ErrorBands {

    private static final int[] AGES = {1, 3, 6, 10, 15, 20};
    private static final int[] THOUSANDS = {20, 60, 100, 150, 200, 250};
    /** Usual driving, as the catalogue's onsets have it. */
    private static final double MILES_PER_YEAR = 12_000;

    private final PriceModel model;

    ErrorBands(PriceModel model) {
        this.model = model;
    }

    /** Ages and mileages beyond the data are left out. */
    List<ErrorBand> all(Distance.Unit unit) {
        CarFacts typical = model.typical;
        List<ErrorBand> bands = new ArrayList<>();
        for (int age : AGES) {
            if (age <= model.guard.oldest()) {
                bands.add(band(ErrorBand.By.AGE, age + (age == 1 ? " year" : " years"),
                        aged(typical, age, age * MILES_PER_YEAR), 0));
            }
        }
        for (int thousand : THOUSANDS) {
            Distance far = unit == Distance.Unit.MILES
                    ? Distance.ofMiles(thousand * 1000.0) : Distance.ofKilometres(thousand * 1000.0);
            if (far.miles() <= model.guard.farthest()) {
                bands.add(band(ErrorBand.By.MILEAGE, String.format(Locale.ROOT, "%d,000", thousand),
                        aged(typical, typical.age(), far.miles()), 0));
            }
        }
        model.point.encoder().makes().entrySet().stream()
                .sorted(Comparator.comparingDouble((Map.Entry<String, Encoder.Level> e) -> -e.getValue().rows()))
                .forEach(e -> bands.add(band(ErrorBand.By.MAKE, e.getKey(), of(e.getKey()), (long) e.getValue().rows())));
        return bands;
    }

    private ErrorBand band(ErrorBand.By by, String group, CarFacts car, long rows) {
        Distribution price = model.predict(car).inMoney(1, 0);
        double middle = price.quantile(0.5);
        return new ErrorBand(by, group, price.quantile(0.1) / middle - 1, price.quantile(0.9) / middle - 1, rows);
    }

    private CarFacts aged(CarFacts car, double age, double miles) {
        return new CarFacts(car.make(), car.model(), car.day() - age - 0.5, age, miles, car.condition(), car.cylinders(),
                car.litres(), car.power(), car.fuel(), car.gearbox(), car.body(), car.drive(), 0, car.day())
                .withCleanTitle(model);
    }

    private CarFacts of(String make) {
        String commonest = model.models(make).stream()
                .max(Comparator.comparingLong(name -> model.rows(make, name))).orElse("");
        CarFacts t = model.typical;
        return model.usual.fill(new CarFacts(make, commonest, t.year(), t.age(), t.miles(), t.condition(), Double.NaN,
                Double.NaN, Double.NaN, "", "", "", "", 0, t.day()).withCleanTitle(model));
    }
}
