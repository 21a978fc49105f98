package worthsaving.desktop;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.FutureTask;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.stage.Stage;
import worthsaving.desktop.book.Sample;
import worthsaving.desktop.lot.LotRow;

/**
 * The longest that the window does not answer while 1,000 listings are judged, filtered, sorted and scrolled: the
 * wait of a heartbeat sent to the screen thread every few milliseconds; the named alternative is the same heartbeat
 * with nothing to do. Arguments: rows, points of the judging (4096 is the usual).
 */
public final class LongLotTimes {

    private static final int BEAT = 4;

    private Workbench bench;

    public static void main(String[] arguments) throws Exception {
        Platform.startup(() -> {});
        new LongLotTimes().run(Integer.parseInt(arguments[0]), Integer.parseInt(arguments[1]));
        System.exit(0);
    }

    private void run(int rows, int points) throws Exception {
        ProjectFolder project = ProjectFolder.find();
        Ground ground = LongLot.coarse(project.read(LocalDate.of(2025, 12, 1)), points);
        Path table = LongLot.write(project.sampleLot(), Files.createTempFile("long", ".csv"), rows);
        onScreen(() -> {
            bench = new Workbench(ground, Settings.inMemory(), Executors.newFixedThreadPool(2), ScreenThread.ofJavaFx(),
                    Photographs.book(Sample.NONE), project.shelf(), project);
            Stage stage = new Stage();
            stage.setScene(new Scene(bench, 1280, 800));
            bench.dress();
            stage.show();
            return null;
        });
        say("nothing to do", () -> Thread.sleep(2_000));
        say("judging " + rows, () -> {
            onScreen(() -> {
                bench.open(table);
                return null;
            });
            // The table goes through the casebook before it is judged.
            while (onScreen(() -> bench.lot().busyProperty().get() || bench.lot().rows().size() < rows)) {
                Thread.sleep(20);
            }
        });
        TableView<LotRow> list = onScreen(this::table);
        TextField words = onScreen(() -> (TextField) bench.lookup("#lot-words"));
        for (String typed : new String[] {"h", "ho", "hon", "honda", ""}) {
            say("filter \"" + typed + "\"", () -> onScreen(() -> {
                words.setText(typed);
                return null;
            }));
        }
        say("sort", () -> onScreen(() -> {
            list.getSortOrder().setAll(List.of(list.getColumns().get(4)));
            return null;
        }));
        say("scroll", () -> {
            for (int row = 0; row < rows; row += rows / 40) {
                int to = row;
                onScreen(() -> {
                    list.scrollTo(to);
                    return null;
                });
                Thread.sleep(16);
            }
        });
    }

    @SuppressWarnings("unchecked")
    private TableView<LotRow> table() {
        return (TableView<LotRow>) bench.lookup("#lot-table");
    }

    /** What may fail. */
    private interface Step {

        void run() throws Exception;
    }

    private void say(String what, Step step) throws Exception {
        boolean[] end = {false};
        double[] longest = {0};
        Thread heart = new Thread(() -> {
            while (!end[0]) {
                long sent = System.nanoTime();
                try {
                    onScreen(() -> null);
                    longest[0] = Math.max(longest[0], (System.nanoTime() - sent) / 1e6);
                    Thread.sleep(BEAT);
                } catch (Exception e) {
                    return;
                }
            }
        });
        heart.start();
        long start = System.nanoTime();
        step.run();
        Thread.sleep(200);
        double took = (System.nanoTime() - start) / 1e6 - 200;
        end[0] = true;
        heart.join();
        System.out.printf("%-20s took %8.0f ms, longest wait of the window %6.1f ms%n", what, took, longest[0]);
    }

    private static <T> T onScreen(Callable<T> work) throws Exception {
        FutureTask<T> task = new FutureTask<>(work);
        Platform.runLater(task);
        return task.get();
    }
}
