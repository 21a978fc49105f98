package worthsaving.desktop.record;

import java.util.Optional;
import java.util.OptionalDouble;
import worthsaving.casebook.Actual;
import worthsaving.casebook.CaseFile;
import worthsaving.record.Ensemble;
import worthsaving.record.FinishedCar;
import worthsaving.record.Quantity;

/** One finished car: what was forecast and what came. */
record FinishedRow(CaseFile of, Actual actual, FinishedCar car) {

    private static final double LOW = 0.1;
    private static final double MIDDLE = 0.5;
    private static final double HIGH = 0.9;

    static Optional<FinishedRow> of(CaseFile file) {
        return file.actual().flatMap(a -> file.finished().map(car -> new FinishedRow(file, a, car)));
    }

    OptionalDouble forecast(Quantity quantity) {
        Ensemble spread = car.forecasts().get(quantity);
        return spread == null ? OptionalDouble.empty() : OptionalDouble.of(spread.quantile(MIDDLE));
    }

    /** What came, in the currency of the car. */
    double came(Quantity quantity) {
        return switch (quantity) {
            case VALUE -> actual.sale().amount();
            case COST -> actual.cost().amount();
            case HOURS -> actual.hours().value();
            case DAYS -> actual.days();
        };
    }

    /** Whether it fell into the middle four fifths of its forecast; true without a forecast. */
    boolean held(Quantity quantity) {
        Ensemble spread = car.forecasts().get(quantity);
        return spread == null || came(quantity) >= spread.quantile(LOW) && came(quantity) <= spread.quantile(HIGH);
    }

    /** What it was to fetch less what it was to cost, own hours unpaid. */
    OptionalDouble forecastProfit() {
        Ensemble value = car.forecasts().get(Quantity.VALUE);
        Ensemble cost = car.forecasts().get(Quantity.COST);
        return value == null || cost == null ? OptionalDouble.empty() : OptionalDouble.of(value.mean() - cost.mean());
    }

    double profit() {
        return actual.profitBeforeHours().amount();
    }
}
