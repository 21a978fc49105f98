package worthsaving.report;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import worthsaving.casebook.Actual;
import worthsaving.casebook.CaseFile;
import worthsaving.casebook.Forecast;
import worthsaving.casebook.JournalEntry;
import worthsaving.casebook.JournalEntry.What;
import worthsaving.casebook.Numbered;
import worthsaving.casebook.Photo;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.record.Quantity;
import worthsaving.vehicle.Observation;

/** One case of a casebook with its journal. Its table is one that a teardown journal is read from. */
public final class CaseFileReport implements Report {

    private static final int VERSION = 1;

    private final CaseFile file;
    private final Set<String> items;
    private final VinGuard vin;

    /** @param items ids of the catalogue's failure items, to tell an item looked at from a finding */
    public CaseFileReport(CaseFile file, Set<String> items, VinGuard vin) {
        this.file = file;
        this.items = Set.copyOf(items);
        this.vin = vin;
    }

    @Override
    public void text(Appendable out) throws IOException {
        line(out, file.id() + ": " + file.listing().vehicle().label()
                + file.listing().ask().get().map(m -> ", asked " + m).orElse(", no price asked"));
        if (!file.listing().story().isBlank()) {
            line(out, file.listing().story());
        }
        for (Observation o : file.asKnown().observations()) {
            line(out, "  " + CaseWords.seen(o));
        }
        if (!file.journal().isEmpty()) {
            out.append('\n');
            TextTable table = new TextTable().right("entry").left("day").left("stage", 20).left("what").left("text", 60);
            for (Numbered<JournalEntry> e : file.journal()) {
                table.row(e.number(), CaseWords.day(e.value().at()), e.value().stage(), CaseWords.what(e.value().what()),
                        e.value().text());
            }
            table.write(out);
        }
        for (Numbered<Photo> p : file.photos()) {
            line(out, "Photo " + p.number() + p.value().entry().map(e -> " of entry " + e).orElse("") + ": "
                    + p.value().path() + " " + p.value().caption());
        }
        for (Forecast f : file.forecasts()) {
            Optional<String> value = Optional.ofNullable(f.spreads().get(Quantity.VALUE))
                    .map(v -> ", value " + Words.whole(v.quantile(0.1)) + " to " + Words.whole(v.quantile(0.9)));
            line(out, "Forecast of " + CaseWords.day(f.made()) + value.orElse("") + " (80 %), by price model "
                    + f.modelVersion() + ", catalogue " + f.catalogueVersion() + ", seed " + f.seed().value());
        }
        if (file.actual().isPresent()) {
            Actual a = file.actual().get();
            line(out, "Finished: " + CaseWords.result(a) + ", " + a.days() + " days, " + Words.hours(a.hours().value())
                    + " h");
        }
    }

    @Override
    public void csv(Appendable out) throws IOException {
        CsvWriter csv = new CsvWriter(out, "stage", "kind", "what", "value", "when", "witness", "text", "currency",
                "planned", "number");
        for (Numbered<JournalEntry> e : file.journal()) {
            Cells c = cells(e.value());
            boolean words = c.subject().isEmpty();
            csv.row(e.value().stage(), c.kind(), words ? vin.text(e.value().text()) : c.subject(),
                    c.amount().map(a -> (Object) a).orElse(c.sight()), CaseWords.day(e.value().at()), c.witness(),
                    words ? "" : vin.text(e.value().text()), c.currency(), c.planned().map(p -> (Object) p).orElse(""),
                    e.number());
        }
    }

    @Override
    public void json(Appendable out) throws IOException {
        JsonReport json = new JsonReport(out, "worthsaving/casebook-case", VERSION)
                .field("id", vin.text(file.id()))
                .field("car", file.listing().vehicle().label())
                .field("added", file.added().toString());
        if (file.listing().ask().get().isPresent()) {
            json.field("asked", CaseWords.money(file.listing().ask().get().get()));
        }
        json.field("story", vin.text(file.listing().story())).beginList("observations");
        for (Observation o : file.asKnown().observations()) {
            json.element(Map.of("subject", o.subject(), "sight", o.sight().name(), "witness", o.witness().name()));
        }
        json.endList().beginList("journal");
        for (Numbered<JournalEntry> e : file.journal()) {
            json.element(fields(e));
        }
        json.endList().beginList("photos");
        for (Numbered<Photo> p : file.photos()) {
            Map<String, Object> f = new LinkedHashMap<>();
            f.put("number", p.number());
            f.put("at", p.value().at().toString());
            f.put("stage", p.value().stage());
            f.put("path", p.value().path());
            f.put("sha256", p.value().sha256());
            f.put("caption", vin.text(p.value().caption()));
            p.value().entry().ifPresent(n -> f.put("entry", n));
            json.element(f);
        }
        json.endList().beginList("forecasts");
        for (Forecast f : file.forecasts()) {
            json.element(fields(f));
        }
        json.endList();
        if (file.actual().isPresent()) {
            json.field("finished", CaseWords.finished(file.actual().get()));
        }
        json.end();
    }

    private Map<String, Object> fields(Numbered<JournalEntry> e) {
        Cells c = cells(e.value());
        Map<String, Object> f = new LinkedHashMap<>();
        f.put("number", e.number());
        f.put("at", e.value().at().toString());
        f.put("stage", e.value().stage());
        f.put("kind", c.kind());
        f.put("text", vin.text(e.value().text()));
        if (!c.subject().isEmpty()) {
            f.put("subject", c.subject());
        }
        if (!c.sight().isEmpty()) {
            f.put("sight", c.sight());
            f.put("witness", c.witness());
        }
        c.amount().ifPresent(a -> f.put("amount", a));
        c.planned().ifPresent(p -> f.put("planned", p));
        if (!c.currency().isEmpty()) {
            f.put("currency", c.currency());
        }
        f.put("photos", file.photosOf(e.number()).stream().map(Numbered::number).toList());
        return f;
    }

    private static Map<String, Object> fields(Forecast forecast) {
        Map<String, Object> spreads = new TreeMap<>();
        forecast.spreads().forEach((q, s) -> spreads.put(q.name().toLowerCase(Locale.ROOT),
                Map.of("p10", s.quantile(.1), "p50", s.quantile(.5), "p90", s.quantile(.9))));
        Map<String, Object> items = new TreeMap<>();
        forecast.items().forEach((id, p) -> items.put(id, p.value()));
        Map<String, Object> f = new LinkedHashMap<>();
        f.put("made", forecast.made().toString());
        f.put("catalogue", forecast.catalogueVersion());
        f.put("model", forecast.modelVersion());
        f.put("program", forecast.programVersion());
        f.put("seed", forecast.seed().value());
        f.put("currency", forecast.currency().getCurrencyCode());
        f.put("spreads", spreads);
        f.put("items", items);
        return f;
    }

    /**
     * An entry in the words of a journal's table.
     *
     * @param subject id in the catalogue; blank when the text says what it is about
     */
    private record Cells(String kind, String subject, String sight, String witness, Optional<Double> amount,
            String currency, Optional<Double> planned) {

        static Cells of(String kind, String subject) {
            return new Cells(kind, subject, "", "", Optional.empty(), "", Optional.empty());
        }

        static Cells of(String kind, String subject, Money paid, Optional<Money> planned) {
            return new Cells(kind, subject, "", "", Optional.of(paid.amount()), paid.currency().getCurrencyCode(),
                    planned.map(Money::amount));
        }
    }

    private Cells cells(JournalEntry entry) {
        What what = entry.what();
        if (what instanceof What.Finding f) {
            boolean item = items.contains(f.seen().subject());
            return new Cells(item ? "item" : "finding", f.seen().subject(), sight(f.seen().sight(), item),
                    f.seen().witness().name().toLowerCase(Locale.ROOT), Optional.empty(), "", Optional.empty());
        } else if (what instanceof What.Work w) {
            return new Cells("hours", "", "", "", Optional.of(w.hours().value()), "", w.planned().map(Hours::value));
        } else if (what instanceof What.Receipt r) {
            return Cells.of("paid", "", r.paid(), r.planned());
        } else if (what instanceof What.PartBought p) {
            return Cells.of("part", p.item(), p.paid(), p.planned());
        } else if (what instanceof What.Opened o) {
            return Cells.of("opened", o.step());
        } else if (what instanceof What.Mended m) {
            return Cells.of("mended", m.item());
        }
        return Cells.of(what instanceof What.Decision ? "decision" : "note", "");
    }

    private static String sight(Observation.Sight sight, boolean item) {
        return switch (sight) {
            case PRESENT -> item ? "failed" : "present";
            case ABSENT -> item ? "sound" : "absent";
            default -> "unsure";
        };
    }

    private static void line(Appendable out, String text) throws IOException {
        out.append(TextTable.plain(text)).append('\n');
    }
}
