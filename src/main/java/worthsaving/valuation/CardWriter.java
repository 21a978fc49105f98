package worthsaving.valuation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import worthsaving.market.Cleaning;
import worthsaving.market.CleaningRule;
import worthsaving.market.DatasetShape;
import worthsaving.market.PriceRow;
import worthsaving.quantity.Seed;

/** Fills a model card from a finished fit. */
final class CardWriter {

    private static final int LOW_10 = 10;
    private static final int HIGH_90 = Spread.LEVELS.length - 11;

    private CardWriter() {}

    static ModelCard card(
            Cleaning data,
            int rows,
            PointModel whole,
            CrossValidation cross,
            List<Spread> reaches,
            Spread spread,
            Seed seed) {
        DatasetShape shape = data.table().shape();
        List<LocalDate> days = data.table().rows().stream().map(PriceRow::date).sorted().toList();
        List<String> cleaning = new ArrayList<>();
        cleaning.add(String.format(Locale.ROOT, "%,d rows read, %,d unreadable", data.report().read(),
                data.report().unreadable()));
        data.report().rules().forEach(r -> cleaning.add(String.format(Locale.ROOT, "%s: %,d %s (%s)", r.rule().name(),
                r.count(), r.rule().action() == CleaningRule.Action.DROP ? "dropped" : "blanked",
                r.rule().why())));
        return new ModelCard(
                shape.name(),
                shape.market(),
                shape.currency().getCurrencyCode(),
                shape.priceKind().name(),
                shape.source(),
                shape.licence(),
                days.get(0),
                days.get(days.size() - 1),
                rows,
                whole.encoder().makes().size(),
                whole.encoder().models().size(),
                cleaning,
                candidates(cross, whole),
                bands(cross, reaches, spread.edges()),
                seed.value(),
                limits(shape, whole.encoder()));
    }

    private static List<ModelCard.Candidate> candidates(CrossValidation cross, PointModel whole) {
        List<ModelCard.Candidate> list = new ArrayList<>();
        for (int c = 0; c < PointModel.CANDIDATES; c++) {
            if (whole.fitted(c)) {
                list.add(candidate(PointModel.title(c), cross.candidate(c), cross.y(), cross.weights()[c]));
            }
        }
        list.add(candidate("blend", cross.middle(), cross.y(), 1));
        return list;
    }

    private static ModelCard.Candidate candidate(String name, double[] predicted, double[] y, double weight) {
        double[] errors = new double[y.length];
        double mean = Arrays.stream(y).average().orElseThrow();
        double residual = 0;
        double total = 0;
        for (int i = 0; i < y.length; i++) {
            errors[i] = Math.abs(Math.expm1(predicted[i] - y[i]));
            residual += (y[i] - predicted[i]) * (y[i] - predicted[i]);
            total += (y[i] - mean) * (y[i] - mean);
        }
        return new ModelCard.Candidate(
                name, Quantiles.median(errors), Arrays.stream(errors).average().orElseThrow(), 1 - residual / total,
                weight);
    }

    /** Coverage with ranks calibrated on the other parts, so that no price calibrates its own interval. */
    private static List<ModelCard.Band> bands(
            CrossValidation cross, List<Spread> reaches, double[] edges) {
        double[] scores = cross.scores(reaches);
        List<Spread> unseen = new ArrayList<>();
        for (int k = 0; k < reaches.size(); k++) {
            int[] others = cross.rowsWithout(k);
            unseen.add(SpreadFitter.calibrate(
                    reaches.get(k), pick(cross.middle(), others), pick(scores, others), edges.length + 1));
        }
        int count = edges.length + 1;
        long[] rows = new long[count];
        long[] inside = new long[count];
        List<List<Double>> widths = new ArrayList<>();
        for (int b = 0; b < count; b++) {
            widths.add(new ArrayList<>());
        }
        for (int i = 0; i < cross.y().length; i++) {
            double middle = cross.middle()[i];
            double[] residuals = unseen.get(cross.part()[i]).residuals(middle, cross.reach(reaches, i));
            double left = cross.y()[i] - middle;
            int b = Spread.band(middle, edges);
            rows[b]++;
            if (left >= residuals[LOW_10] && left <= residuals[HIGH_90]) {
                inside[b]++;
            }
            widths.get(b).add(Math.exp(residuals[HIGH_90]) - Math.exp(residuals[LOW_10]));
        }
        List<ModelCard.Band> bands = new ArrayList<>();
        for (int b = 0; b < count; b++) {
            double upTo = b < count - 1 ? Math.exp(edges[b]) : Double.POSITIVE_INFINITY;
            double width = Quantiles.median(widths.get(b).stream().mapToDouble(w -> w).toArray());
            bands.add(new ModelCard.Band(upTo, rows[b], (double) inside[b] / rows[b], width));
        }
        return bands;
    }

    private static double[] pick(double[] values, int[] some) {
        return Arrays.stream(some).mapToDouble(i -> values[i]).toArray();
    }

    private static List<String> limits(DatasetShape shape, Encoder encoder) {
        return List.of(
                "Prices are " + shape.priceKind().name().toLowerCase(Locale.ROOT) + " prices of running cars as "
                        + "advertised, not sale prices; the haircut is a factor of its own.",
                "Knows " + encoder.makes().size() + " makes and " + encoder.models().size()
                        + " models; another car is pooled to its make or to all cars and gets a wider interval.",
                "The market has moved since the data's dates; the price index and the user's own comparables "
                        + "bring it to today.",
                "Interval calibrated by cross-validation: coverage holds for cars drawn like the data's, "
                        + "not for every single model.");
    }
}
