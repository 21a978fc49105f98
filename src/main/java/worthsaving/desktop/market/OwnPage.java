package worthsaving.desktop.market;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.control.Button;
import javafx.scene.control.TextArea;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import worthsaving.desktop.Look;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.desktop.market.MarketWork.Composed;

/** The user's own comparables: brought in, listed, and what they do to the level of prices. */
final class OwnPage extends HBox {

    private static final Charset WINDOWS = Charset.forName("windows-1252");
    private static final int FAULTS = 5;

    private final MarketModel model;
    private final TextArea pasted = new TextArea();
    private final OwnTableView table;
    private final LevelPanel level;
    private final VBox faults = new VBox(4);
    private int known;

    OwnPage(MarketModel model, Look look) {
        super(16);
        this.model = model;
        this.table = new OwnTableView(look);
        this.level = new LevelPanel();
        getStyleClass().add("tab-page");
        pasted.setId("market-own-text");
        pasted.setPromptText(Texts.of("market.own.paste"));
        pasted.setAccessibleText(Texts.of("market.own.paste"));
        pasted.setPrefRowCount(4);
        pasted.setMinHeight(60);
        VBox.setVgrow(table, Priority.ALWAYS);
        table.setPlaceholder(Words.wrapped(Texts.of("market.own.none")));
        VBox left = new VBox(8, Words.plain(Texts.of("market.own"), "subheading"),
                Words.wrapped(Texts.of("market.own.how"), "soft"), pasted, buttons(), faults, table);
        left.setPrefWidth(10);
        HBox.setHgrow(left, Priority.ALWAYS);
        getChildren().setAll(left, level);
    }

    private HBox buttons() {
        Button add = new Button(Texts.of("market.own.add"));
        add.setId("market-own-add");
        add.disableProperty().bind(pasted.textProperty().isEmpty().or(model.busyProperty()));
        add.setOnAction(e -> model.add(Texts.of("market.own.pasted", model.edits().tables().size() + 1), pasted.getText()));
        Button open = new Button(Texts.of("market.own.open"));
        open.setId("market-own-open");
        open.setOnAction(e -> open());
        Button remove = new Button(Texts.of("market.own.remove"));
        remove.setId("market-own-remove");
        remove.disableProperty().bind(table.getSelectionModel().selectedItemProperty().isNull());
        remove.setOnAction(e -> model.remove(table.getSelectionModel().getSelectedItem().row()));
        Button all = new Button(Texts.of("market.own.remove_all"));
        all.setOnAction(e -> model.removeAll());
        return new HBox(8, add, open, remove, all);
    }

    private void open() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(Texts.of("market.own.open"));
        chooser.getExtensionFilters().addAll(
                new FileChooser.ExtensionFilter(Texts.of("lot.tables"), "*.csv", "*.tsv", "*.txt"),
                new FileChooser.ExtensionFilter(Texts.of("lot.any_file"), "*"));
        var file = chooser.showOpenDialog(getScene().getWindow());
        if (file != null) {
            open(file.toPath());
        }
    }

    private void open(Path file) {
        try {
            model.add(file.getFileName().toString(), text(Files.readAllBytes(file)));
        } catch (IOException e) {
            model.say(Texts.of("market.own.unreadable", file, e.getMessage()));
        }
    }

    /** UTF-8, else what spreadsheets of old wrote. */
    static String text(byte[] bytes) {
        try {
            String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            return text.startsWith("\ufeff") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            return new String(bytes, WINDOWS);
        }
    }

    void show(Composed market, CarMarket car) {
        table.show(market.own(), car);
        level.show(car);
        faults.getChildren().setAll(market.own().faults().stream().limit(FAULTS)
                .map(f -> Words.wrapped(f, "notice")).toList());
        int more = market.own().faults().size() - FAULTS;
        if (more > 0) {
            faults.getChildren().add(Words.wrapped(Texts.of("market.own.more_faults", more), "soft"));
        }
        if (market.edits().tables().size() > known) {
            pasted.clear();
        }
        known = market.edits().tables().size();
    }
}
