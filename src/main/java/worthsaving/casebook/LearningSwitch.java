package worthsaving.casebook;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import worthsaving.deal.Term;
import worthsaving.record.LearningSettings;

/** What may be learnt from finished cars, as settings of the casebook. All are on unless the casebook says otherwise. */
public enum LearningSwitch {
    SPEED, PARTS_PRICE, DAYS_TO_SELL, ITEMS;

    private static final String PREFIX = "learning.";
    private static final String OFF = "off";

    /** The switch of a money line; empty for a line that is not learnt. */
    public static Optional<LearningSwitch> of(Term term) {
        for (LearningSwitch one : values()) {
            if (one.name().equals(term.name())) {
                return Optional.of(one);
            }
        }
        return Optional.empty();
    }

    /** What turns it. */
    public Edit turn(boolean on) {
        return new Edit.Set(setting(), on ? Optional.empty() : Optional.of(OFF));
    }

    /** What a casebook with these settings is to learn. */
    public static LearningSettings settings(Map<String, String> settings) {
        LearningSettings learning = LearningSettings.USUAL;
        for (LearningSwitch one : values()) {
            if (OFF.equals(settings.get(one.setting()))) {
                learning = one == ITEMS ? learning.withItems(false) : learning.with(Term.valueOf(one.name()), false);
            }
        }
        return learning;
    }

    private String setting() {
        return PREFIX + name().toLowerCase(Locale.ROOT);
    }
}
