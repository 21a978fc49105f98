package worthsaving.valuation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import worthsaving.market.Comparable;
import worthsaving.market.PriceKind;
import worthsaving.market.PriceTable;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Money;
import worthsaving.vehicle.TitleBrand;
import worthsaving.vehicle.Vehicle;

class AlikeCarsTest {

    private static final LocalDate DAY = LocalDate.of(2019, 1, 1);
    private static final Vehicle CAR = InventedMarket.car("beta", "m2", 2010, 100_000).build();

    private static Valuer valuer(Comparable... own) throws IOException {
        return new Valuer(InventedMarket.model(), InventedMarket.settings().withComparables(List.of(own)),
                Distance.Unit.KILOMETRES);
    }

    private static Comparable own(Vehicle.Builder car, double price, PriceKind kind) {
        return new Comparable(car.build(), Money.usd(price), kind, DAY, "mine, row 2");
    }

    @Test
    void rows_of_a_table_come_most_alike_first() throws IOException {
        PriceTable table = InventedMarket.data(2000).table();
        List<AlikeCar> alike = valuer().alike(CAR, DAY, List.of(table), 5);

        assertThat(alike).hasSize(5).allSatisfy(a -> {
            assertThat(a.what()).endsWith("beta m2");
            assertThat(a.adjusted().amount()).isBetween(a.price().amount() * 0.4, a.price().amount() * 2.5);
            assertThat(a.origin()).startsWith("Invented market, line ");
        });
        assertThat(alike).extracting(AlikeCar::likeness).isSortedAccordingTo((a, b) -> Double.compare(b, a));
    }

    /** An equal car says its own price, less the haggle where it was only asked. */
    @Test
    void an_equal_car_says_its_price_and_an_asking_price_less_the_haggle() throws IOException {
        Vehicle.Builder same = InventedMarket.car("beta", "m2", 2010, 100_000);
        List<AlikeCar> alike = valuer(own(same, 8_000, PriceKind.SALE), own(same, 8_000, PriceKind.ASKING))
                .alike(CAR, DAY, List.of(), 5);

        assertThat(alike).hasSize(2).allSatisfy(a -> assertThat(a.differs()).isEmpty());
        assertThat(alike.get(0).adjusted().amount()).isCloseTo(8_000, within(1e-6));
        assertThat(alike.get(1).adjusted().amount()).isCloseTo(8_000 * 0.94, within(1e-6));
    }

    /** The adjusted price is the price times the ratio of the model's medians, times the ratio of title factors. */
    @Test
    void a_different_car_is_turned_by_the_models_ratio_and_says_what_differs() throws IOException {
        Vehicle.Builder older = InventedMarket.car("beta", "m1", 2007, 140_000).title(TitleBrand.REBUILT);
        Valuer valuer = valuer(own(older, 3_000, PriceKind.SALE));
        AlikeCar alike = valuer.alike(CAR, DAY, List.of(), 5).get(0);
        double own = valuer.with(InventedMarket.settings()).forecast(CAR, DAY).quantile(0.5).amount();
        double other = valuer.with(InventedMarket.settings()).forecast(older.build(), DAY).quantile(0.5).amount();

        assertThat(alike.adjusted().amount()).isCloseTo(3_000 * own / other, within(1e-6 * own));
        assertThat(alike.differs()).containsExactly("another model", "3 years older", "64,374 km more", "sedan");
    }

    @Test
    void cars_that_are_not_alike_are_not_shown() throws IOException {
        assertThat(valuer(own(InventedMarket.car("alpha", "m0", 2018, 4_000), 15_000, PriceKind.SALE))
                .alike(CAR, DAY, List.of(), 5)).isEmpty();
    }
}
