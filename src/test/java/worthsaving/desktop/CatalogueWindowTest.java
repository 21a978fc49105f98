package worthsaving.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
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
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.CatalogueReading;
import worthsaving.catalog.CatalogueText.Line;
import worthsaving.desktop.lot.LotRow;
import worthsaving.ranking.Standing;
import worthsaving.vehicle.Listing;

/** The catalogue in the real window: a figure changed, looked at, taken back and kept. */
@NeedsDisplay
@ExtendWith(ApplicationExtension.class)
class CatalogueWindowTest {

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

    private Line pump() {
        return window.bench().catalogue().draftProperty().get().lines("items.csv").stream()
                .filter(l -> l.cell("id").equals("WATER_PUMP")).findFirst().orElseThrow();
    }

    private TextField cell(FxRobot robot, String column) {
        return robot.lookup("#cell-items-" + pump().line() + '-' + column).query();
    }

    private void type(FxRobot robot, String column, String figure) {
        TextField field = cell(robot, column);
        robot.interact(() -> {
            field.requestFocus();
            field.selectAll();
        });
        robot.write(figure).type(KeyCode.ENTER);
    }

    private void showPump(FxRobot robot) {
        robot.push(KeyCode.CONTROL, KeyCode.DIGIT5);
        robot.clickOn("#catalogue-words").write("water pump leaking");
    }

    @Test
    void a_figure_is_changed_and_undone_by_key_and_redone(FxRobot robot) {
        showPump(robot);
        String before = pump().cell("consumables_high");
        type(robot, "consumables_high", "900");
        assertThat(pump().cell("consumables_high")).isEqualTo("900");
        assertThat(pump().cell("label")).isEqualTo("user");
        robot.push(KeyCode.CONTROL, KeyCode.Z);
        assertThat(pump().cell("consumables_high")).isEqualTo(before);
        assertThat(cell(robot, "consumables_high").getText()).isEqualTo(before);
        robot.push(KeyCode.CONTROL, KeyCode.Y);
        assertThat(cell(robot, "consumables_high").getText()).isEqualTo("900");
    }

    @Test
    void a_fault_is_told_beside_the_cell_and_cannot_be_kept(FxRobot robot) {
        showPump(robot);
        type(robot, "consumables_low", "950");
        assertThat(window.bench().catalogue().faults()).isNotEmpty();
        assertThat(robot.lookup("#catalogue-keep").<Button>query().isDisabled()).isTrue();
        assertThat(robot.lookup(".failed").queryAll())
                .anyMatch(n -> n instanceof Label l && l.isVisible() && l.getText().contains("out of order"));
    }

    @Test
    void what_a_figure_changes_is_shown_and_once_kept_the_lot_is_judged_by_it(FxRobot robot) throws TimeoutException {
        showPump(robot);
        type(robot, "consumables_high", "2900");
        type(robot, "consumables_mode", "2400");
        robot.clickOn("#catalogue-compare");
        window.until(() -> !window.bench().catalogue().busyProperty().get());
        Catalogue draft = ((CatalogueReading.Valid) window.bench().catalogue().draftProperty().get().read()).catalogue();
        Listing overheated = window.bench().lot().listing("C").orElseThrow();
        Standing after = Standing.of(window.core(draft, overheated));
        assertThat(after).isNotEqualTo(Standing.of(window.core(overheated)));
        String shown = Figures.amount(after.expectedProfit().amount());
        assertThat(robot.from(robot.lookup("#catalogue-changes").<Node>query()).lookup(".label").queryAll())
                .anyMatch(n -> n instanceof Label l && l.getText().contains(shown));
        robot.clickOn("#catalogue-keep");
        robot.push(KeyCode.CONTROL, KeyCode.DIGIT1);
        window.until(() -> !window.bench().lot().busyProperty().get()
                && window.bench().lot().row("C").map(LotRow::standing).filter(after::equals).isPresent());
        assertThat(window.shelf().read().equals(window.bench().catalogue().draftProperty().get())).isTrue();
    }
}
