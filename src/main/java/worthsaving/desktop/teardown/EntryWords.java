package worthsaving.desktop.teardown;

import java.util.Map;
import java.util.Optional;
import worthsaving.casebook.JournalEntry;
import worthsaving.casebook.JournalEntry.What;
import worthsaving.catalog.AccessStep;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.FindingKind;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.vehicle.Observation;

/** An entry of the journal as it is read, with names in place of ids. */
final class EntryWords {

    private EntryWords() {}

    static String of(JournalEntry entry, Catalogue catalogue) {
        String said = said(entry, catalogue);
        boolean alone = entry.what() instanceof What.Note;
        return entry.text().isBlank() ? said : alone ? entry.text() : Texts.of("teardown.entry.with", said, entry.text());
    }

    private static String said(JournalEntry entry, Catalogue catalogue) {
        What what = entry.what();
        if (what instanceof What.Opened o) {
            return Texts.of("teardown.entry.opened", step(o.step(), catalogue));
        } else if (what instanceof What.Finding f) {
            return finding(f.seen(), catalogue);
        } else if (what instanceof What.Work w) {
            String hours = Figures.hours(w.hours().value());
            return w.planned().map(p -> Texts.of("teardown.entry.hours.of", hours, Figures.hours(p.value())))
                    .orElse(Texts.of("teardown.entry.hours", hours));
        } else if (what instanceof What.Receipt r) {
            String paid = Figures.money(r.paid());
            return r.planned().map(p -> Texts.of("teardown.entry.paid.of", paid, Figures.amount(p.amount())))
                    .orElse(Texts.of("teardown.entry.paid", paid));
        } else if (what instanceof What.PartBought p) {
            String paid = Figures.money(p.paid());
            String item = item(p.item(), catalogue);
            return p.planned().map(m -> Texts.of("teardown.entry.part.of", item, paid, Figures.amount(m.amount())))
                    .orElse(Texts.of("teardown.entry.part", item, paid));
        } else if (what instanceof What.Mended m) {
            return Texts.of("teardown.entry.mended", item(m.item(), catalogue));
        }
        return Texts.of(what instanceof What.Decision ? "teardown.entry.decision" : "teardown.entry.note");
    }

    private static String finding(Observation seen, Catalogue catalogue) {
        boolean item = catalogue.itemsById().containsKey(seen.subject());
        String key = item ? "teardown.entry.item" : "teardown.entry.finding";
        String said = Texts.of(key, name(seen.subject(), catalogue),
                Texts.of(item ? "teardown.failed" : "sight", seen.sight()));
        return seen.witness() == Observation.Witness.SELLER ? Texts.of("teardown.entry.seller", said) : said;
    }

    /** Ids that the catalogue no longer has stand as they are. */
    static String name(String id, Catalogue catalogue) {
        return Optional.ofNullable(catalogue.findingsById().get(id)).map(FindingKind::name)
                .orElseGet(() -> item(id, catalogue));
    }

    private static String item(String id, Catalogue catalogue) {
        Map<String, FailureItem> items = catalogue.itemsById();
        return items.containsKey(id) ? items.get(id).name() : id;
    }

    private static String step(String id, Catalogue catalogue) {
        Map<String, AccessStep> steps = catalogue.accessById();
        return steps.containsKey(id) ? steps.get(id).name() : id;
    }
}
