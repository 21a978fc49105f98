package worthsaving.valuation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import worthsaving.market.MarketFactor;
import worthsaving.market.PriceRow;
import worthsaving.quantity.Source;

class FactorEstimateTest {

    /** Rows of the invented market, every fifth with a brand that takes off 40 %. */
    private static List<PriceRow> branded() {
        List<PriceRow> rows = new ArrayList<>();
        for (PriceRow r : InventedMarket.rows(1000, "branded")) {
            boolean rebuilt = r.line() % 5 == 0;
            rows.add(new PriceRow(r.line(), r.price() * (rebuilt ? 0.6 : 1), r.make(), r.model(), r.year(), r.miles(),
                    r.condition(), r.cylinders(), r.litres(), r.power(), r.fuel(), r.gearbox(), r.body(), r.drive(),
                    rebuilt ? "rebuilt" : "clean", r.unrepairedDamage(), r.date()));
        }
        return rows;
    }

    @Test
    void finds_the_brand_that_was_put_in() throws IOException {
        MarketFactor factor = FactorEstimate.measure(InventedMarket.model(), branded(), "title.rebuilt",
                r -> r.title().equals("rebuilt"), r -> r.title().equals("clean"), "invented rows");

        assertThat(factor.range().low()).isLessThan(0.6);
        assertThat(factor.range().high()).isGreaterThan(0.6);
        assertThat(factor.range().width()).isLessThan(0.1);
        assertThat(factor.cars()).isEqualTo(200);
        assertThat(factor.source().label()).isEqualTo(Source.Label.MEASURED);
        assertThat(factor.why()).contains("200 cars").contains("800 other cars");
    }

    /** The invented market takes 0.3 off ln price for fair condition: exp(-0.3) = 0.741. */
    @Test
    void finds_the_condition_that_the_model_itself_knows() throws IOException {
        MarketFactor factor = FactorEstimate.measure(InventedMarket.model(), InventedMarket.rows(1500, "conditions"),
                "condition.fair", r -> r.condition().equals("fair"), r -> r.condition().equals("good"), "invented rows");

        assertThat(factor.value()).isBetween(0.70, 0.78);
    }

    @Test
    void too_few_cars_are_refused() {
        assertThatThrownBy(() -> FactorEstimate.measure(InventedMarket.model(), InventedMarket.rows(50, "few"),
                        "title.flood", r -> r.title().equals("flood"), r -> true, "invented"))
                .hasMessageContaining("0 marked and 50 other cars are too few");
    }
}
