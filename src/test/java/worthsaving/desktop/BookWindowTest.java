package worthsaving.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.control.Label;
import javafx.scene.control.TableView;
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
import worthsaving.desktop.book.Sample;
import worthsaving.desktop.car.Lever;
import worthsaving.desktop.lot.LotRow;
import worthsaving.ranking.Standing;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;

/** The window on a casebook: what is done in it is there when it is opened again. */
@NeedsDisplay
@ExtendWith(ApplicationExtension.class)
class BookWindowTest {

    private static final String TABLE = "id,year,make,model,odometer,price,title,present,seller_says\n"
            + "A,2012,ford,focus,98000,1200,clean,CRANKS_NO_START,\n"
            + "B,2014,honda,civic,88000,2600,clean,NO_CRANK,\n";

    @TempDir
    static Path folder;

    private final RealWindow first = new RealWindow();
    private final RealWindow again = new RealWindow();
    private RealWindow open = first;
    private Stage stage;
    private Path casebook;

    @BeforeAll
    static void software() {
        RealWindow.software();
    }

    @Start
    void start(Stage given) throws IOException {
        stage = given;
        casebook = Files.createTempDirectory(folder, "book").resolve("casebook.db");
        first.show(stage, casebook, Sample.NONE);
        first.bench().open(Files.writeString(folder.resolve("two.csv"), TABLE));
    }

    @BeforeEach
    void judged() throws TimeoutException {
        judged(first, 2);
    }

    private void judged(RealWindow window, int cars) throws TimeoutException {
        window.until(() -> window.bench().lot().rows().size() == cars && !window.bench().lot().busyProperty().get());
    }

    private void reopen(FxRobot robot) throws TimeoutException {
        first.end();
        open = again;
        robot.interact(() -> again.show(stage, casebook, Sample.NONE));
        again.until(() -> again.book().openProperty().get());
    }

    @AfterEach
    void end() {
        open.end();
    }

    @Test
    void an_edited_car_has_the_same_figures_after_reopening_and_undo_reaches_back(FxRobot robot) throws TimeoutException {
        first.openCar(robot, "A");
        Listing before = first.bench().car().scenarioProperty().get().listing();
        robot.clickOn("#checklist-words").write("knock");
        robot.clickOn("#PRESENT-KNOCKS");
        first.reckoned();
        robot.interact(() -> {
            first.bench().car().drag(Lever.PRICE, 500);
            first.bench().car().letGo();
        });
        first.reckoned();
        first.until(() -> !first.book().busyProperty().get());
        assertThat(first.text(robot, "#book-said")).contains("Kept: A");
        List<String> figures = figures(first, robot);
        Listing edited = first.bench().car().scenarioProperty().get().listing();
        assertThat(edited.observations()).contains(Observation.present("KNOCKS"));

        reopen(robot);
        judged(again, 2);
        assertThat(again.bench().lot().row("A").map(LotRow::standing)).contains(Standing.of(again.core(edited)));
        again.openCar(robot, "A");
        assertThat(again.bench().car().value(Lever.PRICE)).isEqualTo(500);
        assertThat(figures(again, robot)).isEqualTo(figures);

        // Not by key: while a slow machine draws, the display repeats a key that the robot holds, and each repeat is an undo.
        robot.interact(again.bench()::undo);
        again.until(() -> !again.bench().car().moved(Lever.PRICE));
        robot.interact(again.bench()::undo);
        again.until(() -> again.bench().car().scenarioProperty().get().listing().equals(before));
        again.reckoned();
        again.showsWhatTheCoreSays(robot, again.core(before));
        robot.interact(again.bench()::undo);
        again.until(() -> again.bench().lot().rows().isEmpty() && !again.bench().car().isOpen());
        robot.interact(again.bench()::redo);
        judged(again, 2);
    }

    private static List<String> figures(RealWindow window, FxRobot robot) {
        return List.of(window.text(robot, "#car-headline"), window.text(robot, "#car-profit"),
                window.text(robot, "#car-loss"), window.text(robot, "#car-most"));
    }

    @Test
    void dropped_cars_come_back_by_undo_also_after_reopening(FxRobot robot) throws TimeoutException {
        TableView<LotRow> table = first.table(robot);
        robot.interact(() -> {
            table.requestFocus();
            table.getSelectionModel().selectAll();
        });
        robot.type(KeyCode.DELETE);
        first.until(() -> first.bench().lot().rows().isEmpty());
        reopen(robot);
        assertThat(again.bench().lot().rows()).isEmpty();
        robot.interact(again.bench()::undo);
        judged(again, 2);
    }

    @Test
    void a_second_window_says_so_and_keeps_nothing(FxRobot robot) throws TimeoutException {
        Stage[] other = new Stage[1];
        robot.interact(() -> {
            other[0] = new Stage();
            again.show(other[0], casebook, Sample.NONE);
        });
        judged(again, 2);
        String[] note = new String[1];
        robot.interact(() -> note[0] = ((Label) again.bench().lookup("#book-note")).getText());
        assertThat(note[0]).contains("another window").contains("for reading only").contains("close it and open");
        robot.interact(() -> again.bench().openCar(again.bench().lot().listing("A").orElseThrow()));
        again.reckoned();
        robot.interact(() -> again.bench().car().seen("KNOCKS", Observation.Sight.PRESENT));
        again.reckoned();
        assertThat(again.bench().car().canUndoProperty().get()).as("to play with").isTrue();
        robot.interact(() -> again.bench().undo());
        again.reckoned();
        assertThat(again.bench().car().scenarioProperty().get().listing().observations())
                .doesNotContain(Observation.present("KNOCKS"));
        assertThat(again.book().caseOf("A").orElseThrow().listing())
                .isEqualTo(first.book().caseOf("A").orElseThrow().listing());
        robot.interact(other[0]::close);
        again.end();
    }

    @Test
    void a_car_bought_leaves_the_lot_with_its_forecast_kept(FxRobot robot) throws TimeoutException {
        first.openCar(robot, "A");
        robot.clickOn("#buy");
        robot.interact(() -> robot.lookup("#buy-price").queryTextInputControl().setText("cheap"));
        assertThat(first.text(robot, "#buy-price-fault")).contains("is no amount");
        robot.clickOn("#buy-go");
        assertThat(first.book().bought("A")).isEmpty();
        robot.interact(() -> robot.lookup("#buy-price").queryTextInputControl().setText("1,000"));
        robot.clickOn("#buy-go");
        first.until(() -> first.book().bought("A").isPresent());
        assertThat(first.book().caseOf("A").orElseThrow().forecasts()).hasSize(1);
        assertThat(first.text(robot, "#bought")).contains("USD 1,000");
        robot.push(KeyCode.CONTROL, KeyCode.DIGIT1);
        judged(first, 1);
        robot.interact(first.bench()::undo);
        judged(first, 2);
    }
}
