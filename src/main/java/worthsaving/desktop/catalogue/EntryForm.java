package worthsaving.desktop.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import worthsaving.catalog.CatalogueText;
import worthsaving.catalog.CatalogueText.Line;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.Onset;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.quantity.Distance;

/** Everything that the catalogue says of one entry, each cell to be changed in place. */
final class EntryForm extends VBox {

    /** Years, with 12,000 miles each, for which the chance of having failed is told. */
    private static final int[] AGES = {6, 10, 15};

    private final CatalogueModel model;
    private final List<BoxRow> rows = new ArrayList<>();
    private final Label often = Words.wrapped("", "soft");
    private Entry entry;

    EntryForm(CatalogueModel model) {
        super(10);
        this.model = model;
        getStyleClass().add("tab-page");
        model.draftProperty().addListener((o, was, is) -> refresh());
    }

    void show(Entry chosen, Shown shown) {
        entry = chosen;
        rows.clear();
        getChildren().clear();
        if (chosen == null) {
            return;
        }
        CatalogueText text = model.draftProperty().get();
        Map<String, String> names = model.names();
        getChildren().addAll(Words.wrapped(chosen.name(), "heading"),
                Words.wrapped(Texts.of("catalogue.where", shown.file(), chosen.line().line(), chosen.id()), "soft"),
                often);
        List<Box> boxes = Box.of(shown.file(), List.copyOf(chosen.line().cells().keySet()));
        List<Box> first = shown.first().stream()
                .flatMap(c -> boxes.stream().filter(b -> b.columns().contains(c))).toList();
        if (!first.isEmpty()) {
            getChildren().add(boxes(chosen.line(), first));
        }
        for (Shown.Related related : shown.related()) {
            List<Line> lines = chosen.linked(text, related.file(), related.mine());
            if (!lines.isEmpty()) {
                getChildren().addAll(Words.wrapped(BoxWords.name(related.key()), "subheading"),
                        Words.wrapped(BoxWords.meaning(related.key()), "soft"), ranges(lines, related, names));
            }
        }
        if (!first.isEmpty()) {
            getChildren().add(Words.wrapped(Texts.of("catalogue.rest"), "subheading"));
        }
        getChildren().add(boxes(chosen.line(), boxes.stream().filter(b -> !first.contains(b)).toList()));
        refresh();
    }

    private GridPane boxes(Line line, List<Box> boxes) {
        GridPane grid = grid(24, 36);
        int row = 0;
        for (Box box : boxes) {
            BoxRow made = new BoxRow(model, line, box, BoxWords.name(box.key()));
            made.addTo(grid, row);
            grid.add(Words.wrapped(BoxWords.meaning(box.key()), "soft"), 2, row);
            rows.add(made);
            row += 2;
        }
        return grid;
    }

    /** One row for each line: its low, mode and high; label and source follow the figure. */
    private GridPane ranges(List<Line> lines, Shown.Related related, Map<String, String> names) {
        GridPane grid = grid(50, 50);
        int row = 0;
        for (Line line : lines) {
            String other = line.cell(related.other());
            String title = related.other().equals("part_source")
                    ? BoxWords.name("part_source." + other) : names.getOrDefault(other, other);
            Box range = Box.of(line.file(), List.copyOf(line.cells().keySet())).stream()
                    .filter(Box::isRange).findFirst().orElseThrow();
            BoxRow made = new BoxRow(model, line, range, title);
            made.addTo(grid, row);
            rows.add(made);
            row += 2;
        }
        return grid;
    }

    /** @param widths of the columns in per cent; what is left goes to a last one */
    private static GridPane grid(double... widths) {
        GridPane grid = new GridPane();
        grid.setHgap(12);
        grid.setVgap(4);
        for (double width : widths) {
            ColumnConstraints column = new ColumnConstraints();
            column.setPercentWidth(width);
            grid.getColumnConstraints().add(column);
        }
        return grid;
    }

    private void refresh() {
        if (entry == null) {
            return;
        }
        CatalogueText text = model.draftProperty().get();
        List<Line> lines = rows.stream().flatMap(BoxRow::files).distinct().flatMap(f -> text.lines(f).stream()).toList();
        rows.forEach(r -> r.show(lines, model.faults()));
        often.setText(often());
        often.setVisible(!often.getText().isEmpty());
        often.setManaged(often.isVisible());
    }

    private String often() {
        return model.valid().map(c -> c.itemsById().get(entry.id())).map(EntryForm::often).orElse("");
    }

    private static String often(FailureItem item) {
        String[] chances = new String[AGES.length];
        for (int k = 0; k < AGES.length; k++) {
            double miles = AGES[k] * Onset.MILES_PER_YEAR;
            chances[k] = Figures.percent(item.onset().prior(AGES[k], Distance.ofMiles(miles)).value());
        }
        return Texts.of("catalogue.often", chances[0], chances[1], chances[2]);
    }
}
