package worthsaving.valuation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Money;

class ExplanationTest {

    private static final CarFacts TYPICAL = facts("alpha", "m0", 8, 80_000, "sedan");

    private static CarFacts facts(String make, String model, double age, double miles, String body) {
        return new CarFacts(make, model, 2019 - age, age, miles, "good", 4, 2, Double.NaN, "gas", "automatic", body, "", 0,
                2019);
    }

    /** Of an additive ln price each fact gets its own term, shared by the logarithmic mean. */
    @Test
    void an_additive_price_is_shared_term_by_term() {
        CarFacts car = facts("alpha", "m0", 12, 150_000, "sedan");
        List<ValueForecast.Contribution> shares = Explanation.of(
                car, TYPICAL, c -> 10 - 0.1 * c.age() - 3e-6 * c.miles(), Money.USD, Distance.Unit.MILES, 1);
        double from = Math.exp(10 - 0.8 - 0.24);
        double to = Math.exp(10 - 1.2 - 0.45);
        double perLog = (from - to) / (0.4 + 0.21);

        assertThat(shares).extracting(ValueForecast.Contribution::feature).containsExactly("age", "mileage");
        assertThat(shares.get(0).money().amount()).isCloseTo(-0.4 * perLog, within(1e-8));
        assertThat(shares.get(1).money().amount()).isCloseTo(-0.21 * perLog, within(1e-8));
        assertThat(shares.get(1).value()).isEqualTo("150,000 miles");
    }

    /** Two facts that only work together share equally (symmetry axiom of Shapley 1953). */
    @Test
    void facts_that_only_work_together_share_equally() {
        CarFacts car = facts("alpha", "m0", 12, 80_000, "suv");
        List<ValueForecast.Contribution> shares = Explanation.of(
                car, TYPICAL, c -> 9 + (c.age() > 10 && c.body().equals("suv") ? 0.5 : 0), Money.USD, Distance.Unit.MILES, 2);
        double sum = 2 * (Math.exp(9.5) - Math.exp(9));

        assertThat(shares).hasSize(2).allSatisfy(c -> assertThat(c.money().amount()).isCloseTo(sum / 2, within(1e-8)));
    }

    @Test
    void the_typical_car_itself_has_nothing_to_explain() {
        assertThat(Explanation.of(TYPICAL, TYPICAL, c -> 9, Money.USD, Distance.Unit.MILES, 1)).isEmpty();
    }
}
