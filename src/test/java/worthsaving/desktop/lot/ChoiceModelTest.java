package worthsaving.desktop.lot;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import worthsaving.desktop.Ground;
import worthsaving.desktop.HandTurned;
import worthsaving.desktop.InventedValues;
import worthsaving.desktop.Units;
import worthsaving.desktop.book.Sample;
import worthsaving.ranking.Budget;
import worthsaving.ranking.LotChoice;
import worthsaving.ranking.Standing;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;

/** Choosing a set and comparing cars, on a small invented lot. */
class ChoiceModelTest {

    private static final Ground GROUND = InventedValues.ground();
    private static final String THREE = "id,year,make,model,odometer,price,title,present\n"
            + "A,2016,ford,focus,58000,300,clean,CRANKS_NO_START\n"
            + "B,2017,honda,civic,48000,400,clean,NO_CRANK\n"
            + "C,2001,honda,civic,248000,4000,clean,KNOCKS\n";

    @TempDir
    Path folder;

    private final HandTurned threads = new HandTurned();
    private BookedLot lot;
    private LotModel model;

    @AfterEach
    void close() {
        lot.book.close();
        threads.turnAll();
    }

    @BeforeEach
    void open() throws IOException {
        lot = new BookedLot(GROUND, folder.resolve("casebook.db"), Sample.NONE, threads);
        model = lot.model;
        model.open(Files.writeString(folder.resolve("three.csv"), THREE));
        threads.turnAll();
    }

    private List<Standing> standings() {
        return model.rows().stream().map(LotRow::standing).toList();
    }

    @Test
    void the_set_is_that_of_the_core_and_every_car_is_marked() {
        model.choose(new Limits("", "1", "", false));
        assertThat(model.choice().busyProperty().get()).isTrue();
        threads.turnAll();
        LotChoice core = LotChoice.of(standings(), Budget.NONE.withBays(1),
                LotChoice.Settings.usual(GROUND.settings().method().seed()));
        LotChoice shown = model.choice().choiceProperty().get();
        assertThat(shown.set()).isEqualTo(core.set());
        assertThat(shown.leftOut()).isEqualTo(core.leftOut());
        assertThat(shown.set().cars()).hasSize(1);
        for (Standing s : standings()) {
            String id = s.listing().id();
            assertThat(model.choice().mark(id)).contains(core.set().holds(id) ? "in the set" : "Left out");
        }
    }

    @Test
    void a_limit_that_is_no_number_is_refused_in_words() {
        model.choose(new Limits("plenty", "", "", false));
        threads.turnAll();
        assertThat(model.choice().troubleProperty().get()).contains("plenty");
        assertThat(model.choice().choiceProperty().get()).isNull();
    }

    @Test
    void a_changed_lot_has_no_set_any_more() {
        model.choose(new Limits("8,000", "2", "100", true));
        threads.turnAll();
        assertThat(model.choice().choiceProperty().get()).isNotNull();
        lot.change(model.listing("A").orElseThrow().withSeen(List.of(Observation.present("KNOCKS"))));
        threads.turnAll();
        assertThat(model.choice().choiceProperty().get()).isNull();
        assertThat(model.choice().mark("A")).isEmpty();
    }

    @Test
    void two_cars_are_compared_with_the_figures_of_the_lot() {
        List<Listing> two = List.of(model.listing("A").orElseThrow(), model.listing("C").orElseThrow());
        model.comparison().compare(two);
        threads.turnAll();
        assertThat(model.comparison().carsProperty().get()).hasSize(2);
        for (int i = 0; i < 2; i++) {
            assertThat(Standing.of(model.comparison().carsProperty().get().get(i)))
                    .isEqualTo(model.row(two.get(i).id()).orElseThrow().standing());
        }
        Comparison comparison = Comparison.of(model.comparison().carsProperty().get(), model::itemName,
                Units.MILES);
        Comparison.Line ask = line(comparison, "ask");
        assertThat(ask.texts()).containsExactly("300", "4,000");
        assertThat(ask.best()).containsExactly(0);
        assertThat(ask.differs()).isTrue();
        assertThat(line(comparison, "title").differs()).isFalse();
        assertThat(line(comparison, "failed").texts()).allSatisfy(t -> assertThat(t).isNotBlank());
    }

    @Test
    void one_car_or_five_cannot_be_compared() {
        model.comparison().compare(List.of(model.listing("A").orElseThrow()));
        threads.turnAll();
        assertThat(model.comparison().carsProperty().get()).isEmpty();
        assertThat(model.comparison().troubleProperty().get()).contains("two to four");
    }

    private static Comparison.Line line(Comparison comparison, String key) {
        return comparison.lines().stream().filter(l -> l.key().equals(key)).findFirst().orElseThrow();
    }
}
