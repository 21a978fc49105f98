package worthsaving.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.quantity.Distance;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Vehicle;

class CarAgeTest {

    /** 12,000 miles a year: common practice, no source. Ages count from the middle of the model year. */
    @ParameterizedTest
    @CsvSource({
        "2016, 60000, 9.5,  60000, 0",
        "2016,      , 9.5, 114000, 1",
        "    , 60000, 5.0,  60000, 1",
        "    ,      , 10., 120000, 2"
    })
    void missing_age_and_mileage_are_filled_in_and_said(
            Integer year, Double miles, double years, double counted, int assumptions) {
        Vehicle car = Vehicle.builder()
                .year(Fact.ofNullable(year))
                .odometer(Fact.ofNullable(miles).map(Distance::ofMiles))
                .build();

        CarAge age = CarAge.of(car, LocalDate.of(2026, 1, 1));

        assertThat(age.years()).isCloseTo(years, within(1e-12));
        assertThat(age.odometer().miles()).isCloseTo(counted, within(1e-9));
        assertThat(age.assumptions()).hasSize(assumptions);
    }
}
