package worthsaving.sensitivity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TurningTest {

    /** Roots by hand: 3,000 - x at 3,000; x^2 - 16 at 4. */
    @Test
    void it_finds_the_root_and_the_side_that_gains() {
        Turning falling = Turning.of(x -> 3_000 - x, 0, 1_000, 10_000, 0.01);
        assertThat(falling.at().orElseThrow()).isCloseTo(3_000, within(0.02));
        assertThat(falling.gainsBelow()).isTrue();
        Turning rising = Turning.of(x -> x * x - 16, 0, 9, 10, 1e-6);
        assertThat(rising.at().orElseThrow()).isCloseTo(4, within(1e-5));
        assertThat(rising.gainsBelow()).isFalse();
    }

    @Test
    void of_a_result_that_turns_on_both_sides_the_lower_point_is_taken() {
        Turning turning = Turning.of(x -> 4 - (x - 5) * (x - 5), 0, 5, 10, 1e-6);
        assertThat(turning.at().orElseThrow()).isCloseTo(3, within(1e-5));
        assertThat(turning.gainsBelow()).isFalse();
    }

    @Test
    void without_a_turn_it_says_which_it_is() {
        assertThat(Turning.of(x -> x + 1, 0, 5, 10, 0.1)).isEqualTo(
                new Turning(OptionalDouble.empty(), true));
        assertThat(Turning.of(x -> -x - 1, 0, 5, 10, 0.1).gainsBelow()).isFalse();
    }

    /** A point beyond the range leaves the whole range on one side of it. */
    @ParameterizedTest
    @CsvSource({"5,true,5,true", "20,true,,true", "-3,true,,false", "20,false,,false", "-3,false,,true"})
    void a_known_point_counts_only_inside_the_range(double point, boolean gainsBelow, Double at, boolean expected) {
        Turning turning = Turning.at(point, gainsBelow, 0, 10);
        assertThat(turning.at().isPresent()).isEqualTo(at != null);
        assertThat(turning.gainsBelow()).isEqualTo(expected);
    }

    @Test
    void a_figure_outside_its_range_is_refused() {
        assertThatThrownBy(() -> Turning.of(x -> x, 0, 11, 10, 0.1)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Of the plane x + y - 10 the zero line is y = 10 - x. */
    @Test
    void the_contour_of_a_plane_is_its_line() {
        TwoWayMap map = TwoWayMap.of(new Input("x", 0, 5, 10), new Input("y", 0, 5, 12), 7, (x, y) -> x + y - 10);
        List<TwoWayMap.Piece> line = map.contour(0);
        assertThat(line).isNotEmpty().allSatisfy(p -> {
            assertThat(p.across1() + p.up1()).isCloseTo(10, within(1e-9));
            assertThat(p.across2() + p.up2()).isCloseTo(10, within(1e-9));
        });
        double length = line.stream().mapToDouble(p -> Math.abs(p.across2() - p.across1())).sum();
        assertThat(length).isCloseTo(10, within(1e-9));
        assertThat(map.contour(100)).isEmpty();
    }
}
