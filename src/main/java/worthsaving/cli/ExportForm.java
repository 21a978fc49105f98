package worthsaving.cli;

import java.io.IOException;
import java.io.PrintWriter;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import worthsaving.report.CsvWriter;
import worthsaving.report.Exported;
import worthsaving.report.TsvWriter;
import worthsaving.report.VinGuard;

/** In which of the forms for handing on a judgement is wanted, if in any. */
final class ExportForm {

    @ArgGroup
    private Choice choice = new Choice();

    @Mixin
    private VinOption vin;

    private static final class Choice {
        @Option(names = "--json", description = "Print results as JSON, for scripts; shared/schema describes it.")
        private boolean json;

        @Option(names = "--csv", description = "Print results as CSV, safe to open in a spreadsheet.")
        private boolean csv;

        @Option(names = "--tsv", description = "Print results as tab-separated values, safe to paste into a"
                + " spreadsheet.")
        private boolean tsv;

        @Option(names = "--markdown", description = "Print results as Markdown.")
        private boolean markdown;
    }

    /** @return whether a form for handing on was wanted, and is written */
    boolean print(Exported report, PrintWriter out) throws IOException {
        if (choice.json) {
            report.json(out);
        } else if (choice.csv) {
            report.rows(header -> new CsvWriter(out, header));
        } else if (choice.tsv) {
            report.rows(header -> new TsvWriter(out, header));
        } else if (choice.markdown) {
            report.markdown(out);
        } else {
            return false;
        }
        return true;
    }

    /** A report for people. */
    @FunctionalInterface
    interface Text {
        void to(Appendable out) throws IOException;
    }

    /** Prints a report in the form that is wanted; where people read it, with a note and the usual warning. */
    void print(Exported report, Text text, PrintWriter out, String note) throws IOException {
        if (!print(report, out)) {
            text.to(out);
            Output.warn(out, note);
        }
    }

    VinGuard guard() {
        return vin.guard();
    }
}
