package worthsaving.desktop.catalogue;

import java.util.List;
import javafx.scene.control.Tooltip;
import worthsaving.catalog.CatalogueFault;
import worthsaving.catalog.CatalogueText.Line;
import worthsaving.desktop.EnteredField;
import worthsaving.desktop.Texts;

/** One cell of the catalogue. */
final class CellField extends EnteredField {

    private final CatalogueModel model;
    private final String column;
    private Line line;

    CellField(CatalogueModel model, Line line, String column, String name) {
        super(id(line, column), name);
        this.model = model;
        this.line = line;
        this.column = column;
        setText(shown());
        explain();
    }

    /** Such as {@code cell-items-32-hours_mode}. */
    static String id(Line line, String column) {
        return "cell-" + line.file().replace(".csv", "") + '-' + line.line() + '-' + column;
    }

    @Override
    protected void takeBack() {
        model.undo();
    }

    @Override
    protected void doAgain() {
        model.redo();
    }

    private IdNames names() {
        return new IdNames(model.names());
    }

    @Override
    protected String shown() {
        return names().shown(column, line.cell(column));
    }

    /** The ids, which the files hold. */
    private void explain() {
        if (IdNames.isList(column)) {
            setTooltip(new Tooltip(line.cell(column).isBlank() ? Texts.of("catalogue.ids")
                    : Texts.of("catalogue.ids.are", line.cell(column))));
        }
    }

    @Override
    protected void take() {
        model.edit(line, column, names().cell(column, getText()));
    }

    /** Shows the row as it now is. */
    void show(Line now) {
        line = now;
        refresh();
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
