package worthsaving.market;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class CleaningTest {

    private static final String SHAPE = """
            name = Invented adverts
            market = US
            currency = USD
            odometer-unit = miles
            price-kind = asking
            source = invented
            licence = none needed
            column.price = price
            column.make = make
            column.model = model
            column.year = year
            column.odometer = miles
            column.date = date
            """;

    private static Cleaning clean(String rules, String... rows) throws IOException {
        DatasetShape shape = DatasetShape.read(new StringReader(SHAPE), "shape");
        String csv = "price,make,model,year,miles,date\n" + String.join("\n", rows);
        PriceTable table = PriceTableReader.read(new StringReader(csv), shape);
        return Cleaning.clean(table, CleaningRule.read(new StringReader(rules), "rules.csv"));
    }

    private static String shipped() throws IOException {
        return Files.readString(Path.of("shared/market/cleaning.csv"));
    }

    @Test
    void each_rule_counts_what_it_did_with_examples() throws IOException {
        Cleaning cleaning = clean(
                shipped(),
                "5000,alpha,one,2010,100000,2019-01-01",
                "50,alpha,one,2010,90000,2019-01-01",
                "1234,alpha,one,2010,80000,2019-01-01",
                "900000,alpha,one,2010,80000,2019-01-01",
                "5000,alpha,one,2023,10,2019-01-01",
                "5000,alpha,two,1908,70000,2019-01-01",
                "5000,alpha,three,2010,900000,2019-01-01",
                "5000,alpha,four,2010,12,2019-01-01");

        assertThat(cleaning.report().rules())
                .filteredOn(r -> r.count() > 0)
                .extracting(r -> r.rule().name() + " " + r.count())
                .containsExactly(
                        "junk price low 1",
                        "junk price high 1",
                        "placeholder price 1",
                        "year impossible 1",
                        "year after the advert 1",
                        "odometer impossible 1",
                        "odometer placeholder 1");
        assertThat(cleaning.report().kept()).isEqualTo(4);
        assertThat(cleaning.report().rules().get(0).examples()).containsExactly("line 3: 50, 2010 alpha one, 90000 mi");
        assertThat(cleaning.table().rows().get(1).year()).isNaN();
        assertThat(cleaning.table().rows().get(2).miles()).isNaN();
        assertThat(cleaning.report().toMarkdown()).contains("8 rows read, 0 unreadable, 4 kept");
    }

    @Test
    void of_repeated_adverts_the_latest_stays() throws IOException {
        Cleaning cleaning = clean(
                shipped(),
                "5000,alpha,one,2010,100123,2019-01-01",
                "4500,alpha,one,2010,100123,2019-03-01",
                "4800,alpha,one,2010,100123,2019-02-01",
                "5000,alpha,one,2010,,2019-01-01",
                "5000,alpha,one,2010,,2019-01-05",
                "4000,alpha,one,2010,,2019-01-05");

        assertThat(cleaning.table().rows()).extracting(PriceRow::price).containsExactly(4500.0, 5000.0, 4000.0);
    }

    @Test
    void a_round_odometer_alone_does_not_make_two_cars_one() throws IOException {
        Cleaning cleaning = clean(
                shipped(),
                "5000,alpha,one,2010,120000,2019-01-01",
                "4500,alpha,one,2010,120000,2019-03-01",
                "3000,alpha,one,2010,93205.67883557623,2019-03-01",
                "2000,alpha,one,2010,93205.67883557623,2019-03-01",
                "2000,alpha,one,2010,93205.67883557623,2019-03-02");

        assertThat(cleaning.table().rows()).extracting(PriceRow::price).containsExactly(5000.0, 4500.0, 3000.0, 2000.0);
    }

    @Test
    void cleaning_twice_changes_nothing() throws IOException {
        Cleaning once = clean(shipped(), "5000,alpha,one,2010,100000,2019-01-01", "90,alpha,one,2010,1,2019-01-01",
                "5000,alpha,one,2010,100000,2019-01-02");
        List<CleaningRule> rules = CleaningRule.read(new StringReader(shipped()), "rules");

        assertThat(Cleaning.clean(once.table(), rules).table().rows()).isEqualTo(once.table().rows());
    }

    @Test
    void a_rule_that_makes_no_sense_is_refused_with_its_line() {
        assertThatThrownBy(() -> CleaningRule.read(
                        new StringReader("name,field,test,value,action,why\nx,price,below,3,blank,y\n"), "rules.csv"))
                .hasMessageContaining("rules.csv, line 2")
                .hasMessageContaining("only a number other than the price can be blanked");
    }
}
