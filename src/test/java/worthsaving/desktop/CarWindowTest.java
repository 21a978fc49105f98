package worthsaving.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Slider;
import javafx.scene.control.TabPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
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
import worthsaving.deal.WayOut;
import worthsaving.desktop.car.ItemDial;
import worthsaving.desktop.car.Lever;
import worthsaving.desktop.lot.LotRow;
import worthsaving.quantity.Money;
import worthsaving.ranking.Appraisal;
import worthsaving.ranking.Judge;
import worthsaving.ranking.Preparation;
import worthsaving.ranking.Rescue;
import worthsaving.ranking.RescueTerms;
import worthsaving.ranking.Rescuer;
import worthsaving.ranking.Standing;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;

/** The car in the real window, driven with mouse and keyboard; what it shows is compared with the core. */
@NeedsDisplay
@ExtendWith(ApplicationExtension.class)
class CarWindowTest {

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
    void a_car_shows_the_figures_of_the_core_and_a_finding_moves_them_and_undo_brings_them_back(FxRobot robot)
            throws TimeoutException {
        window.openCar(robot, "C");
        Listing before = window.bench().car().scenarioProperty().get().listing();
        window.showsWhatTheCoreSays(robot, window.core(before));
        robot.clickOn("#checklist-words").write("white smoke");
        robot.clickOn("#PRESENT-WHITE_SMOKE_SWEET");
        window.reckoned();
        Listing after = window.bench().car().scenarioProperty().get().listing();
        assertThat(after.observations()).contains(Observation.present("WHITE_SMOKE_SWEET"));
        window.showsWhatTheCoreSays(robot, window.core(after));
        robot.clickOn("#undo");
        window.reckoned();
        assertThat(window.bench().car().scenarioProperty().get().listing()).isEqualTo(before);
        window.showsWhatTheCoreSays(robot, window.core(before));
        robot.interact(() -> window.bench().requestFocus());
        robot.push(KeyCode.CONTROL, KeyCode.Y);
        window.reckoned();
        window.showsWhatTheCoreSays(robot, window.core(after));
    }

    @Test
    void the_price_follows_the_slider_and_one_undo_takes_back_the_drag(FxRobot robot) throws TimeoutException {
        window.openCar(robot, "A");
        Slider slider = robot.lookup("#lever-price").query();
        Node thumb = robot.from(slider).lookup(".thumb").query();
        Bounds track = slider.localToScreen(slider.getBoundsInLocal());
        robot.moveTo(thumb).press(MouseButton.PRIMARY);
        robot.moveTo(new Point2D(track.getMinX() + 0.30 * track.getWidth(), track.getCenterY()));
        robot.moveTo(new Point2D(track.getMinX() + 0.04 * track.getWidth(), track.getCenterY()));
        robot.release(MouseButton.PRIMARY);
        window.reckoned();
        double price = window.bench().car().value(Lever.PRICE);
        assertThat(price).isLessThan(1_200);
        Listing listing = window.bench().car().scenarioProperty().get().listing();
        var prepared = (Preparation.Ready) new Judge(RealWindow.GROUND.catalogue(), RealWindow.GROUND.values(),
                RealWindow.GROUND.settings())
                .prepare(listing);
        window.showsWhatTheCoreSays(robot, prepared.listing()
                .appraise(RealWindow.GROUND.settings().terms(), RealWindow.GROUND.settings().rule(),
                Optional.of(Money.usd(price))));
        robot.clickOn("#undo");
        window.reckoned();
        assertThat(window.bench().car().moved(Lever.PRICE)).isFalse();
        window.showsWhatTheCoreSays(robot, window.core(listing));
        assertThat(window.book().undoLabelProperty().get()).isEqualTo("3 cars of three.csv");
    }

    @Test
    void for_its_owner_a_quote_is_compared_as_the_core_does_and_kept(FxRobot robot) throws TimeoutException {
        window.openCar(robot, "C");
        TabPane tabs = robot.lookup("#car .tab-pane").query();
        robot.interact(() -> tabs.getTabs().stream().filter(t -> "tab-ways".equals(t.getId()))
                .forEach(tabs.getSelectionModel()::select));
        window.until(() -> robot.lookup("#keep-cheapest").tryQuery().isPresent());
        TextField quote = robot.lookup("#keep-quote").query();
        robot.interact(quote::requestFocus);
        robot.write("2900").type(KeyCode.TAB);
        robot.write("4");
        assertThat(((TextField) robot.lookup("#keep-offer").query()).getText()).as("goes on where Tab led").isEqualTo("4");
        robot.type(KeyCode.BACK_SPACE, 1);
        Listing car = window.bench().car().scenarioProperty().get().listing();
        Rescue rescue = new Rescuer(RealWindow.GROUND.catalogue(), RealWindow.GROUND.values(),
                RealWindow.GROUND.settings()).compare(window.core(car), RescueTerms.of(3, 12_000)
                .withQuote(Money.usd(2_900)));
        window.until(() -> robot.lookup("#keep-net-" + rescue.plan().options().size()).tryQuery().isPresent());
        for (int row = 1; row <= rescue.plan().options().size(); row++) {
            assertThat(window.text(robot, "#keep-net-" + row)).isEqualTo(
                    Figures.amount(rescue.plan().options().get(row - 1).netCost().amount()));
        }
        assertThat(window.text(robot, "#keep-cheapest")).contains(rescue.plan().cheapest().name(),
                Figures.money(rescue.margin()));
        window.until(() -> "2900.0".equals(window.book().settings().get("car.C.keep.quote")));
    }

    @Test
    void back_in_the_lot_the_changed_car_is_judged_anew(FxRobot robot) throws TimeoutException {
        window.openCar(robot, "A");
        robot.clickOn("#PRESENT-KNOCKS");
        window.reckoned();
        robot.push(KeyCode.CONTROL, KeyCode.DIGIT1);
        WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, () -> window.bench().lot().row("A").map(LotRow::edited).orElse(false));
        Listing changed = window.bench().lot().listing("A").orElseThrow();
        assertThat(changed.observations()).contains(Observation.present("KNOCKS"));
        assertThat(window.bench().lot().row("A").orElseThrow().standing())
                .isEqualTo(Standing.of(window.core(changed)));
    }

    @Test
    void sliders_say_where_the_deal_turns_and_an_item_can_be_set(FxRobot robot) throws Exception {
        window.openCar(robot, "A");
        WaitForAsyncUtils.waitFor(120, TimeUnit.SECONDS, () -> !window.bench().car().marksProperty().get().isEmpty());
        WaitForAsyncUtils.waitForFxEvents();
        var mark = window.bench().car().marksProperty().get().get(Lever.PRICE);
        assertThat(window.text(robot, "#turning-lever-price")).contains(mark.at().isPresent()
                ? Lever.PRICE.text(mark.at().getAsDouble(), Money.USD) : "does not turn here");
        ItemDial item = window.bench().car().seen().orElseThrow().main().keySet().iterator().next();
        Slider slider = robot.lookup("#" + item.id()).query();
        robot.interact(() -> slider.adjustValue(100));
        window.reckoned();
        assertThat(window.bench().car().value(item)).isEqualTo(100);
        assertThat(window.bench().car().seen().orElseThrow().items()).anyMatch(i -> i.yours() && i.now() > 0.999);
        robot.clickOn("#undo");
        window.reckoned();
        assertThat(window.bench().car().moved(item)).isFalse();
    }

    @Test
    void a_figure_says_why_and_the_pane_closes_by_key(FxRobot robot) throws TimeoutException {
        window.openCar(robot, "C");
        Node why = robot.lookup("#why-profit").query();
        robot.interact(why::requestFocus);
        robot.type(KeyCode.SPACE);
        Appraisal core = window.core(window.bench().car().scenarioProperty().get().listing());
        WayOut shown = window.bench().car().seen().orElseThrow().shown();
        assertThat(window.text(robot, "#why-title"))
                .contains(Figures.money(Money.usd(core.assessment().way(shown).expectedProfit())));
        robot.type(KeyCode.ESCAPE);
        assertThat(robot.lookup("#why").query().isVisible()).isFalse();
    }

    @Test
    void what_matters_is_drawn_when_its_page_is_opened(FxRobot robot) throws TimeoutException {
        window.openCar(robot, "A");
        TabPane tabs = robot.lookup("#car .tab-pane").query();
        robot.interact(() -> tabs.getSelectionModel().select(1));
        WaitForAsyncUtils.waitFor(120, TimeUnit.SECONDS, () -> window.bench().car().matters().mattersProperty().get() != null);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#matters-map").query().getAccessibleText()).contains("Expected profit over");
        assertThat(robot.from(robot.lookup("#matters").<Node>query()).lookup(".strip").queryAll()).hasSizeGreaterThan(5);
    }

    @Test
    void a_make_is_corrected_by_typing_and_undone(FxRobot robot) throws TimeoutException {
        window.openCar(robot, "B");
        TabPane tabs = robot.lookup("#car .tab-pane").query();
        robot.interact(() -> tabs.getSelectionModel().selectLast());
        ComboBox<String> make = robot.lookup("#fact-make").query();
        robot.interact(() -> {
            make.getEditor().requestFocus();
            make.getEditor().selectAll();
        });
        robot.write("Acura").type(KeyCode.ENTER);
        window.reckoned();
        assertThat(window.bench().car().scenarioProperty().get().listing().vehicle().make().get()).contains("acura");
        robot.clickOn("#undo");
        window.reckoned();
        assertThat(window.bench().car().scenarioProperty().get().listing().vehicle().make().get()).contains("honda");
    }
}
