package worthsaving.desktop.teardown;

import java.util.List;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import worthsaving.deal.Outcome;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.teardown.Advice;
import worthsaving.teardown.Move;

/** Go on or stop: what could be done now with its money, what a look would change, and in which order to look. */
final class AdvicePane extends VBox {

    private static final int RESULTS = 4;
    private static final int LOOKS = 4;
    private static final int PLACES = 8;

    AdvicePane() {
        super(10);
        getStyleClass().add("padded");
        setId("advice");
    }

    void show(Advice advice) {
        getChildren().clear();
        ends(advice);
        cost(advice);
        looks(advice);
        rules(advice);
        order(advice);
        cautions(advice);
    }

    private void ends(Advice advice) {
        List<Advice.Choice> ends = AdviceWords.ends(advice);
        GridPane grid = grid(2);
        for (int i = 0; i < ends.size(); i++) {
            Move end = ends.get(i).move();
            String style = i == 0 ? "subheading" : "plain-cell";
            grid.add(Words.wrapped(Texts.of("teardown.end." + kind(end), end.name()), style), 0, i);
            Label worth = Words.whole(Figures.amount(end.worth().amount()), style);
            worth.setId("end-" + end.id());
            grid.add(worth, 1, i);
        }
        section("teardown.ends", grid);
    }

    /** Selling in pieces, parting out and scrapping are all stopping; a unit is a change of remedy. */
    private static String kind(Move end) {
        return end.kind() == Move.Kind.STOP ? "stop" : end.id().equals("FINISH") ? "finish" : "unit";
    }

    private void looks(Advice advice) {
        List<Advice.Choice> looks = AdviceWords.looks(advice);
        if (looks.isEmpty()) {
            section("teardown.looks", Words.wrapped(Texts.of("teardown.looks.none")));
            return;
        }
        GridPane grid = grid(4);
        String[] columns = {"teardown.look.what", "teardown.look.cost", "teardown.look.worth", "teardown.look.change"};
        for (int c = 0; c < columns.length; c++) {
            grid.add(Words.explained(Words.whole(Texts.of(columns[c]), "soft"), Texts.of(columns[c] + ".why")), c, 0);
        }
        for (int i = 0; i < Math.min(LOOKS, looks.size()); i++) {
            Move look = looks.get(i).move();
            grid.add(Words.wrapped(AdviceWords.name(look)), 0, i + 1);
            grid.add(Words.whole(Figures.amount(look.cost().amount())), 1, i + 1);
            grid.add(Words.whole(Figures.amount(look.worth().amount()), "subheading"), 2, i + 1);
            grid.add(Words.whole(AdviceWords.percent(looks.get(i).chanceOfChange())), 3, i + 1);
        }
        VBox all = new VBox(4, grid);
        Move first = looks.get(0).move();
        all.getChildren().add(Words.wrapped(Texts.of("teardown.results"), "soft"));
        first.results().stream().limit(RESULTS).forEach(r -> all.getChildren().add(
                Words.wrapped(AdviceWords.result(r), "soft")));
        double rest = first.results().stream().skip(RESULTS).mapToDouble(Move.Result::chance).sum();
        if (rest > 0) {
            all.getChildren().add(Words.wrapped(Texts.of("teardown.result.rest", AdviceWords.percent(rest)), "soft"));
        }
        if (!advice.exact()) {
            all.getChildren().add(Words.wrapped(Texts.of("teardown.not_exact"), "soft"));
        }
        section("teardown.looks", all);
    }

    private void cautions(Advice advice) {
        VBox all = new VBox(3);
        advice.cautions().forEach(c -> all.getChildren().add(Words.wrapped("\u2022 " + c, "caution")));
        all.getChildren().add(Words.wrapped("\u2022 " + Texts.of("teardown.caution.usual"), "caution"));
        section("teardown.cautions", all);
    }

    private void cost(Advice advice) {
        if (advice.costToFinish().isEmpty()) {
            section("teardown.finish", Words.wrapped(Texts.of("teardown.finish.never")));
            return;
        }
        Outcome cost = advice.costToFinish().get();
        Label sum = Words.wrapped(Texts.of("teardown.finish.cost", Figures.amount(cost.mean()),
                Figures.amount(cost.quantile(.1)), Figures.amount(cost.quantile(.9)),
                Figures.hours(advice.closing().value())));
        sum.setId("cost-to-finish");
        Label chances = Words.wrapped(Texts.of("teardown.finish.chances", AdviceWords.percent(advice.chanceOfUnit()),
                AdviceWords.percent(advice.chanceStopIsBetter())));
        chances.setId("finish-chances");
        section("teardown.finish", new VBox(3, sum, chances));
    }

    private void rules(Advice advice) {
        VBox all = new VBox(3);
        all.setId("rules");
        advice.rules().forEach(r -> all.getChildren().add(Words.wrapped("\u2022 " + AdviceWords.rule(r))));
        if (advice.rules().isEmpty()) {
            all.getChildren().add(Words.wrapped(Texts.of("teardown.rules.none")));
        }
        section(AdviceWords.wouldStop(advice) ? "teardown.rules.on" : "teardown.rules.off", all);
    }

    private void order(Advice advice) {
        List<Advice.Place> places = advice.order().places();
        if (places.isEmpty()) {
            return;
        }
        GridPane grid = grid(3);
        String[] columns = {"teardown.place.what", "teardown.place.chance", "teardown.place.hours"};
        for (int c = 0; c < columns.length; c++) {
            grid.add(Words.explained(Words.whole(Texts.of(columns[c]), "soft"), Texts.of(columns[c] + ".why")), c, 0);
        }
        for (int i = 0; i < Math.min(PLACES, places.size()); i++) {
            Advice.Place place = places.get(i);
            grid.add(Words.wrapped(Texts.of("teardown.place", i + 1, place.name())), 0, i + 1);
            grid.add(Words.whole(AdviceWords.percent(place.chance())), 1, i + 1);
            grid.add(Words.whole(Figures.hours(place.hours())), 2, i + 1);
        }
        section("teardown.order", new VBox(4, grid, Words.wrapped(AdviceWords.order(advice.order()), "soft")));
    }

    private void section(String key, Node content) {
        VBox box = new VBox(4, Words.explained(Words.plain(Texts.of(key), "subheading"), Texts.of(key + ".why")), content);
        box.getStyleClass().add("ruled");
        getChildren().add(box);
    }

    private static GridPane grid(int columns) {
        GridPane grid = new GridPane();
        grid.setHgap(12);
        grid.setVgap(3);
        for (int c = 0; c < columns; c++) {
            ColumnConstraints column = new ColumnConstraints();
            column.setHgrow(c == 0 ? Priority.ALWAYS : Priority.NEVER);
            column.setHalignment(c == 0 ? HPos.LEFT : HPos.RIGHT);
            grid.getColumnConstraints().add(column);
        }
        return grid;
    }
}
