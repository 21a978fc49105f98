package worthsaving.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import worthsaving.quantity.Seed;

/**
 * The forecasts of all finished cars against what came of them.
 *
 * @param cars finished cars
 * @param quantities one for every quantity that at least one car has a forecast and an actual of
 * @param failedItems how good the probabilities of failed items were, in ten bins; empty when none was looked at
 */
public record TrackRecord(int cars, List<QuantityRecord> quantities, Optional<BrierScore> failedItems) {

    private static final int BINS = 10;

    /** A share known to within so many tenths either way is called known; a judgement, no source. */
    private static final double FIRM = 0.1;

    public TrackRecord {
        quantities = List.copyOf(quantities);
    }

    public static TrackRecord of(List<FinishedCar> cars, Seed seed) {
        List<QuantityRecord> quantities = new ArrayList<>();
        for (Quantity quantity : Quantity.values()) {
            List<Scored> results = cars.stream()
                    .filter(c -> c.forecasts().containsKey(quantity) && c.actuals().containsKey(quantity))
                    .map(c -> new Scored(c.id(), c.forecasts().get(quantity), c.actuals().get(quantity)))
                    .toList();
            if (!results.isEmpty()) {
                quantities.add(QuantityRecord.of(quantity, results, seed));
            }
        }
        List<Chance> chances = cars.stream().flatMap(c -> c.items().stream()).toList();
        return new TrackRecord(cars.size(), quantities,
                chances.isEmpty() ? Optional.empty() : Optional.of(BrierScore.binned(chances, BINS)));
    }

    /**
     * What so many cars can prove: the 95 % interval of a share when as many came true as should have. Read it before the
     * figures.
     */
    public String caution() {
        if (cars == 0) {
            return "No car is finished yet: there is nothing to compare.";
        }
        int held = (int) Math.round(QuantityRecord.INSIDE * cars);
        Coverage coverage = Coverage.of(held, cars, QuantityRecord.INSIDE);
        String doubt = "even if " + held + " of " + cars + " fell inside their 80 % interval, the true share could be "
                + "anything from " + Math.round(100 * coverage.low()) + " to "
                + (coverage.high() < 1 ? Math.min(99, Math.round(100 * coverage.high())) : 100) + " %.";
        boolean few = coverage.high() - coverage.low() > FIRM;
        return cars == 1 ? "One finished car proves little: " + doubt
                : cars + " finished cars" + (few ? " prove little: " : ": ") + doubt;
    }
}
