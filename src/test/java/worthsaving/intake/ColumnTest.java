package worthsaving.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.quantity.Distance;

class ColumnTest {

    @ParameterizedTest
    @EnumSource(Field.class)
    void our_own_name_of_each_field_is_found_in_any_spelling(Field field) {
        String title = field.title();

        for (String spelling : List.of(title, title.toUpperCase(Locale.ROOT), " " + title + " ",
                title.replace('_', ' '), title.replace('_', '-'), "(" + title + ")")) {
            assertThat(Column.named(spelling, 3)).as(spelling).hasValueSatisfying(c -> {
                assertThat(c.field()).isEqualTo(field);
                assertThat(c.index()).isEqualTo(3);
                assertThat(c.header()).isEqualTo(spelling);
            });
        }
    }

    @ParameterizedTest
    @CsvSource({
        "price_usd, PRICE, USD", "price_eur, PRICE, EUR", "Price (\u00a3), PRICE, GBP", "Preis \u20ac, PRICE, EUR",
        "Ask [CAD], PRICE, CAD", "bid_usd, PRICE, USD", "quote_eur, QUOTE, EUR", "asking price $, PRICE, USD"
    })
    void takes_the_currency_from_the_name(String header, Field field, String currency) {
        Column column = Column.named(header, 0).orElseThrow();

        assertThat(column.field()).isEqualTo(field);
        assertThat(column.currency()).contains(Currency.getInstance(currency));
        assertThat(column.unit()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "odometer_mi, MILES, false", "Odometer (km), KILOMETRES, false", "odometer_km_band, KILOMETRES, true",
        "mileage km, KILOMETRES, false", "miles, MILES, false", "km, KILOMETRES, false",
        "Kilometerstand km, KILOMETRES, false"
    })
    void takes_the_unit_from_the_name(String header, Distance.Unit unit, boolean band) {
        Column column = Column.named(header, 0).orElseThrow();

        assertThat(column.field()).isEqualTo(Field.ODOMETER);
        assertThat(column.unit()).contains(unit);
        assertThat(column.band()).isEqualTo(band);
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "", "colour", "year_usd", "price_km", "odometer_usd", "usd", "tow_km", "__", "prise", "eur price"
    })
    void other_names_are_no_columns_of_ours(String header) {
        assertThat(Column.named(header, 0)).isEmpty();
    }

    @Test
    void a_plain_mileage_has_no_unit_of_its_own() {
        assertThat(Column.named("mileage", 0).map(Column::unit)).contains(Optional.empty());
    }

    @Test
    void of_two_columns_for_one_field_the_first_counts() {
        Columns columns = Columns.named(List.of("date", "price", "date_posted", "ask"));

        assertThat(columns.get(Field.SEEN).map(Column::index)).contains(0);
        assertThat(columns.get(Field.PRICE).map(Column::index)).contains(1);
        assertThat(columns.unused()).containsExactly("date_posted", "ask");
    }

    /** No name may stand for two fields; building the map would fail. */
    @Test
    void names_are_plain_and_unique() {
        assertThat(Field.allNames()).allSatisfy(n -> assertThat(Field.plain(n)).isEqualTo(n)).doesNotHaveDuplicates();
    }
}
