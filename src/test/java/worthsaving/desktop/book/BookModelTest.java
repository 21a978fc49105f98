package worthsaving.desktop.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import worthsaving.casebook.Actual;
import worthsaving.casebook.CaseFile;
import worthsaving.casebook.Casebook;
import worthsaving.casebook.Edit;
import worthsaving.casebook.Opening;
import worthsaving.casebook.Trouble;
import worthsaving.desktop.HandTurned;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Observation;

class BookModelTest {

    @TempDir
    Path folder;

    private final HandTurned hands = new HandTurned();
    private final List<BookModel> models = new ArrayList<>();

    @AfterEach
    void close() {
        models.forEach(BookModel::close);
        hands.turnAll();
    }

    private BookModel open(Sample sample) {
        BookModel model = new BookModel(Books.opening(folder.resolve("book.db")), sample, hands.background(), hands.screen());
        models.add(model);
        hands.turnAll();
        return model;
    }

    private BookModel openAnew(Sample sample) {
        models.forEach(BookModel::close);
        models.clear();
        hands.turnAll();
        return open(sample);
    }

    private static List<String> ids(BookModel model) {
        return model.cases().stream().map(CaseFile::id).toList();
    }

    @Test
    void edits_are_carried_out_in_order_and_the_cases_follow_once_nothing_waits() {
        BookModel model = open(Sample.NONE);
        assertThat(model.readOnly()).isFalse();
        model.save(new Edit.AddCase(Books.listing("A", "t.csv")));
        model.save(new Edit.ChangeCase(Books.listing("A", "t.csv", Observation.present("KNOCKS"))));
        model.save(new Edit.AddCase(Books.listing("B", "t.csv")));
        assertThat(model.busyProperty().get()).isTrue();
        hands.turnBackground();
        hands.turnScreen();
        assertThat(model.cases()).isEmpty();
        hands.turnAll();
        assertThat(ids(model)).containsExactly("A", "B");
        assertThat(model.caseOf("A").orElseThrow().listing().observations()).containsExactly(Observation.present("KNOCKS"));
        assertThat(model.busyProperty().get()).isFalse();
        assertThat(model.saidProperty().get()).contains("add B");
    }

    @Test
    void an_edit_is_there_after_reopening_and_can_be_undone_and_redone_then() {
        BookModel model = open(Sample.NONE);
        model.save(new Edit.AddCase(Books.listing("A", "t.csv")));
        BookModel again = openAnew(Sample.NONE);
        assertThat(ids(again)).containsExactly("A");
        assertThat(again.undoLabelProperty().get()).isEqualTo("add A");
        again.undo();
        hands.turnAll();
        assertThat(again.cases()).isEmpty();
        assertThat(again.canUndo()).isFalse();
        assertThat(again.redoLabelProperty().get()).isEqualTo("add A");
        again.redo();
        hands.turnAll();
        assertThat(ids(again)).containsExactly("A");
        for (int held = 0; held < 5; held++) {
            again.undo();
        }
        hands.turnAll();
        assertThat(again.cases()).isEmpty();
        assertThat(again.troubleProperty().get()).as("a key held down is no fault").isEmpty();
    }

    @Test
    void a_failed_edit_is_told_with_its_mend_and_keeps_nothing_and_the_next_good_one_clears_it() {
        BookModel model = open(Sample.NONE);
        model.save(new Edit.AddCase(Books.listing("A", "t.csv")));
        model.save(new Edit.Several("both", List.of(new Edit.AddCase(Books.listing("B", "t.csv")),
                new Edit.AddCase(Books.listing("A", "t.csv")))));
        hands.turnAll();
        assertThat(ids(model)).containsExactly("A");
        assertThat(model.troubleProperty().get()).contains("there is a case A already").contains("give it another id");
        model.save(new Edit.AddCase(Books.listing("B", "t.csv")));
        hands.turnAll();
        assertThat(model.troubleProperty().get()).isEmpty();
    }

    @Test
    void a_second_window_is_told_why_it_may_only_read() {
        BookModel first = open(Sample.NONE);
        first.save(new Edit.AddCase(Books.listing("A", "t.csv")));
        hands.turnAll();
        BookModel second = open(Sample.NONE);
        assertThat(second.readOnly()).isTrue();
        assertThat(second.noteProperty().get()).contains("another window").contains("go on in that window");
        assertThat(ids(second)).containsExactly("A");
        assertThat(second.canUndo()).isFalse();
        second.save(new Edit.DropCase("A"));
        hands.turnAll();
        assertThat(second.troubleProperty().get()).contains("for reading only");
        assertThat(ids(second)).containsExactly("A");
    }

    @Test
    void a_file_that_is_no_casebook_is_left_alone_and_the_sample_is_shown() throws IOException {
        Path file = Files.writeString(folder.resolve("book.db"), "my letters");
        BookModel model = open(Books.sample(Books.invented("S1")));
        assertThat(model.readOnly()).isTrue();
        assertThat(model.noteProperty().get()).contains("is damaged or is no casebook");
        assertThat(ids(model)).containsExactly("S1");
        model.save(new Edit.AddCase(Books.listing("A", "t.csv")));
        hands.turnAll();
        assertThat(model.troubleProperty().get()).contains("is damaged or is no casebook");
        assertThat(Files.readString(file)).isEqualTo("my letters");
    }

    @Test
    void what_waits_when_the_window_closes_is_kept() {
        BookModel model = open(Sample.NONE);
        for (int i = 0; i < 20; i++) {
            model.save(new Edit.AddCase(Books.listing("A" + i, "t.csv")));
        }
        assertThat(model.close()).isNotDone();
        hands.turnAll();
        models.clear();
        assertThat(ids(open(Sample.NONE))).hasSize(20);
    }

    @Test
    void an_opening_that_is_refused_says_so_and_nothing_fails_later() {
        BookModel model = new BookModel(() -> new Opening.Refused(new Trouble("no drive", "connect it")), Sample.NONE,
                hands.background(), hands.screen());
        model.undo();
        hands.turnAll();
        assertThat(model.openProperty().get()).isTrue();
        assertThat(model.noteProperty().get()).isEqualTo("no drive; connect it");
        assertThat(model.troubleProperty().get()).isEqualTo("no drive; connect it");
    }

    @Test
    void the_first_edit_of_an_invented_case_copies_it_whole_and_one_undo_takes_both_back() {
        BookModel model = open(Books.sample(Books.invented("S1", Books.note("one"), Books.note("two")), Books.invented("S2")));
        assertThat(ids(model)).containsExactly("S1", "S2");
        model.save(new Edit.Write("S1", Books.note("three")));
        hands.turnAll();
        CaseFile touched = model.caseOf("S1").orElseThrow();
        assertThat(touched.invented()).isTrue();
        assertThat(touched.journal()).extracting(e -> e.value().text()).containsExactly("one", "two", "three");
        assertThat(touched.journal()).allMatch(e -> e.number() > 0);
        model.undo();
        hands.turnAll();
        assertThat(model.caseOf("S1").orElseThrow().journal()).extracting(e -> e.value().text())
                .containsExactly("one", "two");
        assertThat(model.canUndo()).isFalse();
        assertThat(openAnew(Sample.NONE).cases()).isEmpty();
    }

    @Test
    void two_edits_in_a_row_copy_an_invented_case_once() {
        BookModel model = open(Books.sample(Books.invented("S1", Books.note("one"))));
        model.save(new Edit.Write("S1", Books.note("two")));
        model.save(new Edit.Set("car.S1.levers", Optional.of("PRICE=800.0")));
        hands.turnAll();
        assertThat(model.troubleProperty().get()).isEmpty();
        assertThat(model.caseOf("S1").orElseThrow().journal()).hasSize(2);
        assertThat(model.settings()).containsEntry("car.S1.levers", "PRICE=800.0");
        model.save(new Edit.Set("car.S1.levers", Optional.empty()));
        hands.turnAll();
        assertThat(model.settings()).doesNotContainKey("car.S1.levers");
    }

    @Test
    void entries_of_an_invented_journal_are_rewritten_and_struck_while_copying() {
        BookModel model = open(Books.sample(Books.invented("S1", Books.note("one"), Books.note("two"))));
        long second = model.caseOf("S1").orElseThrow().journal().get(1).number();
        assertThat(second).isNegative();
        model.save(new Edit.Rewrite(second, Books.note("2")));
        hands.turnAll();
        assertThat(model.caseOf("S1").orElseThrow().journal()).extracting(e -> e.value().text()).containsExactly("one", "2");
        model.undo();
        model.save(new Edit.Strike(second));
        hands.turnAll();
        assertThat(model.caseOf("S1").orElseThrow().journal()).extracting(e -> e.value().text()).containsExactly("one");
    }

    @Test
    void a_table_of_the_users_may_use_an_id_of_the_sample_and_is_not_taken_for_invented() {
        BookModel model = open(Books.sample(Books.invented("S1", Books.note("one"))));
        model.save(new Edit.Several("table", List.of(new Edit.AddCase(Books.listing("S1", "lot.csv, row 2")),
                new Edit.Write("S1", Books.note("mine")))));
        hands.turnAll();
        CaseFile own = model.caseOf("S1").orElseThrow();
        assertThat(own.invented()).isFalse();
        assertThat(own.journal()).extracting(e -> e.value().text()).containsExactly("mine");
        assertThat(ids(model)).containsExactly("S1");
    }

    @Test
    void invented_cases_are_dropped_one_by_one_or_hidden_and_shown_again() {
        BookModel model = open(Books.sample(Books.invented("S1"), Books.invented("S2"), Books.invented("S3")));
        model.save(new Edit.AddCase(Books.listing("A", "t.csv")));
        model.save(CarSettings.drop("S1", model.settings(), "drop"));
        model.save(new Edit.Write("S2", Books.note("touched")));
        hands.turnAll();
        assertThat(ids(model)).containsExactly("A", "S2", "S3");
        model.save(CarSettings.drop("S2", model.settings(), "drop"));
        hands.turnAll();
        assertThat(ids(model)).containsExactly("A", "S3");
        model.hideSample(true);
        hands.turnAll();
        assertThat(ids(model)).containsExactly("A");
        assertThat(model.caseOf("S3")).isPresent();
        model.hideSample(false);
        hands.turnAll();
        assertThat(ids(model)).containsExactly("A", "S1", "S2", "S3");
        model.undo();
        model.undo();
        model.undo();
        hands.turnAll();
        assertThat(ids(model)).containsExactly("A", "S2", "S3");
        assertThat(model.caseOf("S2").orElseThrow().journal()).hasSize(1);
        model.undo();
        model.undo();
        hands.turnAll();
        assertThat(ids(model)).containsExactly("A", "S1", "S2", "S3");
    }

    @Test
    void what_was_paid_is_read_back_as_it_was_written() {
        Bought bought = new Bought(LocalDate.of(2025, 11, 20), Money.usd(1_800.5));
        assertThat(Bought.read(bought.text())).contains(bought);
        assertThat(Bought.read("yesterday 1 USD")).isEmpty();
        assertThat(Bought.read("2025-11-20 much USD")).isEmpty();
        assertThat(Bought.read("")).isEmpty();
    }

    @Test
    void invented_cars_are_none_of_the_users_record() throws IOException {
        try (Casebook book = ((Opening.Opened) Books.opening(folder.resolve("r.db")).get()).casebook()) {
            book.save(new Edit.AddCase(Books.invented("S1").listing()));
            book.save(new Edit.AddCase(Books.listing("A", "t.csv")));
            var actual = new Actual(LocalDate.of(2025, 1, 1),
                    LocalDate.of(2025, 2, 1), Money.usd(1), Money.usd(2), Money.usd(1),
                    Hours.of(3), OptionalDouble.empty(), Map.of());
            book.save(new Edit.Finish("S1", Optional.of(actual)));
            book.save(new Edit.Finish("A", Optional.of(actual)));
            assertThat(book.finished()).extracting(f -> f.id()).containsExactly("A");
        }
    }
}
