package worthsaving.report;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import worthsaving.market.Comparable;
import worthsaving.market.PriceKind;
import worthsaving.valuation.AlikeCar;
import worthsaving.valuation.LevelRow;
import worthsaving.valuation.ValueForecast;

/**
 * What stands behind a value beside the model: the user's comparables and the priced cars most like this one.
 *
 * @param typical the car that contributions are counted from, in words; "" when not known
 * @param level what each comparable tells
 * @param alike most alike first
 * @param whyNone said where no priced car is at hand
 */
public record ValueBackground(String typical, List<LevelRow> level, List<AlikeCar> alike, String whyNone) {

    /** Nothing is known of it, and nothing is said. */
    public static final ValueBackground NONE = new ValueBackground("", List.of(), List.of(), "");

    public ValueBackground {
        level = List.copyOf(level);
        alike = List.copyOf(alike);
    }

    /** By how much the user's comparables moved the level, and which of them did. */
    void level(Prose out) throws IOException {
        if (level.isEmpty()) {
            return;
        }
        double shift = level.stream().mapToDouble(LevelRow::moves).sum();
        out.title(String.format(Locale.ROOT, "Your comparables move the price level by %+.1f %%", 100 * Math.expm1(shift)));
        double perLog = shift == 0 ? 1 : Math.expm1(shift) / shift;
        TextTable table = new TextTable().left("row", 30).left("car", 30).right("price").left("").left("seen")
                .right("against model").right("weight").right("moves");
        for (LevelRow r : level) {
            Comparable c = r.comparable();
            table.row(c.origin(), c.car().label(), Words.whole(c.price()), kind(c.kind()), c.seen(),
                    share(r.above(), 0), String.format(Locale.ROOT, "%.2f", r.weight()), share(r.moves() * perLog, 1));
        }
        out.table(table);
        out.say("Weight: likeness to this car in make and model, age and mileage. Haggling, title and date "
                + "are allowed for; the moves add up.");
    }

    /** The priced cars most like this one. */
    void alike(Prose out) throws IOException {
        if (alike.isEmpty()) {
            if (!whyNone.isEmpty()) {
                out.title("Priced cars like it: none. " + whyNone);
            }
            return;
        }
        out.title("Priced cars most like it");
        TextTable table = new TextTable().left("car", 30).right("price").left("").left("seen").left("differs", 48)
                .right("says this sells for").left("row", 48);
        for (AlikeCar a : alike) {
            table.row(a.what(), Words.whole(a.price()), kind(a.kind()), a.seen(),
                    a.differs().isEmpty() ? "in nothing stated" : String.join(", ", a.differs()), Words.whole(a.adjusted()),
                    a.origin());
        }
        out.table(table);
    }

    /** Contributions with where they start and where they end. */
    void contributions(ValueForecast value, Prose out) throws IOException {
        if (value.contributions().isEmpty()) {
            return;
        }
        double added = value.contributions().stream().mapToDouble(c -> c.money().amount()).sum();
        double median = value.quantile(0.5).amount();
        TextTable table = new TextTable().left("feature").left("this car", 40).right("money against a typical car");
        table.row("a typical car", "", Words.whole(median - added));
        value.contributions().forEach(c -> table.row("  " + c.feature(), c.value(), signed(c.money().amount())));
        table.row("this car, median", "", Words.whole(median));
        out.table(table);
        if (!typical.isEmpty()) {
            out.say("A typical car here: " + typical + ", under the same factors.");
        }
    }

    void json(JsonReport json) throws IOException {
        json.beginList("comparables");
        for (LevelRow r : level) {
            json.element(Map.of("row", r.comparable().origin(), "weight", r.weight(), "above_model", r.above(),
                    "moves_log_level", r.moves()));
        }
        json.endList().beginList("alike");
        for (AlikeCar a : alike) {
            Map<String, Object> fields = new LinkedHashMap<>();
            fields.put("car", a.what());
            fields.put("price", a.price().amount());
            fields.put("kind", kind(a.kind()));
            fields.put("seen", a.seen().toString());
            fields.put("likeness", a.likeness());
            fields.put("adjusted", a.adjusted().amount());
            fields.put("row", a.origin());
            json.element(fields);
        }
        json.endList();
    }

    private static String kind(PriceKind kind) {
        return switch (kind) {
            case ASKING -> "asked";
            case SALE -> "sold";
            case BID -> "bid";
            case WHOLESALE -> "wholesale";
        };
    }

    private static String signed(double amount) {
        return (amount > 0 ? "+" : "") + Words.whole(amount);
    }

    private static String share(double share, int digits) {
        return String.format(Locale.ROOT, "%+." + digits + "f %%", 100 * share);
    }
}
