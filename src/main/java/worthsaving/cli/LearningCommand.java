package worthsaving.cli;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import worthsaving.casebook.Casebook;
import worthsaving.casebook.LearningSwitch;
import worthsaving.record.LearningSettings;

/** Switches what may be learnt from finished cars. */
@Command(name = "learning", description = "Switches what may be learnt from finished cars; see casebook record for what is.",
        mixinStandardHelpOptions = true)
final class LearningCommand implements Callable<Integer> {

    @Mixin
    private CasebookFile casebook;

    @Option(names = "--off", split = ",", paramLabel = "speed|parts_price|days_to_sell|items",
            description = "No longer learn these.")
    private List<LearningSwitch> off = List.of();

    @Option(names = "--on", split = ",", paramLabel = "speed|parts_price|days_to_sell|items",
            description = "Learn these again.")
    private List<LearningSwitch> on = List.of();

    @Override
    public Integer call() throws IOException {
        if (off.isEmpty() && on.isEmpty()) {
            throw new UserError(ExitCode.USAGE, "Say what to switch, with --off or --on");
        }
        try (Casebook book = casebook.forWriting()) {
            for (LearningSwitch lesson : off) {
                casebook.told(book.save(lesson.turn(false)));
            }
            for (LearningSwitch lesson : on) {
                casebook.told(book.save(lesson.turn(true)));
            }
        }
        return ExitCode.OK;
    }

    /** What a casebook is to learn. */
    static LearningSettings settings(Casebook book) {
        return LearningSwitch.settings(book.settings());
    }
}
