package worthsaving.sensitivity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * One figure moved at a time, the others at their base.
 *
 * @param base result with every input at its base
 * @param bars widest first; equal widths by name
 */
public record Tornado(double base, List<Bar> bars) {

    private static final int MOST_STEPS = 200;

    /**
     * @param atLow result with the input at its low end
     * @param atHigh result with the input at its high end
     */
    public record Bar(Input input, double atLow, double atHigh) {

        public double width() {
            return Math.abs(atHigh - atLow);
        }
    }

    public Tornado {
        bars = List.copyOf(bars);
    }

    /** @param model result for values in the order of the inputs */
    public static Tornado of(List<Input> inputs, ToDoubleFunction<double[]> model) {
        double[] base = inputs.stream().mapToDouble(Input::base).toArray();
        List<Bar> bars = new ArrayList<>();
        for (int i = 0; i < base.length; i++) {
            Input input = inputs.get(i);
            bars.add(new Bar(input, at(base, i, input.low(), model), at(base, i, input.high(), model)));
        }
        bars.sort(Comparator.comparingDouble(Bar::width).reversed().thenComparing(b -> b.input().name()));
        return new Tornado(model.applyAsDouble(base.clone()), bars);
    }

    /**
     * Value of one input at which the result is just {@code target}, the others at their base; empty when
     * the result does not cross it between the input's low and high end. Brent (1973).
     */
    public static OptionalDouble breakEven(
            List<Input> inputs, int which, ToDoubleFunction<double[]> model, double target) {
        double[] base = inputs.stream().mapToDouble(Input::base).toArray();
        Input input = inputs.get(which);
        double low = at(base, which, input.low(), model) - target;
        double high = at(base, which, input.high(), model) - target;
        if (low == 0 || high == 0) {
            return OptionalDouble.of(low == 0 ? input.low() : input.high());
        }
        if (low * high > 0) {
            return OptionalDouble.empty();
        }
        double accuracy = Math.max(1e-12, 1e-10 * (input.high() - input.low()));
        return OptionalDouble.of(new BrentSolver(accuracy)
                .solve(MOST_STEPS, x -> at(base, which, x, model) - target, input.low(), input.high()));
    }

    private static double at(double[] base, int which, double value, ToDoubleFunction<double[]> model) {
        double[] moved = base.clone();
        moved[which] = value;
        return model.applyAsDouble(moved);
    }
}
