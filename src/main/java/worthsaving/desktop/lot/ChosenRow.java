package worthsaving.desktop.lot;

import javafx.css.PseudoClass;
import javafx.scene.control.TableRow;

/** A row that stands out while its car is in the chosen set; its words say so too. */
final class ChosenRow extends TableRow<LotRow> {

    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

    private final ChoiceModel choice;

    ChosenRow(ChoiceModel choice) {
        this.choice = choice;
    }

    @Override
    protected void updateItem(LotRow row, boolean empty) {
        super.updateItem(row, empty);
        pseudoClassStateChanged(CHOSEN, !empty && row != null && choice.holds(row.listing().id()));
    }
}
