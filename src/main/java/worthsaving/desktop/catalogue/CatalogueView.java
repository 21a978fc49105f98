package worthsaving.desktop.catalogue;

import javafx.beans.binding.Bindings;
import javafx.collections.FXCollections;
import javafx.collections.transformation.FilteredList;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import worthsaving.catalog.CatalogueFault;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;

/** The catalogue: a list to search, what it says of one entry, and what a change of it does to the lot. */
public final class CatalogueView extends BorderPane {

    private final CatalogueModel model;
    private final ComboBox<Shown> table = new ComboBox<>();
    private final TextField words = new TextField();
    private final ListView<Entry> list = new ListView<>();
    private final EntryForm form;
    private final ScrollPane scroll;

    public CatalogueView(CatalogueModel model) {
        this.model = model;
        this.form = new EntryForm(model);
        this.scroll = new ScrollPane(form);
        setId("catalogue");
        getStyleClass().add("screen");
        scroll.setFitToWidth(true);
        scroll.getStyleClass().add("panel");
        table.getItems().setAll(Shown.values());
        table.setConverter(new TableNames());
        table.getSelectionModel().select(Shown.ITEMS);
        table.setId("catalogue-table");
        table.setMaxWidth(Double.MAX_VALUE);
        table.setAccessibleText(Texts.of("catalogue.table"));
        table.valueProperty().addListener((o, was, is) -> fill());
        words.setId("catalogue-words");
        words.setPromptText(Texts.of("catalogue.words"));
        words.setAccessibleText(Texts.of("catalogue.words"));
        words.textProperty().addListener((o, was, is) -> filter());
        list.setId("catalogue-list");
        list.setCellFactory(v -> new EntryCell());
        list.getSelectionModel().selectedItemProperty().addListener((o, was, is) -> choose(is));
        VBox.setVgrow(list, Priority.ALWAYS);
        VBox left = new VBox(6, table, words, list);
        left.getStyleClass().add("list-column");
        setLeft(left);
        setCenter(scroll);
        setRight(new ChangesPane(model));
        setTop(head());
        model.draftProperty().addListener((o, was, is) -> {
            if (was == null) {
                fill();
            }
        });
    }

    public void find() {
        words.requestFocus();
        words.selectAll();
    }

    private VBox head() {
        Label title = Words.plain(Texts.of("catalogue.title"), "heading");
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        Button compare = new Button(Texts.of("catalogue.compare"));
        compare.setId("catalogue-compare");
        compare.setOnAction(e -> model.compare());
        compare.disableProperty().bind(Bindings.isNotEmpty(model.faults())
                .or(model.busyProperty()).or(model.changedProperty().not()));
        Button keep = new Button(Texts.of("catalogue.keep"));
        keep.setId("catalogue-keep");
        keep.setOnAction(e -> model.keep());
        keep.disableProperty().bind(Bindings.isNotEmpty(model.faults()).or(model.changedProperty().not()));
        Label guesses = Words.plain(Texts.of("catalogue.guesses"), "notice");
        HBox bar = new HBox(10, title, guesses, space, compare, keep);
        bar.getStyleClass().add("head");
        Label faults = new Label();
        faults.getStyleClass().addAll("notice", "failed");
        faults.setWrapText(true);
        faults.textProperty().bind(Bindings.createStringBinding(this::faultWords, model.faults()));
        faults.visibleProperty().bind(Bindings.isNotEmpty(model.faults()));
        faults.managedProperty().bind(faults.visibleProperty());
        Label notice = new Label();
        notice.getStyleClass().add("notice");
        notice.setWrapText(true);
        notice.textProperty().bind(model.noticeProperty());
        notice.visibleProperty().bind(model.noticeProperty().isNotEmpty());
        notice.managedProperty().bind(notice.visibleProperty());
        VBox head = new VBox(6, bar, faults, Words.trouble(model.troubleProperty()), notice);
        head.getStyleClass().add("below-gap");
        return head;
    }

    private String faultWords() {
        if (model.faults().isEmpty()) {
            return "";
        }
        CatalogueFault first = model.faults().get(0);
        return Texts.of("catalogue.faulty", model.faults().size(), first.toString());
    }

    private void fill() {
        if (model.draftProperty().get() == null) {
            return;
        }
        list.setItems(new FilteredList<>(FXCollections.observableArrayList(
                Entry.of(model.draftProperty().get(), table.getValue()))));
        filter();
    }

    private void filter() {
        if (list.getItems() instanceof FilteredList<Entry> all) {
            all.setPredicate(e -> e.matches(words.getText()));
            if (list.getSelectionModel().isEmpty()) {
                list.getSelectionModel().selectFirst();
            }
        }
    }

    private void choose(Entry entry) {
        form.show(entry, table.getValue());
        scroll.setVvalue(0);
    }

    private static final class TableNames extends StringConverter<Shown> {

        @Override
        public String toString(Shown shown) {
            return shown == null ? "" : Texts.of("catalogue.shown", shown);
        }

        @Override
        public Shown fromString(String text) {
            throw new UnsupportedOperationException("tables are chosen, not typed");
        }
    }
}
