package worthsaving.desktop.record;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.record.BrierScore;
import worthsaving.record.Coverage;
import worthsaving.record.Quantity;
import worthsaving.record.QuantityRecord;
import worthsaving.record.TrackRecord;

/** How good the forecasts were: one card for each quantity, one for the failed items. */
final class ScoreCards extends FlowPane {

    private static final int BINS = 5;

    ScoreCards(RecordModel model) {
        super(10, 10);
        setId("record-scores");
        model.trackProperty().addListener((o, was, is) -> show(is));
        show(model.trackProperty().get());
    }

    private void show(TrackRecord track) {
        getChildren().clear();
        if (track == null) {
            return;
        }
        track.quantities().forEach(q -> getChildren().add(card(q)));
        track.failedItems().ifPresent(b -> getChildren().add(card(b)));
    }

    private VBox card(QuantityRecord q) {
        String key = q.quantity().name().toLowerCase(Locale.ROOT);
        VBox card = card(Texts.of("score." + key));
        card.setId("score-" + q.quantity());
        String off = amount(q.quantity(), Math.abs(q.bias()));
        String bias = Texts.of(q.bias() >= 0 ? "score.bias.more" : "score.bias.less", off, Texts.of("score.came." + key));
        card.getChildren().add(line(q.biasError().isPresent()
                ? Texts.of("score.bias.error", bias, amount(q.quantity(), q.biasError().getAsDouble())) : bias,
                "score.bias.why"));
        Coverage c = q.coverage();
        card.getChildren().add(line(Texts.of("score.coverage", Integer.toString(c.held()), Integer.toString(c.cars()),
                Figures.percent(c.low()), Figures.percent(c.high())), "score.coverage.why"));
        card.getChildren().add(line(crps(q), "score.crps.why"));
        int[] places = q.pit().histogram(BINS);
        String spoken = IntStream.of(places).mapToObj(Integer::toString).collect(Collectors.joining(", "));
        OptionalDouble p = q.pit().pValue();
        Label under = line(Texts.of("score.pit"), "score.pit.why");
        VBox picture = new VBox(2, new BarsPicture(places, Texts.of("score.pit.spoken", spoken)), under);
        if (p.isPresent()) {
            under.setText(Texts.of("score.pit.p", Figures.percent(p.getAsDouble()).replace(" %", "\u00a0%")));
        }
        card.getChildren().add(picture);
        return card;
    }

    private static String crps(QuantityRecord q) {
        String own = amount(q.quantity(), q.crps());
        if (q.naiveCrps().isEmpty() || q.skill().isEmpty()) {
            return Texts.of("score.crps.alone", own);
        }
        double skill = q.skill().getAsDouble();
        return Texts.of(skill >= 0 ? "score.crps.better" : "score.crps.worse", own,
                amount(q.quantity(), q.naiveCrps().getAsDouble()), Figures.percent(Math.abs(skill)));
    }

    private static VBox card(BrierScore brier) {
        VBox card = card(Texts.of("score.items"));
        card.setId("score-items");
        card.getStyleClass().add("wide-card");
        VBox words = new VBox(6,
                line(Texts.of("score.brier", Figures.number(brier.score(), 3), Figures.percent(Math.abs(brier.skill())),
                        Texts.of(brier.skill() >= 0 ? "score.better" : "score.worse")), "score.brier.why"),
                line(Texts.of("score.brier.parts", Figures.number(brier.reliability(), 3),
                        Figures.number(brier.resolution(), 3), Figures.number(brier.uncertainty(), 3)), "score.brier.parts.why"),
                line(Texts.of("score.reliability"), "score.reliability.why"));
        words.getStyleClass().add("words-of-card");
        String spoken = brier.bins().stream().map(b -> Texts.of("score.reliability.spoken", Figures.percent(b.mean()),
                Integer.toString(b.happened()), Integer.toString(b.count()))).collect(Collectors.joining("; "));
        card.getChildren().add(new HBox(10, new ReliabilityPicture(brier.bins(), spoken), words));
        return card;
    }

    private static VBox card(String title) {
        VBox card = new VBox(6, Words.plain(title, "subheading"));
        card.getStyleClass().addAll("panel", "padded", "score-card");
        return card;
    }

    private static Label line(String text, String why) {
        return Words.explained(Words.wrapped(text.replace(" %", "\u00a0%")), Texts.of(why));
    }

    private static String amount(Quantity quantity, double value) {
        return switch (quantity) {
            case VALUE, COST -> Figures.amount(value);
            case HOURS -> Texts.of("score.unit.hours", Figures.hours(value));
            case DAYS -> Texts.of("score.unit.days", Figures.number(value, value < 10 ? 1 : 0));
        };
    }
}
