package worthsaving.report;

import java.io.IOException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import worthsaving.record.BrierScore;
import worthsaving.record.ItemLesson;
import worthsaving.record.Learning;
import worthsaving.record.Lesson;
import worthsaving.record.QuantityRecord;
import worthsaving.record.TrackRecord;

/** Forecast against what came, and what it teaches. */
public final class RecordReport {

    private static final int PIT_BINS = 5;

    private final TrackRecord record;
    private final Learning learning;

    public RecordReport(TrackRecord record, Learning learning) {
        this.record = record;
        this.learning = learning;
    }

    /** For people; what so few cars can prove comes first. */
    public void text(Appendable out) throws IOException {
        line(out, record.caution());
        if (!record.quantities().isEmpty()) {
            quantities(out);
        }
        if (record.failedItems().isPresent()) {
            failedItems(out, record.failedItems().get());
        }
        line(out, "\nWhat your cars teach; each line can be switched off (casebook learning --off ...)");
        for (Lesson lesson : learning.lessons()) {
            line(out, "  " + lesson.words());
            line(out, "    from: " + lesson.prior());
        }
        for (ItemLesson lesson : learning.items()) {
            line(out, "  " + lesson.words());
        }
        if (!learning.items().isEmpty()) {
            line(out, "  Items move by the odds against their forecasts, since you choose which cars you buy and open.");
        }
        line(out, "\n" + Words.ESTIMATES);
    }

    private void quantities(Appendable out) throws IOException {
        TextTable table = new TextTable().left("forecast").right("cars").right("actual less forecast").right("score")
                .right("naive").right("better by").left("80 % interval held").left("where results fell");
        for (QuantityRecord q : record.quantities()) {
            table.row(q.quantity().label() + ", " + q.quantity().unit(), q.cars(),
                    figure(q.bias()) + (q.biasError().isPresent() ? " +-" + figure(q.biasError().getAsDouble()) : ""),
                    figure(q.crps()), orBlank(q.naiveCrps()),
                    q.skill().isPresent() ? Math.round(100 * q.skill().getAsDouble()) + " %" : "",
                    q.coverage().held() + " of " + q.cars() + ", truly " + Words.percent(q.coverage().low()) + " to "
                            + Words.percent(q.coverage().high()),
                    Arrays.stream(q.pit().histogram(PIT_BINS)).mapToObj(Integer::toString).collect(Collectors.joining(" ")));
        }
        table.write(out);
        line(out, "Score: continuous ranked probability score, in the unit of the forecast, smaller is better; naive: a "
                + "forecaster who knows only your other cars.");
        line(out, "Where results fell: counts from the low to the high fifth of each forecast; alike when forecasts are "
                + "right, heaped at the ends when they are too sure.");
    }

    private static void failedItems(Appendable out, BrierScore brier) throws IOException {
        line(out, String.format(Locale.ROOT, "%nFailed items: Brier score %.3f = reliability %.3f - resolution %.3f + "
                        + "uncertainty %.3f, and what one bin hides; better than your average by %.0f %%.",
                brier.score(), brier.reliability(), brier.resolution(), brier.uncertainty(), 100 * brier.skill()));
        TextTable table = new TextTable().right("forecast").right("items").right("had failed").left("truly");
        for (BrierScore.Bin bin : brier.bins()) {
            table.row(Words.percent(bin.mean()), bin.count(), bin.happened(),
                    Words.percent(bin.coverage().low()) + " to " + Words.percent(bin.coverage().high()));
        }
        table.write(out);
    }

    /** For scripts. */
    public void json(Appendable out) throws IOException {
        JsonReport json = new JsonReport(out, "worthsaving/record", 1)
                .field("cars", record.cars()).field("caution", record.caution()).beginList("quantities");
        for (QuantityRecord q : record.quantities()) {
            Map<String, Object> f = new LinkedHashMap<>();
            f.put("quantity", q.quantity().name());
            f.put("cars", q.cars());
            f.put("bias", q.bias());
            q.biasError().ifPresent(e -> f.put("bias_error", e));
            f.put("crps", q.crps());
            q.naiveCrps().ifPresent(n -> f.put("naive_crps", n));
            f.put("coverage", q.coverage());
            f.put("interval_score", q.interval());
            f.put("pinball_10_50_90", q.pinball());
            f.put("pit", q.pit().values());
            q.pit().pValue().ifPresent(p -> f.put("pit_p_value", p));
            json.element(f);
        }
        json.endList();
        if (record.failedItems().isPresent()) {
            BrierScore b = record.failedItems().get();
            Map<String, Object> f = new LinkedHashMap<>();
            f.put("brier", b.score());
            f.put("reliability", b.reliability());
            f.put("resolution", b.resolution());
            f.put("uncertainty", b.uncertainty());
            f.put("skill", b.skill());
            f.put("bins", b.bins());
            json.field("failed_items", f);
        }
        json.beginList("lessons");
        for (Lesson lesson : learning.lessons()) {
            json.element(Map.of("line", lesson.term().id(), "cars", lesson.cars(), "before", lesson.before().median(),
                    "after", lesson.after().median(), "range", lesson.range(), "on", lesson.on(), "prior", lesson.prior()));
        }
        json.endList().beginList("items");
        for (ItemLesson lesson : learning.items()) {
            json.element(Map.of("item", lesson.item(), "cars", lesson.cars(), "failed", lesson.failed(),
                    "before", lesson.before().mean(), "after", lesson.after().mean(), "on", lesson.on()));
        }
        json.endList().end();
    }

    private static String orBlank(OptionalDouble value) {
        return value.isPresent() ? figure(value.getAsDouble()) : "";
    }

    private static String figure(double value) {
        return Math.abs(value) < 100 ? String.format(Locale.ROOT, "%.1f", value) : Words.whole(value);
    }

    private static void line(Appendable out, String text) throws IOException {
        out.append(text).append('\n');
    }
}
