package worthsaving.desktop.market;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.desktop.Ground;
import worthsaving.desktop.HandTurned;
import worthsaving.desktop.ProjectFolder;
import worthsaving.desktop.Settings;
import worthsaving.desktop.car.Cars;
import worthsaving.market.MarketSettings;
import worthsaving.quantity.Source;
import worthsaving.valuation.ValueForecast;

class MarketModelTest {

    private static final LocalDate DAY = LocalDate.of(2025, 12, 1);
    private static final ProjectFolder FOLDER = ProjectFolder.find();
    private static final Ground GROUND = FOLDER.read(DAY);
    private static final String TWO = "year,make,model,odometer,price,price_kind,seen\n"
            + "2012,ford,focus,90000,7000,asked,2025-11-01\n2013,ford,focus,95000,,asked,2025-11-02\n"
            + "2011,ford,focus,99000,6100,sold,2025-11-03\n";

    private final HandTurned threads = new HandTurned();
    private final MarketNotes notes = MarketNotes.inMemory();
    private final Settings settings = Settings.inMemory();
    private final List<Ground> told = new ArrayList<>();
    private final MarketModel model = model();

    private MarketModel model() {
        return new MarketModel(GROUND, FOLDER, notes, settings, told::add, threads.background(), threads.screen());
    }

    private void opened() {
        model.open();
        threads.turnAll();
    }

    private ValueForecast value(Ground ground) {
        return ground.values().forecast(Cars.overheated().vehicle(), DAY);
    }

    @Test
    void opening_reads_the_market_and_judges_nothing_anew() {
        opened();
        assertThat(model.composedProperty().get().model().card().market()).isEqualTo("US");
        assertThat(told).isEmpty();
        assertThat(model.markets()).extracting("code").contains("US", "UK", "DE");
    }

    @Test
    void another_market_brings_its_currency_units_makes_and_priced_catalogue_and_is_remembered() {
        opened();
        model.choose("DE");
        threads.turnAll();
        Ground german = told.get(told.size() - 1);
        assertThat(german.settings().terms().currency().getCurrencyCode()).isEqualTo("EUR");
        assertThat(german.tables().odometerUnit().name()).isEqualTo("KILOMETRES");
        assertThat(german.makes()).contains("opel");
        double dollars = GROUND.catalogue().tools().get(0).price().amount().mode();
        assertThat(german.catalogue().tools().get(0).price().amount().mode()).isCloseTo(0.92 * dollars, within(1e-9));
        assertThat(MarketModel.remembered(settings, FOLDER)).isEqualTo("DE");
        assertThat(german.adverts().read("2012 vw golf, 120000 km, asking 1500", DAY).toListing("A", "test").ask().get()
                .orElseThrow().currency().getCurrencyCode()).isEqualTo("EUR");
    }

    @Test
    void a_factor_is_set_within_its_range_only_and_brought_back_by_undo() {
        opened();
        double before = value(model.composedProperty().get().ground()).mean().amount();
        model.setFactor(MarketSettings.HAIRCUT, "0.10");
        threads.turnAll();
        double after = value(told.get(0)).mean().amount();
        assertThat(after / before).isCloseTo(0.90 / 0.94, within(1e-9));
        assertThat(model.composedProperty().get().settings().factor(MarketSettings.HAIRCUT).source().label())
                .isEqualTo(Source.Label.USER);
        model.setFactor(MarketSettings.HAIRCUT, "0.2");
        threads.turnAll();
        assertThat(model.troubleProperty().get()).contains("0.030").contains("0.100");
        assertThat(told).hasSize(1);
        model.setFactor(MarketSettings.HAIRCUT, "a tenth");
        assertThat(model.troubleProperty().get()).contains("a tenth");
        model.undo();
        threads.turnAll();
        assertThat(value(told.get(1)).mean().amount()).isEqualTo(before);
        assertThat(notes.get("market.US")).isEmpty();
    }

    @Test
    void a_month_of_the_index_is_checked_entered_and_taken_out() {
        opened();
        model.setLevel("2025-13", "200");
        assertThat(model.troubleProperty().get()).contains("2025-13");
        model.setLevel("2025-11", "-3");
        assertThat(model.troubleProperty().get()).contains("-3");
        double before = value(model.composedProperty().get().ground()).mean().amount();
        model.setLevel("2025-12", "200");
        model.removeLevel(YearMonth.of(2025, 10));
        threads.turnAll();
        var index = model.composedProperty().get().settings().index();
        assertThat(index.levels()).containsEntry(LocalDate.of(2025, 12, 15), 200.0)
                .doesNotContainKey(LocalDate.of(2025, 10, 15));
        assertThat(index.source().text()).contains("2 month(s)").contains("BLS");
        assertThat(value(model.composedProperty().get().ground()).mean().amount()).isGreaterThan(before);
        model.publishedIndex();
        threads.turnAll();
        assertThat(value(model.composedProperty().get().ground()).mean().amount()).isEqualTo(before);
    }

    @Test
    void comparables_move_the_level_and_a_row_that_cannot_be_used_is_told_and_kept() {
        opened();
        model.look(Optional.of(Cars.overheated()));
        model.add("mine", TWO);
        threads.turnAll();
        MarketWork.Composed composed = model.composedProperty().get();
        assertThat(composed.own().rows()).extracting(OwnCars.Row::line).containsExactly(2L, 4L);
        assertThat(composed.own().faults()).singleElement().asString().contains("row 3");
        assertThat(notes.get("market.US").orElseThrow()).contains("2013,ford,focus,95000,,asked");
        CarMarket car = model.carProperty().get();
        assertThat(car.level().rows()).hasSize(2);
        assertThat(car.moved().amount()).isCloseTo(
                car.value().mean().amount() - car.before().mean().amount(), within(1e-9)).isNotZero();
        assertThat(car.level().rows().stream().mapToDouble(r -> r.moves()).sum())
                .isCloseTo(car.level().shift(), within(1e-12));
        model.remove(composed.own().rows().get(0));
        threads.turnAll();
        assertThat(model.composedProperty().get().own().rows()).extracting(OwnCars.Row::line).containsExactly(4L);
    }

    @Test
    void a_text_without_a_usable_row_is_refused_with_why() {
        opened();
        model.add("mine", "nothing to see here");
        threads.turnAll();
        assertThat(model.troubleProperty().get()).contains("mine");
        assertThat(told).isEmpty();
        model.add("mine", TWO.replace("7000", "GBP 7000").replace("6100", ""));
        threads.turnAll();
        assertThat(model.troubleProperty().get()).isNotBlank();
        assertThat(model.composedProperty().get().own().rows()).isEmpty();
    }

    @Test
    void what_was_changed_is_there_at_the_next_start() {
        opened();
        model.setFactor(MarketSettings.LOCAL, "1.1");
        model.add("mine", TWO);
        threads.turnAll();
        double kept = value(told.get(told.size() - 1)).mean().amount();
        told.clear();
        MarketModel next = model();
        next.follow();
        threads.turnAll();
        assertThat(value(told.get(0)).mean().amount()).isEqualTo(kept);
        next.follow();
        threads.turnAll();
        assertThat(told).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"US", "UK", "DE"})
    void the_window_can_start_on_every_market(String code) {
        Ground ground = FOLDER.read(DAY, code);
        assertThat(ground.home().market().code()).isEqualTo(code);
        assertThat(FOLDER.sample(ground)).isNotNull();
        assertThat(ground.catalogue().currency()).isEqualTo(ground.home().market().currency());
        assertThat(ground.with(ground.home().asWritten()).catalogue().currency())
                .isEqualTo(ground.home().market().currency());
    }

    @Test
    void changes_of_one_market_leave_the_other_alone() {
        opened();
        model.setFactor(MarketSettings.LOCAL, "1.2");
        model.choose("UK");
        threads.turnAll();
        assertThat(model.edits()).isEqualTo(MarketEdits.NONE);
        model.choose("US");
        threads.turnAll();
        assertThat(model.edits().factors()).containsEntry(MarketSettings.LOCAL, 1.2);
    }
}
