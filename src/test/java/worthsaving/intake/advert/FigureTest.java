package worthsaving.intake.advert;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.intake.advert.OfferReading.Role;

/** Price, mileage and year among other numbers. Adverts invented. */
class FigureTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "was 7400 now 4200 | 4200 | USD",
        "$1.6k | 1600 | USD",
        "asking 2k | 2000 | USD",
        "1,400$ | 1400 | USD",
        "$1,400 OBO | 1400 | USD",
        "1500 firm | 1500 | USD",
        "dealer quoted 7400 for engine, asking 4,200 | 4200 | USD",
        "worth 9000 running, $2500 takes it | 2500 | USD",
        "$200 in new parts, $1800 obo | 1800 | USD",
        "trade value 5000, selling 3600 | 3600 | USD",
        "reduced from $5,000 to $4,200 | 4200 | USD",
        "$2,995 (was $3,995) | 2995 | USD",
        "2,900 -> 2,200 | 2200 | USD",
        "CAD 2800 | 2800 | CAD",
        "2800 CAD | 2800 | CAD",
        "£450 ono | 450 | GBP",
        "1.900 € VB | 1900 | EUR",
        "price: 2000 | 2000 | USD",
        "asking four grand | 4000 | USD",
        "twelve hundred obo | 1200 | USD",
        "25 hundred cash | 2500 | USD",
        "$500 deposit holds it, price is $3,000 | 3000 | USD",
        "paid 6500 last year. Asking $2750 | 2750 | USD",
        "need 1950 for it, book value 5600 | 1950 | USD",
        "98,000 miles $3,400 | 3400 | USD",
        "151k 3900 clean title | 3900 | USD",
        "151k 3900.00 clean title | 3900 | USD",
        "asking 2,3oo | 2300 | USD",
        "1 200$ firm | 1200 | USD",
        "EST $4,980 DECLINED. SPECIAL $2,495 | 2495 | USD",
        "mechatronic unit, £1,400 + VAT. £1,750 | 1750 | GBP",
        "the lot down the road will give me $900, $1,500 takes it | 1500 | USD",
        "best offer over £800 secures | 800 | GBP",
    })
    void price(String text, double amount, String currency) {
        var price = Vocabularies.read("2011 Honda Civic. " + text).offer().price().orElseThrow().value();
        assertThat(price.amount()).isEqualTo(amount);
        assertThat(price.currency().getCurrencyCode()).isEqualTo(currency);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "98k | 98000 | k | false", "131xxx miles | 131000 | masked | true", "98,4xx miles | 98400 | masked | true",
        "189,xxx | 189000 | masked | true", "114 xxx mi | 114000 | masked | true", "139000mi | 139000 | mi | false",
        "88k mi | 88000 | k mi | false", "61K miles | 61000 | K | false", "104,500 mi | 104500 | mi | false",
        "143,000 on the odometer | 143000 | '' | false", "odometer: 219000 | 219000 | '' | false",
        "mileage 133,211 | 133211 | '' | false", "108 k miles | 108000 | k | false",
        "timing chain done at 90k, now at 143k | 143000 | k | false", "98k. new tires 5k ago | 98000 | k | false",
        "quart every 600 miles. 139k | 139000 | k | false", "belt is original at 148k, due now | 148000 | k | false",
        "143,000 miles piston slap when cold | 143000 | miles | false", "126k on clock | 126000 | k | false",
        "145 thousand miles | 145000 | miles | false",
        "143***mi | 143000 | masked | true",
        "131,000 on the clock, FSH up to 118k | 131000 | '' | false",
        "not worth my while at 189k | 189000 | k | false",
    })
    void mileage(String text, double miles, String unit, boolean lowerBound) {
        Mileage mileage = Vocabularies.read("2011 Honda Civic. " + text).car().mileage().orElseThrow().value();
        assertThat(mileage.distance().orElseThrow().miles()).isEqualTo(miles);
        assertThat(mileage.unit()).isEqualTo(unit);
        assertThat(mileage.lowerBound()).isEqualTo(lowerBound);
    }

    @ParameterizedTest
    @CsvSource({"210 000 km, 210000", "'210,000 km', 210000", "165.000 km, 165000", "210000kms, 210000",
            "210k km, 210000"})
    void kilometres(String text, double km) {
        Mileage mileage = Vocabularies.read("Toyota Corolla LE 2012. " + text).car().mileage().orElseThrow().value();
        assertThat(mileage.distance().orElseThrow().kilometres()).isEqualTo(km);
    }

    @Test
    void true_mileage_unknown_is_no_distance() {
        Mileage mileage = Vocabularies.read("2011 Honda Civic. TMU $900").car().mileage().orElseThrow().value();
        assertThat(mileage.distance()).isEmpty();
        assertThat(mileage.unit()).isEqualTo("TMU");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '"', value = {
        "'17 Escape SE | 2017", "17 Escape SE | 2017", "09 Jetta TDI | 2009", "99 Honda Civic | 1999",
        "2011 vw jetta new battery 2023 | 2011", "Ford Escape timing belt done 2019, 2015 model | 2015",
        "Toyota Sienna 07 XLE | 2007", "honda civic 2004 $2010 | 2004", "Chevrolet Malibu '12 | 2012",
        "selling my 2007 honda accord sat since 2021 | 2007", "2011chevy cruze | 2011", "Mazda 3 2010 | 2010",
        "BMW 2012 328i | 2012", "Toyota Avensis 2.0 Strata 08. Head gasket gone | 2008",
        "Ford Focus Titanium 1.0 EcoBoost, 2014 on a 64 plate | 2014",
    })
    void year(String text, int year) {
        assertThat(Vocabularies.read(text).car().year().orElseThrow().value()).isEqualTo(year);
    }

    @Test
    void other_sums_are_kept_with_what_they_are() {
        AdvertReading r = Vocabularies.read("17 Escape SE. dealer quoted $7400 for engine!! Asking $4,200");
        assertThat(r.offer().otherMoney()).singleElement().satisfies(f -> {
            assertThat(f.value().role()).isEqualTo(Role.QUOTE);
            assertThat(f.value().money().amount()).isEqualTo(7400);
        });
    }

    @Test
    void a_number_is_never_both_price_and_odometer() {
        AdvertReading r = Vocabularies.read("2011 Honda Civic 98000");
        assertThat(r.car().mileage()).isPresent();
        assertThat(r.offer().price()).isEmpty();
    }
}
