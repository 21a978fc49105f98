package worthsaving.valuation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import worthsaving.market.PriceRow;
import worthsaving.vehicle.Vehicle;

/** A price table's further columns bear on the price where they say something, on the invented market. */
class FeatureColumnsTest {

    /** What a roof adds to ln price here; every third car has one. */
    private static final double ROOF = 0.3;

    private static List<PriceRow> rows;
    private static PriceModel model;

    @BeforeAll
    static void fit() throws IOException {
        rows = new ArrayList<>();
        for (PriceRow r : InventedMarket.rows(2000, "features")) {
            boolean roof = r.line() % 3 == 0;
            rows.add(with(r, roof ? "glass" : "steel", r.price() * (roof ? Math.exp(ROOF) : 1)));
        }
        model = InventedMarket.fit(rows, InventedMarket.SMALL);
    }

    private static PriceRow with(PriceRow r, String roof, double price) {
        TreeMap<String, String> features = new TreeMap<>();
        features.put("roof", roof);
        features.put("row", "same");
        return new PriceRow(r.line(), price, r.make(), r.model(), r.year(), r.miles(), r.condition(), r.cylinders(),
                r.litres(), r.power(), r.fuel(), r.gearbox(), r.body(), r.drive(), r.title(), r.unrepairedDamage(), r.date(),
                features);
    }

    private static double lnMedian(PriceModel of, PriceRow row) {
        return Math.log(of.askingPrice(row).quantile(0.5));
    }

    @Test
    void the_model_finds_what_a_feature_is_worth() {
        double sum = 0;
        for (PriceRow r : rows.subList(0, 200)) {
            sum += lnMedian(model, with(r, "glass", 1)) - lnMedian(model, with(r, "steel", 1));
        }

        assertThat(sum / 200).isCloseTo(ROOF, within(0.05));
    }

    @Test
    void its_file_brings_the_features_back() throws IOException {
        StringWriter text = new StringWriter();
        model.write(text);
        PriceModel back = PriceModel.read(new StringReader(text.toString()), "model.json");
        StringWriter again = new StringWriter();
        back.write(again);

        assertThat(text.toString()).contains("\"version\":3").contains("\"roof\":{\"glass\"");
        assertThat(again.toString()).isEqualTo(text.toString());
        assertThat(lnMedian(back, rows.get(7))).isEqualTo(lnMedian(model, rows.get(7)));
    }

    @Test
    void a_model_without_features_is_written_as_earlier_programs_read_it() throws IOException {
        StringWriter text = new StringWriter();
        InventedMarket.model().write(text);

        assertThat(text.toString()).contains("\"version\":2").doesNotContain("\"features\"");
    }

    /** Two in three have steel, so a car of which nothing is said is worth one with steel. */
    @Test
    void a_car_on_offer_has_the_commonest_word_of_each_feature() throws IOException {
        Vehicle car = InventedMarket.car("alpha", "m1", 2010, 90_000).build();
        CarFacts stated = CarFacts.of(car, LocalDate.of(2019, 1, 1), 2019);
        CarFacts repaired = Valuer.asRepaired(stated, model);

        assertThat(stated.features()).isEmpty();
        assertThat(repaired.features()).containsEntry("roof", "steel").containsEntry("row", "same");
    }

    @Test
    void a_word_never_seen_is_not_known_rather_than_guessed() {
        List<CarFacts> cars = rows.stream().map(CarFacts::of).toList();
        Encoder encoder = Encoder.fit(cars, rows.stream().mapToDouble(r -> Math.log(r.price())).toArray());
        float[] x = new float[encoder.width()];
        encoder.encode(CarFacts.of(with(rows.get(0), "canvas", 1)), encoder, 9.5, x, 0);

        assertThat(encoder.width()).isEqualTo(Encoder.WIDTH + 2);
        assertThat(encoder.types()).hasSize(Encoder.WIDTH + 2);
        assertThat(x[Encoder.WIDTH]).isNaN();
        assertThat(x[Encoder.WIDTH + 1]).isNotNaN();
        assertThat(encoder.features().get("roof").get("glass").whenNew()
                        - encoder.features().get("roof").get("steel").whenNew())
                .isCloseTo(ROOF, within(0.1));
    }
}
