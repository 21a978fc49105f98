package worthsaving.desktop;

import java.time.LocalDate;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import worthsaving.desktop.market.MarketModel;
import worthsaving.desktop.market.MarketNotes;

/** The program with its one window. */
public final class App extends Application {

    private static final double WIDTH = 1280;
    private static final double HEIGHT = 800;

    private final ExecutorService background = Executors.newFixedThreadPool(2, App::thread);

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
                MarketNotes notes = MarketNotes.inMemory();
                Ground ground = MarketModel.atStart(
                        folder.read(LocalDate.now(), MarketModel.remembered(settings, folder)), folder, notes);
                screen.executor().execute(() -> {
                    Workbench bench = new Workbench(ground, settings, background, screen, folder.sampleLot(),
                            folder.shelf(), folder, notes);
                    scene.setRoot(bench);
                    bench.dress();
                    bench.open(folder.sampleLot());
                });
            } catch (ProjectFolder.CannotStart e) {
                screen.executor().execute(() -> reading.setText(e.getMessage()));
            }
        });
    }

    @Override
    public void stop() {
        background.shutdownNow();
        Platform.exit();
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "reckoning");
        thread.setDaemon(true);
        return thread;
    }
}
