package worthsaving.desktop.lot;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.collections.ListChangeListener;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import worthsaving.desktop.Ground;
import worthsaving.desktop.HandTurned;
import worthsaving.desktop.InventedValues;
import worthsaving.desktop.book.Books;
import worthsaving.desktop.book.Sample;
import worthsaving.quantity.Money;
import worthsaving.ranking.Judge;
import worthsaving.ranking.Judged;
import worthsaving.ranking.LotRanking;
import worthsaving.ranking.Order;
import worthsaving.ranking.Ranked;
import worthsaving.ranking.Standing;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Listing;

class LotModelTest {

    private static final Ground GROUND = InventedValues.ground();
    private static final String HEADER = "id,year,make,model,odometer,price,title,present\n";
    private static final String TWO = HEADER + "A,2012,ford,focus,98000,1200,clean,CRANKS_NO_START\n"
            + "B,2014,honda,civic,88000,2600,clean,NO_CRANK\n";

    @TempDir
    Path folder;

    private final HandTurned threads = new HandTurned();
    private BookedLot lot;
    private LotModel model;

    @BeforeEach
    void start() {
        lot = new BookedLot(GROUND, folder.resolve("casebook.db"), Sample.NONE, threads);
        model = lot.model;
    }

    @AfterEach
    void close() {
        lot.book.close();
        threads.turnAll();
    }

    private Path table(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private static Listing withAsk(Listing l, double ask) {
        return new Listing(l.id(), l.vehicle(), Fact.known(Money.usd(ask)), l.seen(), l.towMiles(), l.exposure(),
                l.observations(), l.story(), l.origin());
    }

    @Test
    void figures_are_those_of_the_core() throws IOException {
        model.open(table("two.csv", TWO));
        assertThat(model.busyProperty().get()).isTrue();
        threads.turnAll();
        assertThat(model.busyProperty().get()).isFalse();
        assertThat(model.titleProperty().get()).isEqualTo("your casebook");
        assertThat(model.rows()).hasSize(2).extracting(LotRow::rank).containsExactly(1, 2);
        Judge judge = new Judge(GROUND.catalogue(), GROUND.values(), GROUND.settings());
        for (LotRow row : model.rows()) {
            Standing fresh = Standing.of(((Judged.Done) judge.judge(row.listing())).appraisal());
            assertThat(row.standing()).isEqualTo(fresh);
        }
    }

    @Test
    void bad_rows_are_listed_and_handed_back_as_they_came() throws IOException {
        String bad = "C,2050,ford,focus,98000,1200,clean,\n";
        model.open(table("bad.csv", TWO + bad));
        threads.turnAll();
        assertThat(model.rows()).hasSize(2);
        assertThat(model.problems()).isNotEmpty().allSatisfy(p -> assertThat(p.where()).contains("bad.csv, row 4"));
        assertThat(model.hasRefusedRows()).isTrue();
        Path out = folder.resolve("refused.csv");
        model.saveRefusedRows(out);
        assertThat(out).hasContent(HEADER + bad);
    }

    @Test
    void a_table_that_cannot_be_read_leaves_the_lot_as_it_was() throws IOException {
        model.open(table("two.csv", TWO));
        threads.turnAll();
        model.open(folder.resolve("absent.csv"));
        threads.turnAll();
        assertThat(model.rows()).hasSize(2);
        assertThat(model.troubleProperty().get()).contains("cannot be opened");
        model.open(table("wrong.csv", "colour,smell\nred,oil\n"));
        threads.turnAll();
        assertThat(model.rows()).hasSize(2);
        assertThat(model.problems()).isNotEmpty();
    }

    @Test
    void changes_made_quickly_one_after_another_are_all_judged() throws IOException {
        model.open(table("two.csv", TWO));
        threads.turnAll();
        Listing a = model.listing("A").orElseThrow();
        Listing b = model.listing("B").orElseThrow();
        lot.change(withAsk(a, 300));
        lot.change(withAsk(b, 400));
        threads.turnAll();
        assertThat(model.rows()).hasSize(2).allMatch(LotRow::edited);
        assertThat(model.listing("A").flatMap(l -> l.ask().get())).contains(Money.usd(300));
        assertThat(model.listing("B").flatMap(l -> l.ask().get())).contains(Money.usd(400));
        assertThat(model.busyProperty().get()).isFalse();
    }

    @Test
    void a_change_made_while_a_table_is_read_is_not_lost() throws IOException {
        model.open(table("two.csv", TWO));
        threads.turnAll();
        Listing a = model.listing("A").orElseThrow();
        model.open(table("again.csv", TWO));
        lot.change(withAsk(a, 333));
        threads.turnAll();
        assertThat(model.rows()).hasSize(2);
        assertThat(model.problems()).hasSize(2).allSatisfy(p -> assertThat(p.what()).contains("in your casebook already"));
        assertThat(model.listing("A").flatMap(l -> l.ask().get())).contains(Money.usd(333));
    }

    @Test
    void the_first_cars_are_shown_while_the_others_are_judged() throws IOException {
        StringBuilder fifteen = new StringBuilder(HEADER);
        for (int i = 0; i < 15; i++) {
            fifteen.append("C" + i + ",2012,ford,focus," + (90_000 + 1_000 * i) + "," + (900 + 100 * i)
                    + ",clean,CRANKS_NO_START\n");
        }
        List<Integer> sizes = new ArrayList<>();
        List<Integer> done = new ArrayList<>();
        model.rows().addListener((ListChangeListener<LotRow>) c -> {
            sizes.add(model.rows().size());
            done.add(model.doneProperty().get());
            assertThat(model.busyProperty().get()).isTrue();
            assertThat(model.rows()).extracting(r -> -r.standing().expectedProfit().amount()).isSorted();
        });
        model.open(table("fifteen.csv", fifteen.toString()));
        threads.turnAll();
        assertThat(sizes).containsExactly(6, 12, 15);
        assertThat(done).containsExactly(6, 12, 15);
        assertThat(model.busyProperty().get()).isFalse();
        assertThat(model.rows()).noneMatch(LotRow::edited);
        Judge judge = new Judge(GROUND.catalogue(), GROUND.values(), GROUND.settings());
        assertThat(model.rows()).extracting(LotRow::standing).containsExactlyElementsOf(
                new LotRanking(judge).rank(model.listings(), Order.EXPECTED_PROFIT, n -> { }, () -> false)
                        .places().stream().map(Ranked.Place::standing).toList());
    }

    @Test
    void stopping_in_the_middle_keeps_the_cars_judged_and_going_on_judges_the_others() throws IOException {
        StringBuilder ten = new StringBuilder(HEADER);
        for (int i = 0; i < 10; i++) {
            ten.append("C" + i + ",2012,ford,focus,98000,1200,clean,CRANKS_NO_START\n");
        }
        model.open(table("ten.csv", ten.toString()));
        while (model.rows().isEmpty()) {
            threads.turnBackground();
            threads.turnScreen();
        }
        model.cancel();
        threads.turnAll();
        assertThat(model.busyProperty().get()).isFalse();
        assertThat(model.rows()).hasSize(6);
        model.order(Order.CHANCE_OF_LOSS);
        threads.turnAll();
        assertThat(model.rows()).hasSize(10).noneMatch(LotRow::edited);
    }

    @Test
    void stopping_keeps_what_was_shown() throws IOException {
        model.open(table("two.csv", TWO));
        threads.turnAll();
        model.open(table("other.csv", HEADER + "C,2012,ford,focus,98000,1200,clean,\n"));
        model.cancel();
        threads.turnAll();
        assertThat(model.rows()).extracting(r -> r.listing().id()).containsExactlyInAnyOrder("A", "B");
        assertThat(model.busyProperty().get()).isFalse();
    }

    @Test
    void a_pasted_advert_is_read_judged_and_added() throws IOException {
        model.open(table("two.csv", TWO));
        threads.turnAll();
        List<Listing> opened = new ArrayList<>();
        model.adverts().onOpen(opened::add);
        model.adverts().read("2011 Honda Civic, 120k miles, clean title, overheats on the highway. $1,400 obo");
        threads.turnAll();
        assertThat(model.rows()).hasSize(3);
        assertThat(opened).hasSize(1);
        LotRow row = model.row(opened.get(0).id()).orElseThrow();
        assertThat(row.listing().vehicle().year().get()).contains(2011);
        assertThat(row.listing().ask().get()).contains(Money.usd(1_400));
        assertThat(row.listing().observations()).anyMatch(o -> o.subject().equals("OVERHEATS"));
        assertThat(model.adverts().notesProperty().get()).isEmpty();
    }

    @Test
    void what_an_advert_does_not_say_is_told_and_a_car_that_cannot_be_judged_is_listed() {
        model.adverts().read("ran when parked, no lowballers");
        threads.turnAll();
        assertThat(model.rows()).isEmpty();
        assertThat(model.adverts().notesProperty().get()).contains("no model year found").contains("no asking price");
        assertThat(model.problems()).anySatisfy(p -> assertThat(p.mend()).isEqualTo("enter at least one of them"));
    }

    @Test
    void another_order_needs_no_new_judging() throws IOException {
        model.open(table("two.csv", TWO));
        threads.turnAll();
        List<Standing> before = model.rows().stream().map(LotRow::standing).toList();
        model.order(Order.CHANCE_OF_LOSS);
        threads.turnAll();
        assertThat(model.rows()).extracting(LotRow::standing).containsExactlyInAnyOrderElementsOf(before);
        List<Standing> sorted = before.stream().sorted(Order.CHANCE_OF_LOSS.comparator()).toList();
        assertThat(model.rows()).extracting(LotRow::standing).containsExactlyElementsOf(sorted);
        assertThat(model.row("A").map(LotRow::standing)).isEqualTo(
                Optional.of(before.stream().filter(s -> s.listing().id().equals("A")).findFirst().orElseThrow()));
    }

    @Test
    void another_car_of_the_same_id_gets_an_id_of_its_own_and_one_undo_takes_the_table_back() throws IOException {
        model.open(table("two.csv", TWO));
        threads.turnAll();
        model.open(table("more.csv", HEADER + "A,2009,toyota,prius,150000,900,clean,OVERHEATS\n"));
        threads.turnAll();
        assertThat(model.rows()).extracting(r -> r.listing().id()).containsExactlyInAnyOrder("A", "B", "A-2");
        assertThat(model.problems()).anySatisfy(p -> assertThat(p.what()).contains("so this one is A-2"));
        lot.book.undo();
        threads.turnAll();
        assertThat(model.rows()).extracting(r -> r.listing().id()).containsExactlyInAnyOrder("A", "B");
    }

    @Test
    void dropped_cars_come_back_by_undo() throws IOException {
        model.open(table("two.csv", TWO));
        threads.turnAll();
        List<LotRow> before = List.copyOf(model.rows());
        model.drop(List.of("A", "B"));
        threads.turnAll();
        assertThat(model.rows()).isEmpty();
        lot.book.undo();
        threads.turnAll();
        assertThat(model.rows()).extracting(LotRow::standing)
                .containsExactlyElementsOf(before.stream().map(LotRow::standing).toList());
    }

    @Test
    void a_table_of_the_users_hides_the_invented_cars_and_undo_shows_them_again() throws IOException {
        BookedLot sampled = new BookedLot(GROUND, folder.resolve("other.db"),
                new Sample(List.of(Books.invented("S1")), Map.of()), threads);
        assertThat(sampled.model.rows()).extracting(r -> r.listing().id()).containsExactly("S1");
        assertThat(sampled.model.inventedProperty().get()).isTrue();
        sampled.model.open(table("two.csv", TWO));
        threads.turnAll();
        assertThat(sampled.model.rows()).extracting(r -> r.listing().id()).containsExactlyInAnyOrder("A", "B");
        sampled.book.undo();
        threads.turnAll();
        assertThat(sampled.model.rows()).extracting(r -> r.listing().id()).containsExactly("S1");
        sampled.book.close();
        threads.turnAll();
    }
}
