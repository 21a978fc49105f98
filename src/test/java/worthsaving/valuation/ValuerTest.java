package worthsaving.valuation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import worthsaving.market.Comparable;
import worthsaving.market.MarketFactor;
import worthsaving.market.MarketSettings;
import worthsaving.market.PriceIndex;
import worthsaving.market.PriceKind;
import worthsaving.market.PriceRow;
import worthsaving.quantity.Money;
import worthsaving.quantity.Source;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.TitleBrand;
import worthsaving.vehicle.Vehicle;

class ValuerTest {

    private static final LocalDate DATA_DAY = LocalDate.of(2019, 1, 1);

    private static Valuer valuer() throws IOException {
        return new Valuer(InventedMarket.model(), InventedMarket.settings());
    }

    private static double width(ValueForecast forecast) {
        return Math.log(forecast.quantile(0.9).amount() / forecast.quantile(0.1).amount());
    }

    @Test
    void lists_each_factor_in_order_and_applies_their_product() throws IOException {
        Vehicle car = InventedMarket.car("beta", "m2", 2010, 100_000).build();
        ValueForecast forecast = valuer().forecast(car, DATA_DAY);
        double truth = Math.exp(InventedMarket.logPrice(1, 2, 8.5, 100_000, true));
        double factor = forecast.steps().stream().mapToDouble(ValueForecast.Step::factor).reduce(1, (a, b) -> a * b);

        assertThat(forecast.steps()).extracting(ValueForecast.Step::name).containsExactly(
                "asking price by the model", "condition: good", "not stated", "price index", "your own comparables",
                "title: clean", "local factor", "from asking to sale price");
        assertThat(factor).isCloseTo(0.94, within(1e-12));
        assertThat(forecast.quantile(0.5).amount()).isCloseTo(0.94 * truth, within(0.1 * truth));
        assertThat(forecast.steps()).allSatisfy(s -> assertThat(s.why()).isNotBlank());
        assertThat(forecast.warnings()).isEmpty();
    }

    @Test
    void a_later_day_means_an_older_car_and_another_price_level() throws IOException {
        Vehicle car = InventedMarket.car("beta", "m2", 2010, 100_000).build();
        ValueForecast then = valuer().forecast(car, DATA_DAY);
        ValueForecast later = valuer().forecast(car, LocalDate.of(2022, 1, 15));
        double index = InventedMarket.settings().index().factor(DATA_DAY, LocalDate.of(2022, 1, 15));

        assertThat(index).isGreaterThan(1.4);
        assertThat(later.quantile(0.5).amount() / then.quantile(0.5).amount())
                .isCloseTo(index * Math.exp(-0.3), within(0.12));
    }

    @Test
    void contributions_sum_to_the_difference_from_a_typical_car() throws IOException {
        Valuer valuer = valuer();
        CarFacts typical = valuer.model().typical;
        Vehicle car = InventedMarket.car("gamma", "m3", 2005, 180_000).build();
        ValueForecast forecast = valuer.forecast(car, DATA_DAY);
        double sum = forecast.contributions().stream().mapToDouble(c -> c.money().amount()).sum();
        ValueForecast usual = valuer.forecast(asVehicle(typical), DATA_DAY);
        CarFacts facts = Valuer.asRepaired(CarFacts.of(car, DATA_DAY, CarFacts.decimalYear(DATA_DAY)), valuer.model());
        double own = forecast.quantile(0.5).amount();
        double ratio = Math.exp(valuer.model().middle(typical) - valuer.model().middle(facts));

        assertThat(sum).isCloseTo(own * (1 - ratio), within(1e-6 * own));
        assertThat(forecast.contributions()).extracting(ValueForecast.Contribution::feature)
                .contains("make and model", "age", "mileage");
        assertThat(forecast.contributions()).filteredOn(c -> c.feature().equals("age"))
                .allSatisfy(c -> assertThat(c.money().amount()).isNegative());
        assertThat(usual.contributions()).allSatisfy(c -> assertThat(c.feature()).isNotEqualTo("age"));
    }

    private static Vehicle asVehicle(CarFacts facts) {
        return InventedMarket.car(facts.make(), facts.model(), (int) facts.year(), facts.miles()).build();
    }

    @Test
    void without_reasons_the_value_is_the_same() throws IOException {
        Vehicle car = InventedMarket.car("alpha", "m0", 2012, 60_000).build();
        ValueForecast full = valuer().forecast(car, DATA_DAY);
        ValueForecast quick = valuer().forecastWithoutReasons(car, DATA_DAY);

        assertThat(quick.contributions()).isEmpty();
        assertThat(quick.quantile(0.3)).isEqualTo(full.quantile(0.3));
    }

    @Test
    void an_advert_that_calls_the_car_fair_or_salvage_does_not_lower_its_repaired_value() throws IOException {
        Vehicle.Builder car = InventedMarket.car("beta", "m1", 2011, 90_000);
        ValueForecast plain = valuer().forecast(car.build(), DATA_DAY);
        ValueForecast fair = valuer().forecast(car.condition(Fact.known("fair")).build(), DATA_DAY);

        assertThat(fair.mean()).isEqualTo(plain.mean());
        MarketFactor left = InventedMarket.settings().factor("condition.fair");
        assertThat(left.source().label()).isEqualTo(Source.Label.MEASURED);
        assertThat(left.cars()).isGreaterThan(1000);
        assertThat(left.range().width()).isBetween(0.01, 0.1);
        assertThat(fair.steps().get(1).why())
                .contains("instead of the advert's 'fair'")
                .contains(String.format("left in that condition adverts ask x%.2f of it", left.value()))
                .contains(left.why());
    }

    @Test
    void where_the_data_state_titles_a_car_is_valued_as_clean_before_its_brand_takes_off() throws IOException {
        List<PriceRow> rows = InventedMarket.rows(1500, "titles").stream()
                .map(r -> new PriceRow(r.line(), r.price() * (r.line() % 5 == 0 ? 0.5 : 1), r.make(), r.model(), r.year(),
                        r.miles(), r.condition(), r.cylinders(), r.litres(), r.power(), r.fuel(), r.gearbox(), r.body(),
                        r.drive(), r.line() % 5 == 0 ? "salvage" : "clean", r.unrepairedDamage(), r.date()))
                .toList();
        PriceModel model = InventedMarket.fit(rows, InventedMarket.SMALL);
        Vehicle car = InventedMarket.car("beta", "m2", 2010, 100_000).build();
        double truth = Math.exp(InventedMarket.logPrice(1, 2, 8.5, 100_000, true));
        PriceRow salvage = rows.stream().filter(r -> r.title().equals("salvage")).findFirst().orElseThrow();

        assertThat(new Valuer(model, InventedMarket.settings()).forecast(car, DATA_DAY).quantile(0.5).amount())
                .isCloseTo(0.94 * truth, within(0.1 * truth));
        assertThat(model.middle(CarFacts.of(salvage)) - model.middle(CarFacts.of(salvage).withCleanTitle(model)))
                .isCloseTo(Math.log(0.5), within(0.15));
    }

    @Test
    void beyond_the_data_the_interval_widens_and_says_so() throws IOException {
        double inside = width(valuer().forecast(InventedMarket.car("beta", "m1", 2008, 120_000).build(), DATA_DAY));
        ValueForecast old = valuer().forecast(InventedMarket.car("beta", "m1", 1990, 400_000).build(), DATA_DAY);
        ValueForecast model = valuer().forecast(InventedMarket.car("beta", "roadster", 2008, 120_000).build(), DATA_DAY);
        ValueForecast make = valuer().forecast(InventedMarket.car("omega", "m1", 2008, 120_000).build(), DATA_DAY);
        ValueForecast noMiles = valuer().forecast(
                InventedMarket.car("beta", "m1", 2008, 1).odometer(Fact.unknown()).build(), DATA_DAY);

        assertThat(width(old)).isGreaterThan(inside * 1.2);
        assertThat(old.warnings()).hasSize(2).allSatisfy(w -> assertThat(w).contains("beyond the price data"));
        assertThat(width(model)).isGreaterThan(inside);
        assertThat(model.warnings()).singleElement().asString()
                .contains("The model 'roadster' is not in the price data", "too high for a small or cheap one", "much wider");
        assertThat(width(make)).isGreaterThan(width(model));
        assertThat(make.warnings().get(0)).contains("The make 'omega' is not in the price data");
        assertThat(noMiles.warnings()).anyMatch(w -> w.contains("mileage is not known"));
    }

    @Test
    void a_title_brand_multiplies_and_widens() throws IOException {
        Vehicle.Builder car = InventedMarket.car("beta", "m1", 2011, 90_000);
        ValueForecast clean = valuer().forecast(car.build(), DATA_DAY);
        ValueForecast rebuilt = valuer().forecast(car.title(TitleBrand.REBUILT).build(), DATA_DAY);
        double factor = InventedMarket.settings().title(TitleBrand.REBUILT).value();

        assertThat(rebuilt.quantile(0.5).amount()).isCloseTo(factor * clean.quantile(0.5).amount(), within(1e-6));
        assertThat(width(rebuilt)).isGreaterThan(width(clean));
    }

    /** Conjugate normal update by hand: precisions add (Gelman et al. 2013, section 2.5). */
    @Test
    void comparables_move_the_level_by_the_conjugate_update() throws IOException {
        Vehicle car = InventedMarket.car("beta", "m2", 2010, 100_000).build();
        Valuer plain = valuer();
        double asked = plain.forecast(car, DATA_DAY).quantile(0.5).amount() / 0.94;
        Comparable dear = new Comparable(car, Money.usd(asked * 1.3), PriceKind.ASKING, DATA_DAY, "mine, row 2");
        Comparable sold = new Comparable(car, Money.usd(asked * 1.3 * 0.94), PriceKind.SALE, DATA_DAY, "mine, row 3");
        CarFacts facts = Valuer.asRepaired(CarFacts.of(car, DATA_DAY, CarFacts.decimalYear(DATA_DAY)), plain.model());
        PriceModel.Prediction predicted = plain.model().predict(facts);
        double variance = Math.pow(predicted.sigma(), 2);
        double expected = 2 * Math.log(1.3) / variance / (1 / 0.01 + 2 / variance);

        MarketSettings settings = InventedMarket.settings().withComparables(List.of(dear, sold));
        ValueForecast forecast = plain.with(settings).forecast(car, DATA_DAY);
        ValueForecast.Step step = forecast.steps().get(4);

        assertThat(Math.log(step.factor())).isCloseTo(expected, within(1e-9));
        assertThat(step.why()).contains("2 of your own comparables").contains("move the level by +");
        Vehicle other = InventedMarket.car("alpha", "m0", 2002, 300_000).build();
        double far = plain.with(settings).forecast(other, DATA_DAY).steps().get(4).factor();
        assertThat(far).isBetween(1.0, step.factor());
    }

    @Test
    void a_model_and_settings_of_different_markets_do_not_mix() throws IOException {
        MarketSettings us = InventedMarket.settings();
        MarketSettings other = new MarketSettings(
                new PriceIndex("UK", us.index().levels(), us.index().source()), us.factors(), List.of());

        assertThatThrownBy(() -> new Valuer(InventedMarket.model(), other)).hasMessageContaining("market US");
    }
}
