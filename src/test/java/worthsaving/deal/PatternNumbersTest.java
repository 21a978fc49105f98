package worthsaving.deal;

import static org.assertj.core.api.Assertions.assertThat;
import static worthsaving.deal.SampleDeals.bits;

import java.util.List;
import org.junit.jupiter.api.Test;
import worthsaving.deal.Allotment.Run;

class PatternNumbersTest {

    @Test
    void equal_patterns_share_the_number_of_the_first() {
        PatternNumbers numbers = PatternNumbers.of(List.of(
                new Run(bits(3, 90), 0, 1), new Run(bits(), 1, 2), new Run(bits(3, 90), 2, 3), new Run(bits(3), 3, 4)));

        assertThat(numbers.ofRun()).containsExactly(0, 1, 0, 2);
        assertThat(numbers.patterns()).containsExactly(bits(3, 90), bits(), bits(3));
    }
}
