package worthsaving.report;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import worthsaving.intake.LotEntry;
import worthsaving.intake.LotSummary;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Listing;

/** What reading a table would bring in: what each column was taken for and why, the first rows, and the counts. */
public final class PreviewReport {

    private final LotSummary summary;
    private final List<LotEntry> first;

    public PreviewReport(LotSummary summary, List<LotEntry> first) {
        this.summary = summary;
        this.first = List.copyOf(first);
    }

    public void text(Appendable out) throws IOException {
        TextTable columns = new TextTable().left("column", 40).left("taken for").left("by", 60);
        for (LotSummary.ColumnUse use : summary.uses()) {
            columns.row(use.column(), use.field(), use.why());
        }
        for (String unused : summary.unusedColumns()) {
            columns.row(unused, "-", "not used");
        }
        columns.write(out);
        out.append('\n');
        TextTable rows = new TextTable().left("row").left("id", 16).left("year").left("make", 16).left("model", 20)
                .right("odometer").right("price").left("title").left("codes", 24);
        for (LotEntry entry : first) {
            Listing car = entry.listing();
            rows.row(entry.row(), car.id(), shown(car.vehicle().year()), shown(car.vehicle().make()),
                    shown(car.vehicle().model()),
                    car.vehicle().odometer().get().map(d -> Words.whole(d.value()) + " "
                            + d.unit().name().toLowerCase(Locale.ROOT)).orElse(""),
                    shown(car.ask()), car.vehicle().title().name().toLowerCase(Locale.ROOT),
                    String.join(" ", entry.codes().stream().map(c -> c.code().text()).toList()));
        }
        rows.write(out);
        out.append("\nEncoding " + (summary.encoding().isEmpty() ? "as handed in" : summary.encoding())
                + ", cells parted by " + (summary.separator() == '\t' ? "tabs" : "'" + summary.separator() + "'"));
        out.append("\nWould import " + summary.good() + " listing(s); " + summary.refused() + " row(s) left out, "
                + summary.warnings() + " warning(s)\n");
    }

    private static String shown(Fact<?> fact) {
        return fact.get().map(Object::toString).orElse("");
    }
}
