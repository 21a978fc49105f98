package worthsaving.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import worthsaving.casebook.Casebook;
import worthsaving.casebook.Edit;
import worthsaving.deal.Term;
import worthsaving.record.LearningSettings;

/** Switches what may be learnt from finished cars. */
@Command(name = "learning", description = "Switches what may be learnt from finished cars; see casebook record for what is.",
        mixinStandardHelpOptions = true)
final class LearningCommand implements Callable<Integer> {

    private static final String SETTING = "learning.";
    private static final String OFF = "off";

    /** What can be switched. */
    enum Lesson { SPEED, PARTS_PRICE, DAYS_TO_SELL, ITEMS }

    @Mixin
    private CasebookFile casebook;

    @Option(names = "--off", split = ",", paramLabel = "speed|parts_price|days_to_sell|items",
            description = "No longer learn these.")
    private List<Lesson> off = List.of();

    @Option(names = "--on", split = ",", paramLabel = "speed|parts_price|days_to_sell|items",
            description = "Learn these again.")
    private List<Lesson> on = List.of();

    @Override
    public Integer call() throws IOException {
        if (off.isEmpty() && on.isEmpty()) {
            throw new UserError(ExitCode.USAGE, "Say what to switch, with --off or --on");
        }
        try (Casebook book = casebook.forWriting()) {
            for (Lesson lesson : off) {
                casebook.told(book.save(new Edit.Set(name(lesson), Optional.of(OFF))));
            }
            for (Lesson lesson : on) {
                casebook.told(book.save(new Edit.Set(name(lesson), Optional.empty())));
            }
        }
        return ExitCode.OK;
    }

    private static String name(Lesson lesson) {
        return SETTING + lesson.name().toLowerCase(Locale.ROOT);
    }

    /** What a casebook is to learn. */
    static LearningSettings settings(Casebook book) {
        LearningSettings settings = LearningSettings.USUAL;
        for (Lesson lesson : Lesson.values()) {
            if (OFF.equals(book.settings().get(name(lesson)))) {
                settings = lesson == Lesson.ITEMS
                        ? settings.withItems(false) : settings.with(Term.valueOf(lesson.name()), false);
            }
        }
        return settings;
    }
}
