package worthsaving.desktop.car;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import worthsaving.desktop.HandTurned;
import worthsaving.vehicle.Observation.Sight;
import worthsaving.vehicle.Observation.Witness;

class CarModelTest {

    private final HandTurned threads = new HandTurned();
    private final CarModel model = new CarModel(Cars.GROUND, threads.background(), threads.screen());

    @BeforeEach
    void open() {
        model.open(Cars.overheated());
        threads.turnAll();
    }

    @Test
    void opening_a_car_judges_it() {
        assertThat(model.seen()).isPresent();
        assertThat(model.busyProperty().get()).isFalse();
        assertThat(model.canUndoProperty().get()).isFalse();
        assertThat(model.value(Lever.PRICE)).isEqualTo(1_300);
        assertThat(model.moved(Lever.PRICE)).isFalse();
    }

    @Test
    void every_edit_can_be_undone_and_redone() {
        model.seen("KNOCKS", Sight.PRESENT);
        model.drag(Lever.TARGET, 500);
        model.letGo();
        model.reset(Lever.TARGET);
        assertThat(model.moved(Lever.TARGET)).isFalse();
        model.undo();
        assertThat(model.value(Lever.TARGET)).isEqualTo(500);
        model.undo();
        model.undo();
        assertThat(model.scenarioProperty().get()).isEqualTo(Scenario.of(Cars.overheated()));
        assertThat(model.canUndoProperty().get()).isFalse();
        model.redo();
        assertThat(model.scenarioProperty().get().sight("KNOCKS", Witness.OWN_EYES)).isEqualTo(Sight.PRESENT);
    }

    @Test
    void a_whole_drag_is_one_step_of_undo() {
        for (int ask = 1_250; ask >= 500; ask -= 50) {
            model.drag(Lever.PRICE, ask);
        }
        assertThat(model.canUndoProperty().get()).isFalse();
        model.letGo();
        assertThat(model.value(Lever.PRICE)).isEqualTo(500);
        model.undo();
        assertThat(model.value(Lever.PRICE)).isEqualTo(1_300);
    }

    @Test
    void while_dragging_only_the_newest_position_is_reckoned_next() {
        List<Double> shown = new ArrayList<>();
        model.pictureProperty().addListener((o, was, is) -> shown.add(is.scenario().lever(Lever.PRICE).orElseThrow()));
        for (int ask = 1_200; ask >= 500; ask -= 100) {
            model.drag(Lever.PRICE, ask);
        }
        threads.turnAll();
        assertThat(shown).containsExactly(1_200.0, 500.0);
        assertThat(model.busyProperty().get()).isFalse();
    }

    @Test
    void a_result_for_findings_already_changed_is_never_shown() {
        List<Scenario> shown = new ArrayList<>();
        model.pictureProperty().addListener((o, was, is) -> shown.add(is.scenario()));
        model.seen("KNOCKS", Sight.PRESENT);
        model.seen("KNOCKS", Sight.ABSENT);
        threads.turnAll();
        assertThat(shown).hasSize(1);
        assertThat(shown.get(0).sight("KNOCKS", Witness.OWN_EYES)).isEqualTo(Sight.ABSENT);
    }

    @Test
    void undo_brings_back_the_very_same_figures() {
        double before = model.seen().orElseThrow().appraisal().assessment().bestWay().expectedProfit();
        model.seen("WHITE_SMOKE_SWEET", Sight.PRESENT);
        threads.turnAll();
        model.undo();
        threads.turnAll();
        assertThat(model.seen().orElseThrow().appraisal().assessment().bestWay().expectedProfit()).isEqualTo(before);
    }

    @Test
    void the_screen_thread_alone_may_edit() {
        assertThatThrownBy(() -> threads.elsewhere(() -> model.seen("KNOCKS", Sight.PRESENT)))
                .isInstanceOf(IllegalStateException.class);
    }

    @Test
    void the_listing_changes_with_findings_but_not_with_levers() {
        model.drag(Lever.PRICE, 150);
        model.letGo();
        assertThat(model.scenarioProperty().get().listing()).isEqualTo(Cars.overheated());
        model.seen("KNOCKS", Sight.ABSENT);
        assertThat(model.scenarioProperty().get().listing()).isNotEqualTo(Cars.overheated());
    }
}
