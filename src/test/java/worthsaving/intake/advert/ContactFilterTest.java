package worthsaving.intake.advert;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Contact data never survives; numbers that merely look like it do. All numbers and names are invented. */
class ContactFilterTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "call 555-0147 today | 555-0147", "call 555 0147 | 555 0147", "(503) 555-0119 | 555-0119",
        "503.555.0119 | 555.0119",
        "5035550119 | 5035550119", "+1 503 555 0119 | 555 0119", "1-503-555-0119 | 555-0119",
        "txt 313 555 0182 | 555 0182",
        "mail me at jetta.seller@example.com | jetta.seller", "seller at gmail dot com | seller at gmail",
        "see https://example.org/ad/123?x=1 now | example.org", "www.example.com/cars | example.com",
        "mycars.net/7 | mycars.net",
        "five0three 555 0119 | 555 0119", "fivezerothree five five five zero one one nine | five five five",
        "ask for Pat | Pat", "call Mike after 5 | Mike", "07700 900123 | 900123", "+44 7700 900123 | 900123",
        "ig @fast_cars_99 | fast_cars",
    })
    void blanked(String text, String secret) {
        String kept = ContactFilter.blank(text);
        assertThat(kept).doesNotContain(secret).hasSameSizeAs(text);
        AdvertReading r = Vocabularies.read("2011 Honda Civic 98k $1500. " + text);
        assertThat(r.toString()).doesNotContain(secret);
        assertThat(r.toListing("1", "test").toString()).doesNotContain(secret);
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "104,500 mi", "210 000 km", "$18,500", "2009 143000", "131 000 2300", "P0868", "900-1500 obo", "8/10",
        "was 7400 now 4200",
        "2012 328i 112000 miles 2750", "1,400$", "GA 30060", "text only. 2011 104k", "one two three owners",
    })
    void left_alone(String text) {
        assertThat(ContactFilter.blank(text)).isEqualTo(text);
    }

    @Test
    void a_vehicle_number_is_kept_in_its_field_and_nowhere_else() {
        String vin = "1M8GDM9AXKP042788"; // example of the check digit in 49 CFR 565.15
        AdvertReading r = Vocabularies.read("2011 Honda Civic vin " + vin + " $1500");
        assertThat(r.car().vin().orElseThrow().value().text()).isEqualTo(vin);
        assertThat(r.text()).doesNotContain(vin);
        assertThat(r.offer().price().orElseThrow().value().amount()).isEqualTo(1500);
    }
}
