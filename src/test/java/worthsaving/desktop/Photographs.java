package worthsaving.desktop;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.FutureTask;
import javafx.application.Platform;
import javafx.event.ActionEvent;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.SnapshotParameters;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TabPane;
import javafx.scene.control.TableView;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.TitledPane;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.transform.Transform;
import javafx.stage.Stage;
import javafx.stage.Window;
import worthsaving.desktop.book.BookFile;
import worthsaving.desktop.book.BookModel;
import worthsaving.desktop.book.Sample;

/**
 * Photographs every screen at 1280 x 800 light and dark, and one of each layout so at twice that scale and at 1920 x 1080.
 * Run with the folder for the pictures as argument, on a display of at least 2000 x 1200 and with -Dprism.order=sw;
 * -Dscreens=lot,car takes only those.
 */
public final class Photographs {

    private static final LocalDate DAY = LocalDate.of(2025, 12, 1);
    private static final int WIDTH = 1280;
    private static final int HEIGHT = 800;
    private static final int ROWS = 1_000;
    private static final int ROUGH = 256;
    /** Screens of each kind of layout; they are taken at 1920 x 1080 and at twice the scale as well. */
    private static final Set<String> LARGE = Set.of(
            "lot", "lot-compare", "lot-long", "car-decision", "car-keep", "car-matters", "car-why", "catalogue", "record",
            "market", "market-own", "teardown");

    private final Path folder;
    private Workbench bench;
    private Stage stage;

    private Photographs(Path folder) {
        this.folder = folder;
    }

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        Platform.startup(() -> {});
        new Photographs(folder).all();
        Platform.exit();
    }

    private void all() throws Exception {
        ProjectFolder project = ProjectFolder.find();
        Ground ground = project.read(DAY);
        onScreen(() -> {
            bench = bench(project, ground, project.sample(ground));
            stage = new Stage();
            stage.setScene(new Scene(bench, WIDTH, HEIGHT));
            bench.dress();
            bench.look().resize(Integer.getInteger("larger", 0));
            stage.show();
            return null;
        });
        judged();
        if (wanted("lot")) {
            pictures("lot");
            lot();
        }
        if (wanted("car")) {
            car();
        }
        if (wanted("market")) {
            market(project);
        }
        if (wanted("catalogue")) {
            onScreen(() -> {
                bench.showCatalogue();
                return null;
            });
            pictures("catalogue");
        }
        if (wanted("record")) {
            onScreen(() -> {
                bench.showRecord();
                return null;
            });
            await(() -> bench.record().trackProperty().get() != null);
            pictures("record");
            recordForm();
        }
        if (wanted("teardown")) {
            teardown();
        }
        if (wanted("problems")) {
            problems(project);
        }
        if (wanted("long")) {
            longLot(project, ground);
        }
    }

    /** The invented car whose teardown is under way, then for an owner with an amount agreed, further down. */
    private void teardown() throws Exception {
        onScreen(() -> {
            bench.showTeardown();
            bench.teardown().choose("L01");
            return null;
        });
        reckoned();
        pictures("teardown");
        onScreen(() -> {
            ((CheckBox) bench.lookup("#owner-is")).fire();
            return null;
        });
        reckoned();
        onScreen(() -> {
            ((ScrollPane) bench.lookup("#teardown-middle")).setVvalue(1);
            return null;
        });
        pictures("teardown-owner");
    }

    private void reckoned() throws Exception {
        await(() -> !bench.teardown().book().busyProperty().get() && !bench.teardown().busyProperty().get()
                && bench.teardown().pictureProperty().get() != null
                && bench.teardown().pictureProperty().get().seen().isPresent());
    }

    /** A window on a casebook of its own, which nobody keeps. */
    private static Workbench bench(ProjectFolder project, Ground ground, Sample sample) throws IOException {
        return new Workbench(ground, Settings.inMemory(), Executors.newFixedThreadPool(2, Photographs::daemon),
                ScreenThread.ofJavaFx(), book(sample), project.shelf(), project);
    }

    static BookModel book(Sample sample) throws IOException {
        Path casebook = Files.createTempDirectory("casebook").resolve("casebook.db");
        return new BookModel(new BookFile(casebook)::open, sample,
                Executors.newSingleThreadExecutor(Photographs::daemon), ScreenThread.ofJavaFx());
    }

    private static boolean wanted(String screen) {
        return List.of(System.getProperty("screens", "lot,car,market,catalogue,record,teardown,problems,long").split(","))
                .contains(screen);
    }

    /** With the invented comparables, some of which are like the car that is worked on. */
    private void market(ProjectFolder project) throws Exception {
        open("L02");
        onScreen(() -> {
            bench.showMarket();
            return null;
        });
        await(() -> bench.lookup("#market-car") != null);
        pictures("market");
        TabPane tabs = (TabPane) bench.lookup("#market .tab-pane");
        String own = Files.readString(project.sampleLot().resolveSibling("comparables.csv"));
        onScreen(() -> {
            tabs.getSelectionModel().select(3);
            ((TextArea) bench.lookup("#market-own-text")).setText(own);
            ((Button) bench.lookup("#market-own-add")).fire();
            return null;
        });
        await(() -> !((TableView<?>) bench.lookup("#market-own")).getItems().isEmpty()
                && bench.lookup("#market-level-money") != null);
        judged();
        pictures("market-own");
        for (int page = 1; page <= 2; page++) {
            int number = page;
            onScreen(() -> {
                tabs.getSelectionModel().select(number);
                return null;
            });
            pictures(number == 1 ? "market-prices" : "market-factors");
        }
    }

    private void problems(ProjectFolder project) throws Exception {
        onScreen(() -> {
            bench.showLot();
            bench.open(project.sampleLot().resolveSibling("bad").resolve("cells.csv"));
            return null;
        });
        await(() -> !bench.lot().busyProperty().get() && !bench.lot().problems().isEmpty());
        expand("#lot-problems", true);
        pictures("lot-problems");
    }

    /** The form of a car that was bought, and the lower half of the page. */
    private void recordForm() throws Exception {
        onScreen(() -> {
            ((ComboBox<?>) bench.lookup("#finish-case")).getSelectionModel().select(0);
            ((ScrollPane) bench.lookup("#record-page")).setVvalue(1);
            return null;
        });
        pictures("record-finish");
    }

    /** So many rows are judged roughly: it is their number that shall be seen. */
    private void longLot(ProjectFolder project, Ground ground) throws Exception {
        Path table = LongLot.write(project.sampleLot(), Files.createTempDirectory("long").resolve("long.csv"), ROWS);
        onScreen(() -> {
            bench = bench(project, LongLot.coarse(ground, ROUGH), Sample.NONE);
            stage.setScene(new Scene(bench, WIDTH, HEIGHT));
            bench.dress();
            bench.open(table);
            return null;
        });
        await(() -> bench.lot().doneProperty().get() > ROWS / 10);
        picture("lot-judging-light", 1);
        judged();
        pictures("lot-long");
    }

    private void lot() throws Exception {
        onScreen(() -> {
            TableView<?> table = (TableView<?>) bench.lookup("#lot-table");
            table.getSelectionModel().selectIndices(3, 4, 6);
            bench.compare();
            return null;
        });
        await(() -> !bench.lot().comparison().carsProperty().get().isEmpty());
        pictures("lot-compare");
        onScreen(() -> {
            bench.lot().comparison().close();
            return null;
        });
        expand("#lot-choose", true);
        onScreen(() -> {
            ((TableView<?>) bench.lookup("#lot-table")).getSelectionModel().clearSelection();
            ((TextField) bench.lookup("#choose-cash")).setText("15,000");
            ((TextField) bench.lookup("#choose-bays")).setText("2");
            ((TextField) bench.lookup("#choose-hours")).setText("60");
            ((Button) bench.lookup("#choose-go")).fire();
            return null;
        });
        await(() -> bench.lot().choice().choiceProperty().get() != null);
        pictures("lot-choose");
        expand("#lot-choose", false);
    }

    private void car() throws Exception {
        open(System.getProperty("car", "L22"));
        pages("tab-decision", "tab-matters");
        TabPane tabs = (TabPane) bench.lookup("#car .tab-pane");
        onScreen(() -> {
            tabs.getSelectionModel().selectFirst();
            ((Button) bench.lookup("#why-profit")).fire();
            return null;
        });
        pictures("car-why");
        onScreen(() -> {
            ((Button) bench.lookup("#why-close")).fire();
            return null;
        });
        sheet();
        open("L04");
        pages("tab-items", "tab-plan", "tab-ways", "tab-value", "tab-facts");
    }

    private void open(String car) throws Exception {
        onScreen(() -> {
            bench.openCar(bench.lot().listing(car).orElseThrow());
            return null;
        });
        await(() -> bench.car().seen().isPresent() && !bench.car().busyProperty().get()
                && !bench.car().marksProperty().get().isEmpty());
    }

    private void pages(String... ids) throws Exception {
        TabPane tabs = (TabPane) bench.lookup("#car .tab-pane");
        for (String id : ids) {
            onScreen(() -> {
                tabs.getTabs().stream().filter(t -> t.getId().equals(id)).forEach(tabs.getSelectionModel()::select);
                return null;
            });
            if (id.equals("tab-matters")) {
                await(() -> bench.car().matters().mattersProperty().get() != null);
            }
            if (id.equals("tab-ways")) {
                await(() -> bench.lookup("#keep-cheapest") != null);
            }
            pictures("car-" + id.replace("tab-", ""));
            if (id.equals("tab-ways")) {
                keeping(tabs);
            }
        }
    }

    /** With a shop's quote, scrolled to the owner's sums. */
    private void keeping(TabPane tabs) throws Exception {
        onScreen(() -> {
            TextField quote = (TextField) bench.lookup("#keep-quote");
            quote.setText("2,900");
            quote.getOnAction().handle(new ActionEvent());
            return null;
        });
        await(() -> bench.lookup("#keep-net-5") != null);
        onScreen(() -> {
            ((ScrollPane) tabs.getSelectionModel().getSelectedItem().getContent()).setVvalue(0.6);
            return null;
        });
        pictures("car-keep");
    }

    /** The dialog is a window of its own. */
    private void sheet() throws Exception {
        onScreen(() -> {
            bench.sheet();
            return null;
        });
        Parent dialog = onScreen(() -> Window.getWindows().stream().filter(w -> w != stage)
                .map(w -> w.getScene().getRoot()).findFirst().orElseThrow());
        picture(dialog, "sheet-dialog-light", 2);
        onScreen(() -> {
            dialog.getScene().getWindow().hide();
            return null;
        });
    }

    private void judged() throws Exception {
        await(() -> !bench.lot().busyProperty().get() && !bench.lot().rows().isEmpty());
    }

    private void expand(String pane, boolean expanded) throws Exception {
        onScreen(() -> {
            TitledPane titled = (TitledPane) bench.lookup(pane);
            titled.setAnimated(false);
            titled.setExpanded(expanded);
            return null;
        });
    }

    private void pictures(String name) throws Exception {
        picture(name + "-light", 1);
        theme();
        picture(name + "-dark", 1);
        theme();
        if (LARGE.contains(name)) {
            picture(name + "-light-2x", 2);
            size(1920, 1080);
            picture(name + "-light-1920", 1);
            theme();
            picture(name + "-dark-1920", 1);
            size(WIDTH, HEIGHT);
            picture(name + "-dark-2x", 2);
            theme();
        }
    }

    private void theme() throws Exception {
        onScreen(() -> {
            bench.look().otherTheme();
            return null;
        });
    }

    private void size(int width, int height) throws Exception {
        onScreen(() -> {
            stage.setWidth(width + stage.getWidth() - bench.getScene().getWidth());
            stage.setHeight(height + stage.getHeight() - bench.getScene().getHeight());
            return null;
        });
    }

    private void picture(String name, double scale) throws Exception {
        picture(bench, name, scale);
    }

    private void picture(Parent shown, String name, double scale) throws Exception {
        Thread.sleep(Integer.getInteger("settle", 700));
        WritableImage image = onScreen(() -> {
            SnapshotParameters parameters = new SnapshotParameters();
            parameters.setTransform(Transform.scale(scale, scale));
            return shown.snapshot(parameters, null);
        });
        int width = (int) image.getWidth();
        int height = (int) image.getHeight();
        int[] pixels = new int[width * height];
        image.getPixelReader().getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
        Palette.write(Palette.of(pixels).image(pixels, width, height), folder.resolve(name + ".png"));
    }

    private static void await(Callable<Boolean> done) throws Exception {
        for (int i = 0; i < 12_000 && !onScreen(done); i++) {
            Thread.sleep(100);
        }
    }

    private static <T> T onScreen(Callable<T> work) throws ExecutionException, InterruptedException {
        FutureTask<T> task = new FutureTask<>(work);
        Platform.runLater(task);
        return task.get();
    }

    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "reckoning");
        thread.setDaemon(true);
        return thread;
    }
}
