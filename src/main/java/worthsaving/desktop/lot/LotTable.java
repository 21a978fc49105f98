package worthsaving.desktop.lot;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.ListChangeListener;
import javafx.collections.transformation.FilteredList;
import javafx.collections.transformation.SortedList;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.SelectionMode;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableColumn.SortType;
import javafx.scene.control.TableRow;
import javafx.scene.control.TableView;
import javafx.scene.control.Tooltip;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import worthsaving.desktop.Look;
import worthsaving.desktop.Settings;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Units;

/** The table of listings. Columns can be moved, widened, hidden and sorted by, and stay so. */
final class LotTable extends TableView<LotRow> {

    private static final double NARROWEST = 30;
    private static final String LAYOUT = "lot.columns";

    private final FilteredList<LotRow> shown;
    /** What can be searched in each row, once it was asked for. */
    private final IdentityHashMap<LotRow, String> texts = new IdentityHashMap<>();
    private final LotModel model;
    private final Settings settings;
    private final ReadOnlyObjectProperty<Units> units;
    private final ReadOnlyDoubleProperty em;
    private StripScale scale = new StripScale(-1, 1);
    private final SpareWidth spare = new SpareWidth();
    private boolean restoring;

    LotTable(LotModel model, Settings settings, Look look, Consumer<LotRow> onOpen) {
        this.model = model;
        this.settings = settings;
        this.em = look.textSizeProperty();
        this.units = look.unitsProperty();
        setId("lot-table");
        setAccessibleText(Texts.of("lot.table"));
        setTableMenuButtonVisible(true);
        getSelectionModel().setSelectionMode(SelectionMode.MULTIPLE);
        Label nothing = new Label();
        nothing.textProperty().bind(Bindings.createStringBinding(
                () -> model.busyProperty().get() ? Texts.of("lot.not_yet")
                        : !model.rows().isEmpty() ? Texts.of("lot.nothing")
                        : model.problems().isEmpty() ? Texts.of("lot.empty")
                        : Texts.of("lot.none_judged", model.currency()),
                model.busyProperty(), model.rows(), model.problems(), model.currencyProperty()));
        setPlaceholder(nothing);
        shown = new FilteredList<>(model.rows());
        SortedList<LotRow> sorted = new SortedList<>(shown);
        sorted.comparatorProperty().bind(comparatorProperty());
        setItems(sorted);
        restore(ColumnLayout.parse(settings.get(LAYOUT).orElse("")));
        getColumns().addListener((ListChangeListener<Object>) c -> {
            remember();
            Platform.runLater(this::explainHeaders);
        });
        getSortOrder().addListener((ListChangeListener<Object>) c -> remember());
        em.addListener(o -> share());
        widthProperty().addListener(o -> share());
        skinProperty().addListener(o -> Platform.runLater(this::explainHeaders));
        model.rows().addListener((ListChangeListener<LotRow>) c -> {
            texts.clear();
            scale = StripScale.of(model.rows());
            refresh();
        });
        scale = StripScale.of(model.rows());
        units.addListener((o, was, is) -> refresh());
        model.choice().choiceProperty().addListener((o, was, is) -> refresh());
        setRowFactory(table -> {
            TableRow<LotRow> row = new ChosenRow(model.choice());
            row.setOnMouseClicked(e -> {
                if (e.getClickCount() == 2 && e.getButton() == MouseButton.PRIMARY && !row.isEmpty()) {
                    onOpen.accept(row.getItem());
                }
            });
            return row;
        });
        setOnKeyPressed(e -> {
            LotRow selected = getSelectionModel().getSelectedItem();
            if (e.getCode() == KeyCode.ENTER && selected != null) {
                onOpen.accept(selected);
                e.consume();
            } else if (e.getCode() == KeyCode.DELETE) {
                drop();
                e.consume();
            }
        });
    }

    /** Takes those selected out of the lot. */
    void drop() {
        model.drop(selected().stream().map(row -> row.listing().id()).toList());
    }

    /** Those selected. */
    List<LotRow> selected() {
        return List.copyOf(getSelectionModel().getSelectedItems());
    }

    void filter(LotFilter filter) {
        shown.setPredicate(row -> filter.test(row, texts.computeIfAbsent(row, LotFilter::text)));
    }

    /** Selected rows, or all that are shown when none is selected. */
    void copy() {
        List<LotRow> rows = getSelectionModel().getSelectedItems();
        ClipboardContent text = new ClipboardContent();
        text.putString(RowsAsText.of(rows.isEmpty() ? getItems() : rows, visible()));
        Clipboard.getSystemClipboard().setContent(text);
    }

    void usualColumns() {
        restore(ColumnLayout.usual());
        remember();
    }

    /** Back to the order that the lot itself has. */
    void unsort() {
        getSortOrder().clear();
    }

    private List<LotColumn> visible() {
        return getVisibleLeafColumns().stream().map(c -> (LotColumn) c.getUserData()).toList();
    }

    private void restore(ColumnLayout layout) {
        restoring = true;
        getColumns().clear();
        for (ColumnLayout.Shown shownColumn : layout.columns()) {
            TableColumn<LotRow, LotRow> column = column(shownColumn.column());
            double width = shownColumn.width() > 0 ? shownColumn.width() : shownColumn.column().width();
            spare.own(column, width);
            column.setPrefWidth(em.get() * width);
            column.setVisible(shownColumn.visible());
            getColumns().add(column);
            column.widthProperty().addListener(o -> drawn(column));
            column.visibleProperty().addListener(o -> {
                share();
                remember();
            });
            column.sortTypeProperty().addListener(o -> remember());
        }
        layout.sorting().ifPresent(sorting -> getColumns().stream()
                .filter(c -> c.getUserData() == sorting.column())
                .forEach(c -> {
                    c.setSortType(sorting.ascending() ? SortType.ASCENDING : SortType.DESCENDING);
                    getSortOrder().setAll(List.of(c));
                }));
        restoring = false;
        share();
    }

    private void drawn(TableColumn<LotRow, LotRow> column) {
        if (!spare.sharing()) {
            spare.drawn(column, em.get());
            remember();
        }
    }

    private void share() {
        if (getWidth() > 0 && !restoring) {
            spare.share(getVisibleLeafColumns(), getWidth(), em.get());
        }
    }

    /** Headers exist only once the skin does, and anew whenever columns are moved. */
    private void explainHeaders() {
        for (TableColumn<LotRow, ?> column : getColumns()) {
            Node header = lookup("#" + column.getId());
            if (header != null) {
                Tooltip.install(header, new Tooltip(((LotColumn) column.getUserData()).explanation()));
            }
        }
    }

    private TableColumn<LotRow, LotRow> column(LotColumn kind) {
        TableColumn<LotRow, LotRow> column = new TableColumn<>();
        column.setText(kind.title());
        column.setUserData(kind);
        column.setId("lot-" + kind.name());
        column.setMinWidth(NARROWEST);
        column.setComparator(kind.order());
        column.setCellValueFactory(cell -> new SimpleObjectProperty<>(cell.getValue()));
        column.setCellFactory(c -> LotCells.of(kind, () -> scale,
                row -> LotCells.under(row, units.get(), model.choice())));
        return column;
    }

    private void remember() {
        if (restoring) {
            return;
        }
        List<ColumnLayout.Shown> columns = getColumns().stream()
                .map(c -> new ColumnLayout.Shown((LotColumn) c.getUserData(), spare.own(c), c.isVisible()))
                .toList();
        Optional<ColumnLayout.Sorting> sorting = getSortOrder().stream().findFirst()
                .map(c -> new ColumnLayout.Sorting(
                        (LotColumn) c.getUserData(), c.getSortType() == SortType.ASCENDING));
        settings.put(LAYOUT, new ColumnLayout(columns, sorting).toText());
    }
}
