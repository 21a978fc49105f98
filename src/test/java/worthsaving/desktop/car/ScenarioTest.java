package worthsaving.desktop.car;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import worthsaving.vehicle.Observation.Sight;
import worthsaving.vehicle.Observation.Witness;

class ScenarioTest {

    private final Scenario first = Scenario.of(Cars.overheated());

    @Test
    void what_is_seen_replaces_what_was_seen_and_leaves_the_seller_his_word() {
        Scenario now = first.seen("WATER_PUMP", Sight.ABSENT).seen("WATER_PUMP", Sight.UNSURE);
        assertThat(now.sight("WATER_PUMP", Witness.OWN_EYES)).isEqualTo(Sight.UNSURE);
        assertThat(now.sight("WATER_PUMP", Witness.SELLER)).isEqualTo(Sight.PRESENT);
        assertThat(now.seen("WATER_PUMP", Sight.NOT_LOOKED_AT)).isEqualTo(first);
    }

    @Test
    void nothing_is_known_of_what_was_not_looked_at() {
        assertThat(first.sight("KNOCKS", Witness.OWN_EYES)).isEqualTo(Sight.NOT_LOOKED_AT);
        assertThat(first.sight("OVERHEATS", Witness.OWN_EYES)).isEqualTo(Sight.PRESENT);
    }

    @Test
    void levers_move_and_go_back() {
        Scenario now = first.with(Lever.PRICE, 900).with(Lever.SPEED, 150);
        assertThat(now.levers()).containsOnlyKeys(Lever.PRICE, Lever.SPEED);
        assertThat(now.lever(Lever.PRICE)).contains(900.0);
        assertThat(now.without(Lever.PRICE).without(Lever.SPEED)).isEqualTo(first);
    }

    @Test
    void a_moved_lever_leaves_the_car_the_same_and_a_finding_does_not() {
        assertThat(first.with(Lever.PRICE, 900).sameCar(first)).isTrue();
        assertThat(first.with(Lever.PARTS, 120).sameCar(first)).isTrue();
        assertThat(first.seen("KNOCKS", Sight.PRESENT).sameCar(first)).isFalse();
    }
}
