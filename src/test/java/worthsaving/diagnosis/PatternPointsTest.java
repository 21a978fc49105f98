package worthsaving.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.random.SobolSequenceGenerator;
import org.junit.jupiter.api.Test;
import worthsaving.quantity.Seed;

class PatternPointsTest {

    private static final double UNIT = 0x1p-52;

    /** Reference: Joe and Kuo's sequence as Hipparchus generates it; the shift is the same at every point. */
    @Test
    void a_point_is_the_sobol_point_with_a_digital_shift() {
        SobolSequenceGenerator sobol = new SobolSequenceGenerator(130);
        PatternPoints points = new PatternPoints(130, Seed.DEFAULT);
        long[] shift = new long[130];
        for (int j = 0; j < 5_000; j++) {
            double[] reference = sobol.nextVector();
            points.next();
            for (int c = 0; c < shift.length; c++) {
                long flipped = (long) (reference[c] / UNIT) ^ (long) (points.at(c) / UNIT);
                if (j == 0) {
                    shift[c] = flipped;
                }
                assertThat(flipped).isEqualTo(shift[c]);
            }
        }
        assertThat(shift).doesNotHaveDuplicates();
    }

    @Test
    void every_coordinate_falls_once_into_each_of_256_slices() {
        int coordinates = 130;
        PatternPoints points = new PatternPoints(coordinates, Seed.DEFAULT);
        boolean[][] hit = new boolean[coordinates][256];
        for (int j = 0; j < 256; j++) {
            points.next();
            for (int c = 0; c < coordinates; c++) {
                int slice = (int) (points.at(c) * 256);
                assertThat(hit[c][slice]).isFalse();
                hit[c][slice] = true;
            }
        }
    }

    @Test
    void a_coordinate_does_not_depend_on_how_many_there_are() {
        PatternPoints few = new PatternPoints(20, Seed.DEFAULT);
        PatternPoints many = new PatternPoints(400, Seed.DEFAULT);
        for (int j = 0; j < 50; j++) {
            few.next();
            many.next();
            assertThat(few.at(7)).isEqualTo(many.at(7));
            assertThat(few.hidden(123L << 32)).isEqualTo(many.hidden(123L << 32));
        }
    }

    @Test
    void hidden_numbers_are_uniform_and_differ_by_label() {
        PatternPoints points = new PatternPoints(2, Seed.DEFAULT);
        double sum = 0;
        double product = 0;
        int draws = 20_000;
        for (int j = 0; j < draws; j++) {
            points.next();
            double u = points.hidden(1);
            double v = points.hidden(2);
            assertThat(u).isBetween(0.0, 1.0);
            sum += u;
            product += (u - 0.5) * (v - 0.5);
        }
        assertThat(sum / draws).isCloseTo(0.5, within(4 / Math.sqrt(12.0 * draws)));
        assertThat(product / draws).isCloseTo(0, within(4 / 12.0 / Math.sqrt(draws)));
    }

    @Test
    void more_coordinates_than_the_sequence_has_still_work() {
        PatternPoints points = new PatternPoints(1_500, Seed.DEFAULT);
        points.next();

        assertThat(points.at(1_400)).isBetween(0.0, 1.0).isNotEqualTo(points.at(1_401));
    }
}
