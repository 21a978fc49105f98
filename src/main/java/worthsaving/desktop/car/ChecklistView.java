package worthsaving.desktop.car;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import worthsaving.catalog.FindingKind;
import worthsaving.catalog.FindingKind.Stage;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;

/** All findings as a list to tick, by how one meets them. Lines are made when their stage is opened. */
final class ChecklistView extends VBox {

    private final CarModel model;
    private final Checklist checklist;
    private final TextField words = new TextField();
    private final Map<Stage, TitledPane> panes = new EnumMap<>(Stage.class);
    private final Map<Stage, List<FindingLine>> lines = new EnumMap<>(Stage.class);
    /** Stages the user had open before typing; searching opens what it finds. */
    private final Set<Stage> open = EnumSet.of(Stage.ADVERT);

    ChecklistView(CarModel model) {
        super(6);
        this.model = model;
        this.checklist = new Checklist(model.findings());
        getStyleClass().addAll("panel", "padded");
        Label title = Words.explained(Words.plain(Texts.of("checklist.title"), "subheading"),
                Texts.of("checklist.why"));
        title.setLabelFor(words);
        words.setId("checklist-words");
        words.setPromptText(Texts.of("checklist.words"));
        words.setAccessibleText(Texts.of("checklist.words"));
        words.textProperty().addListener((o, was, is) -> search());
        VBox stages = new VBox(4);
        for (Stage stage : Stage.values()) {
            TitledPane pane = new TitledPane();
            pane.setId("stage-" + stage.name());
            pane.setAnimated(false);
            pane.setExpanded(open.contains(stage));
            pane.expandedProperty().addListener((o, was, is) -> {
                if (words.getText().isBlank()) {
                    remember(stage, is);
                }
                fill(stage);
            });
            panes.put(stage, pane);
            lines.put(stage, List.of());
            stages.getChildren().add(pane);
        }
        ScrollPane scroll = new ScrollPane(stages);
        scroll.setFitToWidth(true);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().addAll(title, words, scroll);
        model.scenarioProperty().addListener((o, was, is) -> {
            if (was == null || !is.sameCar(was)) {
                show();
            }
        });
        search();
    }

    /** Shows one finding, wherever it stands. */
    void seek(String name) {
        words.setText(name);
        words.requestFocus();
    }

    void find() {
        words.requestFocus();
        words.selectAll();
    }

    private void remember(Stage stage, boolean isOpen) {
        if (isOpen) {
            open.add(stage);
        } else {
            open.remove(stage);
        }
    }

    private void search() {
        boolean searching = !words.getText().isBlank();
        panes.forEach((stage, pane) -> {
            List<FindingKind> found = checklist.matching(stage, words.getText());
            pane.setVisible(!found.isEmpty());
            pane.setManaged(!found.isEmpty());
            pane.setExpanded(searching ? !found.isEmpty() : open.contains(stage));
            fill(stage);
        });
        show();
    }

    private void fill(Stage stage) {
        TitledPane pane = panes.get(stage);
        List<FindingLine> made = new ArrayList<>();
        if (pane.isExpanded()) {
            checklist.matching(stage, words.getText()).forEach(f -> made.add(new FindingLine(model, f)));
        }
        lines.put(stage, made);
        VBox box = new VBox(7);
        box.getChildren().addAll(made);
        pane.setContent(box);
    }

    private void show() {
        Scenario scenario = model.scenarioProperty().get();
        if (scenario == null) {
            return;
        }
        panes.forEach((stage, pane) -> pane.setText(Texts.of("checklist.stage", Texts.of("stage", stage),
                checklist.known(stage, scenario), checklist.size(stage))));
        lines.values().forEach(of -> of.forEach(FindingLine::show));
    }
}
