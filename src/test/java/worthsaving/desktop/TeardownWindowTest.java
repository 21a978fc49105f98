package worthsaving.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
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
import worthsaving.casebook.Access;
import worthsaving.casebook.CaseFile;
import worthsaving.casebook.Casebook;
import worthsaving.casebook.Edit;
import worthsaving.casebook.JournalEntry;
import worthsaving.casebook.JournalEntry.What;
import worthsaving.casebook.Opening;
import worthsaving.desktop.book.Sample;
import worthsaving.quantity.Money;
import worthsaving.ranking.Judge;
import worthsaving.ranking.Preparation;
import worthsaving.ranking.SampleLot;
import worthsaving.teardown.Advice;
import worthsaving.teardown.GoStop;
import worthsaving.teardown.JournalReader;
import worthsaving.teardown.TeardownTerms;

/** The teardown of the invented car L01 in the real window: lines added, corrected, struck and taken back. */
@NeedsDisplay
@ExtendWith(ApplicationExtension.class)
class TeardownWindowTest {

    @TempDir
    static Path folder;

    private final RealWindow window = new RealWindow();

    @BeforeAll
    static void software() {
        RealWindow.software();
    }

    @Start
    void start(Stage stage) throws IOException {
        Path book = Files.createTempDirectory(folder, "book").resolve("casebook.db");
        try (Casebook casebook = ((Opening.Opened) Casebook.open(book, Access.WRITE)).casebook();
                Reader in = Files.newBufferedReader(Path.of("shared", "samples", "teardown_L01.csv"))) {
            casebook.save(new Edit.AddCase(SampleLot.read(RealWindow.GROUND.catalogue()).stream()
                    .filter(l -> l.id().equals("L01")).findFirst().orElseThrow()));
            JournalReader.read("L01", in, RealWindow.GROUND.catalogue(), Money.USD).journal().entries().forEach(line ->
                    casebook.save(new Edit.Write("L01",
                            JournalEntry.of(line, RealWindow.GROUND.today(), ZoneId.systemDefault()))));
        }
        window.show(stage, book, Sample.NONE);
    }

    @BeforeEach
    void opened(FxRobot robot) throws TimeoutException {
        window.until(() -> window.book().openProperty().get() && !window.book().busyProperty().get());
        robot.push(KeyCode.CONTROL, KeyCode.DIGIT3);
        reckoned(0);
    }

    @AfterEach
    void end() {
        window.end();
    }

    private void reckoned(int more) throws TimeoutException {
        window.until(() -> !window.book().busyProperty().get() && !window.bench().teardown().busyProperty().get()
                && window.bench().teardown().pictureProperty().get() != null
                && window.bench().teardown().pictureProperty().get().file().journal().size() == 10 + more);
    }

    private CaseFile file() {
        return window.book().caseOf("L01").orElseThrow();
    }

    private Advice core() {
        Ground ground = RealWindow.GROUND;
        Preparation prepared = new Judge(ground.catalogue(), ground.values(), ground.settings())
                .prepare(file().teardown().addedTo(file().listing()));
        return new GoStop(ground.catalogue(), ground.settings(), TeardownTerms.USUAL)
                .advise(((Preparation.Ready) prepared).listing(), file().teardown());
    }

    private void showsWhatTheCoreSays(FxRobot robot) {
        Advice core = core();
        assertThat(window.text(robot, "#teardown-headline")).contains(core.best().name(),
                Figures.money(core.best().worth()));
        core.options().stream().map(Advice.Choice::move).filter(m -> m.results().isEmpty()).forEach(end -> assertThat(
                window.text(robot, "#end-" + end.id())).isEqualTo(Figures.amount(end.worth().amount())));
        assertThat(window.text(robot, "#spent-receipts")).isEqualTo(Figures.money(core.spent().receipts()));
        assertThat(window.text(robot, "#cost-to-finish"))
                .contains(Figures.amount(core.costToFinish().orElseThrow().mean()));
        core.openings().forEach(o -> assertThat(robot.lookup("#step-" + o.id()).<Node>query().getAccessibleText())
                .endsWith(o.open() ? "Open" : o.next() ? "Can be opened next" : "Behind those"));
    }

    private void kind(FxRobot robot, int index) {
        ComboBox<?> kind = robot.lookup("#line-kind").queryComboBox();
        robot.interact(() -> kind.getSelectionModel().select(index));
    }

    private void type(FxRobot robot, String id, String text) {
        TextField field = robot.lookup(id).query();
        robot.interact(() -> {
            field.requestFocus();
            field.selectAll();
        });
        robot.write(text);
    }

    @Test
    void a_step_a_finding_and_a_receipt_change_the_advice_and_are_taken_back(FxRobot robot) throws TimeoutException {
        Advice before = core();
        showsWhatTheCoreSays(robot);

        kind(robot, 0);
        type(robot, "#line-subject", "coolant drained");
        robot.type(KeyCode.ENTER);
        robot.clickOn("#line-add");
        reckoned(1);
        assertThat(file().teardown().opened()).contains("COOLANT_DRAINED");
        showsWhatTheCoreSays(robot);

        kind(robot, 1);
        type(robot, "#line-subject", "turbo bearing or shaft");
        robot.clickOn("#line-add");
        reckoned(2);
        kind(robot, 3);
        type(robot, "#line-words", "gasket");
        type(robot, "#line-figure", "42");
        robot.type(KeyCode.ENTER);
        reckoned(3);
        assertThat(file().journal().get(12).value().what()).isInstanceOf(What.Receipt.class);
        assertThat(file().journal().get(12).value().stage()).isEqualTo("front cover");
        showsWhatTheCoreSays(robot);
        assertThat(core().best()).isNotEqualTo(before.best());
        assertThat(core().costToFinish().orElseThrow().mean()).isGreaterThan(before.costToFinish().orElseThrow().mean());

        for (int i = 2; i >= 1; i--) {
            robot.push(KeyCode.CONTROL, KeyCode.Z);
            reckoned(i);
        }
        robot.clickOn("#teardown-undo");
        window.until(() -> !window.book().busyProperty().get());
        reckoned(0);
        assertThat(core()).isEqualTo(before);
        showsWhatTheCoreSays(robot);
    }

    @Test
    void a_line_is_corrected_and_struck_and_bad_input_is_said_beside_its_field(FxRobot robot) throws TimeoutException {
        kind(robot, 2);
        type(robot, "#line-figure", "2,5");
        robot.clickOn("#line-add");
        assertThat(window.text(robot, "#fault-FIGURE")).contains("“2,5” must be a number");
        assertThat(file().journal()).hasSize(10);
        type(robot, "#line-figure", "2.5");
        robot.clickOn("#line-add");
        reckoned(1);
        long number = file().journal().get(10).number();

        Button correct = robot.lookup("#correct-" + number).query();
        robot.interact(correct::fire);
        type(robot, "#line-figure", "3");
        robot.clickOn("#line-add");
        window.until(() -> !window.book().busyProperty().get() && file().hours().value() == 10);
        assertThat(window.text(robot, "#spent-hours")).isNotBlank();

        Button strike = robot.lookup("#strike-" + number).query();
        robot.interact(strike::fire);
        reckoned(0);
        assertThat(file().hours().value()).isEqualTo(7);
    }

    @Test
    void for_an_owner_there_is_a_ceiling_and_when_to_call(FxRobot robot) throws TimeoutException {
        robot.interact(() -> robot.lookup("#owner-is").<CheckBox>query().fire());
        window.until(() -> window.bench().teardown().pictureProperty().get().seen()
                .filter(s -> s.job().isPresent()).isPresent() && !window.bench().teardown().busyProperty().get());
        assertThat(window.text(robot, "#owner-bill")).contains("On the bill", "Ceiling to agree");
        List<String> words = robot.from(robot.lookup("#owner").<Node>query()).lookup(".label").queryAll().stream()
                .filter(Label.class::isInstance).map(n -> ((Label) n).getText()).toList();
        assertThat(words).anyMatch(w -> w.contains("Call the owner")).anyMatch(w -> w.contains("the rest then"));
    }
}
