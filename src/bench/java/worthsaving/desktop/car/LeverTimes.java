package worthsaving.desktop.car;

import java.io.InputStream;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import worthsaving.desktop.Ground;
import worthsaving.desktop.ProjectFolder;
import worthsaving.intake.IntakeSettings;
import worthsaving.intake.ListingReader;
import worthsaving.intake.Vocabulary;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation.Sight;

/**
 * How long the car screen waits for its figures after each kind of edit, over every third car of the sample
 * lot; the named alternative is "open", judging the whole car anew. Run main after mvn -Pbench test-compile.
 */
public final class LeverTimes {

    private static final int ROUNDS = 3;

    private final Map<String, List<Double>> times = new TreeMap<>();
    private final CarWork work;
    private final Levers levers;

    private LeverTimes(Ground ground) {
        work = new CarWork(ground);
        levers = new Levers(ground.settings());
    }

    public static void main(String[] arguments) throws Exception {
        ProjectFolder folder = ProjectFolder.find();
        Ground ground = folder.read(LocalDate.of(2025, 12, 1));
        List<Listing> lot;
        try (InputStream in = Files.newInputStream(folder.sampleLot())) {
            lot = new ListingReader(Vocabulary.of(ground.catalogue(), ground.makes()),
                    IntakeSettings.american(ground.today())).read(in, "lot.csv").listings();
        }
        LeverTimes bench = new LeverTimes(ground);
        for (int round = 0; round < ROUNDS; round++) {
            for (int i = 0; i < lot.size(); i += 3) {
                bench.car(Scenario.of(lot.get(i)), round > 0);
            }
        }
        bench.print();
    }

    private void car(Scenario scenario, boolean counts) {
        time("open", scenario, counts);
        for (Lever lever : Lever.values()) {
            double given = levers.given(lever, scenario.listing());
            time("lever " + lever, scenario.with(lever, lever.snap(0.9 * given, given)), counts);
            time("lever " + lever, scenario.with(lever, lever.snap(0.8 * given, given)), counts);
        }
        time("finding", scenario.seen("KNOCKS", Sight.ABSENT), counts);
    }

    private void time(String what, Scenario scenario, boolean counts) {
        long start = System.nanoTime();
        work.of(new CarWork.Ask(scenario, false), () -> false, done -> {});
        if (counts) {
            times.computeIfAbsent(what, w -> new ArrayList<>()).add((System.nanoTime() - start) / 1e6);
        }
    }

    private void print() {
        times.forEach((what, all) -> {
            Collections.sort(all);
            System.out.printf("%-14s median %4.0f ms, 19 of 20 within %4.0f ms (n=%d)%n", what, all.get(all.size() / 2),
                    all.get((int) (0.95 * all.size())), all.size());
        });
    }
}
