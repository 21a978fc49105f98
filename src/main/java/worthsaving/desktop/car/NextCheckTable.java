package worthsaving.desktop.car;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.HPos;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.inspection.CheckValue;

/** The checks that are worth most before paying; a name leads to its line in the checklist. */
final class NextCheckTable extends GridPane {

    private static final String[] COLUMNS = {"check", "how", "net", "cost", "chance", "if_yes", "if_no"};

    private final int most;
    private final Consumer<String> onSeek;
    private final List<Line> lines = new ArrayList<>();

    NextCheckTable(int most, Consumer<String> onSeek) {
        this.most = most;
        this.onSeek = onSeek;
        setHgap(12);
        setVgap(3);
        setId("next-checks");
        for (int i = 0; i < COLUMNS.length; i++) {
            ColumnConstraints column = new ColumnConstraints();
            column.setHgrow(i == 0 ? Priority.ALWAYS : Priority.NEVER);
            column.setHalignment(i < 2 ? HPos.LEFT : HPos.RIGHT);
            getColumnConstraints().add(column);
        }
    }

    void show(List<CheckValue> checks) {
        List<CheckValue> best = checks.stream().filter(c -> c.net().amount() > 0).limit(most).toList();
        if (getChildren().isEmpty() || best.size() != lines.size()) {
            build(best.size());
        }
        for (int row = 0; row < best.size(); row++) {
            lines.get(row).show(best.get(row));
        }
    }

    private void build(int rows) {
        getChildren().clear();
        lines.clear();
        if (rows == 0) {
            add(Words.wrapped(Texts.of("checks.none")), 0, 0, COLUMNS.length, 1);
            return;
        }
        for (int i = 0; i < COLUMNS.length; i++) {
            Label head = Words.whole(Texts.of("checks." + COLUMNS[i]), "soft");
            add(Words.explained(head, Texts.of("checks.explain." + COLUMNS[i])), i, 0);
        }
        for (int row = 1; row <= rows; row++) {
            lines.add(new Line(row));
        }
    }

    /** One check; its nodes stay while a slider moves. */
    private final class Line {
        private final Hyperlink name = new Hyperlink();
        private final Label how = Words.whole("", "soft");
        private final Label net = Words.whole("", "subheading");
        private final Label cost = Words.whole("");
        private final Label chance = Words.whole("");
        private final Label ifYes = Words.whole("");
        private final Label ifNo = Words.whole("");

        Line(int row) {
            name.setWrapText(true);
            name.getStyleClass().add("name-column");
            name.setTooltip(new Tooltip(Texts.of("checks.seek")));
            addRow(row, name, how, net, cost, chance, ifYes, ifNo);
        }

        void show(CheckValue check) {
            name.setText(check.finding().name());
            name.setOnAction(e -> onSeek.accept(check.finding().name()));
            how.setText(Texts.of("stage", check.finding().stage()));
            net.setText(Figures.amount(check.net().amount()));
            cost.setText(Figures.amount(check.cost().amount()));
            chance.setText(Figures.percent(check.chancePresent().value()));
            ifYes.setText(Figures.amount(check.profitIfPresent().amount()));
            ifNo.setText(Figures.amount(check.profitIfAbsent().amount()));
        }
    }
}
