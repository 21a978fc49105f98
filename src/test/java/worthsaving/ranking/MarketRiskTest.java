package worthsaving.ranking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.deal.Outcome;
import worthsaving.quantity.Seed;

/** Against closed forms: with normal profits the set's profit is normal too. All amounts invented. */
class MarketRiskTest {

    private static final int PARTS = 1_000;

    private static Candidate normal(String id, double mean, double deviation, double receipt) {
        NormalDistribution law = NormalDistribution.of(mean, deviation);
        double[] parts = IntStream.range(0, PARTS)
                .mapToDouble(k -> law.inverseCumulativeProbability((k + 0.5) / PARTS)).toArray();
        return new Candidate(id, mean, receipt, 0, 1, Outcome.equallyLikely(parts), receipt, List.of());
    }

    private static Outcome risk(double spread, Candidate... cars) {
        return MarketRisk.of(SetChoice.all(List.of(cars)), spread, Seed.DEFAULT);
    }

    /** r = .1 x 8,000 / 1,600 = .5 for each of n cars: variance n sd^2 (1 + (n - 1) r^2). */
    @ParameterizedTest
    @CsvSource({"2, 0", "2, .1", "5, .1", "5, .2", "8, .05"})
    void normal_profits_add_up_to_a_normal(int n, double spread) {
        Candidate[] cars = IntStream.range(0, n).mapToObj(i -> normal("C" + i, 1_000, 1_600, 8_000))
                .toArray(Candidate[]::new);
        double r = spread * 8_000 / 1_600;
        double deviation = 1_600 * Math.sqrt(n * (1 + (n - 1) * r * r));
        NormalDistribution sum = NormalDistribution.of(n * 1_000, deviation);
        Outcome together = risk(spread, cars);

        assertThat(together.mean()).isCloseTo(n * 1_000, within(0.003 * deviation));
        assertThat(together.standardDeviation()).isCloseTo(deviation, within(0.01 * deviation));
        assertThat(together.chanceOfLoss()).isCloseTo(sum.cumulativeProbability(0), within(0.004));
        // Mean of the worst 5 % of a normal: mean - deviation x density(z) / .05 (Rockafellar and Uryasev 2000).
        double z = NormalDistribution.of(0, 1).inverseCumulativeProbability(.05);
        double worst = n * 1_000 - deviation * NormalDistribution.of(0, 1).density(z) / .05;
        assertThat(together.meanOfWorst(.05)).isCloseTo(worst, within(0.02 * deviation));
    }

    @Test
    void when_the_market_is_everything_the_worst_add_up() {
        Candidate a = normal("A", 1_000, 800, 8_000);
        Candidate b = normal("B", 500, 400, 8_000);

        assertThat(MarketRisk.pull(a, .1)).isEqualTo(1);
        assertThat(risk(.1, a, b).meanOfWorst(.05))
                .isCloseTo(a.spread().meanOfWorst(.05) + b.spread().meanOfWorst(.05), within(6.0));
    }

    @Test
    void one_car_keeps_its_own_distribution() {
        Candidate a = new Candidate("A", 0, 0, 0, 1, Outcome.equallyLikely(-500, 100, 100, 300), 5_000, List.of());
        Outcome alone = risk(.1, a);

        assertThat(alone.chanceOfLoss()).isCloseTo(.25, within(0.002));
        assertThat(alone.mean()).isCloseTo(0, within(1.5));
    }

    @Test
    void a_common_market_widens_the_set_and_leaves_its_mean() {
        Candidate[] cars = {normal("A", 900, 1_500, 7_000), normal("B", 700, 1_500, 7_000), normal("C", 800, 900, 0)};

        assertThat(risk(.15, cars).meanOfWorst(.05)).isLessThan(risk(0, cars).meanOfWorst(.05) - 300);
        assertThat(risk(.15, cars).mean()).isCloseTo(risk(0, cars).mean(), within(10.0));
    }

    @Test
    void nothing_bought_is_nothing_at_risk_and_a_negative_spread_is_refused() {
        assertThat(risk(.1).greatest()).isZero();
        assertThatThrownBy(() -> risk(-.1)).hasMessageContaining("zero or more");
    }
}
