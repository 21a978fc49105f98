package worthsaving.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;
import worthsaving.catalog.Catalogue;
import worthsaving.deal.WayOut;
import worthsaving.desktop.book.BookFile;
import worthsaving.desktop.book.BookModel;
import worthsaving.desktop.book.Sample;
import worthsaving.desktop.lot.LotRow;
import worthsaving.quantity.Money;
import worthsaving.ranking.Appraisal;
import worthsaving.ranking.Judge;
import worthsaving.ranking.Judged;
import worthsaving.vehicle.Listing;

/** The window as a user has it, with a lot of three cars and invented values, for tests that drive it. */
final class RealWindow {

    static final Ground GROUND = InventedValues.ground();
    private static final String TABLE = "id,year,make,model,odometer,price,title,present,seller_says\n"
            + "A,2012,ford,focus,98000,1200,clean,CRANKS_NO_START,\n"
            + "B,2014,honda,civic,88000,2600,clean,NO_CRANK,\n"
            + "C,2010,toyota,prius,161800,1100,clean,OVERHEATS,WATER_PUMP\n";
    /** Seconds; a machine may be busy with other work. */
    private static final int PATIENCE = 180;

    private final ExecutorService background = Executors.newFixedThreadPool(2);
    private final ExecutorService keeping = Executors.newSingleThreadExecutor();
    private final Settings settings = Settings.inMemory();
    private final MemoryShelf shelf = new MemoryShelf();
    private BookModel book;
    private Workbench bench;

    static void software() {
        System.setProperty("prism.order", "sw");
        System.setProperty("testfx.robot", "glass");
        FxToolkit.toolkitContext().setSetupTimeoutInMillis(PATIENCE * 1_000L);
    }

    void start(Stage stage, Path folder) throws IOException {
        Path table = Files.writeString(folder.resolve("three.csv"), TABLE);
        show(stage, Files.createTempDirectory(folder, "book").resolve("casebook.db"), Sample.NONE);
        bench.open(table);
    }

    /** The window on a casebook, with what is in it. */
    void show(Stage stage, Path casebook, Sample sample) {
        book = new BookModel(new BookFile(casebook)::open, sample, keeping, ScreenThread.ofJavaFx());
        bench = new Workbench(GROUND, settings, background, ScreenThread.ofJavaFx(), book, shelf);
        stage.setScene(new Scene(bench, 1280, 800));
        bench.dress();
        stage.show();
    }

    void judged() throws TimeoutException {
        until(() -> bench.lot().rows().size() == 3 && !bench.lot().busyProperty().get());
    }

    void end() {
        background.shutdownNow();
        WaitForAsyncUtils.waitForAsyncFx(PATIENCE * 1_000L, () -> book.close()).join();
        keeping.shutdown();
    }

    BookModel book() {
        return book;
    }

    Workbench bench() {
        return bench;
    }

    Settings settings() {
        return settings;
    }

    MemoryShelf shelf() {
        return shelf;
    }

    TableView<LotRow> table(FxRobot robot) {
        return robot.lookup("#lot-table").queryTableView();
    }

    String text(FxRobot robot, String id) {
        return robot.lookup(id).<Labeled>query().getText();
    }

    void openCar(FxRobot robot, String id) throws TimeoutException {
        TableView<LotRow> table = table(robot);
        int index = table.getItems().indexOf(bench.lot().row(id).orElseThrow());
        robot.interact(() -> {
            table.requestFocus();
            table.getSelectionModel().clearAndSelect(index);
        });
        robot.type(KeyCode.ENTER);
        reckoned();
    }

    void reckoned() throws TimeoutException {
        until(() -> bench.car().seen().isPresent() && !bench.car().busyProperty().get() && !book.busyProperty().get());
    }

    /** Waits for what the background brings, as it stands on the screen thread. */
    void until(Callable<Boolean> done) throws TimeoutException {
        WaitForAsyncUtils.waitForFxEvents();
        WaitForAsyncUtils.waitFor(PATIENCE, TimeUnit.SECONDS,
                () -> WaitForAsyncUtils.waitForAsyncFx(PATIENCE * 1_000L, done));
        WaitForAsyncUtils.waitForFxEvents();
    }

    Appraisal core(Listing listing) {
        return core(GROUND.catalogue(), listing);
    }

    Appraisal core(Catalogue catalogue, Listing listing) {
        return ((Judged.Done) new Judge(catalogue, GROUND.values(), GROUND.settings()).judge(listing)).appraisal();
    }

    void showsWhatTheCoreSays(FxRobot robot, Appraisal core) {
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
}
