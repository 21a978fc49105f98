package worthsaving.desktop.car;

import java.util.EnumMap;
import java.util.Map;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import worthsaving.catalog.FindingKind;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.vehicle.Observation.Sight;
import worthsaving.vehicle.Observation.Witness;

/** One finding with its four answers, and what the seller says of it. */
final class FindingLine extends VBox {

    private final CarModel model;
    private final FindingKind finding;
    private final Map<Sight, ToggleButton> answers = new EnumMap<>(Sight.class);
    private final Label seller = Words.wrapped("", "soft");

    FindingLine(CarModel model, FindingKind finding) {
        super(2);
        this.model = model;
        this.finding = finding;
        Label name = Words.wrapped(finding.name());
        if (!finding.question().isBlank()) {
            Words.explained(name, Texts.of("finding.ask", finding.question()));
        }
        getChildren().add(name);
        if (!finding.caution().isBlank()) {
            getChildren().add(Words.wrapped(Texts.of("caution", finding.caution()), "caution"));
        }
        ToggleGroup group = new ToggleGroup();
        FlowPane row = new FlowPane();
        row.getStyleClass().add("answers");
        for (Sight sight : Sight.values()) {
            ToggleButton answer = new ToggleButton(Texts.of("sight", sight));
            answer.setId(sight.name() + "-" + finding.id());
            answer.getStyleClass().add("answer");
            answer.setMinWidth(Region.USE_PREF_SIZE);
            answer.setToggleGroup(group);
            answer.setTooltip(new Tooltip(Texts.of("sight.explain", sight)));
            answer.setAccessibleText(finding.name() + ": " + answer.getText());
            answer.setOnAction(e -> {
                answer.setSelected(true);
                model.seen(finding.id(), sight);
            });
            answers.put(sight, answer);
            row.getChildren().add(answer);
        }
        getChildren().addAll(row, seller);
        show();
    }

    void show() {
        Scenario scenario = model.scenarioProperty().get();
        if (scenario == null) {
            return;
        }
        answers.get(scenario.sight(finding.id(), Witness.OWN_EYES)).setSelected(true);
        Sight said = scenario.sight(finding.id(), Witness.SELLER);
        seller.setText(said == Sight.NOT_LOOKED_AT ? "" : Texts.of("seller_says", said));
        seller.setVisible(said != Sight.NOT_LOOKED_AT);
        seller.setManaged(said != Sight.NOT_LOOKED_AT);
    }
}
