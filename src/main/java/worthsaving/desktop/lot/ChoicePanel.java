package worthsaving.desktop.lot;

import java.util.Locale;
import javafx.geometry.HPos;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressIndicator;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.TitledPane;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import worthsaving.desktop.CarNames;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.ranking.ChosenSet;
import worthsaving.ranking.LotChoice;

/** The limits of a set of cars to buy together, and what comes of them. */
final class ChoicePanel extends TitledPane {

    private static final int DIGITS = 6;

    private final LotModel model;
    private final TextField cash = field("cash");
    private final TextField bays = field("bays");
    private final TextField hours = field("hours");
    private final CheckBox above = new CheckBox(Texts.of("choose.above"));
    private final Label sum = Words.wrapped("", "subheading");
    private final Label risk = Words.wrapped("");
    private final GridPane left = new GridPane();
    private final VBox result = new VBox(4);

    ChoicePanel(LotModel model) {
        this.model = model;
        setId("lot-choose");
        setText(Texts.of("choose.title"));
        setExpanded(false);
        setAnimated(false);
        setMinHeight(USE_PREF_SIZE);
        above.setTooltip(new Tooltip(Texts.of("choose.above.why")));
        left.setHgap(14);
        left.setVgap(2);
        sum.setId("choose-sum");
        ScrollPane scroll = new ScrollPane(left);
        scroll.setFitToWidth(true);
        scroll.getStyleClass().add("left-out");
        result.getChildren().addAll(sum, risk, Words.explained(Words.plain(Texts.of("choose.left"), "subheading"),
                Texts.of("choose.left.why")), scroll);
        Label trouble = Words.trouble(model.choice().troubleProperty());
        trouble.setId("choose-trouble");
        setContent(new VBox(6, limits(), trouble, result));
        model.choice().choiceProperty().addListener((o, was, is) -> show(is));
        show(null);
    }

    private static TextField field(String key) {
        TextField field = new TextField();
        field.setId("choose-" + key);
        field.setPrefColumnCount(DIGITS);
        field.setPromptText(Texts.of("choose.no_limit"));
        field.setAccessibleText(Texts.of("choose." + key));
        field.setTooltip(new Tooltip(Texts.of("choose.explain." + key)));
        return field;
    }

    private FlowPane limits() {
        Button go = new Button(Texts.of("choose.go"));
        go.setId("choose-go");
        go.setMinWidth(Region.USE_PREF_SIZE);
        go.setOnAction(e -> model.choose(new Limits(cash.getText(), bays.getText(), hours.getText(),
                above.isSelected())));
        go.disableProperty().bind(model.choice().busyProperty());
        for (TextField field : new TextField[] {cash, bays, hours}) {
            field.setOnAction(e -> go.fire());
        }
        Button none = new Button(Texts.of("choose.clear"));
        none.getStyleClass().add("plain");
        none.setOnAction(e -> model.choice().clear());
        none.visibleProperty().bind(model.choice().choiceProperty().isNotNull());
        ProgressIndicator turning = new ProgressIndicator();
        turning.setPrefSize(18, 18);
        Button stop = new Button(Texts.of("lot.stop"));
        stop.getStyleClass().add("plain");
        stop.setOnAction(e -> model.choice().cancel());
        HBox busy = new HBox(6, turning, stop);
        busy.visibleProperty().bind(model.choice().busyProperty());
        busy.managedProperty().bind(busy.visibleProperty());
        FlowPane row = new FlowPane(10, 6, named(cash, "cash"), named(bays, "bays"), named(hours, "hours"), above, go,
                none, busy);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private static HBox named(TextField field, String key) {
        Label name = Words.whole(Texts.of("choose." + key));
        name.setLabelFor(field);
        HBox box = new HBox(4, name, field);
        box.setAlignment(Pos.CENTER_LEFT);
        return box;
    }

    private void show(LotChoice choice) {
        result.setVisible(choice != null);
        result.setManaged(choice != null);
        left.getChildren().clear();
        if (choice == null) {
            return;
        }
        setExpanded(true);
        ChosenSet set = choice.set();
        sum.setText(set.cars().isEmpty() ? Texts.of("choose.none")
                : Texts.of("choose.sum", Integer.toString(set.cars().size()), Figures.amount(set.profit()),
                        used(set.cash(), choice.budget().cash()), used(set.bays(), choice.budget().bays()),
                        used(set.hours(), choice.budget().hours())));
        risk.setText(Texts.of("choose.risk", Figures.percent(choice.together().chanceOfLoss()),
                Figures.amount(choice.together().meanOfWorst(0.05)),
                Figures.percent(choice.settings().marketSpread())));
        risk.setVisible(!set.cars().isEmpty());
        int row = 0;
        for (LotChoice.LeftOut no : choice.leftOut()) {
            Label why = Words.wrapped(no.words());
            GridPane.setHgrow(why, Priority.ALWAYS);
            Label costs = Words.whole(no.costOfForcing().isPresent()
                    ? Texts.of("choose.forcing", Figures.amount(no.costOfForcing().getAsDouble())) : "", "soft");
            GridPane.setHalignment(costs, HPos.RIGHT);
            left.addRow(row++, Words.whole(CarNames.title(no.standing().listing().vehicle()) + ", "
                    + no.standing().listing().id()), Words.whole(model.choice().mark(no.standing().listing().id())
                            .toLowerCase(Locale.ROOT), "soft"), why, costs);
        }
    }

    private static String used(double used, double limit) {
        return Double.isInfinite(limit) ? Figures.amount(used)
                : Texts.of("choose.of", Figures.amount(used), Figures.amount(limit));
    }
}
