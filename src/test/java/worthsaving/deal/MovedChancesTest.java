package worthsaving.deal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static worthsaving.quantity.Money.usd;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.quantity.Money;
import worthsaving.quantity.Range;

/** A deal with its items, hours or points moved, against one that was made so from the beginning. */
class MovedChancesTest {

    private static final DealTerms TERMS = DealTerms.usual(Money.USD);
    private static final Money PRICE = usd(1_200);
    private static final PreparedDeal CAR = DealEngine.prepare(car(0.5, 0.3));

    private static DealCase car(double first, double second) {
        return SampleDeals.eightItems(new Range(5_000, 8_000, 11_000).asPert(), first, second, 0.2, 0.1, 0.1, 0.4, 0.05,
                0.2);
    }

    private static double profit(PreparedDeal deal) {
        return deal.expectedProfit(TERMS, WayOut.REPAIR_AND_SELL, PRICE);
    }

    /** The items of this car fail independently, so that a moved chance is the car with that chance. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 0.5, 0.9, 1})
    void a_moved_chance_is_the_car_that_has_it(double chance) {
        PreparedDeal moved = CAR.withChances(Map.of("ITEM_0", chance));
        assertThat(moved.chance("ITEM_0")).isCloseTo(chance, within(1e-9));
        assertThat(moved.chance("ITEM_1")).isCloseTo(CAR.chance("ITEM_1"), within(0.01));
        assertThat(profit(moved)).isCloseTo(profit(DealEngine.prepare(car(chance, 0.3))), within(20.0));
    }

    @Test
    void two_chances_are_moved_together() {
        PreparedDeal moved = CAR.withChances(Map.of("ITEM_0", 0.2, "ITEM_1", 0.6));
        assertThat(moved.chance("ITEM_0")).isCloseTo(0.2, within(1e-6));
        assertThat(moved.chance("ITEM_1")).isCloseTo(0.6, within(1e-6));
        assertThat(profit(moved)).isCloseTo(profit(DealEngine.prepare(car(0.2, 0.6))), within(20.0));
    }

    @Test
    void a_chance_moved_to_where_it_was_changes_nothing_and_an_unknown_item_neither() {
        assertThat(profit(CAR.withChances(Map.of("ITEM_0", CAR.chance("ITEM_0"))))).isCloseTo(profit(CAR), within(1e-6));
        assertThat(profit(CAR.withChances(Map.of("NOT_HERE", 0.7)))).isCloseTo(profit(CAR), within(1e-9));
        assertThat(CAR.chance("NOT_HERE")).isZero();
    }

    /** Own hours of this car are its profit's only dear part: an hour dearer by one costs the mean hours. */
    @Test
    void a_dearer_hour_costs_the_mean_hours() {
        Money hourly = CAR.deal().labour().hourly();
        PreparedDeal committed = DealEngine.prepare(car(0.5, 0.3).withMethod(CAR.deal().method().committed()));
        double hours = committed.assess(TERMS, BuyerRule.of(usd(0), 1), Optional.of(PRICE))
                .way(WayOut.REPAIR_AND_SELL).ownHours().value();
        double dearer = profit(committed.withHourly(hourly.plus(usd(1))));
        assertThat(profit(committed) - dearer).isCloseTo(hours, within(0.15 * hours));
    }

    @Test
    void fewer_points_give_nearly_the_same() {
        assertThat(profit(CAR.coarse(512))).isCloseTo(profit(CAR), within(60.0));
    }
}
