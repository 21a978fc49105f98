package worthsaving.report;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.MoneyLine;
import worthsaving.deal.DealTerms;
import worthsaving.deal.Term;
import worthsaving.quantity.Range;
import worthsaving.quantity.Source;

/** The money lines of a deal, then those of the catalogue that serve elsewhere. */
public final class MoneyReport implements Report {

    private static final int VERSION = 1;

    private final DealTerms terms;
    private final List<MoneyLine> others;

    public MoneyReport(DealTerms terms, Catalogue catalogue) {
        this.terms = terms;
        this.others = catalogue.moneyLines().stream().filter(l -> Term.ofId(l.id()).isEmpty()).toList();
    }

    @Override
    public void text(Appendable out) throws IOException {
        TextTable table = table();
        for (Term term : Term.values()) {
            Source source = terms.sources().get(term);
            row(table, term.id(), term.label(), terms.get(term), term.unit(), source);
        }
        table.write(out);
        out.append("\nOf the catalogue, for parts, titles, rules of thumb and the owner's sums:\n");
        TextTable rest = table();
        others.forEach(l -> row(rest, l.id(), l.name(), l.figure(), l.unit(), l.source()));
        rest.write(out);
    }

    private static TextTable table() {
        return new TextTable().left("line").left("what it is", 60).right("low").right("mode").right("high").left("unit")
                .left("label").left("source", 44);
    }

    private static void row(TextTable table, String id, String name, Range range, MoneyLine.Unit unit, Source source) {
        table.row(id, name, figure(range.low()), figure(range.mode()), figure(range.high()), lower(unit),
                lower(source.label()), source.text());
    }

    private static String figure(double x) {
        return x == Math.rint(x) ? Words.whole(x) : String.format(Locale.ROOT, "%,.2f", x);
    }

    private static String lower(Enum<?> name) {
        return name.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    @Override
    public void csv(Appendable out) throws IOException {
        CsvWriter csv = new CsvWriter(out, "line", "name", "low", "mode", "high", "unit", "label", "source");
        for (Term term : Term.values()) {
            csv.row(fields(term).values().toArray());
        }
    }

    @Override
    public void json(Appendable out) throws IOException {
        JsonReport json = new JsonReport(out, "worthsaving/money", VERSION)
                .field("currency", terms.currency().getCurrencyCode()).beginList("lines");
        for (Term term : Term.values()) {
            json.element(fields(term));
        }
        json.endList().end();
    }

    private Map<String, Object> fields(Term term) {
        Range range = terms.get(term);
        Source source = terms.sources().get(term);
        Map<String, Object> f = new LinkedHashMap<>();
        f.put("line", term.id());
        f.put("name", term.label());
        f.put("low", range.low());
        f.put("mode", range.mode());
        f.put("high", range.high());
        f.put("unit", lower(term.unit()));
        f.put("label", lower(source.label()));
        f.put("source", source.text());
        return f;
    }
}
