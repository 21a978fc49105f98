package worthsaving.desktop.car;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import worthsaving.quantity.Money;

class LeverTest {

    private final Levers levers = new Levers(Cars.GROUND.settings());

    @ParameterizedTest
    @EnumSource(Lever.class)
    void where_it_stands_at_first_lies_on_the_slider(Lever lever) {
        double given = levers.given(lever, Cars.overheated());
        assertThat(given).isBetween(lever.low(), lever.high(given));
    }

    @ParameterizedTest
    @CsvSource({"PRICE,1234,0,1250", "PRICE,-5,0,0", "PRICE,30000,14500,29000", "LOSS,33.4,25,33", "SPEED,999,100,300"})
    void it_snaps_to_its_steps_and_ends(Lever lever, double at, double given, double snapped) {
        assertThat(lever.snap(at, given)).isEqualTo(snapped);
    }

    @Test
    void values_are_shown_with_their_unit() {
        assertThat(Lever.PRICE.text(2_200, Money.USD)).isEqualTo("USD 2,200");
        assertThat(Lever.SPEED.text(150, Money.USD)).isEqualTo("150 %");
        assertThat(Lever.DAYS.text(14, Money.USD)).isEqualTo("14 days");
    }

    @Test
    void settings_are_the_usual_ones_while_nothing_is_moved() {
        assertThat(levers.settings(Scenario.of(Cars.overheated()))).isEqualTo(Cars.GROUND.settings());
    }
}
