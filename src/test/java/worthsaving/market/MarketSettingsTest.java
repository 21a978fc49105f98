package worthsaving.market;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.quantity.Source;
import worthsaving.vehicle.TitleBrand;

class MarketSettingsTest {

    private static MarketSettings shipped(String market) throws IOException {
        try (Reader factors = Files.newBufferedReader(Path.of("shared/market/market_settings.csv"));
                Reader index = Files.newBufferedReader(Path.of("shared/market/price_index.csv"))) {
            return MarketSettings.read(factors, index, market);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"US", "UK", "DE"})
    void every_shipped_figure_has_a_label_and_a_source(String market) throws IOException {
        MarketSettings settings = shipped(market);

        assertThat(settings.factors().values()).allSatisfy(f -> {
            assertThat(f.source().text()).isNotBlank();
            assertThat(f.range().low()).isLessThanOrEqualTo(f.value());
        });
        assertThat(settings.title(TitleBrand.CLEAN).value()).isEqualTo(1);
        assertThat(settings.title(TitleBrand.SALVAGE).value()).isLessThan(settings.title(TitleBrand.REBUILT).value());
    }

    /** Source of the index: BLS series CUSR0000SETA02. */
    @ParameterizedTest
    @CsvSource({
        "2019-04-15, 2019-04-15, 1",
        "2019-04-15, 2022-01-15, 1.540398",
        "2019-04-15, 2026-04-15, 1.285407",
        "2019-04-15, 2031-01-01, 1.285407",
        "2019-03-01, 2019-04-15, 0.991780"
    })
    void the_price_index_moves_prices_between_days(LocalDate from, LocalDate to, double factor) throws IOException {
        assertThat(shipped("US").index().factor(from, to)).isCloseTo(factor, within(1e-6));
    }

    @Test
    void a_user_sets_a_figure_and_it_says_so() throws IOException {
        MarketSettings changed = shipped("US").with(MarketSettings.HAIRCUT, 0.02);

        assertThat(changed.factor(MarketSettings.HAIRCUT).value()).isEqualTo(0.02);
        assertThat(changed.factor(MarketSettings.HAIRCUT).source().label()).isEqualTo(Source.Label.USER);
        assertThatThrownBy(() -> changed.with("no such key", 1)).hasMessageContaining("no such key");
    }

    @Test
    void a_missing_market_and_a_missing_figure_are_refused() throws IOException {
        assertThatThrownBy(() -> shipped("MARS")).hasMessageContaining("market MARS has no entry");
        MarketSettings settings = shipped("US");
        TreeMap<String, MarketFactor> factors = new TreeMap<>(settings.factors());
        factors.remove("title.flood");
        assertThatThrownBy(() -> new MarketSettings(settings.index(), factors, settings.comparables()))
                .hasMessageContaining("[title.flood]");
    }

    @Test
    void a_bad_line_is_named() {
        String index = "market,month,index,label,source\nX,2019-13,100,guess,none\n";

        assertThatThrownBy(() -> PriceIndex.read(new StringReader(index), "X")).hasMessageContaining("line 2");
        assertThatThrownBy(() -> PriceIndex.read(new StringReader(index.replace("2019-13,100", "2019-12,-1")), "X"))
                .hasMessageContaining("above zero");
    }

    @Test
    void a_month_of_the_index_is_set_taken_out_and_checked() throws IOException {
        PriceIndex index = shipped("US").index();
        PriceIndex longer = index.with(YearMonth.of(2026, 7), 200);

        assertThat(longer.factor(LocalDate.of(2026, 4, 15), LocalDate.of(2026, 7, 15)))
                .as("published 179.822 in April 2026").isCloseTo(200 / 179.822, within(1e-12));
        assertThat(longer.without(YearMonth.of(2026, 7)).levels()).isEqualTo(index.levels());
        assertThatThrownBy(() -> index.with(YearMonth.of(2026, 7), 0)).hasMessageContaining("above zero");
        assertThat(shipped("UK").index().tells()).isFalse();
        assertThatThrownBy(() -> shipped("UK").index().without(YearMonth.of(2020, 7))).hasMessageContaining("no entry");
    }

    @Test
    void a_market_has_its_own_words_and_else_those_of_the_data() throws IOException {
        String table = "market,word,said\nUK,gas,petrol\nDE,wagon,estate\n";
        MarketWords words = MarketWords.read(new StringReader(table), "UK");

        assertThat(words.of("gas")).isEqualTo("petrol");
        assertThat(words.of("wagon")).isEqualTo("wagon");
        assertThat(MarketWords.OF_THE_DATA.of("gas")).isEqualTo("gas");
    }
}
