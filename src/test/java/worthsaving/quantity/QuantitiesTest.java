package worthsaving.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static worthsaving.quantity.Money.usd;

import java.util.Currency;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class QuantitiesTest {

    private static final Currency EUR = Currency.getInstance("EUR");

    @Test
    void money_adds_within_a_currency_and_prints_to_the_cent() {
        assertThat(usd(1_200).plus(usd(34.5))).isEqualTo(Money.of(1_234.5, "USD"));
        assertThat(usd(1_200).minus(usd(34.5))).isEqualTo(usd(1_165.5));
        assertThat(usd(120).times(2.5)).isEqualTo(usd(300));
        assertThat(Money.zero(EUR)).isEqualTo(Money.of(0, "EUR"));
        assertThat(usd(2_307.546)).hasToString("USD 2307.55");
        assertThat(usd(1)).isLessThan(usd(2)).isEqualByComparingTo(usd(1));
        assertThat(usd(3)).isGreaterThan(usd(2));
    }

    @ParameterizedTest
    @CsvSource({"84.9, 84", "84, 84", "83.9999999, 84", "-0.2, -1", "0, 0"})
    void a_limit_is_rounded_down_but_not_by_an_error_of_arithmetic(double amount, double whole) {
        assertThat(usd(amount).wholeDown()).isEqualTo(usd(whole));
    }

    @Test
    void money_of_two_currencies_is_never_mixed() {
        Money euros = Money.of(5, "EUR");

        assertThatThrownBy(() -> usd(5).plus(euros)).hasMessageContaining("cannot mix USD with EUR");
        assertThatThrownBy(() -> usd(5).minus(euros)).hasMessageContaining("cannot mix");
        assertThatThrownBy(() -> usd(5).compareTo(euros)).hasMessageContaining("cannot mix");
    }

    @ParameterizedTest
    @CsvSource({"NaN", "Infinity", "-Infinity"})
    void what_is_no_number_is_no_quantity(double value) {
        assertThatThrownBy(() -> usd(value)).hasMessageContaining("must be finite");
        assertThatThrownBy(() -> Hours.of(value)).hasMessageContaining("zero or more");
        assertThatThrownBy(() -> Distance.ofMiles(value)).hasMessageContaining("zero or more");
        assertThatThrownBy(() -> Probability.of(value)).hasMessageContaining("0 to 1");
        assertThatThrownBy(() -> Range.exactly(value)).hasMessageContaining("low <= mode <= high");
    }

    @Test
    void ends_are_allowed_and_what_lies_beyond_is_not() {
        assertThat(Hours.of(0)).isEqualTo(Hours.NONE);
        assertThat(Distance.ofMiles(0).kilometres()).isZero();
        assertThat(Probability.of(0)).isEqualTo(Probability.NEVER);
        assertThat(Probability.of(1)).isEqualTo(Probability.CERTAIN);
        assertThatThrownBy(() -> Hours.of(-0.1)).hasMessageContaining("-0.1");
        assertThatThrownBy(() -> Distance.ofKilometres(-1)).hasMessageContaining("-1");
        assertThatThrownBy(() -> Probability.of(-0.001)).hasMessageContaining("-0.001");
        assertThatThrownBy(() -> Probability.of(1.001)).hasMessageContaining("1.001");
        assertThatThrownBy(() -> HoursRange.of(-1, 0, 1)).hasMessageContaining("zero or more");
    }

    @Test
    void hours_are_counted_and_paid() {
        assertThat(Hours.ofMinutes(90)).isEqualTo(Hours.of(1.5));
        assertThat(Hours.of(2).plus(Hours.of(0.5))).isEqualTo(Hours.of(2.5));
        assertThat(Hours.of(2).times(1.5)).isEqualTo(Hours.of(3));
        assertThat(Hours.of(2.5).at(usd(40))).isEqualTo(usd(100));
        assertThat(Hours.of(1)).isLessThan(Hours.of(2));
        assertThat(Hours.of(2)).isGreaterThan(Hours.of(1));
    }

    /** NIST Special Publication 811 (2008), appendix B.8: a mile is 1.609344 km; a kilometre 0.621371 mi. */
    @Test
    void miles_and_kilometres_are_those_of_1959() {
        assertThat(Distance.ofMiles(100).kilometres()).isCloseTo(160.9344, within(1e-9));
        assertThat(Distance.ofMiles(100).miles()).isEqualTo(100);
        assertThat(Distance.ofKilometres(100).miles()).isCloseTo(62.1371, within(5e-5));
        assertThat(Distance.ofKilometres(100).kilometres()).isEqualTo(100);
        assertThat(Distance.ofKilometres(1).unit()).isEqualTo(Distance.Unit.KILOMETRES);
    }

    @Test
    void probabilities_have_a_complement_and_an_order() {
        assertThat(Probability.of(0.3).complement().value()).isCloseTo(0.7, within(1e-15));
        assertThat(Probability.of(0.3)).isLessThan(Probability.of(0.4));
        assertThat(Probability.of(0.5)).isGreaterThan(Probability.of(0.4));
    }

    @Test
    void ranges_add_end_by_end_and_scale() {
        Range sum = new Range(1, 2, 4).plus(new Range(10, 20, 40));

        assertThat(sum).isEqualTo(new Range(11, 22, 44));
        assertThat(sum.width()).isEqualTo(33);
        assertThat(sum.times(0.5)).isEqualTo(new Range(5.5, 11, 22));
        assertThat(sum.times(0)).isEqualTo(Range.exactly(0));
        assertThatThrownBy(() -> sum.times(-1)).hasMessageContaining("zero or more");
    }

    @Test
    void ranges_of_money_and_hours_keep_their_unit() {
        MoneyRange range = MoneyRange.usd(60, 90, 180);

        assertThat(range.mean()).isEqualTo(usd(100));
        assertThat(range.times(2).mean()).isEqualTo(usd(200));
        assertThat(range.in(EUR, 0.9)).isEqualTo(new MoneyRange(new Range(54, 81, 162), EUR));
        assertThat(MoneyRange.exactly(Money.of(7, "EUR")).mean()).isEqualTo(Money.of(7, "EUR"));
        assertThat(HoursRange.of(1, 2, 3).plus(HoursRange.of(2, 2, 2)).mean()).isEqualTo(Hours.of(4));
        assertThat(HoursRange.NONE.mean()).isEqualTo(Hours.NONE);
    }

    @Test
    void a_scaled_distribution_scales_its_spread_and_can_be_scaled_again() {
        Distribution base = new Range(100, 200, 600).asPert();
        Distribution six = base.scaled(2).scaled(3);

        assertThat(six.mean()).isCloseTo(1_500, within(1e-9));
        assertThat(six.variance()).isCloseTo(36 * 7_500, within(1e-6));
        assertThat(six.quantile(0.5)).isCloseTo(6 * 238.33612969625943, within(1e-6));
        assertThat(six.meanOfWorst(0.05)).isCloseTo(6 * base.meanOfWorst(0.05), within(1e-9));
        assertThatThrownBy(() -> base.scaled(0)).hasMessageContaining("positive");
    }

    /** Mean exp(mu + s^2/2) and variance (exp(s^2) - 1) mean^2: Johnson, Kotz and Balakrishnan (1994), chapter 14. */
    @Test
    void a_lognormal_has_the_moments_of_the_handbook() {
        LogNormal unit = new LogNormal(0, 1);

        assertThat(unit.mean()).isCloseTo(1.6487212707, within(1e-9));
        assertThat(unit.variance()).isCloseTo(4.6707742705, within(1e-9));
        assertThat(unit.cumulative(0)).isZero();
        assertThat(unit.cumulative(1)).isCloseTo(0.5, within(1e-12));
        assertThatThrownBy(() -> LogNormal.between(5, 5)).hasMessageContaining("a higher one");
        assertThatThrownBy(() -> LogNormal.between(0, 5)).hasMessageContaining("above zero");
    }

    /** Weights 0.185, 0.63 and 0.185: Keefer and Bodily (1983), table 1. */
    @Test
    void three_cases_are_weighed_as_published() {
        ThreePoint cases = ThreePoint.extendedPearsonTukey(p -> p < 0.1 ? 10 : p > 0.9 ? 40 : 20);

        assertThat(cases.mean()).isCloseTo(0.185 * 10 + 0.63 * 20 + 0.185 * 40, within(1e-12));
    }

    static Stream<Arguments> fnv() {
        return Stream.of(
                Arguments.of("", 0xcbf29ce484222325L),
                Arguments.of("a", 0xaf63dc4c8601ec8cL),
                Arguments.of("foobar", 0x85944171f73967e8L));
    }

    /** Source: the test vectors of FNV-1a, 64 bit, in Fowler, Noll, Vo and Eastlake, The FNV Hash Algorithm. */
    @ParameterizedTest
    @MethodSource("fnv")
    void streams_are_named_by_the_published_hash(String name, long hash) {
        assertThat(new Seed(0).derive(name).value()).isEqualTo(hash);
    }

    @Test
    void a_seed_gives_the_same_numbers_again_and_other_names_others() {
        assertThat(new Seed(7).generator().nextLong()).isEqualTo(new Seed(7).generator().nextLong());
        assertThat(new Seed(7).derive("a")).isNotEqualTo(new Seed(8).derive("a"));
        assertThat(new Seed(7).derive("a")).isNotEqualTo(new Seed(7).derive("b"));
    }

    @Test
    void figures_say_where_they_come_from() {
        assertThat(Source.guess("by eye")).isEqualTo(new Source(Source.Label.GUESS, "by eye"));
        assertThat(Source.user().label()).isEqualTo(Source.Label.USER);
    }
}
