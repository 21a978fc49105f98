package worthsaving.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Vehicle;
import worthsaving.vehicle.Vin;

class VinGuardTest {

    /** 1M8GDM9AXKP042788 is the number commonly worked through for the check digit of 49 CFR 565.15. */
    private static final String NUMBER = "1M8GDM9AXKP042788";

    @ParameterizedTest
    @CsvSource({
        "1M8GDM9AXKP042788, VIN\u20262788", "car 1m8gdm9axkp042788 blue, car VIN\u20262788 blue",
        "1M8GDM9AXKP042788-2, VIN\u20262788-2"
    })
    void hides_a_number_wherever_it_stands(String text, String hidden) {
        assertThat(VinGuard.HIDDEN.text(text)).isEqualTo(hidden);
        assertThat(VinGuard.SHOWN.text(text)).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"L06", "12345678901234567", "volkswagenpassatx", "1M8GDM9AXKP0427889", "1M8GDM9AIKP042788"})
    void leaves_other_words_alone(String text) {
        assertThat(VinGuard.HIDDEN.text(text)).isEqualTo(text);
    }

    @Test
    void gives_the_number_only_when_asked() {
        Vehicle car = Vehicle.builder().vin(Fact.known(new Vin(NUMBER))).build();

        assertThat(VinGuard.HIDDEN.of(car)).isEmpty();
        assertThat(VinGuard.SHOWN.of(car)).contains(NUMBER);
        assertThat(VinGuard.SHOWN.of(Vehicle.builder().build())).isEmpty();
    }
}
