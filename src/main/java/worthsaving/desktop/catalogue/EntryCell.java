package worthsaving.desktop.catalogue;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.VBox;
import worthsaving.desktop.Words;

/** A name, with what it belongs to beneath. */
final class EntryCell extends ListCell<Entry> {

    private static final double SIDES = 34;

    private final Label name = Words.wrapped("");
    private final Label group = Words.plain("", "soft");
    private final VBox box = new VBox(name, group);

    EntryCell() {
        box.prefWidthProperty().bind(widthProperty().subtract(SIDES));
        box.setAlignment(Pos.CENTER_LEFT);
        name.setMinHeight(0);
        setPrefWidth(0);
    }

    @Override
    protected void updateItem(Entry entry, boolean empty) {
        super.updateItem(entry, empty);
        setText(null);
        if (empty || entry == null) {
            setGraphic(null);
            setTooltip(null);
            return;
        }
        name.setText(entry.name());
        setTooltip(new Tooltip(entry.name()));
        group.setText(BoxWords.group(entry.group()));
        group.setVisible(!entry.group().isBlank());
        group.setManaged(group.isVisible());
        setGraphic(box);
    }
}
