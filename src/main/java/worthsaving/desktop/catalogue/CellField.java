package worthsaving.desktop.catalogue;

import java.util.List;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyEvent;
import worthsaving.catalog.CatalogueFault;
import worthsaving.catalog.CatalogueText.Line;
import worthsaving.desktop.Shortcuts;
import worthsaving.desktop.Texts;

/** One cell of the catalogue, taken over by Enter or when the field is left. */
final class CellField extends TextField {

    private final CatalogueModel model;
    private final String column;
    private Line line;

    CellField(CatalogueModel model, Line line, String column, String name) {
        this.model = model;
        this.line = line;
        this.column = column;
        setId(id(line, column));
        setAccessibleText(name);
        setText(shown());
        explain();
        setOnAction(e -> take());
        addEventFilter(KeyEvent.KEY_PRESSED, this::undo);
        focusedProperty().addListener((o, was, is) -> {
            if (!is) {
                take();
            }
        });
    }

    /** Such as {@code cell-items-32-hours_mode}. */
    static String id(Line line, String column) {
        return "cell-" + line.file().replace(".csv", "") + '-' + line.line() + '-' + column;
    }

    /** While nothing is being typed, undo and redo mean the catalogue and not the letters of the field. */
    private void undo(KeyEvent event) {
        if (!getText().strip().equals(shown())) {
            return;
        }
        if (Shortcuts.UNDO.keys().match(event)) {
            model.undo();
            event.consume();
        } else if (Shortcuts.REDO.keys().match(event)) {
            model.redo();
            event.consume();
        }
    }

    private IdNames names() {
        return new IdNames(model.names());
    }

    private String shown() {
        return names().shown(column, line.cell(column));
    }

    /** The ids, which the files hold. */
    private void explain() {
        if (IdNames.isList(column)) {
            setTooltip(new Tooltip(line.cell(column).isBlank() ? Texts.of("catalogue.ids")
                    : Texts.of("catalogue.ids.are", line.cell(column))));
        }
    }

    private void take() {
        model.edit(line, column, names().cell(column, getText()));
    }

    /** Shows the row as it now is. */
    void show(Line now) {
        line = now;
        if (!getText().strip().equals(shown())) {
            setText(shown());
        }
        explain();
    }

    String file() {
        return line.file();
    }

    boolean isOf(Line other) {
        return line.file().equals(other.file()) && line.line() == other.line();
    }

    List<CatalogueFault> among(List<CatalogueFault> faults) {
        return faults.stream()
                .filter(f -> f.file().equals(line.file()) && f.line() == line.line() && f.column().equals(column))
                .toList();
    }
}
