package worthsaving.cli;

import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/** In which form results are wanted. */
final class Output {

    @ArgGroup
    private Choice choice = new Choice();

    private static final class Choice {
        @Option(names = "--json", description = "Print results as JSON, for scripts.")
        private boolean json;

        @Option(names = "--csv", description = "Print results as CSV, safe to open in a spreadsheet.")
        private boolean csv;
    }

    boolean json() {
        return choice.json;
    }

    boolean csv() {
        return choice.csv;
    }
}
