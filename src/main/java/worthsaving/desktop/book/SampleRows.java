package worthsaving.desktop.book;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.statistics.distribution.NormalDistribution;
import worthsaving.casebook.Actual;
import worthsaving.casebook.Forecast;
import worthsaving.casebook.JournalEntry;
import worthsaving.casebook.JournalEntry.What;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.quantity.Probability;
import worthsaving.quantity.Seed;
import worthsaving.record.Ensemble;
import worthsaving.record.Quantity;
import worthsaving.vehicle.Observation;

/** Rows of the sample's tables as journal entries, forecasts and actuals. */
final class SampleRows {

    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);
    /** Normal quantile of 90 %. */
    private static final double TENTH = STANDARD.inverseCumulativeProbability(0.9);
    private static final LocalTime NOON = LocalTime.NOON;

    private SampleRows() {}

    static JournalEntry entry(CSVRecord row) {
        Instant at = at(row.get("when"));
        Optional<Double> planned = number(row.get("planned"));
        What what = switch (row.get("kind")) {
            case "note" -> new What.Note();
            case "decision", "bought" -> new What.Decision();
            case "finding" -> new What.Finding(new Observation(row.get("what"),
                    Observation.Sight.valueOf(row.get("value").toUpperCase(Locale.ROOT)), Observation.Witness.OWN_EYES));
            case "hours" -> new What.Work(Hours.of(value(row)), planned.map(Hours::of));
            case "receipt" -> new What.Receipt(Money.usd(value(row)), planned.map(Money::usd));
            default -> throw new IllegalArgumentException("unknown kind of entry in the sample: " + row.get("kind"));
        };
        String text = bought(row).map(b -> Texts.of("buy.entry", Figures.money(b.paid()), b.day().toString()))
                .orElse(row.get("text"));
        return new JournalEntry(at, row.get("stage"), what, text);
    }

    static Optional<Bought> bought(CSVRecord row) {
        return row.get("kind").equals("bought")
                ? Optional.of(new Bought(LocalDate.parse(row.get("when")), Money.usd(value(row)))) : Optional.empty();
    }

    /** Three figures as a distribution: normal in the logarithm, with a spread of its own on either side of the middle. */
    static Optional<Forecast> forecast(List<CSVRecord> rows) {
        Map<Quantity, Ensemble> spreads = new EnumMap<>(Quantity.class);
        Map<String, Probability> items = new LinkedHashMap<>();
        for (CSVRecord row : rows) {
            double middle = Double.parseDouble(row.get("middle"));
            if (row.get("low").isEmpty()) {
                items.put(row.get("what"), Probability.of(middle));
            } else {
                double below = Math.log(middle / Double.parseDouble(row.get("low"))) / TENTH;
                double above = Math.log(Double.parseDouble(row.get("high")) / middle) / TENTH;
                spreads.put(Quantity.valueOf(row.get("what").toUpperCase(Locale.ROOT)), Ensemble.ofQuantiles(p -> {
                    double z = STANDARD.inverseCumulativeProbability(p);
                    return middle * Math.exp(z * (z < 0 ? below : above));
                }));
            }
        }
        return rows.isEmpty() ? Optional.empty() : Optional.of(new Forecast(at(rows.get(0).get("made")), "sample", "sample",
                "sample", Seed.DEFAULT, Money.USD, spreads, items));
    }

    static Actual actual(CSVRecord row) {
        Map<String, Boolean> items = new LinkedHashMap<>();
        words(row.get("failed")).forEach(item -> items.put(item, true));
        words(row.get("sound")).forEach(item -> items.put(item, false));
        Optional<Double> days = number(row.get("days_to_sell"));
        return new Actual(LocalDate.parse(row.get("bought")), LocalDate.parse(row.get("sold")),
                Money.usd(figure(row, "paid")), Money.usd(figure(row, "sale")), Money.usd(figure(row, "cost")),
                Hours.of(figure(row, "hours")), days.map(OptionalDouble::of).orElse(OptionalDouble.empty()), items);
    }

    private static List<String> words(String text) {
        return text.isBlank() ? List.of() : List.of(text.strip().split("\\s+"));
    }

    private static Instant at(String day) {
        return LocalDate.parse(day).atTime(NOON).toInstant(ZoneOffset.UTC);
    }

    private static double value(CSVRecord row) {
        return figure(row, "value");
    }

    private static double figure(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
    }

    private static Optional<Double> number(String text) {
        return text.isBlank() ? Optional.empty() : Optional.of(Double.parseDouble(text));
    }
}
