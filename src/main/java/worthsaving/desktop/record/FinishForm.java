package worthsaving.desktop.record;

import java.util.List;
import java.util.Optional;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import worthsaving.casebook.CaseFile;
import worthsaving.desktop.CarNames;
import worthsaving.desktop.Choices;
import worthsaving.desktop.FormRow;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.desktop.record.FinishModel.Field;

/** Asks what came of a car. */
final class FinishForm extends VBox {

    private final RecordModel record;
    private final FinishModel model;
    private final ComboBox<CaseFile> cases = new ComboBox<>();
    private final VBox fields = new VBox(8);

    FinishForm(RecordModel record) {
        super(8);
        this.record = record;
        this.model = new FinishModel(record);
        getStyleClass().addAll("panel", "padded");
        cases.setId("finish-case");
        cases.setMaxWidth(Double.MAX_VALUE);
        cases.setPromptText(Texts.of("finish.which"));
        cases.setAccessibleText(Texts.of("finish.which"));
        cases.setConverter(new CaseNames());
        cases.valueProperty().addListener((o, was, is) -> {
            if (is != null) {
                model.begin(is);
            }
        });
        record.underWay().addListener((ListChangeListener<CaseFile>) c -> fill());
        fill();
        model.caseProperty().addListener((o, was, is) -> show(is));
        getChildren().addAll(Words.plain(Texts.of("finish.title"), "subheading"), Words.wrapped(Texts.of("finish.why"), "soft"),
                cases, fields);
    }

    private void fill() {
        CaseFile chosen = cases.getValue();
        cases.getItems().setAll(record.underWay());
        Optional<CaseFile> same = chosen == null ? Optional.empty()
                : record.underWay().stream().filter(c -> c.id().equals(chosen.id())).findFirst();
        if (!chosen(same)) {
            cases.setValue(null);
            show(null);
        }
    }

    /** What is typed stays while the case itself is as it was. */
    private boolean chosen(Optional<CaseFile> same) {
        boolean unchanged = same.isPresent() && same.get().equals(model.caseProperty().get());
        same.filter(c -> !unchanged).ifPresent(cases::setValue);
        return same.isPresent();
    }

    private void show(CaseFile of) {
        fields.getChildren().clear();
        if (of == null) {
            return;
        }
        for (Field field : Field.values()) {
            String key = Texts.of("finish", field);
            fields.getChildren().add(new FormRow("finish-" + field, key, unit(field), Texts.of("finish.explain", field),
                    model.text(field), text -> model.fault(field, text)));
        }
        fields.getChildren().add(Words.explained(Words.plain(Texts.of("finish.items"), "subheading"),
                Texts.of("finish.items.why")));
        model.items().forEach((item, failed) -> fields.getChildren().add(item(item, failed)));
        if (model.items().isEmpty()) {
            fields.getChildren().add(Words.wrapped(Texts.of("finish.no_items"), "soft"));
        }
        Label trouble = Words.wrapped("", "stop-words");
        trouble.setId("finish-trouble");
        Button go = new Button(Texts.of("finish.go"));
        go.setId("finish-go");
        go.setMinWidth(Region.USE_PREF_SIZE);
        go.disableProperty().bind(record.book().readOnlyProperty());
        go.setOnAction(e -> trouble.setText(model.finish() ? "" : Texts.of("finish.mend")));
        fields.getChildren().addAll(trouble, go);
    }

    private String unit(Field field) {
        return switch (field) {
            case PAID, SALE, COST -> model.currency();
            case HOURS -> Texts.of("finish.unit.hours");
            case DAYS_TO_SELL -> Texts.of("finish.unit.days");
            case BOUGHT, SOLD -> "";
        };
    }

    private VBox item(String item, Optional<Boolean> failed) {
        ComboBox<Optional<Boolean>> found = Choices.box(
                List.of(Optional.<Boolean>empty(), Optional.of(true), Optional.of(false)), failed,
                f -> Texts.of(f.isEmpty() ? "finish.not_looked" : f.get() ? "finish.failed" : "finish.sound"),
                f -> model.found(item, f));
        found.setId("finish-item-" + item);
        found.setAccessibleText(record.itemName(item));
        Label name = Words.wrapped(record.itemName(item));
        name.setLabelFor(found);
        return new VBox(2, name, found);
    }

    private final class CaseNames extends StringConverter<CaseFile> {

        @Override
        public String toString(CaseFile of) {
            if (of == null) {
                return "";
            }
            String name = Texts.of("finish.case", of.id(), CarNames.title(of.listing().vehicle()));
            return record.book().bought(of.id()).isPresent() ? name : Texts.of("finish.case.open", name);
        }

        @Override
        public CaseFile fromString(String text) {
            throw new UnsupportedOperationException("cases are chosen, not typed");
        }
    }
}
