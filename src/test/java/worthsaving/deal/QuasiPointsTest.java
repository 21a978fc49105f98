package worthsaving.deal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.quantity.Seed;

class QuasiPointsTest {

    @ParameterizedTest
    @ValueSource(ints = {64, 4_096, 65_536})
    void a_column_holds_each_level_once(int points) {
        QuasiPoints quasi = new QuasiPoints(points, Seed.DEFAULT, "first");
        for (String name : new String[] {"first", "parts:A", "parts:B", "hours:A"}) {
            char[] column = quasi.column(name).clone();
            Arrays.sort(column);
            for (int k = 0; k < points; k++) {
                assertThat((int) column[k]).isEqualTo(k);
            }
        }
    }

    /** Two columns of a Sobol sequence put one point in each of 64 x 64 cells, whatever the shift. */
    @Test
    void the_first_two_columns_fill_the_square() {
        QuasiPoints quasi = new QuasiPoints(4_096, new Seed(7), "x", "y");
        boolean[] hit = new boolean[4_096];
        for (int i = 0; i < 4_096; i++) {
            int cell = (quasi.column("x")[i] >> 6) * 64 + (quasi.column("y")[i] >> 6);
            assertThat(hit[cell]).isFalse();
            hit[cell] = true;
        }
    }

    @Test
    void a_name_keeps_its_numbers_whatever_else_is_drawn() {
        QuasiPoints one = new QuasiPoints(1_024, Seed.DEFAULT);
        QuasiPoints other = new QuasiPoints(1_024, Seed.DEFAULT);
        other.column("parts:X");
        other.column("hours:Y");
        assertThat(other.column("parts:A")).isEqualTo(one.column("parts:A"));
        assertThat(new QuasiPoints(1_024, new Seed(1)).column("parts:A")).isNotEqualTo(one.column("parts:A"));
    }
}
