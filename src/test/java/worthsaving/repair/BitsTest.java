package worthsaving.repair;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class BitsTest {

    @Test
    void says_what_a_bit_set_says() {
        SplittableRandom random = new SplittableRandom(11);
        for (int round = 0; round < 200; round++) {
            int size = 1 + random.nextInt(200);
            BitSet one = draw(random, size);
            BitSet other = draw(random, size);
            long[] bits = Bits.of(one, size);

            assertThat(Bits.members(bits)).isEqualTo(one.stream().toArray());
            assertThat(Bits.count(bits)).isEqualTo(one.cardinality());
            assertThat(Bits.intersect(bits, Bits.of(other, size))).isEqualTo(one.intersects(other));
            for (int i = 0; i < size; i++) {
                assertThat(Bits.get(bits, i)).isEqualTo(one.get(i));
                assertThat(Bits.next(bits, i)).isEqualTo(one.nextSetBit(i));
            }
            Bits.or(bits, Bits.of(other, size));
            one.or(other);
            assertThat(Bits.members(bits)).isEqualTo(one.stream().toArray());
        }
    }

    @Test
    void takes_out_one_or_all() {
        long[] bits = Bits.ofSize(130);
        Bits.set(bits, 64);
        Bits.set(bits, 129);

        Bits.clear(bits, 64);
        assertThat(Bits.members(bits)).containsExactly(129);
        assertThat(Bits.next(bits, 192)).isEqualTo(-1);
        Bits.clear(bits);
        assertThat(Bits.members(bits)).isEmpty();
        assertThat(Bits.next(Bits.ofSize(0), 0)).isEqualTo(-1);
    }

    private static BitSet draw(SplittableRandom random, int size) {
        BitSet set = new BitSet();
        for (int i = 0; i < size; i++) {
            set.set(i, random.nextInt(4) == 0);
        }
        return set;
    }
}
