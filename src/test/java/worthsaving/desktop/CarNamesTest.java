package worthsaving.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Vehicle;

class CarNamesTest {

    @ParameterizedTest
    @CsvSource({"volkswagen,Volkswagen", "f-150,F-150", "cr-v,CR-V", "grand cherokee,Grand Cherokee", "bmw,BMW",
            "x5,X5",
        "town & country,Town & Country", "rav4,RAV4", "'two  blanks',Two Blanks"})
    void names_are_spelled_for_people(String data, String shown) {
        assertThat(CarNames.capitals(data)).isEqualTo(shown);
    }

    @Test
    void a_trim_that_the_model_already_names_is_not_said_twice() {
        Vehicle.Builder car = Vehicle.builder().year(Fact.known(2014)).make(Fact.known("honda"));
        assertThat(CarNames.title(car.model(Fact.known("civic lx")).trim(Fact.known("LX")).build()))
                .isEqualTo("2014 Honda Civic LX");
        assertThat(CarNames.title(car.model(Fact.known("civic")).trim(Fact.known("LX")).build()))
                .isEqualTo("2014 Honda Civic LX");
    }

    @Test
    void a_car_of_which_nothing_is_known_still_has_a_name() {
        assertThat(CarNames.title(Vehicle.builder().build())).isEqualTo(Texts.of("car.unknown"));
    }
}
