package worthsaving.desktop.catalogue;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import worthsaving.catalog.CatalogueFault;
import worthsaving.catalog.CatalogueText.Line;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;

/** A name, the fields to fill in, and beneath them what is wrong with them. */
final class BoxRow {

    private static final int NUMBER = 5;

    private final Label name;
    private final HBox fields = new HBox(6);
    private final List<CellField> cells;
    private final Label wrong = Words.wrapped("", "notice", "failed");

    /** @param title what the row is called where that is not the box's own name, such as a finding */
    BoxRow(CatalogueModel model, Line line, Box box, String title) {
        name = Words.wrapped(title);
        cells = box.columns().stream().map(c -> new CellField(model, line, c, accessible(box, title, c))).toList();
        fields.getChildren().addAll(cells);
        if (box.isRange()) {
            cells.forEach(c -> c.setPrefColumnCount(NUMBER));
        } else {
            HBox.setHgrow(cells.get(0), Priority.ALWAYS);
        }
        wrong.setManaged(false);
        wrong.setVisible(false);
    }

    private static String accessible(Box box, String title, String column) {
        return box.isRange() ? title + ", " + Texts.of("catalogue." + part(column)) : title;
    }

    private static String part(String column) {
        return column.substring(column.lastIndexOf('_') + 1);
    }

    void addTo(GridPane grid, int row) {
        grid.add(name, 0, row);
        grid.add(fields, 1, row);
        grid.add(wrong, 1, row + 1);
    }

    void show(List<Line> lines, List<CatalogueFault> faults) {
        lines.stream().filter(cells.get(0)::isOf).findFirst().ifPresent(now -> cells.forEach(c -> c.show(now)));
        String said = cells.stream().flatMap(c -> c.among(faults).stream()).map(CatalogueFault::message)
                .distinct().collect(Collectors.joining("\n"));
        wrong.setText(said);
        wrong.setVisible(!said.isEmpty());
        wrong.setManaged(!said.isEmpty());
    }

    /** Files that the row shows cells of. */
    Stream<String> files() {
        return cells.stream().map(CellField::file);
    }
}
