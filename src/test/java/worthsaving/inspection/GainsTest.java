package worthsaving.inspection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.deal.BuyerRule;
import worthsaving.deal.PatternProfit;
import worthsaving.deal.WayOut;
import worthsaving.quantity.Money;

/** Flat sums against the definition, pattern by pattern. */
class GainsTest {

    private static final double TARGET = 500;

    private static BuyerRule rule(Set<WayOut> ways) {
        return BuyerRule.of(Money.usd(TARGET), 0.4).withWays(ways);
    }

    private static PatternProfit pattern(double weight, double sell, double scrap) {
        double[] profit = new double[WayOut.values().length];
        profit[WayOut.REPAIR_AND_SELL.ordinal()] = sell;
        profit[WayOut.SCRAP.ordinal()] = scrap;
        return new PatternProfit(new BitSet(), weight, profit);
    }

    /** Counts that fill whole groups of four and that leave one, two or three over. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 13})
    void equals_the_sums_taken_one_by_one(int count) {
        Random random = new Random(count);
        Set<WayOut> ways = EnumSet.of(WayOut.REPAIR_AND_SELL, WayOut.SCRAP);
        List<PatternProfit> patterns = new ArrayList<>();
        double[] shares = new double[count];
        for (int i = 0; i < count; i++) {
            patterns.add(pattern(random.nextDouble(), 3_000 * random.nextDouble() - 500, 2_000 * random.nextDouble()));
            shares[i] = random.nextDouble();
        }
        Gains gains = new Gains(patterns, rule(ways));
        Gains.Split split = gains.split(shares);

        double[] ones = new double[count];
        java.util.Arrays.fill(ones, 1);
        double[] rest = java.util.Arrays.stream(shares).map(s -> 1 - s).toArray();
        same(gains.now(), patterns, ones);
        same(split.present(), patterns, shares);
        same(split.absent(), patterns, rest);
        double gain = split.present().gain() + split.absent().gain() - gains.now().gain();
        assertThat(split.gainOver(gains.now())).isCloseTo(Math.max(0, gain), within(1e-9));
    }

    private static void same(Gains.Best best, List<PatternProfit> patterns, double[] shares) {
        double weight = 0;
        double sell = 0;
        double scrap = 0;
        for (int i = 0; i < shares.length; i++) {
            double w = patterns.get(i).weight() * shares[i];
            weight += w;
            sell += w * patterns.get(i).profit()[WayOut.REPAIR_AND_SELL.ordinal()];
            scrap += w * patterns.get(i).profit()[WayOut.SCRAP.ordinal()];
        }
        assertThat(best.weight()).isCloseTo(weight, within(1e-9));
        assertThat(best.profit()).isCloseTo(Math.max(sell, scrap), within(1e-9));
        assertThat(best.gain()).isCloseTo(Math.max(0, Math.max(sell, scrap) - TARGET * weight), within(1e-9));
    }

    @Test
    void a_way_out_that_is_not_open_earns_nothing() {
        Gains gains = new Gains(List.of(pattern(1, 700, 2_000)), rule(EnumSet.of(WayOut.REPAIR_AND_SELL)));

        assertThat(gains.now().profit()).isEqualTo(700);
        assertThat(gains.now().gain()).isEqualTo(200);
    }

    @Test
    void buys_only_above_the_target() {
        Set<WayOut> ways = EnumSet.of(WayOut.REPAIR_AND_SELL);

        assertThat(new Gains(List.of(pattern(1, 500, 0)), rule(ways)).now().buys()).isFalse();
        assertThat(new Gains(List.of(pattern(1, 500.01, 0)), rule(ways)).now().buys()).isTrue();
    }

    @Test
    void expects_the_mean_profit_of_the_share_and_nothing_of_an_empty_one() {
        assertThat(new Gains.Best(0.25, 100, 0).expectedProfit()).isEqualTo(400);
        assertThat(new Gains.Best(0.25, -100, 0).expectedProfit()).isZero();
        assertThat(new Gains.Best(0, 0, 0).expectedProfit()).isZero();
    }

    /** A gain of one part in ten million millions is what adding in another order leaves. */
    @Test
    void counts_what_only_rounding_speaks_for_as_nothing() {
        Gains.Best now = new Gains.Best(1, 1e6, 1e6);
        Gains.Best half = new Gains.Best(0.5, 5e5, 5e5);

        assertThat(new Gains.Split(half, new Gains.Best(0.5, 5e5, 5e5 + 5e-7)).gainOver(now)).isZero();
        assertThat(new Gains.Split(half, new Gains.Best(0.5, 5e5, 5e5 + 5e-6)).gainOver(now)).isPositive();
    }

    @Test
    void leaving_every_way_closed_gains_nothing() {
        Gains gains = new Gains(List.of(pattern(1, 700, 2_000)), rule(EnumSet.noneOf(WayOut.class)));

        assertThat(Optional.of(gains.now()).filter(Gains.Best::buys)).isEmpty();
    }
}
