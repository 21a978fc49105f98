package worthsaving.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.TableView;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.TitledPane;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.GridPane;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import worthsaving.desktop.lot.LotColumn;
import worthsaving.desktop.lot.LotRow;

/** The lot and what all screens share in the real window, driven with mouse and keyboard. */
@NeedsDisplay
@ExtendWith(ApplicationExtension.class)
class WindowTest {

    @TempDir
    static Path folder;

    private final RealWindow window = new RealWindow();

    @BeforeAll
    static void software() {
        RealWindow.software();
    }

    @Start
    void start(Stage stage) throws IOException {
        window.start(stage, folder);
    }

    @BeforeEach
    void judged() throws TimeoutException {
        window.judged();
    }

    @AfterEach
    void end() {
        window.end();
    }

    @Test
    void the_lot_opens_judged_and_is_sorted_by_a_click_on_a_heading(FxRobot robot) {
        TableView<LotRow> table = window.table(robot);
        assertThat(table.getItems()).hasSize(3).extracting(LotRow::rank).containsExactly(1, 2, 3);
        robot.clickOn("#lot-ASK");
        assertThat(table.getItems()).extracting(r -> r.listing().id()).containsExactly("C", "A", "B");
        robot.clickOn("#lot-ASK");
        assertThat(table.getItems()).extracting(r -> r.listing().id()).containsExactly("B", "A", "C");
        assertThat(window.settings().get("lot.columns")).hasValueSatisfying(l -> assertThat(l).endsWith(">ASK"));
    }

    @Test
    void words_narrow_the_lot_and_rows_are_copied_as_a_table(FxRobot robot) {
        robot.push(KeyCode.CONTROL, KeyCode.F);
        robot.write("civic");
        TableView<LotRow> table = window.table(robot);
        assertThat(table.getItems()).extracting(r -> r.listing().id()).containsExactly("B");
        robot.interact(() -> {
            table.requestFocus();
            table.getSelectionModel().selectAll();
        });
        robot.push(KeyCode.CONTROL, KeyCode.C);
        String[] copied = new String[1];
        robot.interact(() -> copied[0] = Clipboard.getSystemClipboard().getString());
        List<String> lines = copied[0].lines().toList();
        assertThat(lines).hasSize(2);
        assertThat(lines.get(1)).startsWith("B\t").contains("2014 Honda Civic").contains("2,600");
    }

    @Test
    void selected_cars_are_set_side_by_side_and_a_set_is_chosen(FxRobot robot) throws TimeoutException {
        TableView<LotRow> table = window.table(robot);
        robot.clickOn("#lot-compare");
        assertThat(window.text(robot, "#compare-trouble")).contains("select two to four");
        robot.interact(() -> {
            table.requestFocus();
            table.getSelectionModel().selectAll();
        });
        robot.push(KeyCode.CONTROL, KeyCode.E);
        WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, () -> window.bench().lot().comparison().carsProperty().get().size() == 3);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(window.text(robot, "#compare-ask-0")).endsWith(LotColumn.ASK.text(table.getItems().get(0)));
        robot.clickOn("#compare-back");
        assertThat(table.isVisible()).isTrue();
        TitledPane pane = robot.lookup("#lot-choose").query();
        robot.interact(() -> pane.setExpanded(true));
        WaitForAsyncUtils.waitForFxEvents();
        robot.clickOn("#choose-bays").write("0").clickOn("#choose-go");
        WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, () -> window.bench().lot().choice().choiceProperty().get() != null);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(window.text(robot, "#choose-sum")).isNotBlank();
        assertThat(window.bench().lot().rows()).allSatisfy(
                r -> assertThat(window.bench().lot().choice().mark(r.listing().id())).isNotBlank());
    }

    @Test
    void units_change_by_key_and_the_shortcuts_stand_in_one_place(FxRobot robot) {
        robot.push(KeyCode.CONTROL, KeyCode.U);
        assertThat(window.settings().get("units")).contains("KILOMETRES");
        robot.push(KeyCode.CONTROL, KeyCode.U);
        robot.push(KeyCode.CONTROL, KeyCode.K);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#shortcuts").queryAs(GridPane.class).getChildren())
                .hasSizeGreaterThan(2 * Shortcuts.values().length);
        robot.type(KeyCode.ESCAPE);
    }

    @Test
    void theme_and_text_size_change_by_key_and_are_remembered(FxRobot robot) {
        robot.push(KeyCode.CONTROL, KeyCode.D);
        assertThat(window.settings().get("theme")).contains("DARK");
        robot.push(KeyCode.CONTROL, KeyCode.EQUALS);
        assertThat(window.bench().getStyle()).contains("14.0px");
        robot.push(KeyCode.CONTROL, KeyCode.DIGIT0);
        assertThat(window.bench().getStyle()).contains("13.0px");
    }

    @Test
    void everything_that_can_be_used_has_words_for_a_screen_reader(FxRobot robot) throws TimeoutException {
        window.openCar(robot, "B");
        for (Node node : window.bench().lookupAll(".text-field, .slider, .toggle-button, .combo-box")) {
            boolean named = node.getAccessibleText() != null
                    || node instanceof Labeled l && !l.getText().isBlank()
                    || node instanceof TextInputControl t && t.getPromptText() != null;
            assertThat(named).as(node.toString()).isTrue();
        }
    }

    @Test
    void only_the_screen_thread_may_touch_the_models() {
        assertThatThrownBy(() -> window.bench().lot().drop(List.of("A")))
                .isInstanceOf(IllegalStateException.class).hasMessageContaining("screen thread");
    }
}
