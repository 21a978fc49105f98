package worthsaving.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.Slider;
import javafx.scene.control.TabPane;
import javafx.scene.control.TableView;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.TitledPane;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
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
import worthsaving.deal.WayOut;
import worthsaving.desktop.car.ItemDial;
import worthsaving.desktop.car.Lever;
import worthsaving.desktop.lot.LotColumn;
import worthsaving.desktop.lot.LotRow;
import worthsaving.quantity.Money;
import worthsaving.ranking.Appraisal;
import worthsaving.ranking.Judge;
import worthsaving.ranking.Judged;
import worthsaving.ranking.Preparation;
import worthsaving.ranking.Standing;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;

/** The real window, driven with mouse and keyboard; what it shows is compared with the core. */
@NeedsDisplay
@ExtendWith(ApplicationExtension.class)
class WindowTest {

    private static final Ground GROUND = InventedValues.ground();
    private static final String TABLE = "id,year,make,model,odometer,price,title,present,seller_says\n"
            + "A,2012,ford,focus,98000,1200,clean,CRANKS_NO_START,\n"
            + "B,2014,honda,civic,88000,2600,clean,NO_CRANK,\n"
            + "C,2010,toyota,prius,161800,1100,clean,OVERHEATS,WATER_PUMP\n";

    @TempDir
    static Path folder;

    private final ExecutorService background = Executors.newFixedThreadPool(2);
    private final Settings settings = Settings.inMemory();
    private final MemoryShelf shelf = new MemoryShelf();
    private Workbench bench;

    @BeforeAll
    static void software() {
        System.setProperty("prism.order", "sw");
        System.setProperty("testfx.robot", "glass");
    }

    @Start
    void start(Stage stage) throws Exception {
        Path table = Files.writeString(folder.resolve("three.csv"), TABLE);
        bench = new Workbench(GROUND, settings, background, ScreenThread.ofJavaFx(), table, shelf);
        stage.setScene(new Scene(bench, 1280, 800));
        bench.dress();
        stage.show();
        bench.open(table);
    }

    @BeforeEach
    void judged() throws TimeoutException {
        WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS,
                () -> bench.lot().rows().size() == 3 && !bench.lot().busyProperty().get());
        WaitForAsyncUtils.waitForFxEvents();
    }

    @AfterEach
    void end() {
        background.shutdownNow();
    }

    private static TableView<LotRow> table(FxRobot robot) {
        return robot.lookup("#lot-table").queryTableView();
    }

    private static String text(FxRobot robot, String id) {
        return robot.lookup(id).<Labeled>query().getText();
    }

    private void openCar(FxRobot robot, String id) throws TimeoutException {
        TableView<LotRow> table = table(robot);
        int index = table.getItems().indexOf(bench.lot().row(id).orElseThrow());
        robot.interact(() -> {
            table.requestFocus();
            table.getSelectionModel().clearAndSelect(index);
        });
        robot.type(KeyCode.ENTER);
        reckoned();
    }

    private void reckoned() throws TimeoutException {
        WaitForAsyncUtils.waitForFxEvents();
        WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS,
                () -> bench.car().seen().isPresent() && !bench.car().busyProperty().get());
        WaitForAsyncUtils.waitForFxEvents();
    }

    private Appraisal core(Listing listing) {
        return ((Judged.Done) new Judge(GROUND.catalogue(), GROUND.values(), GROUND.settings()).judge(listing))
                .appraisal();
    }

    private void showsWhatTheCoreSays(FxRobot robot, Appraisal core) {
        var a = core.assessment();
        WayOut shown = a.best() == WayOut.WALK_AWAY ? WayOut.REPAIR_AND_SELL : a.best();
        assertThat(text(robot, "#car-headline")).isEqualTo(core.verdict().headline());
        assertThat(text(robot, "#car-profit"))
                .isEqualTo(Figures.money(Money.usd(a.way(shown).expectedProfit())));
        assertThat(text(robot, "#car-loss")).isEqualTo(Figures.percent(a.way(shown).chanceOfLoss()));
        assertThat(text(robot, "#car-most"))
                .isEqualTo(a.mostToPay().wholeLimit().map(Figures::money).orElse(Texts.of("none")));
        assertThat(text(robot, "#car-days")).isEqualTo(Figures.days(a.way(shown).days().mean()));
    }

    @Test
    void the_lot_opens_judged_and_is_sorted_by_a_click_on_a_heading(FxRobot robot) {
        TableView<LotRow> table = table(robot);
        assertThat(table.getItems()).hasSize(3).extracting(LotRow::rank).containsExactly(1, 2, 3);
        robot.clickOn("#lot-ASK");
        assertThat(table.getItems()).extracting(r -> r.listing().id()).containsExactly("C", "A", "B");
        robot.clickOn("#lot-ASK");
        assertThat(table.getItems()).extracting(r -> r.listing().id()).containsExactly("B", "A", "C");
        assertThat(settings.get("lot.columns")).hasValueSatisfying(l -> assertThat(l).endsWith(">ASK"));
    }

    @Test
    void words_narrow_the_lot_and_rows_are_copied_as_a_table(FxRobot robot) {
        robot.push(KeyCode.CONTROL, KeyCode.F);
        robot.write("civic");
        TableView<LotRow> table = table(robot);
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
    void a_car_shows_the_figures_of_the_core_and_a_finding_moves_them_and_undo_brings_them_back(FxRobot robot)
            throws TimeoutException {
        openCar(robot, "C");
        Listing before = bench.car().scenarioProperty().get().listing();
        showsWhatTheCoreSays(robot, core(before));
        robot.clickOn("#checklist-words").write("white smoke");
        robot.clickOn("#PRESENT-WHITE_SMOKE_SWEET");
        reckoned();
        Listing after = bench.car().scenarioProperty().get().listing();
        assertThat(after.observations()).contains(Observation.present("WHITE_SMOKE_SWEET"));
        showsWhatTheCoreSays(robot, core(after));
        robot.clickOn("#undo");
        reckoned();
        assertThat(bench.car().scenarioProperty().get().listing()).isEqualTo(before);
        showsWhatTheCoreSays(robot, core(before));
        robot.interact(() -> bench.requestFocus());
        robot.push(KeyCode.CONTROL, KeyCode.Y);
        reckoned();
        showsWhatTheCoreSays(robot, core(after));
    }

    @Test
    void the_price_follows_the_slider_and_one_undo_takes_back_the_drag(FxRobot robot) throws TimeoutException {
        openCar(robot, "A");
        Slider slider = robot.lookup("#lever-price").query();
        Node thumb = robot.from(slider).lookup(".thumb").query();
        Bounds track = slider.localToScreen(slider.getBoundsInLocal());
        robot.moveTo(thumb).press(MouseButton.PRIMARY);
        robot.moveTo(new Point2D(track.getMinX() + 0.30 * track.getWidth(), track.getCenterY()));
        robot.moveTo(new Point2D(track.getMinX() + 0.04 * track.getWidth(), track.getCenterY()));
        robot.release(MouseButton.PRIMARY);
        reckoned();
        double price = bench.car().value(Lever.PRICE);
        assertThat(price).isLessThan(1_200);
        Listing listing = bench.car().scenarioProperty().get().listing();
        var prepared = (Preparation.Ready) new Judge(GROUND.catalogue(), GROUND.values(), GROUND.settings())
                .prepare(listing);
        showsWhatTheCoreSays(robot, prepared.listing().appraise(GROUND.settings().terms(), GROUND.settings().rule(),
                Optional.of(Money.usd(price))));
        robot.clickOn("#undo");
        reckoned();
        assertThat(bench.car().moved(Lever.PRICE)).isFalse();
        showsWhatTheCoreSays(robot, core(listing));
        assertThat(bench.car().canUndoProperty().get()).isFalse();
    }

    @Test
    void back_in_the_lot_the_changed_car_is_judged_anew(FxRobot robot) throws TimeoutException {
        openCar(robot, "A");
        robot.clickOn("#PRESENT-KNOCKS");
        reckoned();
        robot.push(KeyCode.CONTROL, KeyCode.DIGIT1);
        WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, () -> bench.lot().row("A").map(LotRow::edited).orElse(false));
        Listing changed = bench.lot().listing("A").orElseThrow();
        assertThat(changed.observations()).contains(Observation.present("KNOCKS"));
        assertThat(bench.lot().row("A").orElseThrow().standing())
                .isEqualTo(Standing.of(core(changed)));
    }

    @Test
    void sliders_say_where_the_deal_turns_and_an_item_can_be_set(FxRobot robot) throws Exception {
        openCar(robot, "A");
        WaitForAsyncUtils.waitFor(120, TimeUnit.SECONDS, () -> !bench.car().marksProperty().get().isEmpty());
        WaitForAsyncUtils.waitForFxEvents();
        var mark = bench.car().marksProperty().get().get(Lever.PRICE);
        assertThat(text(robot, "#turning-lever-price")).contains(mark.at().isPresent()
                ? Lever.PRICE.text(mark.at().getAsDouble(), Money.USD) : "does not turn in this range");
        ItemDial item = bench.car().seen().orElseThrow().main().keySet().iterator().next();
        Slider slider = robot.lookup("#" + item.id()).query();
        robot.interact(() -> slider.adjustValue(100));
        reckoned();
        assertThat(bench.car().value(item)).isEqualTo(100);
        assertThat(bench.car().seen().orElseThrow().items()).anyMatch(i -> i.yours() && i.now() > 0.999);
        robot.clickOn("#undo");
        reckoned();
        assertThat(bench.car().moved(item)).isFalse();
    }

    @Test
    void a_figure_says_why_and_the_pane_closes_by_key(FxRobot robot) throws TimeoutException {
        openCar(robot, "C");
        Node why = robot.lookup("#why-profit").query();
        robot.interact(why::requestFocus);
        robot.type(KeyCode.SPACE);
        Appraisal core = core(bench.car().scenarioProperty().get().listing());
        WayOut shown = bench.car().seen().orElseThrow().shown();
        assertThat(text(robot, "#why-title"))
                .contains(Figures.money(Money.usd(core.assessment().way(shown).expectedProfit())));
        robot.type(KeyCode.ESCAPE);
        assertThat(robot.lookup("#why").query().isVisible()).isFalse();
    }

    @Test
    void what_matters_is_drawn_when_its_page_is_opened(FxRobot robot) throws TimeoutException {
        openCar(robot, "A");
        TabPane tabs = robot.lookup("#car .tab-pane").query();
        robot.interact(() -> tabs.getSelectionModel().select(1));
        WaitForAsyncUtils.waitFor(120, TimeUnit.SECONDS, () -> bench.car().matters().mattersProperty().get() != null);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup("#matters-map").query().getAccessibleText()).contains("Expected profit over");
        assertThat(robot.from(robot.lookup("#matters").<Node>query()).lookup(".strip").queryAll()).hasSizeGreaterThan(5);
    }

    @Test
    void a_make_is_corrected_by_typing_and_undone(FxRobot robot) throws TimeoutException {
        openCar(robot, "B");
        TabPane tabs = robot.lookup("#car .tab-pane").query();
        robot.interact(() -> tabs.getSelectionModel().selectLast());
        ComboBox<String> make = robot.lookup("#fact-make").query();
        robot.interact(() -> {
            make.getEditor().requestFocus();
            make.getEditor().selectAll();
        });
        robot.write("Acura").type(KeyCode.ENTER);
        reckoned();
        assertThat(bench.car().scenarioProperty().get().listing().vehicle().make().get()).contains("acura");
        robot.clickOn("#undo");
        reckoned();
        assertThat(bench.car().scenarioProperty().get().listing().vehicle().make().get()).contains("honda");
    }

    @Test
    void selected_cars_are_set_side_by_side_and_a_set_is_chosen(FxRobot robot) throws TimeoutException {
        TableView<LotRow> table = table(robot);
        robot.clickOn("#lot-compare");
        assertThat(text(robot, "#compare-trouble")).contains("select two to four");
        robot.interact(() -> {
            table.requestFocus();
            table.getSelectionModel().selectAll();
        });
        robot.push(KeyCode.CONTROL, KeyCode.E);
        WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, () -> bench.lot().comparison().carsProperty().get().size() == 3);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(text(robot, "#compare-ask-0")).endsWith(LotColumn.ASK.text(table.getItems().get(0)));
        robot.clickOn("#compare-back");
        assertThat(table.isVisible()).isTrue();
        TitledPane pane = robot.lookup("#lot-choose").query();
        robot.interact(() -> pane.setExpanded(true));
        WaitForAsyncUtils.waitForFxEvents();
        robot.clickOn("#choose-bays").write("0").clickOn("#choose-go");
        WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, () -> bench.lot().choice().choiceProperty().get() != null);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(text(robot, "#choose-sum")).isNotBlank();
        assertThat(bench.lot().rows()).allSatisfy(
                r -> assertThat(bench.lot().choice().mark(r.listing().id())).isNotBlank());
    }

    @Test
    void units_change_by_key_and_the_shortcuts_stand_in_one_place(FxRobot robot) {
        robot.push(KeyCode.CONTROL, KeyCode.U);
        assertThat(settings.get("units")).contains("KILOMETRES");
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
        assertThat(settings.get("theme")).contains("DARK");
        robot.push(KeyCode.CONTROL, KeyCode.EQUALS);
        assertThat(bench.getStyle()).contains("14.0px");
        robot.push(KeyCode.CONTROL, KeyCode.DIGIT0);
        assertThat(bench.getStyle()).contains("13.0px");
    }

    @Test
    void everything_that_can_be_used_has_words_for_a_screen_reader(FxRobot robot) throws TimeoutException {
        openCar(robot, "B");
        for (Node node : bench.lookupAll(".text-field, .slider, .toggle-button, .combo-box")) {
            boolean named = node.getAccessibleText() != null
                    || node instanceof Labeled l && !l.getText().isBlank()
                    || node instanceof TextInputControl t && t.getPromptText() != null;
            assertThat(named).as(node.toString()).isTrue();
        }
    }

    @Test
    void only_the_screen_thread_may_touch_the_models() {
        assertThatThrownBy(() -> bench.lot().change(bench.lot().listing("A").orElseThrow()))
                .isInstanceOf(IllegalStateException.class).hasMessageContaining("screen thread");
    }
}
