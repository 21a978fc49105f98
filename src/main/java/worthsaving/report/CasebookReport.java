package worthsaving.report;

import java.io.IOException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import worthsaving.casebook.Actual;
import worthsaving.casebook.CaseFile;
import worthsaving.casebook.Forecast;
import worthsaving.casebook.JournalEntry;
import worthsaving.casebook.JournalEntry.What;
import worthsaving.casebook.Numbered;
import worthsaving.casebook.Photo;
import worthsaving.quantity.Money;
import worthsaving.record.Quantity;
import worthsaving.vehicle.Observation;

/** Cases of a casebook for people to read. */
public final class CasebookReport {

    private CasebookReport() {}

    /** One line for each case. */
    public static void list(List<CaseFile> cases, Appendable out) throws IOException {
        TextTable table = new TextTable().left("case").left("car", 40).right("asked").right("hours").right("spent")
                .right("entries").left("finished");
        for (CaseFile c : cases) {
            table.row(c.id(), c.listing().vehicle().label(), c.listing().ask().get().map(Words::whole).orElse(""),
                    Words.hours(c.hours().value()), c.receipts().map(Words::whole).orElse(""), c.journal().size(),
                    c.actual().map(CasebookReport::result).orElse(""));
        }
        table.write(out);
    }

    /** One case with its journal. */
    public static void show(CaseFile c, Appendable out) throws IOException {
        line(out, c.id() + ": " + c.listing().vehicle().label()
                + c.listing().ask().get().map(m -> ", asked " + m).orElse(", no price asked"));
        if (!c.listing().story().isBlank()) {
            line(out, c.listing().story());
        }
        for (Observation o : c.asKnown().observations()) {
            line(out, "  " + seen(o));
        }
        if (!c.journal().isEmpty()) {
            out.append('\n');
            TextTable table = new TextTable().right("entry").left("day").left("stage", 20).left("what").left("text", 60);
            for (Numbered<JournalEntry> e : c.journal()) {
                table.row(e.number(), day(e.value().at()), e.value().stage(), what(e.value().what()), e.value().text());
            }
            table.write(out);
        }
        for (Numbered<Photo> p : c.photos()) {
            line(out, "Photo " + p.number() + ": " + p.value().path() + " " + p.value().caption());
        }
        for (Forecast f : c.forecasts()) {
            Optional<String> value = Optional.ofNullable(f.spreads().get(Quantity.VALUE))
                    .map(v -> ", value " + Words.whole(v.quantile(0.1)) + " to " + Words.whole(v.quantile(0.9)));
            line(out, "Forecast of " + day(f.made()) + value.orElse("") + " (80 %), by price model " + f.modelVersion()
                    + ", catalogue " + f.catalogueVersion() + ", seed " + f.seed().value());
        }
        if (c.actual().isPresent()) {
            Actual a = c.actual().get();
            line(out, "Finished: " + result(a) + ", " + a.days() + " days, " + Words.hours(a.hours().value()) + " h");
        }
    }

    private static String result(Actual a) {
        return "sold " + Words.whole(a.sale()) + ", cost " + Words.whole(a.cost()) + ", left "
                + Words.whole(a.profitBeforeHours()) + " before own hours";
    }

    private static String seen(Observation o) {
        return o.subject() + " " + o.sight().name().toLowerCase(Locale.ROOT).replace('_', ' ')
                + (o.witness() == Observation.Witness.SELLER ? ", the seller says" : "");
    }

    private static String what(What what) {
        if (what instanceof What.Work w) {
            return Words.hours(w.hours().value()) + " h"
                    + w.planned().map(p -> " of " + Words.hours(p.value()) + " planned").orElse("");
        }
        if (what instanceof What.Receipt r) {
            return "paid " + Words.whole(r.paid()) + r.planned().map((Money p) -> " of " + Words.whole(p) + " planned")
                    .orElse("");
        }
        if (what instanceof What.Finding f) {
            return seen(f.seen());
        }
        return what instanceof What.Decision ? "decision" : "note";
    }

    private static String day(Instant at) {
        return at.atZone(ZoneId.systemDefault()).toLocalDate().toString();
    }

    private static void line(Appendable out, String text) throws IOException {
        out.append(TextTable.plain(text)).append('\n');
    }
}
