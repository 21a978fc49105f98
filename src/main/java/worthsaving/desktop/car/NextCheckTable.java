package worthsaving.desktop.car;

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
        getChildren().clear();
        List<CheckValue> best = checks.stream().filter(c -> c.net().amount() > 0).limit(most).toList();
        if (best.isEmpty()) {
            add(Words.wrapped(Texts.of("checks.none")), 0, 0, COLUMNS.length, 1);
            return;
        }
        for (int i = 0; i < COLUMNS.length; i++) {
            Label head = Words.whole(Texts.of("checks." + COLUMNS[i]), "soft");
            add(Words.explained(head, Texts.of("checks.explain." + COLUMNS[i])), i, 0);
        }
        for (int row = 1; row <= best.size(); row++) {
            line(row, best.get(row - 1));
        }
    }

    private void line(int row, CheckValue check) {
        Hyperlink name = new Hyperlink(check.finding().name());
        name.setWrapText(true);
        name.getStyleClass().add("name-column");
        name.setTooltip(new Tooltip(Texts.of("checks.seek")));
        name.setOnAction(e -> onSeek.accept(check.finding().name()));
        add(name, 0, row);
        add(Words.whole(Texts.of("stage", check.finding().stage()), "soft"), 1, row);
        add(Words.whole(Figures.amount(check.net().amount()), "subheading"), 2, row);
        add(Words.whole(Figures.amount(check.cost().amount())), 3, row);
        add(Words.whole(Figures.percent(check.chancePresent().value())), 4, row);
        add(Words.whole(Figures.amount(check.profitIfPresent().amount())), 5, row);
        add(Words.whole(Figures.amount(check.profitIfAbsent().amount())), 6, row);
    }
}
