package worthsaving.desktop.teardown;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import worthsaving.casebook.CaseFile;
import worthsaving.casebook.Edit;
import worthsaving.casebook.JournalEntry;
import worthsaving.casebook.JournalEntry.What;
import worthsaving.casebook.PhotoFile;
import worthsaving.desktop.Ground;
import worthsaving.desktop.HandTurned;
import worthsaving.desktop.InventedValues;
import worthsaving.desktop.book.BookModel;
import worthsaving.desktop.book.Books;
import worthsaving.desktop.book.Sample;
import worthsaving.desktop.book.Samples;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.ranking.Judge;
import worthsaving.ranking.Preparation;
import worthsaving.teardown.Advice;
import worthsaving.teardown.GoStop;
import worthsaving.teardown.TeardownTerms;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;

class TeardownModelTest {

    private static final Ground GROUND = InventedValues.ground();
    private static final Listing CAR = Books.listing("A", "invented", Observation.present("OVERHEATS"));

    @TempDir
    Path folder;

    private final HandTurned hands = new HandTurned();
    private BookModel book;
    private TeardownModel model;

    @BeforeEach
    void begin() {
        book = new BookModel(Books.opening(folder.resolve("book.db")), Sample.NONE, hands.background(), hands.screen());
        hands.turnAll();
        model = new TeardownModel(book, GROUND, hands.background(), hands.screen());
        book.save(new Edit.AddCase(CAR));
        book.save(new Edit.AddCase(Books.listing("B", "invented")));
        hands.turnAll();
    }

    private static JournalEntry entry(What what) {
        return JournalEntry.on(LocalDate.of(2025, 11, 22), ZoneId.systemDefault(), "cover", what, "");
    }

    private TeardownPicture.Seen seen() {
        return model.pictureProperty().get().seen().orElseThrow();
    }

    private Advice core() {
        CaseFile file = book.caseOf("A").orElseThrow();
        Preparation prepared = new Judge(GROUND.catalogue(), GROUND.values(), GROUND.settings())
                .prepare(file.teardown().addedTo(file.listing()));
        return new GoStop(GROUND.catalogue(), GROUND.settings(), TeardownTerms.USUAL)
                .advise(((Preparation.Ready) prepared).listing(), file.teardown());
    }

    @Test
    void what_is_written_is_kept_and_reckoned_and_can_be_undone() {
        model.open(Optional.of(CAR));
        hands.turnAll();
        Advice before = seen().advice();
        assertThat(before).isEqualTo(core());
        assertThat(before.openings()).noneMatch(o -> o.open());

        model.write(entry(new What.Opened("COOLANT_DRAINED")));
        model.write(entry(new What.Work(Hours.of(2), Optional.empty())));
        model.write(entry(new What.Receipt(Money.usd(90), Optional.empty())));
        model.write(entry(new What.Finding(Observation.present("WATER_PUMP"))));
        hands.turnAll();
        assertThat(book.caseOf("A").orElseThrow().journal()).hasSize(4);
        assertThat(seen().advice()).isEqualTo(core()).isNotEqualTo(before);
        assertThat(seen().advice().spent().receipts()).isEqualTo(Money.usd(90));
        assertThat(seen().advice().openings()).anyMatch(o -> o.open() && o.id().equals("COOLANT_DRAINED"));

        long last = model.fileProperty().get().journal().get(3).number();
        model.rewrite(last, entry(new What.Finding(Observation.absent("WATER_PUMP"))));
        hands.turnAll();
        assertThat(model.fileProperty().get().asKnown().observations()).contains(Observation.absent("WATER_PUMP"));
        model.strike(last);
        hands.turnAll();
        assertThat(model.fileProperty().get().journal()).hasSize(3);
        for (int i = 0; i < 6; i++) {
            book.undo();
        }
        hands.turnAll();
        assertThat(model.fileProperty().get().journal()).isEmpty();
        assertThat(seen().advice()).isEqualTo(before);
    }

    @Test
    void the_car_worked_on_comes_first_and_another_can_be_chosen() {
        model.open(Optional.of(Books.listing("B", "invented")));
        assertThat(model.fileProperty().get().id()).isEqualTo("B");
        model.choose("A");
        assertThat(model.fileProperty().get().id()).isEqualTo("A");
        model.open(Optional.of(Books.listing("B", "invented")));
        assertThat(model.fileProperty().get().id()).as("the choice stays while the same car is worked on").isEqualTo("A");
        hands.turnAll();
        assertThat(model.pictureProperty().get().file().id()).isEqualTo("A");
        assertThat(model.cars()).extracting(CaseFile::id).containsExactly("A", "B");
    }

    @Test
    void without_a_car_worked_on_the_teardown_under_way_is_shown() {
        book.save(new Edit.Write("B", entry(new What.Opened("UNDERTRAY_OFF"))));
        hands.turnAll();
        model.open(Optional.empty());
        assertThat(model.fileProperty().get().id()).isEqualTo("B");
    }

    @Test
    void a_first_time_user_sees_the_invented_teardown() {
        BookModel sample = new BookModel(Books.opening(folder.resolve("new.db")), Samples.shipped(GROUND),
                hands.background(), hands.screen());
        hands.turnAll();
        TeardownModel first = new TeardownModel(sample, GROUND, hands.background(), hands.screen());
        first.open(Optional.empty());
        assertThat(first.fileProperty().get().id()).isEqualTo("L01");
        assertThat(first.fileProperty().get().invented()).isTrue();
        assertThat(first.fileProperty().get().teardown().opened()).containsExactly("FRONT_COVER_OFF");
        assertThat(first.fileProperty().get().forecasts()).hasSize(1);
        assertThat(sample.bought("L01")).hasValueSatisfying(b -> assertThat(b.paid()).isEqualTo(Money.usd(2_014)));
        assertThat(first.fileProperty().get().receipts()).as("the price apart").contains(Money.usd(540));
    }

    @Test
    void a_car_that_is_no_case_yet_is_taken_in_when_asked() {
        model.open(Optional.of(Books.listing("NEW", "invented")));
        assertThat(model.fileProperty().get()).isNull();
        model.begin();
        hands.turnAll();
        assertThat(model.fileProperty().get().id()).isEqualTo("NEW");
        assertThat(model.pictureProperty().get()).isNotNull();
    }

    @Test
    void reckoning_can_be_stopped_and_taken_up_again_and_the_screen_never_waits() {
        model.open(Optional.of(CAR));
        assertThat(model.busyProperty().get()).isTrue();
        model.cancel();
        hands.turnAll();
        assertThat(model.pictureProperty().get()).isNull();
        assertThat(model.stoppedProperty().get()).isTrue();
        model.again();
        hands.turnAll();
        assertThat(model.pictureProperty().get()).isNotNull();
        assertThat(model.busyProperty().get()).isFalse();
        assertThat(model.stoppedProperty().get()).isFalse();
    }

    @Test
    void for_an_owner_the_bill_counts_down_what_was_agreed() {
        model.open(Optional.of(CAR));
        hands.turnAll();
        assertThat(seen().job()).isEmpty();
        model.keep(Optional.of(new Owner(Optional.of(Money.usd(100)), Optional.of(Money.usd(2_000)))));
        model.write(entry(new What.Work(Hours.of(3), Optional.empty())));
        hands.turnAll();
        assertThat(model.owner()).contains(new Owner(Optional.of(Money.usd(100)), Optional.of(Money.usd(2_000))));
        assertThat(seen().job().orElseThrow().left()).contains(Money.usd(1_700));
        assertThat(seen().quote().orElseThrow().ceiling()).isEqualTo(Money.usd(1_700));
        assertThat(seen().quote().orElseThrow().calls()).isNotEmpty();
        assertThat(AdviceWords.bill(seen().job().orElseThrow(), seen().quote()))
                .contains("On the bill: USD 300, hours 300 and receipts 0.", "Of the USD 2,000 agreed, USD 1,700 are left.");
        model.keep(Optional.empty());
        hands.turnAll();
        assertThat(model.owner()).isEmpty();
        assertThat(seen().quote()).isEmpty();
    }

    @Test
    void a_picture_goes_into_the_journal_by_reference() throws Exception {
        model.open(Optional.of(CAR));
        PhotoTaking photos = new PhotoTaking(model, hands.background(), hands.screen());
        Path picture = Files.writeString(folder.resolve("cover.jpg"), "no real picture");
        photos.take(picture, JournalEntry.on(LocalDate.of(2025, 11, 22), ZoneId.systemDefault(), "cover",
                new What.Note(), "the cover"));
        hands.turnAll();
        CaseFile file = model.fileProperty().get();
        assertThat(file.photosOf(file.journal().get(0).number())).singleElement().satisfies(p -> {
            assertThat(p.value().path()).isEqualTo("cover.jpg");
            assertThat(PhotoFile.place(p.value(), folder.resolve("book.db"))).isEqualTo(picture);
        });
        photos.take(folder.resolve("nowhere.jpg"), entry(new What.Note()));
        hands.turnAll();
        assertThat(photos.troubleProperty().get()).contains("nowhere.jpg", "cannot be read");
        assertThat(model.fileProperty().get().photos()).hasSize(1);
    }

    @Test
    void words_say_what_to_do_with_its_money() {
        model.open(Optional.of(CAR));
        hands.turnAll();
        Advice advice = seen().advice();
        assertThat(AdviceWords.headline(advice)).contains(advice.best().name()).contains("from here on");
        assertThat(AdviceWords.ends(advice)).hasSizeGreaterThan(3)
                .isSortedAccordingTo((a, b) -> b.move().worth().compareTo(a.move().worth()));
        List<Advice.Rule> rules = advice.rules();
        assertThat(rules).allSatisfy(r -> assertThat(AdviceWords.rule(r)).contains(r.name())
                .containsAnyOf(", stop: ", ", go on: "));
    }
}
