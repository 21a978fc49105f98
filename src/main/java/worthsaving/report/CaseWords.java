package worthsaving.report;

import java.time.Instant;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import worthsaving.casebook.Actual;
import worthsaving.casebook.JournalEntry.What;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Observation;

/** What stands in a casebook, in words and as the fields of JSON. */
final class CaseWords {

    private CaseWords() {}

    static String result(Actual a) {
        return "sold " + Words.whole(a.sale()) + ", cost " + Words.whole(a.cost()) + ", left "
                + Words.whole(a.profitBeforeHours()) + " before own hours";
    }

    static String seen(Observation o) {
        return o.subject() + " " + o.sight().name().toLowerCase(Locale.ROOT).replace('_', ' ')
                + (o.witness() == Observation.Witness.SELLER ? ", the seller says" : "");
    }

    static String what(What what) {
        if (what instanceof What.Work w) {
            return Words.hours(w.hours().value()) + " h"
                    + w.planned().map(p -> " of " + Words.hours(p.value()) + " planned").orElse("");
        } else if (what instanceof What.Receipt r) {
            return "paid " + Words.whole(r.paid()) + r.planned().map(p -> " of " + Words.whole(p) + " planned").orElse("");
        } else if (what instanceof What.Finding f) {
            return seen(f.seen());
        } else if (what instanceof What.Opened o) {
            return "opened " + o.step();
        } else if (what instanceof What.PartBought p) {
            return "part for " + p.item() + ", " + Words.whole(p.paid())
                    + p.planned().map(m -> " of " + Words.whole(m) + " planned").orElse("");
        } else if (what instanceof What.Mended m) {
            return "mended " + m.item();
        }
        return what instanceof What.Decision ? "decision" : "note";
    }

    static String day(Instant at) {
        return at.atZone(ZoneId.systemDefault()).toLocalDate().toString();
    }

    static Map<String, Object> money(Money money) {
        return Map.of("amount", money.amount(), "currency", money.currency().getCurrencyCode());
    }

    static Map<String, Object> finished(Actual a) {
        Map<String, Object> f = new LinkedHashMap<>();
        f.put("bought", a.bought().toString());
        f.put("sold", a.sold().toString());
        f.put("paid", money(a.paid()));
        f.put("sale", money(a.sale()));
        f.put("cost", money(a.cost()));
        f.put("hours", a.hours().value());
        a.daysToSell().ifPresent(d -> f.put("days_to_sell", d));
        f.put("items", a.items());
        return f;
    }
}
