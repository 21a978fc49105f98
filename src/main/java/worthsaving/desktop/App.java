package worthsaving.desktop;

import java.time.LocalDate;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import worthsaving.desktop.book.BookFile;
import worthsaving.desktop.book.BookModel;
import worthsaving.desktop.book.Sample;
import worthsaving.shell.CasebookPath;

/** The program with its one window. */
public final class App extends Application {

    private static final double WIDTH = 1280;
    private static final double HEIGHT = 800;

    private static final int PATIENCE = 30;

    private final ExecutorService background = Executors.newFixedThreadPool(2, App::thread);
    /** Its one thread is none of the daemons: what was done in the window is kept before the program ends. */
    private final ExecutorService keeping = Executors.newSingleThreadExecutor(work -> new Thread(work, "keeping"));
    private BookModel book;

    @Override
    public void start(Stage stage) {
        Label reading = new Label(Texts.of("start.reading"));
        Scene scene = new Scene(new StackPane(reading), WIDTH, HEIGHT);
        stage.setTitle(Texts.of("product"));
        stage.setScene(scene);
        stage.show();
        ScreenThread screen = ScreenThread.ofJavaFx();
        background.execute(() -> {
            try {
                ProjectFolder folder = ProjectFolder.find();
                Ground ground = folder.read(LocalDate.now());
                Sample sample = folder.sample(ground);
                screen.executor().execute(() -> {
                    book = new BookModel(new BookFile(CasebookPath.usual())::open, sample, keeping, screen);
                    Workbench bench = new Workbench(ground, Settings.ofUser(), background, screen, book, folder.shelf());
                    scene.setRoot(bench);
                    bench.dress();
                });
            } catch (ProjectFolder.CannotStart e) {
                screen.executor().execute(() -> reading.setText(e.getMessage()));
            }
        });
    }

    @Override
    public void stop() {
        background.shutdownNow();
        if (book != null) {
            book.close();
        }
        keeping.shutdown();
        try {
            keeping.awaitTermination(PATIENCE, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        Platform.exit();
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "reckoning");
        thread.setDaemon(true);
        return thread;
    }
}
