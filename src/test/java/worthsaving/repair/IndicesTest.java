package worthsaving.repair;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import org.junit.jupiter.api.Test;

class IndicesTest {

    @Test
    void a_set_comes_out_ascending() {
        BitSet set = new BitSet();
        set.set(90);
        set.set(3);

        assertThat(Indices.of(set)).containsExactly(3, 90);
        assertThat(Indices.of(new BitSet())).isEmpty();
    }

    @Test
    void positions_are_those_of_the_common_elements() {
        assertThat(Indices.positions(new int[] {1, 4, 6, 9}, new int[] {0, 4, 5, 9, 12})).containsExactly(1, 3);
        assertThat(Indices.positions(new int[] {7}, new int[] {1, 2})).isEmpty();
        assertThat(Indices.positions(new int[] {7}, new int[] {})).isEmpty();
    }
}
