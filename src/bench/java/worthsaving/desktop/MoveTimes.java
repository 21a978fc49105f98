package worthsaving.desktop;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.FutureTask;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import worthsaving.desktop.car.Lever;

/**
 * Start to usable, and the time from a slider's move to the redrawn figures over 200 moves of each of some levers,
 * beside a bare window of one slider and one label in the same run. Run main after mvn -Pbench test-compile, on a
 * machine with a display and with -Dprism.order=sw; the first argument is the car.
 */
public final class MoveTimes {

    private static final int MOVES = 200;
    private static final int WARM_UP = 40;

    private Workbench bench;
    private Scene scene;

    public static void main(String[] arguments) throws Exception {
        long start = System.nanoTime();
        CountDownLatch up = new CountDownLatch(1);
        Platform.startup(up::countDown);
        up.await();
        System.out.printf("toolkit up after %.0f ms%n", (System.nanoTime() - start) / 1e6);
        MoveTimes times = new MoveTimes();
        times.bare();
        times.ours(arguments.length > 0 ? arguments[0] : "L04");
        System.exit(0);
    }

    private void bare() throws Exception {
        long start = System.nanoTime();
        Slider slider = new Slider(0, 1, 0);
        Label label = new Label();
        slider.valueProperty().addListener((o, was, is) -> label.setText(Double.toString(is.doubleValue())));
        onScreen(() -> {
            scene = new Scene(new VBox(slider, label), 1280, 800);
            Stage stage = new Stage();
            stage.setScene(scene);
            stage.show();
            return null;
        });
        drawn();
        System.out.printf("bare window drawn after %.0f ms%n", (System.nanoTime() - start) / 1e6);
        List<Double> all = new ArrayList<>();
        List<Double> work = new ArrayList<>();
        for (int i = 0; i < WARM_UP + MOVES; i++) {
            double to = i % 2 == 0 ? 0.25 + i / 1000.0 : 0.75;
            long before = cpu();
            long moved = System.nanoTime();
            onScreen(() -> {
                slider.setValue(to);
                return null;
            });
            drawn();
            all.add((System.nanoTime() - moved) / 1e6);
            work.add((cpu() - before) / 1e6);
        }
        print("bare slider", all, work);
    }

    private void ours(String car) throws Exception {
        long start = System.nanoTime();
        ProjectFolder project = ProjectFolder.find();
        Ground ground = project.read(LocalDate.of(2025, 12, 1));
        ExecutorService background = Executors.newFixedThreadPool(2, work -> {
            Thread thread = new Thread(work, "reckoning");
            thread.setDaemon(true);
            return thread;
        });
        onScreen(() -> {
            bench = new Workbench(ground, Settings.inMemory(), background, ScreenThread.ofJavaFx(),
                    Photographs.book(project.sample(ground)), project.shelf(), project);
            scene = new Scene(bench, 1280, 800);
            Stage stage = new Stage();
            stage.setScene(scene);
            bench.dress();
            stage.show();
            return null;
        });
        drawn();
        System.out.printf("our window drawn after %.0f ms%n", (System.nanoTime() - start) / 1e6);
        await(() -> !bench.lot().rows().isEmpty());
        drawn();
        System.out.printf("first cars of the sample judged and drawn after %.0f ms%n", (System.nanoTime() - start) / 1e6);
        await(() -> !bench.lot().busyProperty().get());
        drawn();
        System.out.printf("sample lot judged and drawn after %.0f ms%n", (System.nanoTime() - start) / 1e6);
        onScreen(() -> {
            bench.openCar(bench.lot().listing(car).orElseThrow());
            return null;
        });
        await(() -> bench.car().seen().isPresent() && !bench.car().marksProperty().get().isEmpty());
        for (Lever lever : List.of(Lever.PRICE, Lever.TARGET, Lever.DAYS, Lever.VALUE, Lever.SPEED)) {
            drag(lever);
        }
    }

    private void drag(Lever lever) throws Exception {
        Slider slider = onScreen(() -> (Slider) bench.lookup("#" + lever.id()));
        List<Double> all = new ArrayList<>();
        List<Double> work = new ArrayList<>();
        onScreen(() -> {
            slider.setValueChanging(true);
            return null;
        });
        for (int i = 0; i < WARM_UP + MOVES; i++) {
            double to = slider.getMin() + (slider.getMax() - slider.getMin()) * (0.2 + 0.6 * ((i * 37) % 100) / 100.0);
            long before = cpu();
            long moved = System.nanoTime();
            onScreen(() -> {
                slider.setValue(to);
                return null;
            });
            await(() -> !bench.car().busyProperty().get());
            drawn();
            all.add((System.nanoTime() - moved) / 1e6);
            work.add((cpu() - before) / 1e6);
        }
        onScreen(() -> {
            slider.setValueChanging(false);
            return null;
        });
        await(() -> !bench.car().busyProperty().get());
        print("drag " + lever, all, work);
    }

    private static void print(String what, List<Double> all, List<Double> work) {
        List<Double> counted = sorted(all);
        System.out.printf("%-12s median %5.1f ms, 19 of 20 within %5.1f ms, worst %5.1f ms; processor %5.1f ms (n=%d)%n",
                what, counted.get(counted.size() / 2), counted.get((int) (0.95 * counted.size())),
                counted.get(counted.size() - 1), sorted(work).get(MOVES / 2), counted.size());
    }

    private static List<Double> sorted(List<Double> all) {
        List<Double> counted = new ArrayList<>(all.subList(WARM_UP, all.size()));
        Collections.sort(counted);
        return counted;
    }

    /** Processor time of the whole program, which a busy machine does not lengthen. */
    private static long cpu() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }

    /** Until the next layout is done. */
    private void drawn() throws Exception {
        CountDownLatch pulse = new CountDownLatch(1);
        Runnable listener = pulse::countDown;
        onScreen(() -> {
            scene.addPostLayoutPulseListener(listener);
            Platform.requestNextPulse();
            return null;
        });
        pulse.await();
        onScreen(() -> {
            scene.removePostLayoutPulseListener(listener);
            return null;
        });
    }

    private static void await(Callable<Boolean> done) throws Exception {
        while (!onScreen(done)) {
            Thread.sleep(1);
        }
    }

    private static <T> T onScreen(Callable<T> work) throws Exception {
        if (Platform.isFxApplicationThread()) {
            return work.call();
        }
        FutureTask<T> task = new FutureTask<>(work);
        Platform.runLater(task);
        return task.get();
    }
}
