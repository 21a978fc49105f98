package worthsaving.valuation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import worthsaving.market.PriceRow;
import worthsaving.quantity.Seed;

class EncoderTest {

    private static List<CarFacts> cars() {
        return InventedMarket.rows(1000, "encoder").stream().map(CarFacts::of).toList();
    }

    private static double[] prices() {
        return InventedMarket.rows(1000, "encoder").stream().mapToDouble(PriceRow::price).map(Math::log).toArray();
    }

    private static float[] encode(Encoder encoder, CarFacts car) {
        float[] x = new float[encoder.width()];
        encoder.encode(car, encoder, 9.5, x, 0);
        return x;
    }

    private static float column(float[] x, String name) {
        return x[Encoder.COLUMNS.indexOf(name)];
    }

    @Test
    void every_fact_has_its_column() {
        CarFacts car = cars().get(0);
        float[] x = encode(Encoder.fit(cars(), prices()), car);

        assertThat(column(x, "age")).isEqualTo((float) car.age());
        assertThat(column(x, "miles per year")).isEqualTo((float) car.milesPerYear());
        assertThat(column(x, "hedonic")).isEqualTo(9.5f);
        assertThat(column(x, "litres")).isNaN();
        assertThat(Encoder.fit(cars(), prices()).types()).hasSize(Encoder.WIDTH).contains("c", "q");
    }

    @Test
    void a_model_never_seen_takes_the_figures_of_its_make_and_no_place() {
        Encoder encoder = Encoder.fit(cars(), prices());
        CarFacts seen = cars().get(0);
        CarFacts unseen = new CarFacts(seen.make(), "roadster", seen.year(), seen.age(), seen.miles(), "good", 4, 2, 100,
                "gas", "automatic", "sedan", "", 0, 2019);
        float[] x = encode(encoder, unseen);

        assertThat(column(x, "model level")).isEqualTo((float) encoder.makes().get(seen.make()).level());
        assertThat(column(x, "model place")).isNaN();
        assertThat(column(x, "make place")).isNotNaN();
    }

    /** Ten rows of the prior are added, so one dear car moves its model by an eleventh. */
    @Test
    void a_rare_model_is_pooled_towards_its_make() {
        List<CarFacts> cars = new ArrayList<>(cars());
        CarFacts one = cars.get(0);
        cars.add(new CarFacts(one.make(), "rare", one.year(), one.age(), one.miles(), "good", 4, 2, 100, "gas", "automatic",
                "sedan", "", 0, 2019));
        double[] prices = Arrays.copyOf(prices(), 1001);
        Encoder before = Encoder.fit(cars.subList(0, 1000), prices());
        double make = before.makes().get(one.make()).level();
        prices[1000] = make + 2.2;
        Encoder encoder = Encoder.fit(cars, prices);

        assertThat(encoder.models().get(one.make() + "|rare").level()).isCloseTo(make + 0.2, within(0.02));
    }

    @Test
    void conditions_stand_in_the_order_of_their_prices() {
        Encoder encoder = Encoder.fit(cars(), prices());

        assertThat(ModelParts.inOrder(encoder.words().get(WordField.CONDITION.ordinal()))).containsExactly("fair", "good");
    }

    @Test
    void the_regression_alone_finds_the_slopes_of_the_formula() {
        TrainingSet set = new TrainingSet(
                InventedMarket.rows(3000, "slopes"), InventedMarket.SMALL, Seed.DEFAULT);
        Hedonic hedonic = set.hedonicWithout(-1, -1);
        CarFacts car = cars().get(3);
        CarFacts older = new CarFacts(car.make(), car.model(), 2010, 8.5, 100_000, "good", 4, Double.NaN, Double.NaN, "gas",
                "automatic", "sedan", "", 0, 2019);
        CarFacts fair = older.withCondition("fair");

        assertThat(hedonic.predict(older) - hedonic.predict(fair)).isCloseTo(0.3, within(0.05));
        assertThat(set.rowsOf(0).length + set.rowsWithout(0).length).isEqualTo(3000);
    }

    /** A table of hundreds of models seen once or twice must not cost hundreds of columns. */
    @Test
    void rare_models_get_no_columns_of_their_own() {
        List<CarFacts> cars = new ArrayList<>(cars());
        for (int i = 0; i < 300; i++) {
            CarFacts c = cars.get(i);
            cars.add(new CarFacts(c.make(), "once" + i, c.year(), c.age(), c.miles(), "good", 4, 2, 100, "gas", "automatic",
                    "sedan", "", 0, 2019));
        }
        int before = HedonicDesign.over(cars()).width();

        assertThat(HedonicDesign.over(cars).width()).isLessThan(before + 20);
        assertThat(HedonicDesign.over(cars).names()).contains("model alpha|m1", "model alpha|m1*age")
                .doesNotContain("model " + cars.get(1000).makeAndModel());
    }
}
