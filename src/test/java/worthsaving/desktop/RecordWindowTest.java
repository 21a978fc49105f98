package worthsaving.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
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
import worthsaving.casebook.Actual;
import worthsaving.casebook.CaseFile;
import worthsaving.casebook.Edit;
import worthsaving.casebook.Forecast;
import worthsaving.casebook.JournalEntry;
import worthsaving.casebook.JournalEntry.What;
import worthsaving.desktop.book.Samples;
import worthsaving.desktop.lot.LotRow;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.quantity.Probability;
import worthsaving.quantity.Seed;
import worthsaving.ranking.Appraisal;
import worthsaving.ranking.Judge;
import worthsaving.ranking.Judged;
import worthsaving.ranking.Standing;
import worthsaving.record.Learning;
import worthsaving.vehicle.Listing;

/** The record in the real window: the example, a car finished by hand, and what it teaches switched off and on. */
@NeedsDisplay
@ExtendWith(ApplicationExtension.class)
class RecordWindowTest {

    private static final String TABLE = "id,year,make,model,odometer,price,title,present,seller_says\n"
            + "A,2012,ford,focus,98000,1200,clean,CRANKS_NO_START,\n"
            + "B,2010,toyota,prius,161800,1100,clean,OVERHEATS,WATER_PUMP\n";

    @TempDir
    static Path folder;

    private final RealWindow window = new RealWindow();

    @BeforeAll
    static void software() {
        RealWindow.software();
    }

    @Start
    void start(Stage stage) throws IOException {
        window.show(stage, Files.createTempDirectory(folder, "book").resolve("casebook.db"), Samples.shipped(RealWindow.GROUND));
        window.bench().open(Files.writeString(folder.resolve("two.csv"), TABLE));
    }

    @BeforeEach
    void judged() throws TimeoutException {
        window.until(() -> window.bench().lot().rows().size() == 2 && !window.bench().lot().busyProperty().get());
    }

    @AfterEach
    void end() {
        window.end();
    }

    /** Work that took twice the book hours, and a water pump thought unlikely that had failed: kept as if by the user. */
    private void workOn(String id, FxRobot robot) throws TimeoutException {
        robot.interact(() -> window.book().save(new Edit.Several("work", List.of(
                new Edit.Keep(id, new Forecast(Instant.parse("2025-11-01T12:00:00Z"), "c", "m", "p", Seed.DEFAULT, Money.USD,
                        Map.of(), Map.of("WATER_PUMP", Probability.of(0.2)))),
                new Edit.Write(id, new JournalEntry(Instant.parse("2025-11-10T12:00:00Z"), "", new What.Work(Hours.of(20),
                        Optional.of(Hours.of(10))), ""))))));
        window.until(() -> !window.book().busyProperty().get());
    }

    private void finish(FxRobot robot, String id) throws TimeoutException {
        ComboBox<CaseFile> cases = robot.lookup("#finish-case").queryComboBox();
        robot.interact(() -> cases.setValue(
                cases.getItems().stream().filter(c -> c.id().equals(id)).findFirst().orElseThrow()));
        for (String[] typed : new String[][] {{"BOUGHT", "2025-11-02"}, {"SOLD", "2025-11-20"}, {"PAID", "1,000"},
            {"SALE", "3,100"}, {"COST", "1,500"}, {"DAYS_TO_SELL", "5"}}) {
            type(robot, typed[0], typed[1]);
        }
        ComboBox<Optional<Boolean>> pump = robot.lookup("#finish-item-WATER_PUMP").queryComboBox();
        robot.interact(() -> pump.setValue(Optional.of(true)));
    }

    private static void type(FxRobot robot, String field, String text) {
        robot.interact(() -> robot.lookup("#finish-" + field).queryTextInputControl().setText(text));
    }

    private static void press(FxRobot robot, String id) {
        robot.interact(() -> robot.lookup(id).queryButton().fire());
    }

    @Test
    void invented_cars_are_an_example_and_teach_nothing(FxRobot robot) throws TimeoutException {
        robot.interact(() -> window.book().hideSample(false));
        robot.push(KeyCode.CONTROL, KeyCode.DIGIT6);
        window.until(() -> window.bench().record().rows().size() == 6 && window.bench().record().trackProperty().get() != null
                && window.bench().record().trackProperty().get().cars() == 6);
        assertThat(robot.lookup("#record-example").query().isVisible()).isTrue();
        assertThat(window.text(robot, "#record-caution")).contains("6 finished cars prove little");
        assertThat(robot.lookup("#score-VALUE").tryQuery()).isPresent();
        assertThat(robot.lookup("#score-items").tryQuery()).isPresent();
        assertThat(robot.lookup("#lesson-SPEED").<CheckBox>query().isDisabled()).isTrue();
        Learning learning = window.bench().record().learning();
        assertThat(learning.items()).isEmpty();
        assertThat(learning.lessons()).allMatch(l -> l.cars() == 0);
    }

    @Test
    void a_finished_car_teaches_and_the_figures_follow_the_switch(FxRobot robot) throws TimeoutException {
        Listing other = window.bench().lot().listing("B").orElseThrow();
        Standing untaught = Standing.of(window.core(other));
        workOn("A", robot);
        robot.push(KeyCode.CONTROL, KeyCode.DIGIT6);
        finish(robot, "A");
        type(robot, "SOLD", "2025-10-01");
        press(robot, "#finish-go");
        assertThat(window.text(robot, "#finish-SOLD-fault")).contains("Before the day of buying");
        assertThat(window.text(robot, "#finish-trouble")).isNotBlank();
        assertThat(window.book().caseOf("A").flatMap(CaseFile::actual)).isEmpty();
        type(robot, "SOLD", "2025-11-20");
        press(robot, "#finish-go");
        window.until(() -> window.book().caseOf("A").flatMap(CaseFile::actual).isPresent());
        Actual actual = window.book().caseOf("A").flatMap(CaseFile::actual).orElseThrow();
        assertThat(actual.hours()).isEqualTo(Hours.of(20));
        assertThat(actual.items()).containsEntry("WATER_PUMP", true);
        assertThat(robot.lookup("#record-example").query().isVisible()).isFalse();
        Learning learning = window.bench().record().learning();
        assertThat(learning.items()).extracting(i -> i.item()).containsExactly("WATER_PUMP");
        lotSays(robot, other, Standing.of(taught(learning, other)));

        turn(robot, "ITEMS", false);
        turn(robot, "SPEED", false);
        turn(robot, "DAYS_TO_SELL", false);
        lotSays(robot, other, untaught);
        turn(robot, "ITEMS", true);
        Standing itemsOnly = Standing.of(taught(window.bench().record().learning(), other));
        assertThat(itemsOnly).isNotEqualTo(untaught);
        lotSays(robot, other, itemsOnly);
    }

    private Appraisal taught(Learning learning, Listing car) {
        Ground ground = RealWindow.GROUND.taught(learning);
        return ((Judged.Done) new Judge(
                ground.catalogue(), ground.values(), ground.settings()).judge(car)).appraisal();
    }

    private void turn(FxRobot robot, String lesson, boolean on) throws TimeoutException {
        robot.push(KeyCode.CONTROL, KeyCode.DIGIT6);
        robot.interact(() -> robot.lookup("#lesson-" + lesson).<CheckBox>query().fire());
        window.until(() -> !window.book().busyProperty().get());
        assertThat(robot.lookup("#lesson-" + lesson).<CheckBox>query().isSelected()).isEqualTo(on);
    }

    private void lotSays(FxRobot robot, Listing car, Standing expected) throws TimeoutException {
        robot.push(KeyCode.CONTROL, KeyCode.DIGIT1);
        window.until(() -> !window.bench().lot().busyProperty().get());
        assertThat(window.bench().lot().row(car.id()).map(LotRow::standing)).contains(expected);
    }

    @Test
    void every_score_says_its_standard_term(FxRobot robot) throws TimeoutException {
        robot.interact(() -> window.book().hideSample(false));
        robot.push(KeyCode.CONTROL, KeyCode.DIGIT6);
        window.until(() -> window.bench().record().trackProperty().get() != null
                && window.bench().record().trackProperty().get().cars() == 6);
        Node scores = robot.lookup("#record-scores").query();
        List<String> helps = robot.from(scores).lookup(".label").queryAll().stream()
                .map(Node::getAccessibleHelp).filter(h -> h != null).toList();
        for (String term : List.of("Bias", "Coverage", "ranked probability score", "probability integral transform",
                "Brier score", "Reliability")) {
            assertThat(helps).anyMatch(h -> h.contains(term));
        }
        ScrollPane page = robot.lookup("#record-page").query();
        robot.interact(() -> page.setVvalue(1));
        for (Node label : robot.from(scores).lookup(".label").queryAll()) {
            assertThat(((Label) label).getHeight()).isGreaterThanOrEqualTo(
                    ((Label) label).prefHeight(((Label) label).getWidth()) - 1);
        }
    }
}
