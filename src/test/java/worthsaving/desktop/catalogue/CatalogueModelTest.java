package worthsaving.desktop.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.CatalogueText.Line;
import worthsaving.desktop.HandTurned;
import worthsaving.desktop.InventedValues;
import worthsaving.desktop.MemoryShelf;
import worthsaving.desktop.car.Cars;
import worthsaving.quantity.Seed;
import worthsaving.ranking.Judge;
import worthsaving.ranking.JudgeSettings;
import worthsaving.ranking.Judged;
import worthsaving.ranking.Standing;

class CatalogueModelTest {

    private final HandTurned threads = new HandTurned();
    private final MemoryShelf shelf = new MemoryShelf();
    private final List<Catalogue> kept = new ArrayList<>();
    private final CatalogueModel model = new CatalogueModel(InventedValues.ground(), shelf,
            () -> List.of(Cars.overheated()), kept::add, threads.background(), threads.screen());

    @BeforeEach
    void open() {
        model.open();
    }

    @Test
    void a_figure_changed_by_hand_becomes_the_users_own() {
        model.edit(item("HEAD_GASKET"), "hours_mode", "2.2");
        Line line = item("HEAD_GASKET");
        assertThat(line.cell("hours_mode")).isEqualTo("2.2");
        assertThat(line.cell("label")).isEqualTo("user");
        assertThat(model.faults()).isEmpty();
        assertThat(model.changedProperty().get()).isTrue();
        model.undo();
        assertThat(item("HEAD_GASKET").cell("label")).isEqualTo("guess");
        assertThat(model.changedProperty().get()).isFalse();
        model.redo();
        assertThat(item("HEAD_GASKET").cell("hours_mode")).isEqualTo("2.2");
    }

    @Test
    void words_changed_by_hand_keep_their_label() {
        model.edit(item("HEAD_GASKET"), "caution", "let it cool");
        assertThat(item("HEAD_GASKET").cell("label")).isEqualTo("guess");
    }

    @Test
    void a_faulty_draft_is_told_and_can_neither_be_compared_nor_kept() {
        model.edit(item("HEAD_GASKET"), "hours_mode", "400");
        assertThat(model.faults()).singleElement().satisfies(f -> assertThat(f.message()).contains("out of order"));
        assertThat(model.valid()).isEmpty();
        model.compare();
        model.keep();
        assertThat(threads.waitingInBackground()).isZero();
        assertThat(kept).isEmpty();
        assertThat(shelf.read().equals(model.draftProperty().get())).isFalse();
    }

    @Test
    void what_it_changes_is_what_the_core_says() {
        Line line = item("HEAD_GASKET");
        model.edit(line, "consumables_high", "2900");
        model.edit(item("HEAD_GASKET"), "consumables_mode", "2400");
        model.compare();
        threads.turnAll();
        Standing after = standing(model.valid().orElseThrow());
        assertThat(model.differences()).singleElement().satisfies(d -> {
            assertThat(d.after().expectedProfit()).isEqualTo(after.expectedProfit());
            assertThat(d.before().expectedProfit()).isEqualTo(
                    standing(InventedValues.ground().catalogue()).expectedProfit());
            assertThat(d.after().expectedProfit().amount()).isLessThan(d.before().expectedProfit().amount());
        });
    }

    @Test
    void the_same_figures_change_no_car() {
        model.edit(item("HEAD_GASKET"), "caution", "let it cool");
        model.compare();
        threads.turnAll();
        assertThat(model.differences()).isEmpty();
        assertThat(model.noticeProperty().get()).contains("0 of 1");
    }

    @Test
    void keeping_puts_the_draft_on_the_shelf_and_into_use() {
        model.edit(item("HEAD_GASKET"), "hours_mode", "2.2");
        model.keep();
        assertThat(shelf.read().equals(model.draftProperty().get())).isTrue();
        assertThat(kept).singleElement().satisfies(c -> assertThat(
                c.itemsById().get("HEAD_GASKET").jobHours().hours().mode()).isEqualTo(2.2));
        assertThat(model.changedProperty().get()).isFalse();
    }

    @Test
    void a_shelf_that_cannot_be_written_keeps_the_draft_and_says_so() {
        shelf.lock();
        model.edit(item("HEAD_GASKET"), "hours_mode", "2.2");
        model.keep();
        assertThat(model.troubleProperty().get()).contains("the shelf").contains("no space left");
        assertThat(model.changedProperty().get()).isTrue();
        assertThat(kept).isEmpty();
    }

    @Test
    void every_cell_has_a_name_and_a_meaning() {
        for (Shown shown : Shown.values()) {
            for (Line line : model.draftProperty().get().lines(shown.file())) {
                Box.of(shown.file(), List.copyOf(line.cells().keySet())).forEach(box -> {
                    assertThat(BoxWords.name(box.key())).isNotBlank();
                    assertThat(BoxWords.meaning(box.key())).isNotBlank();
                });
            }
            shown.related().forEach(related -> assertThat(BoxWords.name(related.key())).isNotBlank());
        }
    }

    private Line item(String id) {
        return model.draftProperty().get().lines("items.csv").stream()
                .filter(l -> l.cell("id").equals(id)).findFirst().orElseThrow();
    }

    private static Standing standing(Catalogue catalogue) {
        Judge judge = new Judge(catalogue, new InventedValues(), JudgeSettings.usual(catalogue, Seed.DEFAULT));
        return Standing.of(((Judged.Done) judge.judge(Cars.overheated())).appraisal());
    }
}
