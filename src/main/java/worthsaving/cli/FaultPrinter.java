package worthsaving.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import worthsaving.intake.IntakeFault;
import worthsaving.intake.LotEntry;
import worthsaving.intake.LotSink;
import worthsaving.intake.LotSummary;
import worthsaving.intake.RefusedRow;
import worthsaving.report.BadRows;
import worthsaving.report.CsvWriter;
import worthsaving.report.JsonReport;
import worthsaving.report.TextTable;

/** Prints faults as they come, so that a table of any size can be checked. */
abstract class FaultPrinter implements LotSink {

    private final Writer refusedRows;
    private Writer badRowsOut;
    private BadRows badRows;

    private FaultPrinter(Writer refusedRows) {
        this.refusedRows = refusedRows;
    }

    static FaultPrinter of(Output output, PrintWriter out, Writer refusedRows) throws IOException {
        if (output.json()) {
            return new Json(out, refusedRows);
        }
        return output.csv() ? new Csv(out, refusedRows) : new Text(out, refusedRows);
    }

    abstract void print(IntakeFault fault) throws IOException;

    abstract void end(LotSummary summary) throws IOException;

    @Override
    public void good(LotEntry entry) {}

    @Override
    public void refused(RefusedRow row) {
        row.faults().forEach(this::warning);
        try {
            refusedRows.append(row.text()).append('\n');
            if (badRows != null) {
                badRows.row(row);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Also writes rows left out as cells with their reason. */
    void badRowsTo(Writer out) {
        badRowsOut = out;
    }

    @Override
    public void columns(List<String> names) {
        if (badRowsOut != null) {
            try {
                badRows = new BadRows(badRowsOut, names);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    @Override
    public void warning(IntakeFault fault) {
        try {
            print(fault);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void header(String text) {
        try {
            refusedRows.append(text).append('\n');
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static final class Text extends FaultPrinter {
        private final PrintWriter out;

        private Text(PrintWriter out, Writer refusedRows) {
            super(refusedRows);
            this.out = out;
        }

        @Override
        void print(IntakeFault fault) {
            String fate = fault.effect() == IntakeFault.Effect.ROW_REFUSED ? " [row left out]" : "";
            out.println(TextTable.plain(fault.toString()) + fate);
        }

        @Override
        void end(LotSummary s) {
            if (!s.readable()) {
                return;
            }
            out.println(s.good() + " listing(s) read, " + s.refused() + " row(s) left out, " + s.warnings()
                    + " warning(s)");
            out.println(TextTable.plain("Columns: " + s.columns().entrySet().stream()
                    .map(FaultPrinter::column).collect(Collectors.joining(", "))));
            if (!s.unusedColumns().isEmpty()) {
                out.println(TextTable.plain("Not used: " + String.join(", ", s.unusedColumns())));
            }
        }
    }

    private static String column(Map.Entry<String, String> matched) {
        return matched.getKey().equals(matched.getValue())
                ? matched.getKey()
                : matched.getKey() + " from " + matched.getValue();
    }

    private static final class Csv extends FaultPrinter {
        private final CsvWriter csv;

        private Csv(PrintWriter out, Writer refusedRows) throws IOException {
            super(refusedRows);
            csv = new CsvWriter(out, "source", "row", "column", "effect", "what", "mend");
        }

        @Override
        void print(IntakeFault f) throws IOException {
            csv.row(f.source(), f.row(), f.column(), f.effect(), f.what(), f.mend());
        }

        @Override
        void end(LotSummary summary) {
            // the counts are the rows
        }
    }

    private static final class Json extends FaultPrinter {
        private final JsonReport json;

        private Json(PrintWriter out, Writer refusedRows) throws IOException {
            super(refusedRows);
            json = new JsonReport(out, "worthsaving/lot-check", 1).beginList("faults");
        }

        @Override
        void print(IntakeFault fault) throws IOException {
            json.element(fault);
        }

        @Override
        void end(LotSummary summary) throws IOException {
            json.endList().field("summary", summary).end();
        }
    }
}
