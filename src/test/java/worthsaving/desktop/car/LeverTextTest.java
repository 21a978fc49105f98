package worthsaving.desktop.car;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LeverTextTest {

    private static Optional<String> name(String item) {
        return item.equals("HEAD_GASKET") ? Optional.of("Head gasket") : Optional.empty();
    }

    @Test
    void positions_are_read_back_as_they_were_written() {
        Map<Dial, Double> levers = Map.of(Lever.PRICE, 912.5, Lever.LOSS, 33.0, new ItemDial("HEAD_GASKET", "Head gasket"), 35.0);
        String text = LeverText.write(levers);
        assertThat(text).isEqualTo("LOSS=33.0;PRICE=912.5;item HEAD_GASKET=35.0");
        assertThat(LeverText.read(text, LeverTextTest::name)).isEqualTo(levers);
        assertThat(LeverText.write(Map.of())).isEmpty();
        assertThat(LeverText.read("", LeverTextTest::name)).isEmpty();
    }

    @Test
    void what_is_no_longer_known_is_left_out_and_the_rest_kept() {
        assertThat(LeverText.read("OLD=1.0;item GONE=2.0;PRICE=many;PRICE=NaN;=3;DAYS=20.0", LeverTextTest::name))
                .isEqualTo(Map.of(Lever.DAYS, 20.0));
    }
}
