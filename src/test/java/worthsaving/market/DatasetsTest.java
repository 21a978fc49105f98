package worthsaving.market;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The data sets that are shipped can be loaded and report their quality. */
class DatasetsTest {

    private static NumberTable table(String file) throws IOException {
        try (Reader reader = Files.newBufferedReader(Path.of("datasets", file))) {
            return NumberTable.read(reader, file);
        }
    }

    /** Source: REG-K1-n, computed with R on Kuiper (2008), J. Statistics Education 16(3). */
    @Test
    void the_cars_of_kuiper() throws IOException {
        PriceTable cars;
        try (Reader shape = Files.newBufferedReader(Path.of("shared/market/us_cars_2005.properties"));
                Reader data = Files.newBufferedReader(Path.of("datasets/us_cars_2005.csv"))) {
            cars = PriceTableReader.read(data, DatasetShape.read(shape, "us_cars_2005.properties"));
        }
        double mean = cars.rows().stream().mapToDouble(PriceRow::price).average().orElseThrow();

        assertThat(cars.rows()).hasSize(804);
        assertThat(cars.badCount()).isZero();
        assertThat(mean).isCloseTo(21343.1437562, within(1e-6));
        assertThat(cars.rows().get(0).make()).isEqualTo("buick");
        assertThat(cars.rows().get(0).body()).isEqualTo("sedan");
        assertThat(cars.rows().get(0).year()).isEqualTo(2005);
        QualityReport report = Cleaning.clean(cars, List.of()).report();
        assertThat(report.toMarkdown()).contains("804 rows read, 0 unreadable, 804 kept").contains("| make | 0 | 6 words");
    }

    /** REG-K1-n, the rest: spread, mileage and their correlation. */
    @Test
    void price_and_mileage_of_the_cars_of_kuiper() throws IOException {
        NumberTable cars = table("us_cars_2005.csv");
        double[] price = cars.column("Price");
        double[] mileage = cars.column("Mileage");
        double p = Arrays.stream(price).average().orElseThrow();
        double m = Arrays.stream(mileage).average().orElseThrow();
        double pp = 0;
        double mm = 0;
        double pm = 0;
        for (int i = 0; i < price.length; i++) {
            pp += (price[i] - p) * (price[i] - p);
            mm += (mileage[i] - m) * (mileage[i] - m);
            pm += (price[i] - p) * (mileage[i] - m);
        }

        assertThat(m).isCloseTo(19831.9340796, within(19831.9 * 1e-9));
        assertThat(Math.sqrt(pp / 803)).isCloseTo(9884.85279922, within(9884.85 * 1e-9));
        assertThat(pm / Math.sqrt(pp * mm)).isCloseTo(-0.143050506065, within(1e-9));
    }

    @Test
    void the_repair_cost_of_a_wagon_never_falls() throws IOException {
        NumberTable wagon = table("repair_cost_wagon.csv");
        double[] cost = wagon.column("cost");
        double[] sorted = cost.clone();
        Arrays.sort(sorted);

        assertThat(wagon.size()).isEqualTo(57);
        assertThat(cost).containsExactly(sorted);
        assertThat(wagon.quality()).contains("57 rows, 0 unreadable").contains("| age | 0 | 5.0 |");
    }

    @Test
    void consumer_prices_by_month() throws IOException {
        NumberTable prices = table("us_cpi_1975_1991.csv");

        assertThat(prices.size()).isEqualTo(202);
        assertThat(prices.column("cpiused")[0]).isEqualTo(42.4);
        assertThat(prices.badRows()).isEmpty();
    }

    @Test
    void a_cell_that_is_no_number_is_listed() throws IOException {
        NumberTable table = NumberTable.read(new StringReader("a,b\n1,2\n1,x\n,3\n"), "invented");

        assertThat(table.badRows()).extracting(BadRow::toString).containsExactly("line 3, column b: 'x' is not a number");
        assertThat(table.column("a")[1]).isNaN();
        assertThat(table.size()).isEqualTo(2);
    }
}
