package worthsaving.cli;

import java.io.IOException;
import java.io.PrintWriter;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;
import worthsaving.report.Report;
import worthsaving.report.Words;

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

    /** Prints a result in the form that is wanted, with the usual warning where people read it. */
    void print(Report report, PrintWriter out) throws IOException {
        print(report, out, "");
    }

    /** As above, with a note. */
    void print(Report report, PrintWriter out, String note) throws IOException {
        if (json()) {
            report.json(out);
        } else if (csv()) {
            report.csv(out);
        } else {
            report.text(out);
            warn(out, note);
        }
    }

    /** The usual warning under what people read, after a note where there is one. */
    static void warn(PrintWriter out, String note) {
        out.println();
        if (!note.isEmpty()) {
            out.println(note);
        }
        out.println(Words.ESTIMATES);
    }

    /** Prints what the user wrote himself, which needs no warning. */
    void printKept(Report report, PrintWriter out) throws IOException {
        if (json()) {
            report.json(out);
        } else if (csv()) {
            report.csv(out);
        } else {
            report.text(out);
        }
    }

    boolean csv() {
        return choice.csv;
    }
}
