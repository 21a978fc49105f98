package worthsaving.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeoutException;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TableView;
import javafx.scene.control.TextArea;
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
import worthsaving.cli.Run;
import worthsaving.desktop.lot.LotRow;
import worthsaving.market.Market;

/** The market in the real window, with the shipped price models: what is changed there changes the lot. */
@NeedsDisplay
@ExtendWith(ApplicationExtension.class)
class MarketWindowTest {

    private static final Path OWN = Path.of("shared", "samples", "comparables.csv");
    private static final ProjectFolder PROJECT = ProjectFolder.find();
    private static final Ground SHIPPED = PROJECT.read(InventedValues.TODAY);

    @TempDir
    static Path folder;

    private final RealWindow window = new RealWindow().on(SHIPPED);

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

    /** Expected profit by id, in hundredths as the command line writes it. */
    private Map<String, Double> profits() {
        Map<String, Double> all = new TreeMap<>();
        for (LotRow row : window.bench().lot().rows()) {
            all.put(row.listing().id(), Math.rint(100 * row.standing().expectedProfit().amount()) / 100);
        }
        return all;
    }

    private static Map<String, Double> ofCommandLine(String... more) throws IOException {
        List<String> arguments = new ArrayList<>(List.of("rank", "--json", "--today",
                InventedValues.TODAY.toString(), folder.resolve("three.csv").toString()));
        arguments.addAll(List.of(more));
        Run run = Run.of(arguments.toArray(String[]::new));
        assertThat(run.code()).as(run.err()).isZero();
        Map<String, Double> all = new TreeMap<>();
        for (JsonNode listing : new ObjectMapper().readTree(run.out()).get("listings")) {
            all.put(listing.get("id").asText(), listing.get("expected_profit").asDouble());
        }
        return all;
    }

    private void show(FxRobot robot, int page) throws TimeoutException {
        robot.push(KeyCode.CONTROL, KeyCode.DIGIT4);
        window.until(() -> robot.lookup("#market-car").tryQuery().isPresent());
        robot.interact(() -> window.bench().marketView().page(page));
    }

    private void changed(Map<String, Double> before) throws TimeoutException {
        window.until(() -> !window.bench().market().busyProperty().get() && !window.bench().lot().busyProperty().get()
                && !profits().equals(before));
    }

    @Test
    void pasted_comparables_move_the_lot_as_they_do_on_the_command_line(FxRobot robot) throws Exception {
        Map<String, Double> before = profits();
        assertThat(before).isEqualTo(ofCommandLine());
        show(robot, 3);
        String text = Files.readString(OWN);
        robot.interact(() -> robot.lookup("#market-own-text").<TextArea>query().setText(text));
        robot.clickOn("#market-own-add");
        changed(before);
        assertThat(profits()).isEqualTo(ofCommandLine("--comparables", OWN.toString()));
        TableView<?> own = robot.lookup("#market-own").queryTableView();
        assertThat(own.getItems()).hasSize(7);
        assertThat(window.text(robot, "#market-level-money")).contains("USD");
        robot.push(KeyCode.CONTROL, KeyCode.Z);
        window.until(() -> !window.bench().lot().busyProperty().get() && profits().equals(before));
    }

    @Test
    void a_factor_edited_in_its_field_changes_the_lot_and_one_out_of_range_is_refused(FxRobot robot) throws Exception {
        Map<String, Double> before = profits();
        show(robot, 2);
        type(robot, "#factor-haircut", "0.5");
        assertThat(window.text(robot, "#market-trouble")).contains("0.030 to 0.100");
        assertThat(profits()).isEqualTo(before);
        type(robot, "#factor-haircut", "0.1");
        changed(before);
        assertThat(profits().get("A")).isLessThan(before.get("A"));
        assertThat(window.text(robot, "#market-trouble")).isBlank();
        robot.clickOn("#usual-factor-haircut");
        window.until(() -> !window.bench().lot().busyProperty().get() && profits().equals(before));
    }

    @Test
    void another_market_has_its_own_money_and_cars_in_other_money_are_said_to_be_so(FxRobot robot) throws Exception {
        Map<String, Double> before = profits();
        show(robot, 1);
        ComboBox<Market> choice = robot.lookup("#market-choice").query();
        robot.interact(() -> choice.setValue(market(choice, "DE")));
        window.until(() -> !window.bench().market().busyProperty().get() && !window.bench().lot().busyProperty().get()
                && window.bench().lot().rows().isEmpty());
        assertThat(window.bench().lot().problems()).hasSize(3)
                .allSatisfy(p -> assertThat(p.what()).contains("USD").contains("EUR"));
        assertThat(window.settings().get("units")).contains("KILOMETRES");
        assertThat(window.settings().get("market")).contains("DE");
        assertThat(robot.lookup(".notice").queryAll()).anyMatch(
                n -> n instanceof Label l && l.getText().contains("no price index for Germany"));
        robot.push(KeyCode.CONTROL, KeyCode.DIGIT1);
        assertThat(window.text(robot, "#lot-currency")).contains("EUR");
        robot.interact(() -> choice.setValue(market(choice, "US")));
        window.until(() -> !window.bench().lot().busyProperty().get() && profits().equals(before));
    }

    private static Market market(ComboBox<Market> choice, String code) {
        return choice.getItems().stream().filter(m -> m.code().equals(code)).findFirst().orElseThrow();
    }

    private static void type(FxRobot robot, String id, String text) {
        TextField field = robot.lookup(id).query();
        robot.interact(() -> {
            field.requestFocus();
            field.selectAll();
        });
        robot.write(text).type(KeyCode.ENTER);
    }
}
