package worthsaving.desktop.car;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.desktop.book.Bought;

/** Says that the car was bought, or lets one say so. */
final class BuyBar extends HBox {

    private final CarModel model;
    private final CarBook book;
    private final Label bought = Words.whole("", "good-news");
    private final Button buy = new Button(Texts.of("buy.button"));

    BuyBar(CarModel model, CarBook book) {
        super(8);
        this.model = model;
        this.book = book;
        setAlignment(Pos.CENTER_LEFT);
        buy.setId("buy");
        buy.setMinWidth(Region.USE_PREF_SIZE);
        buy.setTooltip(new Tooltip(Texts.of("buy.button.why")));
        buy.setOnAction(e -> BuyDialog.show(getScene().getWindow(), new BuyModel(model, book, model.today())));
        buy.disableProperty().bind(model.busyProperty().or(book.book().readOnlyProperty()));
        bought.setId("bought");
        getChildren().addAll(bought, buy);
        model.scenarioProperty().addListener(o -> show());
        book.book().revisionProperty().addListener(o -> show());
        show();
    }

    private void show() {
        Optional<Bought> is = book.bought();
        bought.setText(is.map(b -> Texts.of("buy.bought", b.day().toString(), Figures.money(b.paid()))).orElse(""));
        bought.setVisible(is.isPresent());
        bought.setManaged(is.isPresent());
        buy.setVisible(model.isOpen() && is.isEmpty());
        buy.setManaged(buy.isVisible());
    }
}
