package worthsaving.diagnosis.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class NoisyOrTest {

    private static final NoisyOr OR = new NoisyOr(0.1, new int[] {4, 7, 2}, new double[] {0.5, 0.8, 0.3});

    @Test
    void known_causes_go_into_the_leak_or_out() {
        int[] known = {-1, -1, -1, -1, 1, -1, -1, 0};

        NoisyOr rest = OR.given(known);

        assertThat(rest.causes()).containsExactly(2);
        assertThat(rest.leak()).isCloseTo(1 - 0.9 * 0.5, within(1e-15));
        assertThat(rest.chance(1)).isCloseTo(OR.chance(0b101), within(1e-15));
        assertThat(OR.given(new int[] {-1, -1, -1, -1, -1, -1, -1, -1})).isSameAs(OR);
    }

    @Test
    void tables_hold_the_formula() {
        Table given = OR.given(9);
        Table seen = OR.seen(0.6, 0.2);

        assertThat(given.scope()).containsExactly(9, 4, 7, 2);
        for (int s = 0; s < 8; s++) {
            double yes = OR.chance(s);
            assertThat(given.values()[2 * s + 1]).isEqualTo(yes);
            assertThat(given.values()[2 * s]).isCloseTo(1 - yes, within(1e-15));
            assertThat(seen.values()[s]).isCloseTo(0.6 * yes + 0.2 * (1 - yes), within(1e-15));
        }
    }

    @Test
    void both_ways_of_asking_agree() {
        assertThat(OR.chance(v -> v == 7)).isEqualTo(OR.chance(0b010));
        assertThatThrownBy(() -> new NoisyOr(0, new int[2], new double[1])).hasMessageContaining("2 causes");
    }
}
