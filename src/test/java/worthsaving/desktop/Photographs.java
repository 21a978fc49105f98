package worthsaving.desktop;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.FutureTask;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.SnapshotParameters;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.TitledPane;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.transform.Transform;
import javafx.stage.Stage;
import javax.imageio.ImageIO;

/**
 * Photographs every screen, light and dark, at the usual size and at twice that: run with the folder for
 * the pictures as argument, on a machine with a display and with -Dprism.order=sw.
 */
public final class Photographs {

    private static final LocalDate DAY = LocalDate.of(2025, 12, 1);

    private final Path folder;
    private final double scale;
    private Workbench bench;
    private Stage stage;

    private Photographs(Path folder, double scale) {
        this.folder = folder;
        this.scale = scale;
    }

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        double scale = arguments.length > 1 ? Double.parseDouble(arguments[1]) : 1;
        Platform.startup(() -> {});
        new Photographs(folder, scale).all();
        Platform.exit();
    }

    private void all() throws Exception {
        ProjectFolder project = ProjectFolder.find();
        Ground ground = project.read(DAY);
        onScreen(() -> {
            bench = new Workbench(ground, Settings.inMemory(), Executors.newFixedThreadPool(2, Photographs::daemon),
                    ScreenThread.ofJavaFx(), project.sampleLot(), project.shelf());
            stage = new Stage();
            stage.setScene(new Scene(bench, 1280, 800));
            bench.dress();
            bench.look().resize(Integer.getInteger("larger", 0));
            stage.show();
            bench.open(project.sampleLot());
            return null;
        });
        await(() -> !bench.lot().busyProperty().get() && !bench.lot().rows().isEmpty());
        both("lot");
        onScreen(() -> {
            bench.openCar(bench.lot().listing(System.getProperty("car", "L04")).orElseThrow());
            return null;
        });
        await(() -> bench.car().seen().isPresent() && !bench.car().busyProperty().get());
        TabPane tabs = (TabPane) bench.lookup("#car .tab-pane");
        for (Tab tab : tabs.getTabs()) {
            onScreen(() -> {
                tabs.getSelectionModel().select(tab);
                return null;
            });
            both("car-" + tab.getId().replace("tab-", ""));
        }
        onScreen(() -> {
            bench.showCatalogue();
            return null;
        });
        both("catalogue");
        onScreen(() -> {
            bench.showLot();
            bench.open(project.sampleLot().resolveSibling("bad").resolve("cells.csv"));
            return null;
        });
        await(() -> !bench.lot().busyProperty().get() && !bench.lot().problems().isEmpty());
        onScreen(() -> {
            ((TitledPane) bench.lookup("#lot-problems")).setExpanded(true);
            return null;
        });
        both("lot-problems");
    }

    private void both(String name) throws Exception {
        for (Theme theme : Theme.values()) {
            picture(name + "-" + theme.name().toLowerCase(Locale.ROOT));
            onScreen(() -> {
                bench.look().otherTheme();
                return null;
            });
        }
    }

    private void picture(String name) throws Exception {
        Thread.sleep(700);
        WritableImage image = onScreen(() -> {
            SnapshotParameters parameters = new SnapshotParameters();
            parameters.setTransform(Transform.scale(scale, scale));
            return bench.snapshot(parameters, null);
        });
        write(image, folder.resolve(name + (scale == 1 ? "" : "-" + (int) scale + "x") + ".png"));
    }

    private static void write(WritableImage image, Path file) throws IOException {
        int width = (int) image.getWidth();
        int height = (int) image.getHeight();
        int[] pixels = new int[width * height];
        image.getPixelReader().getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        picture.setRGB(0, 0, width, height, pixels, 0, width);
        ImageIO.write(picture, "png", file.toFile());
    }

    private static void await(Callable<Boolean> done) throws Exception {
        for (int i = 0; i < 1200 && !onScreen(done); i++) {
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
