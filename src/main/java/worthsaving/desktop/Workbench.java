package worthsaving.desktop;

import java.io.File;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.BiFunction;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.StringBinding;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.StringProperty;
import javafx.scene.Node;
import javafx.scene.control.Alert;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import worthsaving.casebook.CaseFile;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.FindingKind;
import worthsaving.desktop.book.BookModel;
import worthsaving.desktop.book.BookStrip;
import worthsaving.desktop.car.CarBook;
import worthsaving.desktop.car.CarModel;
import worthsaving.desktop.car.CarView;
import worthsaving.desktop.car.KeepingModel;
import worthsaving.desktop.car.Scenario;
import worthsaving.desktop.car.SheetDialog;
import worthsaving.desktop.car.SheetModel;
import worthsaving.desktop.catalogue.CatalogueModel;
import worthsaving.desktop.catalogue.CatalogueView;
import worthsaving.desktop.catalogue.Shelf;
import worthsaving.desktop.lot.LotModel;
import worthsaving.desktop.lot.LotRow;
import worthsaving.desktop.lot.LotView;
import worthsaving.desktop.market.BookNotes;
import worthsaving.desktop.market.MarketModel;
import worthsaving.desktop.market.MarketShelf;
import worthsaving.desktop.market.MarketView;
import worthsaving.desktop.record.RecordModel;
import worthsaving.desktop.record.RecordView;
import worthsaving.desktop.teardown.TeardownModel;
import worthsaving.desktop.teardown.TeardownView;
import worthsaving.record.Learning;
import worthsaving.vehicle.Listing;

/** What fills the window: menus, the switch between screens, and the screen chosen. */
public final class Workbench extends BorderPane {

    private final LotModel lot;
    private final LotView lotView;
    private final Look look;
    private final ToggleGroup switches = new ToggleGroup();
    private final ToggleButton lotSwitch = screenSwitch("screen.lot");
    private final ToggleButton carSwitch = screenSwitch("screen.car");
    private final CarModel car;
    private final CarView carView;
    private final ToggleButton catalogueSwitch = screenSwitch("screen.catalogue");
    private final CatalogueModel catalogue;
    private final CatalogueView catalogueView;
    private final ToggleButton marketSwitch = screenSwitch("screen.market");
    private final MarketModel market;
    private final MarketView marketView;
    private final KeepingModel keeping;
    private final SheetModel sheet;
    private BiFunction<FileChooser, Window, File> whereToSave = FileChooser::showSaveDialog;
    private final BookModel book;
    private final CarBook carBook;
    private final ToggleButton recordSwitch = screenSwitch("screen.record");
    private final RecordModel record;
    private final RecordView recordView;
    private final ToggleButton teardownSwitch = screenSwitch("screen.teardown");
    private final TeardownModel teardown;
    private final TeardownView teardownView;
    private final ReadOnlyStringWrapper undoLabel = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper redoLabel = new ReadOnlyStringWrapper("");
    /** Without what finished cars have taught. */
    private Ground base;
    /** What of it is in force. */
    private Learning learning = new Learning(List.of(), List.of());

    public Workbench(
            Ground ground, Settings settings, Executor background, ScreenThread screen, BookModel book,
            Shelf shelf, MarketShelf markets) {
        screen.require();
        this.base = ground;
        this.book = book;
        this.look = new Look(this, settings);
        this.lot = new LotModel(ground, book, background, screen);
        this.lotView = new LotView(lot, settings, look, row -> openCar(row.listing()), this::choose);
        this.car = new CarModel(ground, background, screen);
        this.keeping = new KeepingModel(car, book, ground, background, screen);
        this.sheet = keeping.sheet(ground, background, screen);
        this.carBook = new CarBook(car, book, this::name, this::closeCar, Instant::now);
        this.carView = new CarView(car, carBook, keeping, look);
        this.catalogue = new CatalogueModel(ground, shelf, lot::listings,
                kept -> market().use(kept), background, screen);
        this.catalogueView = new CatalogueView(catalogue);
        this.market = new MarketModel(ground, markets, new BookNotes(book), settings, this::use, background, screen);
        market.onUndo(this::undo, this::redo);
        this.marketView = new MarketView(market, look, judging());
        marketSwitch.setOnAction(e -> showMarket());
        catalogueSwitch.setOnAction(e -> showCatalogue());
        this.record = new RecordModel(book, ground, background, screen);
        this.recordView = new RecordView(record, look);
        recordSwitch.setOnAction(e -> showRecord());
        this.teardown = new TeardownModel(book, ground, background, screen);
        this.teardownView = new TeardownView(teardown, background, screen, ground::today, look.textSizeProperty());
        teardownSwitch.setOnAction(e -> showTeardown());
        book.revisionProperty().addListener(o -> follow());
        label(undoLabel, book.undoLabelProperty());
        label(redoLabel, book.redoLabelProperty());
        lot.adverts().onOpen(this::openCar);
        lotSwitch.setOnAction(e -> showLot());
        carSwitch.setOnAction(e -> showCar());
        carSwitch.setDisable(true);
        carSwitch.setTooltip(new Tooltip(Texts.of("screen.no_car")));
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        Label product = new Label(Texts.of("product"));
        product.getStyleClass().add("product");
        HBox bar = new HBox(product, new Menus(this), lotSwitch, carSwitch, teardownSwitch, marketSwitch, catalogueSwitch,
                recordSwitch, space, BookStrip.said(book));
        bar.getStyleClass().add("bar");
        setTop(new VBox(bar, new BookStrip(book)));
        show(lotView, lotSwitch);
    }

    /** Applies theme, text size and shortcuts; needs the scene. */
    public void dress() {
        look.apply();
        look.addKeys(getScene());
    }

    public void open(Path table) {
        lot.open(table);
    }

    public LotModel lot() {
        return lot;
    }

    public CarModel car() {
        return car;
    }

    Look look() {
        return look;
    }

    void choose() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(Texts.of("lot.open"));
        chooser.getExtensionFilters().addAll(
                new FileChooser.ExtensionFilter(Texts.of("lot.tables"), "*.csv", "*.tsv", "*.txt"),
                new FileChooser.ExtensionFilter(Texts.of("lot.any_file"), "*"));
        File file = chooser.showOpenDialog(getScene().getWindow());
        if (file != null) {
            showLot();
            open(file.toPath());
        }
    }

    /** Asks for files in another way than by the system's dialog, which no test can drive. */
    void saveTo(BiFunction<FileChooser, Window, File> where) {
        whereToSave = where;
    }

    /** Offers the decision sheet of the car being worked on; on the teardown's screen, of the one that is taken apart. */
    void sheet() {
        CaseFile apart = teardown.fileProperty().get();
        if (getCenter() == teardownView && apart != null) {
            workOn(apart.listing());
        }
        if (car.isOpen()) {
            String name = CarNames.title(car.scenarioProperty().get().listing().vehicle());
            new SheetDialog(getScene().getWindow(), name, sheet, whereToSave).show();
        } else {
            new Alert(Alert.AlertType.INFORMATION, Texts.of("screen.no_car")).show();
        }
    }

    void copy() {
        lotView.copy();
    }

    void find() {
        if (getCenter() == carView) {
            carView.find();
        } else if (getCenter() == catalogueView) {
            catalogueView.find();
        } else if (getCenter() == teardownView) {
            teardownView.find();
        } else if (getCenter() == lotView) {
            lotView.find();
        }
    }

    /** Compares the selected cars of the lot side by side. */
    void compare() {
        showLot();
        lotView.compare();
    }

    void undo() {
        if (getCenter() == catalogueView) {
            catalogue.undo();
        } else if (book.canUndo()) {
            book.undo();
        } else if (book.readOnly() && getCenter() == marketView) {
            market.undo();
        } else if (book.readOnly() && car.isOpen()) {
            car.undo();
        }
    }

    void redo() {
        if (getCenter() == catalogueView) {
            catalogue.redo();
        } else if (book.canRedo()) {
            book.redo();
        } else if (book.readOnly() && getCenter() == marketView) {
            market.redo();
        } else if (book.readOnly() && car.isOpen()) {
            car.redo();
        }
    }

    /** The edit that undo takes back on the screen shown; blank when it is not the casebook's. */
    ReadOnlyStringProperty undoLabelProperty() {
        return undoLabel.getReadOnlyProperty();
    }

    ReadOnlyStringProperty redoLabelProperty() {
        return redoLabel.getReadOnlyProperty();
    }

    private void label(StringProperty shown, ReadOnlyStringProperty ofBook) {
        shown.bind(Bindings.createStringBinding(
                () -> getCenter() == catalogueView ? "" : ofBook.get(), ofBook, centerProperty()));
    }

    /** Takes the selected cars out of the lot. */
    void drop() {
        showLot();
        lotView.drop();
    }

    public BookModel book() {
        return book;
    }

    public RecordModel record() {
        return record;
    }

    void usualColumns() {
        lotView.usualColumns();
    }

    /** The lot, with what was changed of the cars judged anew. */
    public void showLot() {
        lot.follow();
        show(lotView, lotSwitch);
    }

    public void showCar() {
        if (car.isOpen()) {
            show(carView, carSwitch);
        }
    }

    /** The teardown of the car that is worked on, or of one that is under way. */
    public void showTeardown() {
        teardown.open(car.isOpen() ? Optional.of(car.scenarioProperty().get().listing()) : Optional.empty());
        show(teardownView, teardownSwitch);
    }

    public TeardownModel teardown() {
        return teardown;
    }

    TeardownView teardownView() {
        return teardownView;
    }

    /** What came of finished cars, and what they teach. */
    public void showRecord() {
        show(recordView, recordSwitch);
    }

    public void showCatalogue() {
        lot.follow();
        catalogue.open();
        show(catalogueView, catalogueSwitch);
    }

    public void showMarket() {
        lot.follow();
        market.open();
        market.look(car.isOpen() ? Optional.of(car.scenarioProperty().get().listing())
                : lot.rows().stream().findFirst().map(LotRow::listing));
        show(marketView, marketSwitch);
    }

    MarketView marketView() {
        return marketView;
    }

    public MarketModel market() {
        return market;
    }

    public CatalogueModel catalogue() {
        return catalogue;
    }

    private void use(Ground other) {
        if (!other.home().market().equals(base.home().market())) {
            look.use(other.home().units());
        }
        base = other;
        record.use(other);
        teach();
    }

    /** Judges with what finished cars teach now. */
    private void teach() {
        learning = record.learning().inForce();
        Ground ground = base.taught(learning);
        lot.use(ground);
        car.use(ground);
        keeping.use(ground);
        sheet.use(ground);
        catalogue.use(ground);
        teardown.use(ground);
    }

    /** Works on a car of the lot. */
    public void openCar(Listing listing) {
        workOn(listing);
        showCar();
    }

    private void workOn(Listing listing) {
        if (!car.isOpen() || !listing.id().equals(car.scenarioProperty().get().listing().id())) {
            car.open(book.caseOf(listing.id()).map(carBook::scenario).orElse(Scenario.of(listing)));
        }
        carSwitch.setDisable(false);
        carSwitch.setTooltip(null);
    }

    private StringBinding judging() {
        return Bindings.createStringBinding(
                () -> !lot.busyProperty().get() ? ""
                        : lot.total() == 0 ? Texts.of("lot.reading")
                        : Texts.of("market.judging", Figures.number(lot.doneProperty().get(), 0), Figures.number(lot.total(), 0)),
                lot.busyProperty(), lot.doneProperty());
    }

    /** The casebook has changed: what finished cars teach may be other now, and so may the market and the lot. */
    private void follow() {
        record.follow();
        market.follow();
        if (!record.learning().inForce().equals(learning)) {
            teach();
        }
        if (getCenter() == lotView) {
            lot.follow();
        }
    }

    /** The car worked on was taken out of the casebook, as by undo. */
    private void closeCar() {
        car.close();
        carSwitch.setDisable(true);
        carSwitch.setTooltip(new Tooltip(Texts.of("screen.no_car")));
        if (getCenter() == carView) {
            showLot();
        }
    }

    private Optional<String> name(String id) {
        return Optional.ofNullable(base.catalogue().findingsById().get(id)).map(FindingKind::name)
                .or(() -> Optional.ofNullable(base.catalogue().itemsById().get(id)).map(FailureItem::name));
    }

    private void show(Node screen, ToggleButton chosen) {
        chosen.setSelected(true);
        setCenter(screen);
    }

    private ToggleButton screenSwitch(String key) {
        ToggleButton button = new ToggleButton(Texts.of(key));
        button.getStyleClass().add("screen-switch");
        button.setToggleGroup(switches);
        button.setId(key);
        return button;
    }
}
