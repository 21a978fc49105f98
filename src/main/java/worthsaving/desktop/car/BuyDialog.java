package worthsaving.desktop.car;

import javafx.event.ActionEvent;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ButtonBar.ButtonData;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Dialog;
import javafx.scene.layout.VBox;
import javafx.stage.Window;
import worthsaving.desktop.FormRow;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;

/** Asks for what and when a car was bought. */
final class BuyDialog {

    private static final double WIDTH = 420;

    private BuyDialog() {}

    static void show(Window owner, BuyModel model) {
        Dialog<ButtonType> box = new Dialog<>();
        Parent like = owner.getScene().getRoot();
        box.initOwner(owner);
        box.setTitle(Texts.of("buy.title"));
        box.getDialogPane().getStylesheets().setAll(like.getStylesheets());
        box.getDialogPane().setStyle(like.getStyle());
        VBox form = new VBox(10,
                new FormRow("buy-price", Texts.of("buy.price"), model.currency(), Texts.of("buy.price.why"),
                        model.priceProperty(), text -> BuyModel.price(text).fault()),
                new FormRow("buy-day", Texts.of("buy.day"), "", Texts.of("buy.day.why"), model.dayProperty(),
                        text -> model.day(text).fault()),
                Words.wrapped(Texts.of("buy.kept"), "soft"));
        form.setPrefWidth(WIDTH);
        box.getDialogPane().setContent(form);
        ButtonType buy = new ButtonType(Texts.of("buy.go"), ButtonData.OK_DONE);
        box.getDialogPane().getButtonTypes().addAll(buy, ButtonType.CANCEL);
        Node go = box.getDialogPane().lookupButton(buy);
        go.setId("buy-go");
        go.addEventFilter(ActionEvent.ACTION, e -> {
            if (!model.buy()) {
                e.consume();
            }
        });
        box.show();
    }
}
