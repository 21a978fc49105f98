package worthsaving.deal;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import worthsaving.catalog.FailureItem;
import worthsaving.diagnosis.FailurePatterns;
import worthsaving.quantity.Money;
import worthsaving.quantity.Seed;
import worthsaving.valuation.ValueForecast;
import worthsaving.vehicle.TitleBrand;

/**
 * A car as the deal needs it: all that does not change while its price and the money lines are moved.
 *
 * @param patterns what may have failed
 * @param repairs the plan for each pattern
 * @param labour who works
 * @param value what it fetches once it runs
 * @param towMiles miles the tow truck carries it
 * @param items failure items by id, for their names and flags
 * @param usualFaults what it costs to mend the faults that running cars of its age and mileage have on
 *     average. The value is that of such a car, faults and all, so only what is worse than that need cost
 *     money: {@link Term#USUAL_FAULTS_SHARE} of it comes back, in the sale or as work left undone
 * @param offeredAt price at which it is offered as it stands: whoever resells it unmended gets no more
 * @param method how the outcome is computed
 * @param usual probability of each item before any finding, by id: what is likely anyway is no reason for a
 *     verdict; an item not named counts from zero
 * @param bought whether it stands in the own workshop: what buying and fetching it cost is spent, and counts in
 *     no way out
 */
public record DealCase(
        FailurePatterns patterns,
        Repairs repairs,
        Labour labour,
        ValueForecast value,
        double towMiles,
        TitleBrand title,
        Map<String, FailureItem> items,
        Money usualFaults,
        Optional<Money> offeredAt,
        Method method,
        Map<String, Double> usual,
        boolean bought) {

    /**
     * How the outcome is computed.
     *
     * @param points of the quasi-random sequence, a power of two from 64 to 65,536
     * @param mayStop whether the owner stops after opening up when a way out beats finishing; otherwise
     *     every car is finished
     */
    public record Method(int points, Seed seed, boolean mayStop) {

        public static final Method USUAL = new Method(4_096, Seed.DEFAULT, true);

        public Method {
            Objects.requireNonNull(seed, "seed");
            if (Integer.bitCount(points) != 1 || points < 64 || points > 65_536) {
                throw new IllegalArgumentException("points must be a power of two from 64 to 65536, not " + points);
            }
        }

        /** Every car is finished, whatever is found. */
        public Method committed() {
            return new Method(points, seed, false);
        }

        public Method withPoints(int number) {
            return new Method(number, seed, mayStop);
        }
    }

    public DealCase {
        Objects.requireNonNull(patterns, "patterns");
        Objects.requireNonNull(repairs, "repairs");
        Objects.requireNonNull(labour, "labour");
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(usualFaults, "usualFaults");
        Objects.requireNonNull(offeredAt, "offeredAt");
        Objects.requireNonNull(method, "method");
        items = Map.copyOf(items);
        usual = Map.copyOf(usual);
        if (!(towMiles >= 0) || Double.isInfinite(towMiles)) {
            throw new IllegalArgumentException("tow miles must be zero or more, not " + towMiles);
        }
    }

    /** A car not yet bought. */
    public DealCase(
            FailurePatterns patterns,
            Repairs repairs,
            Labour labour,
            ValueForecast value,
            double towMiles,
            TitleBrand title,
            Map<String, FailureItem> items,
            Money usualFaults,
            Optional<Money> offeredAt,
            Method method,
            Map<String, Double> usual) {
        this(patterns, repairs, labour, value, towMiles, title, items, usualFaults, offeredAt, method, usual, false);
    }

    /** A car whose value is that of one without any fault, and which nobody has put a price on. */
    public DealCase(
            FailurePatterns patterns,
            Repairs repairs,
            Labour labour,
            ValueForecast value,
            double towMiles,
            TitleBrand title,
            Map<String, FailureItem> items,
            Method method) {
        this(patterns, repairs, labour, value, towMiles, title, items, Money.zero(value.currency()), Optional.empty(),
                method, Map.of());
    }

    public DealCase withMethod(Method other) {
        return new DealCase(patterns, repairs, labour, value, towMiles, title, items, usualFaults, offeredAt, other,
                usual, bought);
    }

    /**
     * The same car once it is bought and fetched, to be mended by other plans.
     *
     * @param worthAsItStands factor on the price it was offered at, which nobody pays for a car in pieces
     */
    public DealCase bought(FailurePatterns left, Repairs by, double worthAsItStands) {
        return new DealCase(left, by, labour, value, towMiles, title, items, usualFaults,
                offeredAt.map(offer -> offer.times(worthAsItStands)), method, usual, true);
    }

    DealCase withLabour(Labour other) {
        return new DealCase(patterns, repairs, other, value, towMiles, title, items, usualFaults, offeredAt, method,
                usual);
    }

    DealCase withPatterns(FailurePatterns others) {
        return new DealCase(others, repairs, labour, value, towMiles, title, items, usualFaults, offeredAt, method,
                usual);
    }
}
