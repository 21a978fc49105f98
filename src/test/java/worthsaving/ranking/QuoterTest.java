package worthsaving.ranking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static worthsaving.ranking.Lots.listing;

import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.catalog.Flag;
import worthsaving.quantity.Money;
import worthsaving.ranking.ShopQuote.CallPoint;
import worthsaving.repair.Quote;
import worthsaving.vehicle.Observation;

/** One invented car; the shop takes an invented 130 an hour. */
class QuoterTest {

    private static final Offset<Double> CENT = within(0.005);
    private static final Quoter QUOTER = new Quoter(Lots.CATALOGUE, Lots.SETTINGS, Money.usd(130));
    private static final Appraisal HOT = Lots.appraise(listing("A", 1_500, Observation.present("OVERHEATS"),
            Observation.present("WHITE_SMOKE_SWEET"), Observation.present("USES_COOLANT")));

    private static ShopQuote quote(Appraisal appraisal) {
        return QUOTER.write(appraisal, Optional.empty()).orElseThrow();
    }

    @Test
    void labour_is_written_by_stage_and_adds_up_at_the_rate() {
        Quote quote = quote(HOT).quote();
        double hours = quote.lines().stream().mapToDouble(l -> l.hours().mean()).sum();
        double labour = quote.total(Quote.Stage.ACCESS).mean().plus(quote.total(Quote.Stage.JOB).mean()).amount();

        assertThat(quote.total(Quote.Stage.ACCESS).amount().low()).isPositive();
        assertThat(hours).isCloseTo(quote.hours().value(), CENT);
        assertThat(labour).isCloseTo(130 * hours, CENT);
        assertThat(quote.total(Quote.Stage.TOOL).mean().amount()).isZero();
        assertThat(quote.lines().stream().mapToDouble(l -> l.amount().mean().amount()).sum())
                .isCloseTo(quote.mean().amount(), CENT);
    }

    @Test
    void prices_not_exceeded_hold_what_they_say() {
        ShopQuote quote = quote(HOT);

        assertThat(quote.chanceAbove(quote.notExceeded(.8))).isLessThanOrEqualTo(.2).isGreaterThan(.19);
        assertThat(quote.chanceAbove(quote.notExceeded(.95))).isLessThanOrEqualTo(.05).isGreaterThan(.045);
        assertThat(quote.notExceeded(.8)).isLessThan(quote.notExceeded(.95));
        assertThat(quote.ceiling()).isGreaterThanOrEqualTo(quote.notExceeded(.95));
        assertThat(quote.ceiling().amount() % 10).isZero();
        assertThat(quote.ceiling().amount() - quote.notExceeded(.95).amount()).isLessThan(10);
    }

    @ParameterizedTest
    @ValueSource(doubles = {500, 2_000, 20_000})
    void a_ceiling_of_the_owners_is_kept_with_its_chance(double agreed) {
        ShopQuote quote = QUOTER.write(HOT, Optional.of(Money.usd(agreed))).orElseThrow();

        assertThat(quote.ceiling().amount()).isEqualTo(agreed);
        assertThat(quote.chanceAbove(quote.ceiling())).isCloseTo(1 - quote.price().below(agreed + 1e-6), within(1e-9));
    }

    @Test
    void the_owner_is_called_for_what_changes_the_price_dearest_first() {
        ShopQuote quote = quote(HOT);

        assertThat(quote.calls()).isNotEmpty().allSatisfy(c -> {
            assertThat(c.price().amount()).isCloseTo(quote.quote().mean().plus(c.change()).amount(), CENT);
            assertThat(c.chance()).isBetween(0.05, 1.0);
            assertThat(Math.abs(c.change().amount())).isGreaterThanOrEqualTo(0.05 * quote.quote().mean().amount());
            assertThat(c.sound() ? c.change().amount() : -c.change().amount()).isNotPositive();
        });
        assertThat(quote.calls()).extracting(CallPoint::change)
                .isSortedAccordingTo((a, b) -> b.compareTo(a));
    }

    @Test
    void only_the_complaint_is_quoted() {
        ShopQuote battery = quote(Lots.appraise(listing("B", 1_500, Observation.present("BATT_12V"))));

        assertThat(battery.assumed()).containsExactly(Lots.CATALOGUE.itemsById().get("BATT_12V").name());
        assertThat(battery.quote().mean().amount()).isLessThan(600);
        assertThat(quote(HOT).quote().lines()).noneMatch(l -> Optional.ofNullable(Lots.CATALOGUE.itemsById()
                .get(l.id()))
                .filter(i -> i.flags().contains(Flag.SALE_PREPARATION)).isPresent());
    }

    @Test
    void a_car_without_a_complaint_has_no_quote() {
        assertThat(QUOTER.write(Lots.appraise(listing("C", 5_000)), Optional.empty())).isEmpty();
    }

    @Test
    void cautions_of_what_is_worked_on_are_there() {
        assertThat(quote(Lots.appraise(listing("D", 900, Observation.present("HEAD_GASKET")))).cautions())
                .anyMatch(c -> c.contains("never open a hot cooling system"));
    }
}
