package worthsaving.desktop.car;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntConsumer;
import java.util.function.ToDoubleBiFunction;
import worthsaving.deal.WayOut;
import worthsaving.deal.WayResult;
import worthsaving.quantity.Money;
import worthsaving.sensitivity.Turning;

/** Finds for each slider where the deal turns, the others staying where they are. */
final class Marks {

    /**
     * What is wanted.
     *
     * @param dials with where each stands when it is not moved
     */
    record Request(CarPicture picture, Map<Dial, Double> dials) {}

    private static final int MOST_REFINEMENTS = 5;

    private final ToDoubleBiFunction<Scenario, WayOut> exact;
    private final Levers levers;

    /** @param exact expected profit with jobs and parts chosen anew for a scenario */
    Marks(Levers levers, ToDoubleBiFunction<Scenario, WayOut> exact) {
        this.levers = levers;
        this.exact = exact;
    }

    Map<Dial, Turning> of(Request request, BooleanSupplier cancelled, IntConsumer progress) {
        Map<Dial, Turning> marks = new LinkedHashMap<>();
        CarPicture.Seen seen = request.picture().seen().orElseThrow();
        request.dials().forEach((dial, given) -> {
            if (cancelled.getAsBoolean()) {
                throw new CancellationException("the marks are no longer wanted");
            }
            marks.put(dial, mark(dial, given, request.picture().scenario(), seen));
            progress.accept(marks.size());
        });
        return new HashMap<>(marks);
    }

    private Turning mark(Dial dial, double given, Scenario scenario, CarPicture.Seen seen) {
        WayResult way = seen.appraisal().assessment().way(seen.shown());
        double low = dial.low();
        double high = dial.high(given);
        if (dial == Lever.TARGET) {
            return Turning.at(way.expectedProfit(), true, low, high);
        }
        if (dial == Lever.LOSS) {
            return Turning.at(100 * way.chanceOfLoss(), false, low, high);
        }
        double now = Math.max(low, Math.min(high, scenario.lever(dial).orElse(given)));
        Money price = seen.appraisal().assessment().price();
        DoubleUnaryOperator profit = x -> seen.nearby().profit(scenario.with(dial, x), seen.shown(), price);
        Turning near = Turning.of(profit, low, now, high, dial.step() / 10);
        return dial.quick() || dial == Lever.VALUE || near.at().isEmpty() ? near
                : refined(near, x -> exact.applyAsDouble(priced(scenario, price).with(dial, x), seen.shown()),
                        profit, low, high, dial.step());
    }

    private Scenario priced(Scenario scenario, Money price) {
        return levers.price(scenario).isPresent() ? scenario : scenario.with(Lever.PRICE, price.amount());
    }

    /** Jobs and parts are chosen anew along the slider; Newton's steps with the slope of those that were. */
    private static Turning refined(
            Turning near, DoubleUnaryOperator exact, DoubleUnaryOperator fixed, double low, double high, double step) {
        double x = near.at().getAsDouble();
        double slope = (fixed.applyAsDouble(x + step) - fixed.applyAsDouble(x)) / step;
        for (int i = 0; i < MOST_REFINEMENTS && slope != 0; i++) {
            double off = exact.applyAsDouble(x) / slope;
            x -= off;
            if (Math.abs(off) < step / 4 || x < low || x > high) {
                break;
            }
        }
        return Turning.at(x, near.gainsBelow(), low, high);
    }
}
