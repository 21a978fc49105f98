package worthsaving.desktop.lot;

import java.util.IdentityHashMap;
import java.util.List;
import javafx.scene.control.TableColumn;

/** Lends width that a table has left to the columns with most to say. Widths are in sizes of ordinary text. */
final class SpareWidth {

    private static final double SCROLL_BAR = 20;

    private final IdentityHashMap<TableColumn<?, ?>, Double> own = new IdentityHashMap<>();
    private boolean sharing;

    /** The width of a column when there is nothing to lend. */
    void own(TableColumn<?, ?> column, double width) {
        own.put(column, width);
    }

    double own(TableColumn<?, ?> column) {
        return own.get(column);
    }

    /** The user drew a column wider or narrower, unless it was this that did. */
    void drawn(TableColumn<?, ?> column, double em) {
        if (!sharing) {
            own.put(column, column.getWidth() / em);
        }
    }

    boolean sharing() {
        return sharing;
    }

    /** @param width of the whole table */
    void share(List<? extends TableColumn<LotRow, ?>> visible, double width, double em) {
        double needed = visible.stream().mapToDouble(this::own).sum() * em + SCROLL_BAR;
        double parts = visible.stream().mapToDouble(c -> kind(c).appetite()).sum();
        double spare = parts > 0 ? Math.max(0, width - needed) / parts : 0;
        sharing = true;
        visible.forEach(c -> c.setPrefWidth(own(c) * em + spare * kind(c).appetite()));
        sharing = false;
    }

    private static LotColumn kind(TableColumn<?, ?> column) {
        return (LotColumn) column.getUserData();
    }
}
