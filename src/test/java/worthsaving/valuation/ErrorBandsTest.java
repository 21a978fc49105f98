package worthsaving.valuation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import worthsaving.quantity.Distance;

/** On a market invented with the same normal noise everywhere: ln price scatters by {@link InventedMarket#NOISE}. */
class ErrorBandsTest {

    private static final double NORMAL_90 = 1.2815515655446004;

    /** 8 in 10 of a normal lie within 1.28 standard deviations; a fit on 3,000 rows finds that to a fifth. */
    @Test
    void the_invented_noise_is_found_in_every_make() throws IOException {
        List<ErrorBand> bands = InventedMarket.model().errors(Distance.Unit.MILES);
        double width = 2 * NORMAL_90 * InventedMarket.NOISE;
        assertThat(bands).filteredOn(b -> b.by() == ErrorBand.By.MAKE).extracting(ErrorBand::group)
                .containsExactlyInAnyOrder(InventedMarket.MAKES);
        assertThat(bands).filteredOn(b -> b.by() == ErrorBand.By.MAKE).allSatisfy(b -> {
            assertThat(Math.log((1 + b.high()) / (1 + b.low()))).isCloseTo(width, within(0.2 * width));
            assertThat(b.low()).isNegative();
            assertThat(b.high()).isPositive();
            assertThat(b.rows()).isPositive();
        });
    }

    @Test
    void no_age_or_mileage_beyond_the_data_is_given() throws IOException {
        PriceModel model = InventedMarket.model();
        assertThat(model.errors(Distance.Unit.KILOMETRES)).filteredOn(b -> b.by() == ErrorBand.By.AGE)
                .isNotEmpty().allSatisfy(b -> assertThat(Double.parseDouble(b.group().split(" ")[0]))
                        .isLessThanOrEqualTo(model.oldest()));
        assertThat(model.errors(Distance.Unit.MILES)).filteredOn(b -> b.by() == ErrorBand.By.MILEAGE)
                .isNotEmpty().allSatisfy(b -> assertThat(Double.parseDouble(b.group().replace(",", "")))
                        .isLessThanOrEqualTo(model.farthest().miles()));
    }
}
