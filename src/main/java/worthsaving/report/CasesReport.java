package worthsaving.report;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import worthsaving.casebook.CaseFile;

/** The cases of a casebook, one line each. */
public final class CasesReport implements Report {

    private static final int VERSION = 1;

    private final List<CaseFile> cases;
    private final VinGuard vin;

    public CasesReport(List<CaseFile> cases, VinGuard vin) {
        this.cases = List.copyOf(cases);
        this.vin = vin;
    }

    @Override
    public void text(Appendable out) throws IOException {
        TextTable table = new TextTable().left("case").left("car", 40).right("asked").right("hours").right("spent")
                .right("entries").left("finished");
        for (CaseFile c : cases) {
            table.row(c.id(), c.listing().vehicle().label(), c.listing().ask().get().map(Words::whole).orElse(""),
                    Words.hours(c.hours().value()), c.receipts().map(Words::whole).orElse(""), c.journal().size(),
                    c.actual().map(CaseWords::result).orElse(""));
        }
        table.write(out);
    }

    @Override
    public void csv(Appendable out) throws IOException {
        CsvWriter csv = new CsvWriter(out, "id", "car", "added", "asked", "asked_currency", "hours", "spent",
                "spent_currency", "entries", "photos", "forecasts", "finished");
        for (CaseFile c : cases) {
            csv.row(vin.text(c.id()), c.listing().vehicle().label(), CaseWords.day(c.added()),
                    c.listing().ask().get().map(m -> (Object) m.amount()).orElse(""),
                    c.listing().ask().get().map(m -> m.currency().getCurrencyCode()).orElse(""), c.hours().value(),
                    c.receipts().map(m -> (Object) m.amount()).orElse(""),
                    c.receipts().map(m -> m.currency().getCurrencyCode()).orElse(""), c.journal().size(),
                    c.photos().size(), c.forecasts().size(), c.actual().map(a -> a.sold().toString()).orElse(""));
        }
    }

    @Override
    public void json(Appendable out) throws IOException {
        JsonReport json = new JsonReport(out, "worthsaving/casebook", VERSION).beginList("cases");
        for (CaseFile c : cases) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("id", vin.text(c.id()));
            one.put("car", c.listing().vehicle().label());
            one.put("added", c.added().toString());
            c.listing().ask().get().ifPresent(m -> one.put("asked", CaseWords.money(m)));
            one.put("hours", c.hours().value());
            c.receipts().ifPresent(m -> one.put("spent", CaseWords.money(m)));
            one.put("entries", c.journal().size());
            one.put("photos", c.photos().size());
            one.put("forecasts", c.forecasts().size());
            c.actual().ifPresent(a -> one.put("finished", CaseWords.finished(a)));
            json.element(one);
        }
        json.endList().end();
    }
}
