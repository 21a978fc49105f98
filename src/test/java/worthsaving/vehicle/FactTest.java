package worthsaving.vehicle;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FactTest {

    private static final Fact<Integer> STATED = Fact.known(4);
    private static final Fact<Integer> FILLED_IN = Fact.assumed(6, "most have six");
    private static final Fact<Integer> NOTHING = Fact.unknown();

    @Test
    void tells_what_is_known_from_what_is_assumed() {
        assertThat(STATED.isKnown()).isTrue();
        assertThat(FILLED_IN.isKnown()).isFalse();
        assertThat(NOTHING.isKnown()).isFalse();
        assertThat(FILLED_IN).isEqualTo(new Fact.Assumed<>(6, "most have six"));
    }

    @Test
    void gives_a_value_where_there_is_one() {
        assertThat(STATED.get()).contains(4);
        assertThat(FILLED_IN.get()).contains(6);
        assertThat(NOTHING.get()).isEmpty();
        assertThat(STATED.orElse(8)).isEqualTo(4);
        assertThat(NOTHING.orElse(8)).isEqualTo(8);
    }

    @Test
    void a_change_of_value_keeps_the_state_of_knowledge() {
        assertThat(STATED.map(n -> n * 2)).isEqualTo(Fact.known(8));
        assertThat(FILLED_IN.map(n -> n * 2)).isEqualTo(Fact.assumed(12, "most have six"));
        assertThat(NOTHING.map(n -> n * 2)).isEqualTo(Fact.unknown());
    }

    @Test
    void null_is_unknown() {
        assertThat(Fact.ofNullable(null)).isEqualTo(Fact.unknown());
        assertThat(Fact.ofNullable("v6")).isEqualTo(Fact.known("v6"));
    }
}
