package worthsaving.desktop.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import worthsaving.casebook.Actual;
import worthsaving.casebook.CaseFile;
import worthsaving.casebook.Edit;
import worthsaving.casebook.JournalEntry;
import worthsaving.casebook.JournalEntry.What;
import worthsaving.casebook.LearningSwitch;
import worthsaving.deal.Term;
import worthsaving.desktop.Ground;
import worthsaving.desktop.HandTurned;
import worthsaving.desktop.InventedValues;
import worthsaving.desktop.book.BookModel;
import worthsaving.desktop.book.Books;
import worthsaving.desktop.book.Bought;
import worthsaving.desktop.book.Samples;
import worthsaving.desktop.record.FinishModel.Field;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.record.Quantity;
import worthsaving.record.TrackRecord;

/** The record and its form, turned by hand. */
class RecordModelTest {

    private static final Ground GROUND = InventedValues.ground();

    @TempDir
    Path folder;

    private final HandTurned threads = new HandTurned();
    private BookModel book;
    private RecordModel model;

    @BeforeEach
    void open() {
        book = new BookModel(Books.opening(folder.resolve("book.db")), Samples.shipped(GROUND), threads.background(),
                threads.screen());
        model = new RecordModel(book, GROUND, threads.background(), threads.screen());
        book.revisionProperty().addListener(o -> model.follow());
        threads.turnAll();
    }

    @AfterEach
    void close() {
        book.close();
        threads.turnAll();
    }

    private FinishModel form(String id) {
        FinishModel form = new FinishModel(model);
        form.begin(book.caseOf(id).orElseThrow());
        return form;
    }

    private void own() {
        book.save(new Edit.Several("own", List.of(new Edit.AddCase(Books.listing("A", "t.csv")),
                new Edit.Write("A", new JournalEntry(Instant.EPOCH, "",
                        new What.Work(Hours.of(20), Optional.of(Hours.of(10))), "")),
                new Edit.Write("A", new JournalEntry(Instant.EPOCH, "",
                        new What.Receipt(Money.usd(300), Optional.empty()), "")),
                new Edit.Set(Bought.setting("A"), Optional.of("2025-11-01 1000.0 USD")))));
        threads.turnAll();
    }

    @Test
    void the_example_is_whole_and_scored_and_nothing_is_learnt_from_it() {
        assertThat(model.exampleProperty().get()).isTrue();
        assertThat(model.rows()).hasSize(6).allMatch(r -> r.of().invented());
        TrackRecord track = model.trackProperty().get();
        assertThat(track.cars()).isEqualTo(6);
        assertThat(track.quantities()).hasSize(Quantity.values().length).allMatch(q -> q.cars() == 6);
        assertThat(track.failedItems()).isPresent();
        assertThat(model.learning().lessons()).allMatch(l -> l.cars() == 0);
        assertThat(model.learning().items()).isEmpty();
        assertThat(GROUND.taught(model.learning()).settings()).isEqualTo(GROUND.settings());
        assertThat(GROUND.taught(model.learning()).catalogue()).isEqualTo(GROUND.catalogue());
        assertThat(model.shownLearningProperty().get().lessons()).allMatch(l -> l.cars() == 6);
        assertThat(model.underWay().stream().filter(c -> book.bought(c.id()).isPresent()).map(CaseFile::id))
                .containsExactly("L01", "W01", "W02");
    }

    @Test
    void the_form_begins_with_what_is_known_and_says_what_is_missing() {
        own();
        FinishModel form = form("A");
        assertThat(form.text(Field.BOUGHT).get()).isEqualTo("2025-11-01");
        assertThat(form.text(Field.PAID).get()).isEqualTo("1,000");
        assertThat(form.text(Field.COST).get()).isEqualTo("1,300");
        assertThat(form.text(Field.HOURS).get()).isEqualTo("20.0");
        assertThat(form.fault(Field.SALE, "")).isEqualTo("Needed.");
        assertThat(form.fault(Field.SOLD, "2025-10-01")).contains("Before the day of buying, 2025-11-01");
        assertThat(form.fault(Field.DAYS_TO_SELL, "")).isEmpty();
        assertThat(form.finish()).isFalse();
        threads.turnAll();
        assertThat(book.caseOf("A").flatMap(CaseFile::actual)).isEmpty();
    }

    @Test
    void the_first_own_car_takes_the_place_of_the_example_and_teaches() {
        own();
        FinishModel form = form("A");
        form.text(Field.SALE).set("$2,900");
        form.text(Field.SOLD).set("2025-11-20");
        form.found("WATER_PUMP", Optional.of(true));
        assertThat(form.finish()).isTrue();
        threads.turnAll();
        Actual actual = book.caseOf("A").flatMap(CaseFile::actual).orElseThrow();
        assertThat(actual.profitBeforeHours()).isEqualTo(Money.usd(1_600));
        assertThat(actual.days()).isEqualTo(19);
        assertThat(actual.items()).containsEntry("WATER_PUMP", true);
        assertThat(model.exampleProperty().get()).isFalse();
        assertThat(model.rows()).hasSize(1);
        assertThat(GROUND.taught(model.learning()).settings().terms().mean(Term.SPEED))
                .isGreaterThan(GROUND.settings().terms().mean(Term.SPEED));
        model.turn(LearningSwitch.SPEED, false);
        threads.turnAll();
        assertThat(GROUND.taught(model.learning()).settings()).isEqualTo(GROUND.settings());
        book.undo();
        book.undo();
        threads.turnAll();
        assertThat(model.exampleProperty().get()).isTrue();
    }

    @Test
    void finishing_an_invented_car_keeps_it_an_example() {
        FinishModel form = form("W02");
        assertThat(form.items()).containsEntry("WATER_PUMP", Optional.of(true));
        assertThat(form.items()).containsEntry("THERMOSTAT", Optional.empty());
        form.text(Field.SALE).set("4,300");
        assertThat(form.finish()).isTrue();
        threads.turnAll();
        assertThat(model.rows()).hasSize(7);
        assertThat(model.exampleProperty().get()).isTrue();
        assertThat(model.learning().lessons()).allMatch(l -> l.cars() == 0);
    }
}
