package worthsaving.desktop;

import java.time.LocalDate;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import worthsaving.desktop.book.BookFile;
import worthsaving.desktop.book.BookModel;
import worthsaving.desktop.book.Sample;
import worthsaving.desktop.market.MarketModel;
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
                Settings settings = Settings.ofUser();
                Ground ground = folder.read(LocalDate.now(), MarketModel.remembered(settings, folder));
                Sample sample = folder.sample(ground);
                screen.executor().execute(() -> {
                    book = new BookModel(new BookFile(CasebookPath.usual())::open, sample, keeping, screen);
                    Workbench bench = new Workbench(ground, settings, background, screen, book, folder.shelf(), folder);
                    scene.setRoot(bench);
                    bench.dress();
                });
            } catch (ProjectFolder.CannotStart e) {
                screen.executor().execute(() -> reading.setText(e.getMessage()));
            } catch (RuntimeException e) {
                screen.executor().execute(() -> reading.setText(Texts.of("start.failed", e)));
            }
        });
    }

    @Override
    public void stop() {
        background.shutdownNow();
        CompletableFuture<Void> closed = book == null ? CompletableFuture.completedFuture(null) : book.close();
        keeping.shutdown();
        try {
            closed.get(PATIENCE, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException | TimeoutException e) {
            throw new IllegalStateException(Texts.of("book.not_closed", e), e);
        } finally {
            Platform.exit();
        }
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "reckoning");
        thread.setDaemon(true);
        return thread;
    }
}
