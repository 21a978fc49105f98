package worthsaving.deal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.quantity.Money;

/** Looking only at the points still undecided finds the price that looking at all of them finds. */
class PriceLimitTest {

    private static final int POINTS = 400;

    private final double[] weights = new double[POINTS];
    private final double[] tax = new double[POINTS];
    private Flow flow;

    private void draw(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        flow = Flow.ofSize(POINTS);
        Arrays.setAll(weights, i -> random.nextDouble());
        double sum = Arrays.stream(weights).sum();
        for (int i = 0; i < POINTS; i++) {
            weights[i] /= sum;
            tax[i] = random.nextBoolean() ? 0 : random.nextDouble(0.4);
            flow.before()[i] = random.nextDouble(-2_000, 9_000);
            flow.unit()[i] = random.nextDouble(1, 1.4);
            flow.ownLabour()[i] = random.nextDouble(900);
            flow.ownHours()[i] = flow.ownLabour()[i] / 35;
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void the_break_even_price_leaves_no_profit(long seed) {
        draw(seed);

        assertThat(new PriceLimit(flow, weights, tax).breakEven().orElseThrow())
                .isCloseTo(byHand(this::profit), within(2e-4));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void the_limit_is_the_lesser_of_target_and_chance_of_loss(long seed) {
        draw(seed);
        BuyerRule rule = BuyerRule.of(Money.usd(300), 0.3).withWays(Set.of(WayOut.REPAIR_AND_SELL));
        double target = byHand(price -> profit(price) - 300);
        double loss = byHand(price -> 0.3 + 1e-12 - lost(price));

        OptionalDouble limit = new PriceLimit(flow, weights, tax).under(rule).price();

        assertThat(limit.orElseThrow()).isCloseTo(Math.min(target, loss), within(2e-4));
    }

    private double profit(double price) {
        double[] profits = flow.profits(price, tax);
        double sum = 0;
        for (int i = 0; i < POINTS; i++) {
            sum += weights[i] * profits[i];
        }
        return sum;
    }

    private double lost(double price) {
        double[] profits = flow.profits(price, tax);
        double sum = 0;
        for (int i = 0; i < POINTS; i++) {
            sum += profits[i] < 0 ? weights[i] : 0;
        }
        return sum;
    }

    private static double byHand(DoubleUnaryOperator margin) {
        double low = 0;
        double high = 20_000;
        assertThat(margin.applyAsDouble(low)).isPositive();
        while (high - low > 1e-5) {
            double middle = (low + high) / 2;
            if (margin.applyAsDouble(middle) >= 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
