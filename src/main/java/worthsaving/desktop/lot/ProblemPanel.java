package worthsaving.desktop.lot;

import java.io.File;
import java.io.IOException;
import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TitledPane;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import worthsaving.desktop.Texts;

/** Every row that was left out and every field that was not understood, where, why, and what mends it. */
final class ProblemPanel extends TitledPane {

    private final LotModel model;
    private final VBox list = new VBox(6);
    private final Label saved = new Label();

    ProblemPanel(LotModel model) {
        this.model = model;
        setId("lot-problems");
        list.setPadding(new Insets(6));
        ScrollPane scroll = new ScrollPane(list);
        scroll.setFitToWidth(true);
        scroll.setPrefViewportHeight(120);
        Button copy = new Button(Texts.of("problem.copy"));
        copy.setOnAction(e -> copy());
        Button save = new Button(Texts.of("problem.save"));
        save.setOnAction(e -> save());
        save.disableProperty().bind(Bindings.createBooleanBinding(() -> !model.hasRefusedRows(), model.problems()));
        setContent(new VBox(6, new HBox(8, copy, save, saved), scroll));
        visibleProperty().bind(Bindings.isNotEmpty(model.problems()));
        managedProperty().bind(visibleProperty());
        setExpanded(false);
        model.problems().addListener((ListChangeListener<Problem>) c -> fill());
        fill();
    }

    private void fill() {
        setText(Texts.of("problem.title", model.problems().size()));
        saved.setText("");
        list.getChildren().setAll(model.problems().stream().map(ProblemPanel::line).toList());
    }

    private static VBox line(Problem problem) {
        Label where = new Label(problem.where() + " \u2014 " + problem.cost());
        where.getStyleClass().add("subheading");
        where.setWrapText(true);
        Label what = new Label(Texts.of("problem.line", problem.what(), problem.mend()));
        what.setWrapText(true);
        return new VBox(where, what);
    }

    private void copy() {
        StringBuilder text = new StringBuilder(Texts.of("problem.columns")).append('\n');
        model.problems().forEach(p -> text.append(RowsAsText.cell(p.where())).append('\t')
                .append(RowsAsText.cell(p.cost())).append('\t')
                .append(RowsAsText.cell(p.what())).append('\t')
                .append(RowsAsText.cell(p.mend())).append('\n'));
        ClipboardContent content = new ClipboardContent();
        content.putString(text.toString());
        Clipboard.getSystemClipboard().setContent(content);
        saved.setText(Texts.of("problem.copied"));
    }

    private void save() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(Texts.of("problem.save"));
        chooser.setInitialFileName("refused.csv");
        File file = chooser.showSaveDialog(getScene().getWindow());
        if (file == null) {
            return;
        }
        try {
            model.saveRefusedRows(file.toPath());
            saved.setText(Texts.of("problem.saved", file.getName()));
        } catch (IOException e) {
            saved.setText(Texts.of("problem.not_saved", file.getName(), e.getMessage()));
        }
    }
}
