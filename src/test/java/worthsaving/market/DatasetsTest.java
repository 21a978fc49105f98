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
