package worthsaving.valuation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.market.PriceRow;
import worthsaving.quantity.Distribution;
import worthsaving.quantity.Seed;

class PriceModelTest {

    private static String json(PriceModel model) throws IOException {
        StringWriter text = new StringWriter();
        model.write(text);
        return text.toString();
    }

    private static PriceModel read(String text) throws IOException {
        return PriceModel.read(new StringReader(text), "model.json");
    }

    @Test
    void finds_the_formula_of_an_invented_market() throws IOException {
        List<PriceRow> fresh = InventedMarket.rows(2000, "fresh cars");
        double error = 0;
        int inside = 0;
        for (PriceRow row : fresh) {
            Distribution price = InventedMarket.model().askingPrice(row);
            error += Math.abs(Math.log(price.quantile(0.5)) - truth(row)) / fresh.size();
            inside += price.quantile(0.1) <= row.price() && row.price() <= price.quantile(0.9) ? 1 : 0;
        }

        assertThat(error).isLessThan(0.05);
        assertThat((double) inside / fresh.size()).isBetween(0.76, 0.84);
    }

    private static double truth(PriceRow row) {
        int make = List.of(InventedMarket.MAKES).indexOf(row.make());
        int model = row.model().charAt(1) - '0';
        return InventedMarket.logPrice(make, model, 2019.0 - row.year() - 0.5, row.miles(), row.condition().equals("good"));
    }

    @Test
    void comes_back_the_same_from_its_file() throws IOException {
        PriceModel model = InventedMarket.model();
        String text = json(model);
        PriceModel back = read(text);

        assertThat(json(back)).isEqualTo(text);
        assertThat(back.card()).isEqualTo(model.card());
        for (PriceRow row : InventedMarket.rows(200, "round trip")) {
            assertThat(back.askingPrice(row).quantile(0.37)).isEqualTo(model.askingPrice(row).quantile(0.37));
        }
    }

    @Test
    void tells_its_vocabulary_and_card() throws IOException {
        PriceModel model = InventedMarket.model();

        assertThat(model.makes()).containsExactly("alpha", "beta", "gamma");
        assertThat(model.models("beta")).containsExactly("m0", "m1", "m2", "m3");
        assertThat(model.models("omega")).isEmpty();
        assertThat(model.rows("beta", "m1")).isBetween(150L, 350L);
        assertThat(model.card().toMarkdown())
                .contains("3,000 rows after cleaning; 3 makes, 12 models")
                .contains("| blend |")
                .contains("Limits");
    }

    @ParameterizedTest
    @CsvSource({
        "'', is no price model",
        "'hello', not JSON at line 1",
        "'{\"format\":\"another\"}', is no price model",
        "'{\"format\":\"worthsaving price model\",\"version\":5}', written by a newer version"
    })
    void refuses_what_is_no_model(String text, String message) {
        assertThatThrownBy(() -> read(text))
                .isInstanceOf(ModelFormatException.class)
                .hasMessageContaining("model.json")
                .hasMessageContaining(message);
    }

    @Test
    void refuses_a_damaged_file() throws IOException {
        String text = json(InventedMarket.model());
        int place = text.indexOf("\"coefficients\":[") + 20;
        char digit = text.charAt(place) == '1' ? '2' : '1';
        String changed = text.substring(0, place) + digit + text.substring(place + 1);

        assertThatThrownBy(() -> read(changed)).hasMessageContaining("checksum does not match");
        assertThatThrownBy(() -> read(text.substring(0, text.length() / 2))).hasMessageContaining("not JSON at line");
    }

    @Test
    void a_fit_can_be_cancelled_and_needs_enough_rows() {
        assertThatThrownBy(() -> PriceModelFitter.fit(
                        InventedMarket.data(200), InventedMarket.SMALL, Seed.DEFAULT, (step, share) -> {}, () -> true))
                .isInstanceOf(CancellationException.class);
        assertThatThrownBy(() -> PriceModelFitter.fit(
                        InventedMarket.data(20), InventedMarket.SMALL, Seed.DEFAULT, (step, share) -> {}, () -> false))
                .hasMessageContaining("at least 100 rows");
    }

    @Test
    void progress_rises_to_one() throws IOException {
        Queue<Double> shares = new ConcurrentLinkedQueue<>();
        PriceModelFitter.fit(InventedMarket.data(300), InventedMarket.SMALL.withThreads(1), Seed.DEFAULT,
                (step, share) -> shares.add(share), () -> false);

        assertThat(List.copyOf(shares)).isSorted().last().isEqualTo(1.0);
    }

    @Test
    void a_rare_model_leans_on_its_make() throws IOException {
        PriceModel model = InventedMarket.model();
        PriceRow known = InventedMarket.rows(1, "one").get(0);
        PriceRow unseen = new PriceRow(1, known.price(), known.make(), "never seen", known.year(), known.miles(), "good",
                4, Double.NaN, Double.NaN, "gas", "automatic", "sedan", "", "", Double.NaN, known.date());
        int make = List.of(InventedMarket.MAKES).indexOf(known.make());
        double low = InventedMarket.logPrice(make, 0, known.ageYears(), known.miles(), true);
        double high = InventedMarket.logPrice(make, 3, known.ageYears(), known.miles(), true);

        assertThat(Math.log(model.askingPrice(unseen).quantile(0.5))).isBetween(low - 0.1, high + 0.1);
        assertThat(model.askingPrice(known).mean()).isCloseTo(Math.exp(truth(known) + 0.02), within(0.15 * known.price()));
    }
}
