package worthsaving.desktop.market;

import java.util.function.Consumer;
import worthsaving.desktop.EnteredField;

/** A figure of the market. */
final class EditField extends EnteredField {

    private final MarketModel model;
    private final Consumer<String> onEdit;
    private String shown;

    EditField(MarketModel model, String id, String name, String text, Consumer<String> onEdit) {
        super(id, name);
        this.model = model;
        this.onEdit = onEdit;
        show(text);
    }

    void show(String text) {
        shown = text;
        refresh();
    }

    @Override
    protected String shown() {
        return shown;
    }

    @Override
    protected void take() {
        if (!getText().strip().equals(shown)) {
            shown = getText().strip();
            onEdit.accept(shown);
        }
    }

    @Override
    protected void takeBack() {
        model.takeBack();
    }

    @Override
    protected void doAgain() {
        model.doAgain();
    }
}
