package worthsaving.report;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FailureItem;
import worthsaving.ranking.Judged;
import worthsaving.ranking.Ranked;
import worthsaving.ranking.Standing;

/** A judged lot: a table for people, or CSV and JSON for scripts. */
public final class LotReport implements Exported {

    private static final int VERSION = 1;

    private static final String OTHER_FIGURES =
            "Figures of a car not worth buying are those of repairing and selling it at the ask.";

    private final Ranked ranked;
    private final Map<String, FailureItem> items;
    private final VinGuard vin;
    private final List<StandingColumn> columns;

    public LotReport(Ranked ranked, Catalogue catalogue) {
        this(ranked, catalogue, VinGuard.HIDDEN);
    }

    /** With or without the vehicle identification numbers; what is printed for people never has them. */
    public LotReport(Ranked ranked, Catalogue catalogue, VinGuard vin) {
        this.ranked = ranked;
        this.vin = vin;
        this.columns = StandingColumn.all(vin);
        this.items = catalogue.itemsById();
    }

    /** One line per listing, best first, the first {@code most} of them. */
    public void table(Appendable out, int most) throws IOException {
        table(most, VinGuard.SHOWN).write(out);
        if (hasOtherFigures()) {
            out.append(OTHER_FIGURES).append('\n');
        }
    }

    private boolean hasOtherFigures() {
        return ranked.places().stream().anyMatch(p -> p.standing().way() != p.standing().figuresFor());
    }

    /** The same table of the whole lot as Markdown. */
    @Override
    public void markdown(Appendable out) throws IOException {
        table(ranked.places().size(), vin).markdown(out);
        if (hasOtherFigures()) {
            out.append('\n').append(OTHER_FIGURES).append('\n');
        }
        out.append('\n').append(Markdown.text(Words.ESTIMATES)).append('\n');
    }

    private TextTable table(int most, VinGuard guard) {
        TextTable table = new TextTable()
                .right("#").left("id", 14).left("car", 26).left("verdict").right("ask").right("pay up to")
                .right("expected").right("loss").right("worst 5 %").right("hours").right("per hour").right("days")
                .left("next check", 46);
        for (Ranked.Place place : ranked.places().subList(0, Math.min(most, ranked.places().size()))) {
            Standing s = place.standing();
            table.row(
                    place.rank(),
                    guard.text(s.listing().id()),
                    guard.text(s.listing().vehicle().label()),
                    Words.verdict(s.verdict().kind()),
                    s.listing().ask().get().map(Words::whole).orElse("?"),
                    s.mostToPay().wholeLimit().map(Words::whole).orElse("-"),
                    Words.whole(s.expectedProfit()),
                    Words.percent(s.chanceOfLoss()),
                    Words.whole(s.worstTwentieth()),
                    Math.round(s.ownHours().value()),
                    s.profitPerHour().isPresent() ? Words.whole(s.profitPerHour().getAsDouble()) : "-",
                    Math.round(s.days()),
                    s.nextCheck().map(c -> c.finding().name()).orElse("-"));
        }
        return table;
    }

    /** Why one listing stands where it does. */
    public void explanation(Appendable out, Ranked.Place place) throws IOException {
        Standing s = place.standing();
        out.append(String.format(Locale.ROOT, "%d. %s, %s%n", place.rank(), s.listing().id(),
                TextTable.plain(s.listing().vehicle().label())));
        line(out, s.verdict().headline());
        for (String reason : s.verdict().reasons()) {
            line(out, "- " + reason);
        }
        line(out, "Worth running: " + Words.whole(s.value()) + " (80 % between " + Words.whole(s.valueLow()) + " and "
                + Words.whole(s.valueHigh()) + "). Plan: " + s.way().label() + ".");
        if (!s.likely().isEmpty()) {
            line(out, "Likelier failed than usual: " + s.likely().stream()
                    .map(b -> name(b.item()) + " " + Words.percent(b.posterior().value()))
                    .collect(Collectors.joining("; ")) + ".");
        }
        for (String change : s.verdict().wouldChange()) {
            line(out, "What would change it: " + change);
        }
        if (s.nextCheck().isPresent()) {
            line(out, "Next check: " + s.nextCheck().get().finding().name() + " (worth "
                    + Words.whole(s.nextCheck().get().gross()) + ", costs " + Words.whole(s.nextCheck().get().cost())
                    + ").");
        }
        if (place.dominatedBy().isPresent()) {
            line(out, "No better than " + place.dominatedBy().get() + " in profit, risk, hours or cash.");
        }
        for (String warning : s.warnings()) {
            line(out, "Mind: " + warning);
        }
    }

    private static void line(Appendable out, String text) throws IOException {
        out.append("   ").append(TextTable.plain(text)).append('\n');
    }

    private String name(String item) {
        return Optional.ofNullable(items.get(item)).map(FailureItem::name).orElse(item);
    }

    /** Listings that could not be judged, one line each with the mend. */
    public static void refusals(Appendable out, List<Judged.Refused> refused) throws IOException {
        for (Judged.Refused no : refused) {
            out.append(TextTable.plain(no.listing().origin() + ": " + no.listing().id() + " was not judged: "
                    + no.reason() + "; " + no.mend())).append('\n');
        }
    }

    /** How the verdicts on the same lot differ between two judgings; listings that did not move are counted. */
    public static void changes(Appendable out, Map<String, Standing> before, Map<String, Standing> after)
            throws IOException {
        TextTable table = new TextTable().left("id", 14).left("car", 26).left("verdict").right("pay up to").left("")
                .right("expected").left("").right("loss").left("");
        int same = 0;
        for (Map.Entry<String, Standing> entry : after.entrySet()) {
            Standing now = entry.getValue();
            Standing then = before.get(entry.getKey());
            if (then == null || figures(then).equals(figures(now))) {
                same++;
                continue;
            }
            List<String> a = figures(then);
            List<String> b = figures(now);
            table.row(entry.getKey(), now.listing().vehicle().label(),
                    a.get(0).equals(b.get(0)) ? b.get(0) : a.get(0) + " -> " + b.get(0),
                    a.get(1), "-> " + b.get(1), a.get(2), "-> " + b.get(2), a.get(3), "-> " + b.get(3));
        }
        table.write(out);
        out.append(same + " listing(s) the same\n");
    }

    private static List<String> figures(Standing s) {
        return List.of(Words.verdict(s.verdict().kind()), s.mostToPay().wholeLimit().map(Words::whole).orElse("-"),
                Words.whole(s.expectedProfit()), Words.percent(s.chanceOfLoss()));
    }

    /** Every figure of every listing, for spreadsheets. */
    @Override
    public void rows(RowWriter.Maker form) throws IOException {
        if (ranked.places().isEmpty()) {
            return;
        }
        RowWriter rows = form.of(fields(ranked.places().get(0)).keySet().toArray(String[]::new));
        for (Ranked.Place place : ranked.places()) {
            Map<String, Object> row = fields(place);
            row.replaceAll((name, figure) -> StandingColumn.cell(figure));
            rows.row(row.values().toArray());
        }
    }

    @Override
    public void json(Appendable out) throws IOException {
        JsonReport json = new JsonReport(out, "worthsaving/lot", VERSION).beginList("listings");
        for (Ranked.Place place : ranked.places()) {
            json.element(fields(place));
        }
        json.endList().beginList("refused");
        for (Judged.Refused no : ranked.refused()) {
            json.element(Map.of("id", vin.text(no.listing().id()), "origin", no.listing().origin(), "reason", no.reason(),
                    "mend", no.mend()));
        }
        json.endList().end();
    }

    private Map<String, Object> fields(Ranked.Place place) {
        Map<String, Object> f = new LinkedHashMap<>();
        f.put("rank", place.rank());
        for (StandingColumn column : columns) {
            if (column.name().equals(StandingColumn.WARNINGS)) {
                f.put("dominated_by", place.dominatedBy().map(vin::text).orElse(null));
            }
            f.put(column.name(), column.of(place.standing()));
        }
        return f;
    }
}
