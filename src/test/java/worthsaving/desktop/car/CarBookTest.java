package worthsaving.desktop.car;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import worthsaving.casebook.CaseFile;
import worthsaving.casebook.Edit;
import worthsaving.casebook.Forecast;
import worthsaving.casebook.JournalEntry;
import worthsaving.casebook.JournalEntry.What;
import worthsaving.desktop.HandTurned;
import worthsaving.desktop.book.BookModel;
import worthsaving.desktop.book.Books;
import worthsaving.desktop.book.Bought;
import worthsaving.desktop.book.CarSettings;
import worthsaving.desktop.book.Sample;
import worthsaving.quantity.Money;
import worthsaving.record.Quantity;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;
import worthsaving.vehicle.Observation.Sight;
import worthsaving.vehicle.Observation.Witness;

/** The car screen on a casebook, turned by hand. */
class CarBookTest {

    private static final Instant NOW = Instant.parse("2025-11-20T12:00:00Z");

    @TempDir
    Path folder;

    private final HandTurned threads = new HandTurned();
    private CarModel car;
    private BookModel book;
    private CarBook keeper;
    private int gone;

    @BeforeEach
    void open() {
        car = new CarModel(Cars.GROUND, threads.background(), threads.screen());
        book = new BookModel(Books.opening(folder.resolve("book.db")), Sample.NONE, threads.background(), threads.screen());
        keeper = new CarBook(car, book, CarBookTest::name, () -> gone++, () -> NOW);
        book.save(new Edit.AddCase(Cars.overheated()));
        threads.turnAll();
        car.open(keeper.scenario(kept()));
        threads.turnAll();
    }

    @AfterEach
    void close() {
        book.close();
        threads.turnAll();
    }

    private static Optional<String> name(String id) {
        return Optional.ofNullable(Cars.GROUND.catalogue().findingsById().get(id)).map(f -> f.name())
                .or(() -> Optional.ofNullable(Cars.GROUND.catalogue().itemsById().get(id)).map(i -> i.name()));
    }

    private CaseFile kept() {
        return book.caseOf("T1").orElseThrow();
    }

    @Test
    void a_finding_and_a_drag_are_kept_each_as_one_edit_and_taken_back_one_by_one() {
        car.seen("KNOCKS", Sight.PRESENT);
        for (int price = 1_250; price >= 500; price -= 50) {
            car.drag(Lever.PRICE, price);
        }
        car.letGo();
        threads.turnAll();
        assertThat(kept().listing().observations()).contains(Observation.present("KNOCKS"));
        assertThat(book.settings()).containsEntry(CarSettings.of("T1") + "levers", "PRICE=500.0");
        assertThat(book.undoLabelProperty().get()).isEqualTo("T1: sliders");
        car.undo();
        threads.turnAll();
        assertThat(car.moved(Lever.PRICE)).isFalse();
        assertThat(book.undoLabelProperty().get()).isEqualTo("T1: " + name("KNOCKS").orElseThrow());
        car.undo();
        threads.turnAll();
        assertThat(car.scenarioProperty().get()).isEqualTo(Scenario.of(Cars.overheated()));
        car.redo();
        car.redo();
        threads.turnAll();
        assertThat(car.value(Lever.PRICE)).isEqualTo(500);
        assertThat(car.canRedoProperty().get()).isFalse();
    }

    @Test
    void what_is_changed_quickly_is_never_set_back_by_what_was_kept_before() {
        car.seen("KNOCKS", Sight.PRESENT);
        threads.turnBackground();
        car.seen("KNOCKS", Sight.ABSENT);
        threads.turnScreen();
        assertThat(car.scenarioProperty().get().sight("KNOCKS", Witness.OWN_EYES)).isEqualTo(Sight.ABSENT);
        car.drag(Lever.PRICE, 700);
        threads.turnAll();
        assertThat(car.value(Lever.PRICE)).as("still dragged").isEqualTo(700);
        car.letGo();
        threads.turnAll();
        assertThat(keeper.scenario(kept())).isEqualTo(car.scenarioProperty().get());
    }

    @Test
    void a_finding_of_the_journal_is_contradicted_in_the_journal() {
        JournalEntry entry = new JournalEntry(NOW, "opened up", new What.Finding(Observation.present("WATER_PUMP")), "");
        book.save(new Edit.Write("T1", entry));
        threads.turnAll();
        assertThat(car.scenarioProperty().get().sight("WATER_PUMP", Witness.OWN_EYES)).isEqualTo(Sight.PRESENT);
        car.seen("WATER_PUMP", Sight.ABSENT);
        car.seen("KNOCKS", Sight.ABSENT);
        threads.turnAll();
        assertThat(kept().journal()).hasSize(2);
        assertThat(car.scenarioProperty().get().sight("WATER_PUMP", Witness.OWN_EYES)).isEqualTo(Sight.ABSENT);
        assertThat(kept().asKnown().observations()).contains(Observation.absent("WATER_PUMP"), Observation.absent("KNOCKS"))
                .doesNotContain(Observation.present("WATER_PUMP"));
        assertThat(kept().listing().observations()).contains(Observation.absent("KNOCKS"))
                .noneMatch(o -> o.subject().equals("WATER_PUMP") && o.witness() == Witness.OWN_EYES);
    }

    @Test
    void an_edit_that_cannot_be_kept_stays_on_the_screen_and_goes_with_the_next() {
        book.save(new Edit.DropCase("T1"));
        threads.turnAll();
        assertThat(gone).isEqualTo(1);
        car.seen("KNOCKS", Sight.PRESENT);
        threads.turnAll();
        assertThat(kept().listing().observations()).contains(Observation.present("KNOCKS"));
        book.save(new Edit.AddCase(Cars.overheated()));
        threads.turnAll();
        assertThat(book.troubleProperty().get()).contains("there is a case T1 already");
        assertThat(car.scenarioProperty().get().sight("KNOCKS", Witness.OWN_EYES)).isEqualTo(Sight.PRESENT);
    }

    @Test
    void buying_keeps_price_day_and_forecast_as_one_edit() {
        BuyModel buy = new BuyModel(car, keeper, LocalDate.of(2025, 12, 1));
        assertThat(buy.priceProperty().get()).isEqualTo("1,300");
        buy.priceProperty().set("a song");
        assertThat(buy.buy()).isFalse();
        buy.priceProperty().set("1,100");
        buy.dayProperty().set("2025-12-02");
        assertThat(buy.day("2025-12-02").fault()).contains("still to come");
        assertThat(buy.buy()).isFalse();
        buy.dayProperty().set("2025-11-30");
        assertThat(buy.buy()).isTrue();
        threads.turnAll();
        assertThat(book.bought("T1")).contains(new Bought(LocalDate.of(2025, 11, 30), Money.usd(1_100)));
        assertThat(kept().forecasts()).hasSize(1);
        assertThat(kept().forecasts().get(0).items()).containsKey("WATER_PUMP");
        double cash = kept().forecasts().get(0).spreads().get(Quantity.COST).mean();
        double atAsk = Forecast.of(car.seen().orElseThrow().appraisal(), "", "", NOW).spreads().get(Quantity.COST).mean();
        assertThat(cash).as("200 less for the car, and less tax on it").isBetween(atAsk - 250, atAsk - 199);
        assertThat(kept().journal()).hasSize(1);
        book.undo();
        threads.turnAll();
        assertThat(book.bought("T1")).isEmpty();
        assertThat(kept().forecasts()).isEmpty();
        assertThat(kept().journal()).isEmpty();
    }

    @Test
    void the_listing_of_a_car_with_twice_the_same_evidence_is_shown_once() {
        Listing twice = Books.listing("D", "t.csv", Observation.present("KNOCKS"), Observation.present("KNOCKS"));
        book.save(new Edit.AddCase(twice));
        threads.turnAll();
        assertThat(keeper.scenario(book.caseOf("D").orElseThrow()).listing().observations())
                .containsExactly(Observation.present("KNOCKS"));
    }
}
