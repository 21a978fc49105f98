package worthsaving.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CirclesTest {

    @Test
    void lists_a_circle_once_around() {
        assertThat(Circles.in(Map.of("A", List.of("B"), "B", List.of("C"), "C", List.of("B"))))
                .containsExactly(List.of("B", "C"));
    }

    @Test
    void lists_two_separate_circles_and_one_of_itself() {
        assertThat(Circles.in(
                        Map.of("A", List.of("B"), "B", List.of("A"), "C", List.of("D"), "D", List.of("C", "D"))))
                .containsExactlyInAnyOrder(List.of("A", "B"), List.of("C", "D"), List.of("D"));
    }

    @Test
    void a_diamond_is_no_circle() {
        assertThat(Circles.in(Map.of("A", List.of("B", "C"), "B", List.of("D"), "C", List.of("D"))))
                .isEmpty();
    }

    /** Edges that only lead up the order of the letters cannot close; one that leads back down a path does. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void finds_a_circle_exactly_when_there_is_one(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Map<String, TreeSet<String>> next = new TreeMap<>();
        IntStream.range(0, 12).forEach(i -> next.put(name(i), new TreeSet<>()));
        for (int i = 0; i < 11; i++) {
            next.get(name(i)).add(name(i + 1));
            next.get(name(i)).add(name(i + 1 + random.nextInt(11 - i)));
        }
        assertThat(Circles.in(next)).isEmpty();

        next.get(name(6 + random.nextInt(6))).add(name(random.nextInt(6)));

        assertThat(Circles.in(next)).isNotEmpty().allSatisfy(circle -> {
            for (int i = 0; i < circle.size(); i++) {
                assertThat(next.get(circle.get(i))).contains(circle.get((i + 1) % circle.size()));
            }
        });
    }

    private static String name(int i) {
        return String.valueOf((char) ('A' + i));
    }
}
