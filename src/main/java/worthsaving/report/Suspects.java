package worthsaving.report;

import java.util.Comparator;
import java.util.List;
import worthsaving.diagnosis.Belief;
import worthsaving.ranking.Appraisal;

/** The failure items that a report names: those the findings have moved most, most probable first. */
public final class Suspects {

    private static final double WORTH_SHOWING = 0.03;
    private static final int SHOWN = 12;
    /** Below this an item's caution is left out. */
    private static final double WORTH_A_CAUTION = 0.1;

    private Suspects() {}

    public static List<Belief> of(Appraisal appraisal) {
        return appraisal.diagnosis().beliefs().stream()
                .filter(b -> b.posterior().value() >= WORTH_SHOWING)
                .sorted(Comparator.comparingDouble(Suspects::rise).reversed().thenComparing(Belief::item))
                .limit(SHOWN)
                .sorted(Comparator.comparing(Belief::posterior).reversed().thenComparing(Belief::item))
                .toList();
    }

    /** Those probable enough that whoever works on the car should know their caution. */
    public static List<Belief> toMind(Appraisal appraisal) {
        return of(appraisal).stream().filter(b -> b.posterior().value() > WORTH_A_CAUTION).toList();
    }

    private static double rise(Belief b) {
        return b.posterior().value() - b.prior().value();
    }
}
