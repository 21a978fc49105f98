package worthsaving.desktop.catalogue;

import java.util.List;
import javafx.scene.control.TextField;
import worthsaving.catalog.CatalogueFault;
import worthsaving.catalog.CatalogueText.Line;

/** One cell of the catalogue, taken over by Enter or when the field is left. */
final class CellField extends TextField {

    private final CatalogueModel model;
    private final String column;
    private Line line;

    CellField(CatalogueModel model, Line line, String column, String name) {
        this.model = model;
        this.line = line;
        this.column = column;
        setId("cell-" + line.file() + '-' + line.line() + '-' + column);
        setAccessibleText(name);
        setText(line.cell(column));
        setOnAction(e -> take());
        focusedProperty().addListener((o, was, is) -> {
            if (!is) {
                take();
            }
        });
    }

    private void take() {
        model.edit(line, column, getText());
    }

    /** Shows the row as it now is. */
    void show(Line now) {
        line = now;
        if (!getText().strip().equals(now.cell(column))) {
            setText(now.cell(column));
        }
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
