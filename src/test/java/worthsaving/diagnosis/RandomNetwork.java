package worthsaving.diagnosis;

import java.util.EnumMap;
import java.util.Map;
import java.util.SplittableRandom;
import worthsaving.catalog.Applicability;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.Onset;
import worthsaving.quantity.Probability;
import worthsaving.quantity.Seed;
import worthsaving.vehicle.Exposure;

/** A random small catalogue with an exposure and evidence, the same for the same number. */
record RandomNetwork(Catalogue catalogue, Exposure exposure, Evidence evidence) {

    static RandomNetwork of(int number, int mostItems) {
        SplittableRandom random = Seed.DEFAULT.derive("random network " + number).generator();
        int items = 1 + random.nextInt(mostItems);
        SmallCatalogue catalogue = new SmallCatalogue();
        for (int i = 0; i < items; i++) {
            String group = random.nextInt(4) == 0 ? "group" + random.nextInt(2) : "";
            catalogue.item("I" + i, onset(random), group, Applicability.ALL);
        }
        Exposure.Hazard[] hazards = Exposure.Hazard.values();
        for (int i = 0; i < items; i++) {
            for (int j = i + 1; j < items; j++) {
                if (random.nextInt(items) < 2) {
                    catalogue.damage("I" + i, "I" + j, hazards[random.nextInt(hazards.length)],
                            random.nextDouble(), random.nextDouble(), random.nextDouble());
                }
            }
        }
        int findings = 1 + random.nextInt(8);
        for (int f = 0; f < findings; f++) {
            catalogue.finding("F" + f, random.nextInt(3) == 0 ? 0 : random.nextDouble() * 0.3);
            for (int i = 0; i < items; i++) {
                if (random.nextInt(items) < (f % 2 == 0 ? 4 : 9)) {
                    catalogue.shows("I" + i, "F" + f, random.nextDouble());
                }
            }
        }
        return new RandomNetwork(catalogue.build(), exposure(random), evidence(random, items, findings));
    }

    private static Onset onset(SplittableRandom random) {
        double event = random.nextBoolean() ? 0 : random.nextDouble() / 4;
        return new Onset(
                0.5 + 3 * random.nextDouble(),
                5 + 40 * random.nextDouble(),
                random.nextDouble(),
                Probability.of(event));
    }

    private static Exposure exposure(SplittableRandom random) {
        Map<Exposure.Hazard, Exposure.Level> levels = new EnumMap<>(Exposure.Hazard.class);
        for (Exposure.Hazard hazard : Exposure.Hazard.values()) {
            levels.put(hazard, Exposure.Level.values()[random.nextInt(Exposure.Level.values().length)]);
        }
        return new Exposure(levels);
    }

    private static Evidence evidence(SplittableRandom random, int items, int findings) {
        Evidence evidence = Evidence.NONE;
        for (int f = 0; f < findings; f++) {
            if (random.nextInt(3) > 0) {
                evidence = evidence.withFinding("F" + f, likelihood(random));
            }
        }
        for (int i = 0; i < items; i++) {
            if (random.nextInt(6) == 0) {
                evidence = evidence.withItem("I" + i, likelihood(random));
            }
        }
        return evidence;
    }

    private static Likelihood likelihood(SplittableRandom random) {
        return switch (random.nextInt(5)) {
            case 0, 1 -> Likelihood.TRUE;
            case 2, 3 -> Likelihood.FALSE;
            default -> new Likelihood(random.nextDouble(), 0.01 + 0.99 * random.nextDouble());
        };
    }
}
