package worthsaving.desktop.teardown;

import java.util.Optional;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Typed;
import worthsaving.desktop.Words;
import worthsaving.quantity.Money;
import worthsaving.ranking.ShopQuote;

/** For a car taken apart for its owner: what is on the bill, the ceiling, and when to call. */
final class OwnerPane extends VBox {

    private static final int CALLS = 8;
    private static final int COLUMNS = 6;

    private final TeardownModel model;
    private final CheckBox owned = new CheckBox(Texts.of("teardown.owner.is"));
    private final TextField rate = new TextField();
    private final TextField agreed = new TextField();
    private final Label fault = Words.wrapped("", "stop-words");
    private final HBox fields;
    private final VBox words = new VBox(3);
    private boolean filling;

    OwnerPane(TeardownModel model) {
        super(5);
        this.model = model;
        getStyleClass().add("padded");
        setId("owner");
        owned.setId("owner-is");
        owned.setOnAction(e -> keep());
        fields = new HBox(6, field("rate", rate), field("agreed", agreed));
        fields.getStyleClass().add("head");
        fault.visibleProperty().bind(fault.textProperty().isNotEmpty());
        fault.managedProperty().bind(fault.visibleProperty());
        getChildren().addAll(
                Words.explained(Words.plain(Texts.of("teardown.owner"), "subheading"), Texts.of("teardown.owner.why")),
                owned, fields, fault, words);
        fill();
    }

    private VBox field(String key, TextField field) {
        field.setId("owner-" + key);
        field.setPrefColumnCount(COLUMNS);
        field.setAccessibleText(Texts.of("teardown.owner." + key));
        field.setOnAction(e -> keep());
        field.focusedProperty().addListener((o, was, is) -> {
            if (!is) {
                keep();
            }
        });
        Label name = Words.explained(Words.whole(Texts.of("teardown.owner." + key, model.currency().getCurrencyCode()), "soft"),
                Texts.of("teardown.owner.explain." + key));
        name.setLabelFor(field);
        return new VBox(1, name, field);
    }

    /** What is kept of it. */
    void fill() {
        filling = true;
        Optional<Owner> owner = model.owner();
        owned.setSelected(owner.isPresent());
        fields.setVisible(owner.isPresent());
        fields.setManaged(owner.isPresent());
        rate.setPromptText(owner.map(o -> Figures.amount(model.rate(o).amount())).orElse(""));
        rate.setText(text(owner.flatMap(Owner::rate)));
        agreed.setText(text(owner.flatMap(Owner::agreed)));
        if (owner.isEmpty()) {
            words.getChildren().clear();
        }
        filling = false;
    }

    private static String text(Optional<Money> money) {
        return money.map(m -> Figures.amount(m.amount())).orElse("");
    }

    private void keep() {
        if (filling || model.fileProperty().get() == null) {
            return;
        }
        Typed<Double> hour = Typed.amount(rate.getText(), false);
        Typed<Double> most = Typed.amount(agreed.getText(), false);
        fault.setText(hour.good() ? most.fault() : hour.fault());
        if (hour.good() && most.good()) {
            model.keep(owned.isSelected() ? Optional.of(new Owner(money(hour), money(most))) : Optional.empty());
        }
    }

    private Optional<Money> money(Typed<Double> typed) {
        return typed.value().filter(v -> v > 0).map(v -> new Money(v, model.currency()));
    }

    void show(TeardownPicture.Seen seen) {
        words.getChildren().clear();
        seen.job().ifPresent(job -> {
            Label bill = Words.wrapped(AdviceWords.bill(job, seen.quote()));
            bill.setId("owner-bill");
            words.getChildren().add(bill);
            if (seen.quote().isEmpty()) {
                words.getChildren().add(Words.wrapped(Texts.of("teardown.owner.nothing"), "soft"));
            }
            seen.quote().ifPresent(this::calls);
        });
    }

    private void calls(ShopQuote quote) {
        words.getChildren().addAll(Words.wrapped(AdviceWords.rest(quote)),
                Words.plain(Texts.of("teardown.owner.calls"), "subheading"));
        quote.calls().stream().limit(CALLS).forEach(c -> words.getChildren().add(
                Words.wrapped("\u2022 " + AdviceWords.call(c, quote))));
        words.getChildren().add(Words.wrapped("\u2022 " + Texts.of("teardown.owner.call.ceiling",
                Figures.money(quote.ceiling()))));
    }
}
