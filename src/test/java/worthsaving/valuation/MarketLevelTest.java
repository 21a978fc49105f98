package worthsaving.valuation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import worthsaving.market.Comparable;
import worthsaving.market.MarketSettings;
import worthsaving.market.PriceKind;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Vehicle;

/** The market level learnt from comparables, beside the posterior found by summing over a fine grid. */
class MarketLevelTest {

    private static final LocalDate DAY = LocalDate.of(2019, 1, 1);
    private static final double DATA_DAY = CarFacts.decimalYear(DAY);
    private static final Vehicle CAR = InventedMarket.car("beta", "m2", 2010, 100_000).build();
    private static final List<Comparable> OWN = List.of(
            new Comparable(InventedMarket.car("beta", "m2", 2011, 90_000).build(), Money.usd(9_900), PriceKind.ASKING,
                    DAY, "row 2"),
            new Comparable(InventedMarket.car("beta", "m1", 2009, 120_000).build(), Money.usd(6_100), PriceKind.SALE,
                    DAY, "row 3"),
            new Comparable(InventedMarket.car("gamma", "m3", 2012, 60_000).build(), Money.usd(14_000), PriceKind.ASKING,
                    DAY, "row 4"));

    private static MarketLevel level(List<Comparable> own) throws IOException {
        MarketSettings settings = InventedMarket.settings().withComparables(own);
        CarFacts car = Valuer.asRepaired(CarFacts.of(CAR, DAY, DATA_DAY), InventedMarket.model());
        return MarketLevel.of(InventedMarket.model(), settings, car, DAY, DATA_DAY);
    }

    /**
     * Bayes' rule on a grid: prior density times each likelihood raised to its weight, normalised (Gelman et al. 2013,
     * sections 1.3 and 2.5); likeness by the stated scales, 3.6 years and 48,000 miles, half for another model and a
     * quarter for another make.
     */
    @Test
    void agrees_with_the_posterior_on_a_grid() throws IOException {
        double[] weights = {1 * bell(1, 10_000), 0.5 * bell(1, 20_000), 0.25 * bell(2, 40_000)};
        double[] asked = {9_900, 6_100 / 0.94, 14_000};
        double mass = 0;
        double mean = 0;
        double square = 0;
        for (double level = -1; level <= 1; level += 1e-4) {
            double log = -0.5 * Math.pow(level / 0.1, 2);
            for (int i = 0; i < asked.length; i++) {
                CarFacts facts = Valuer.asRepaired(
                        CarFacts.of(OWN.get(i).car(), DAY, DATA_DAY), InventedMarket.model());
                PriceModel.Prediction p = InventedMarket.model().predict(facts);
                double sigma = p.sigma();
                log -= weights[i] * 0.5 * Math.pow((Math.log(asked[i]) - p.median() - level) / sigma, 2);
            }
            mass += Math.exp(log);
            mean += level * Math.exp(log);
            square += level * level * Math.exp(log);
        }
        MarketLevel level = level(OWN);

        assertThat(level.shift()).isCloseTo(mean / mass, within(1e-6));
        assertThat(level.spread()).isCloseTo(Math.sqrt(square / mass - Math.pow(mean / mass, 2)), within(1e-6));
        assertThat(level.evidence()).isCloseTo(weights[0] + weights[1] + weights[2], within(1e-12));
    }

    private static double bell(double years, double miles) {
        return Math.exp(-Math.pow(years / 3.6, 2) - Math.pow(miles / 48_000, 2));
    }

    @Test
    void the_moves_of_the_rows_add_up_to_the_shift() throws IOException {
        MarketLevel level = level(OWN);

        assertThat(level.rows()).hasSize(3);
        assertThat(level.rows().stream().mapToDouble(LevelRow::moves).sum()).isCloseTo(level.shift(), within(1e-12));
        assertThat(level.rows()).allSatisfy(r -> assertThat(Math.signum(r.moves())).isEqualTo(Math.signum(r.above())));
    }

    @Test
    void a_price_paid_tells_as_much_as_the_same_price_asked_before_the_haggle() throws IOException {
        Comparable sold = new Comparable(CAR, Money.usd(9_400), PriceKind.SALE, DAY, "row 2");
        Comparable asked = new Comparable(CAR, Money.usd(10_000), PriceKind.ASKING, DAY, "row 2");

        assertThat(level(List.of(sold)).shift()).isCloseTo(level(List.of(asked)).shift(), within(1e-12));
    }

    /** Normal prior times normal data gives precisions that add and means weighed by them (Gelman et al. 2013, 2.5). */
    @Test
    void prior_and_what_the_comparables_say_alone_make_up_the_posterior() throws IOException {
        MarketLevel level = level(OWN);
        double prior = 1 / (level.prior() * level.prior());
        double data = 1 / Math.pow(level.dataSpread().orElseThrow(), 2);
        assertThat(level.prior()).isEqualTo(0.1);
        assertThat(1 / (level.spread() * level.spread())).isCloseTo(prior + data, within(1e-6 * data));
        assertThat(data * level.dataShift().orElseThrow() / (prior + data)).isCloseTo(level.shift(), within(1e-12));
        assertThat(level(List.of()).dataShift()).isEmpty();
    }
}
