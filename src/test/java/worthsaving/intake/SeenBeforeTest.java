package worthsaving.intake;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SeenBeforeTest {

    @Test
    void finds_every_repeat_and_nothing_else() {
        SeenBefore seen = new SeenBefore();
        for (int i = 1; i <= 50_000; i++) {
            assertThat(seen.earlier("text " + i, i)).isZero();
        }
        for (int i = 1; i <= 50_000; i++) {
            assertThat(seen.earlier("text " + i, 99)).isEqualTo(i);
        }
        assertThat(seen.full()).isFalse();
    }

    @Test
    void stops_growing_when_full() {
        SeenBefore seen = new SeenBefore();
        for (int i = 1; i <= SeenBefore.MOST; i++) {
            seen.earlier(Integer.toString(i, 36), i);
        }

        assertThat(seen.full()).isTrue();
        assertThat(seen.earlier("not there yet", 5)).isZero();
        assertThat(seen.earlier("not there yet", 6)).isZero();
        assertThat(seen.earlier("1", 7)).isEqualTo(1);
    }
}
