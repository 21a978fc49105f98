package worthsaving.deal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import worthsaving.quantity.Money;
import worthsaving.quantity.Range;
import worthsaving.quantity.Source;

class PlaceReaderTest {

    private static final String HEADER = "place,name,term,low,mode,high,label,source\n";

    @Test
    void the_shipped_places_are_whole_and_say_that_they_are_examples() throws IOException {
        PlaceReader.Reading reading;
        try (var reader = Files.newBufferedReader(Path.of("shared", "places.csv"))) {
            reading = PlaceReader.read("places.csv", reader);
        }
        assertThat(reading.faults()).isEmpty();
        assertThat(reading.places()).hasSize(7).allSatisfy(p -> {
            assertThat(p.name()).startsWith("Example");
            assertThat(p.figures()).isNotEmpty();
        });
        DealTerms texas = reading.places().get(1).applyTo(DealTerms.usual(Money.USD));
        assertThat(texas.get(Term.SALES_TAX)).isEqualTo(Range.exactly(6.25));
        assertThat(texas.sources().get(Term.SALES_TAX).label()).isEqualTo(Source.Label.GUESS);
        assertThat(texas.get(Term.HAGGLE)).isEqualTo(Term.HAGGLE.usual());
    }

    @Test
    void money_of_another_currency_is_refused_but_shares_and_days_are_not() throws IOException {
        PlaceReader.Reading reading = PlaceReader.read("mine.csv", new StringReader(HEADER.replace("source", "source,currency")
                + "dear,Dear,title_transfer,5,5,5,user,me,EUR\n"
                + "taxed,Taxed,sales_tax,5,5,5,user,me,EUR\n"
                + "dear,Dear,listing_fee,5,5,5,user,me,GBP\n"
                + "odd,Odd,sales_tax,5,5,5,user,me,florins\n"));
        DealTerms dollars = DealTerms.usual(Money.USD);

        assertThatThrownBy(() -> reading.places().get(0).applyTo(dollars))
                .hasMessageContaining("place 'dear' has money in EUR, the deal's is in USD");
        assertThat(reading.places().get(1).applyTo(dollars).get(Term.SALES_TAX)).isEqualTo(Range.exactly(5));
        assertThat(reading.faults()).hasSize(2);
        assertThat(reading.faults().get(0)).contains("line 4", "has two currencies");
        assertThat(reading.faults().get(1)).contains("line 5", "'florins' is no code such as EUR");
    }

    @Test
    void good_rows_stay_and_bad_ones_are_named() throws IOException {
        PlaceReader.Reading reading = PlaceReader.read("mine.csv", new StringReader(HEADER
                + "home,Home,sales_tax,5,5,5,user,me\n"
                + "home,Home,road_toll,5,5,5,user,me\n"
                + "home,Home,haggle,six,6,7,user,me\n"
                + "home,Home,haggle,9,6,7,user,me\n"
                + "home,Home,haggle,5,6,700,user,me\n"
                + "home,Home,haggle,5,6,7,hearsay,me\n"
                + "home,Home\n"));
        assertThat(reading.places()).singleElement().satisfies(p -> assertThat(p.figures()).hasSize(1));
        assertThat(reading.faults()).hasSize(6);
        assertThat(reading.faults().get(0)).contains("mine.csv, line 3, column term").contains("road_toll");
        assertThat(reading.faults().get(1)).contains("line 4").contains("column low").contains("'six' is no number");
        assertThat(reading.faults().get(2)).contains("low <= mode <= high");
        assertThat(reading.faults().get(3)).contains("at most 100");
        assertThat(reading.faults().get(4)).contains("line 7").contains("'hearsay' must be one of [measured");
        assertThat(reading.faults().get(5)).contains("2 cells");
    }

    @Test
    void a_missing_column_is_named() throws IOException {
        PlaceReader.Reading reading = PlaceReader.read("mine.csv", new StringReader("place,name,term,low\n"));
        assertThat(reading.faults()).singleElement().asString().contains("missing: mode, high, label, source");
    }
}
