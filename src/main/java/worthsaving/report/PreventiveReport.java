package worthsaving.report;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import worthsaving.ranking.Holding;
import worthsaving.repair.Preventive;

/**
 * What to renew while the car is open.
 *
 * @param items best gain first
 * @param holding how long the car is kept
 */
public record PreventiveReport(List<Preventive> items, Holding holding) {

    public static final PreventiveReport NONE = new PreventiveReport(List.of(), new Holding(1, 12_000));

    private static final int SHOWN = 8;

    public PreventiveReport {
        items = List.copyOf(items);
    }

    void text(Prose out) throws IOException {
        if (items.isEmpty()) {
            return;
        }
        out.title(String.format(Locale.ROOT,
                "While you are in there (kept %.1f years at %,.0f miles a year; chances from"
                + " wear, a guess)", holding.years(), holding.milesPerYear()));
        TextTable table = new TextTable().left("item", 50).left("part").right("now").right("later")
                .right("pays above").right("chance needed").left("", 90);
        for (Preventive p : items.subList(0, Math.min(SHOWN, items.size()))) {
            table.row(p.name(), p.source().name().toLowerCase(Locale.ROOT).replace('_', ' '), Words.whole(p.now()),
                    Words.whole(p.later()), Words.percent(p.breakEven().value()), Words.percent(p.needed().value()),
                    (p.pays() ? "renew it, saves " + Words.whole(p.gain()) : "leave it")
                            + (p.protects().isEmpty() ? "" : "; root cause, protects: " + p.protects()));
        }
        out.table(table);
    }

    void json(JsonReport json) throws IOException {
        json.beginList("while_in_there");
        for (Preventive p : items) {
            json.element(Map.of("item", p.item(), "now", p.now().amount(), "later", p.later().amount(),
                    "break_even", p.breakEven().value(), "needed", p.needed().value(), "pays", p.pays(),
                    "protects", p.protects()));
        }
        json.endList();
    }
}
