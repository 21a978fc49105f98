package worthsaving.desktop;

import java.io.File;
import java.nio.file.Path;
import java.util.Currency;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.BiFunction;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.StringBinding;
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
import javafx.stage.FileChooser;
import javafx.stage.Window;
import worthsaving.desktop.car.CarModel;
import worthsaving.desktop.car.CarView;
import worthsaving.desktop.car.SheetDialog;
import worthsaving.desktop.car.SheetModel;
import worthsaving.desktop.catalogue.CatalogueModel;
import worthsaving.desktop.catalogue.CatalogueView;
import worthsaving.desktop.catalogue.Shelf;
import worthsaving.desktop.lot.LotModel;
import worthsaving.desktop.lot.LotRow;
import worthsaving.desktop.lot.LotView;
import worthsaving.desktop.market.MarketModel;
import worthsaving.desktop.market.MarketNotes;
import worthsaving.desktop.market.MarketShelf;
import worthsaving.desktop.market.MarketView;
import worthsaving.quantity.Money;
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
    private final SheetModel sheet;
    private BiFunction<FileChooser, Window, File> whereToSave = FileChooser::showSaveDialog;
    private HomeMarket home;
    /** What the lot already knows of the car being worked on. */
    private Listing known;

    public Workbench(
            Ground ground, Settings settings, Executor background, ScreenThread screen, Path sampleLot,
            Shelf shelf, MarketShelf markets, MarketNotes notes) {
        screen.require();
        this.home = ground.home();
        this.look = new Look(this, settings);
        this.lot = new LotModel(ground, background, screen);
        this.lotView = new LotView(lot, settings, look,
                sampleLot.getFileName().toString(), row -> openCar(row.listing()), this::choose);
        this.car = new CarModel(ground, background, screen);
        this.sheet = new SheetModel(car, ground, background, screen);
        this.carView = new CarView(car, look);
        this.catalogue = new CatalogueModel(ground, shelf, lot::listings,
                kept -> market().use(kept), background, screen);
        this.catalogueView = new CatalogueView(catalogue);
        this.market = new MarketModel(ground, markets, notes, settings, this::use, background, screen);
        this.marketView = new MarketView(market, look, judging());
        marketSwitch.setOnAction(e -> showMarket());
        catalogueSwitch.setOnAction(e -> showCatalogue());
        lot.adverts().onOpen(this::openCar);
        lotSwitch.setOnAction(e -> showLot());
        carSwitch.setOnAction(e -> showCar());
        carSwitch.setDisable(true);
        carSwitch.setTooltip(new Tooltip(Texts.of("screen.no_car")));
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        Label product = new Label(Texts.of("product"));
        product.getStyleClass().add("product");
        HBox bar = new HBox(product, new Menus(this), lotSwitch, carSwitch, marketSwitch, catalogueSwitch, space);
        bar.getStyleClass().add("bar");
        setTop(bar);
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

    /** Offers the decision sheet of the car being worked on. */
    void sheet() {
        if (car.isOpen()) {
            new SheetDialog(getScene().getWindow(), sheet, whereToSave).show();
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
        if (getCenter() == marketView) {
            market.undo();
        } else if (getCenter() == catalogueView) {
            catalogue.undo();
        } else if (car.isOpen()) {
            car.undo();
        }
    }

    void redo() {
        if (getCenter() == marketView) {
            market.redo();
        } else if (getCenter() == catalogueView) {
            catalogue.redo();
        } else if (car.isOpen()) {
            car.redo();
        }
    }

    void usualColumns() {
        lotView.usualColumns();
    }

    /** The lot, with what was changed of the car judged anew. */
    public void showLot() {
        tellLot();
        show(lotView, lotSwitch);
    }

    public void showCar() {
        if (car.isOpen()) {
            lot.listing(car.scenarioProperty().get().listing().id()).filter(this::inOtherMoney).ifPresent(anew -> {
                known = anew;
                car.open(anew);
            });
            show(carView, carSwitch);
        }
    }

    public void showCatalogue() {
        tellLot();
        catalogue.open();
        show(catalogueView, catalogueSwitch);
    }

    public void showMarket() {
        tellLot();
        market.open();
        market.look(car.isOpen() ? Optional.of(car.scenarioProperty().get().listing())
                : lot.rows().stream().findFirst().map(LotRow::listing));
        show(marketView, marketSwitch);
    }

    public MarketModel market() {
        return market;
    }

    public CatalogueModel catalogue() {
        return catalogue;
    }

    private void use(Ground ground) {
        if (!ground.home().market().equals(home.market())) {
            look.use(ground.home().units());
        }
        home = ground.home();
        lot.use(ground);
        car.use(ground);
        sheet.use(ground);
        catalogue.use(ground);
    }

    /** Works on a car of the lot. */
    public void openCar(Listing listing) {
        tellLot();
        if (!car.isOpen() || !listing.id().equals(car.scenarioProperty().get().listing().id()) || inOtherMoney(listing)) {
            known = listing;
            car.open(listing);
        }
        carSwitch.setDisable(false);
        carSwitch.setTooltip(null);
        showCar();
    }

    /** Whether the lot was read again on another market since the car was opened. */
    private boolean inOtherMoney(Listing listing) {
        Optional<Currency> now = listing.ask().get().map(Money::currency);
        return now.isPresent() && !now.equals(car.scenarioProperty().get().listing().ask().get().map(Money::currency));
    }

    private StringBinding judging() {
        return Bindings.createStringBinding(
                () -> !lot.busyProperty().get() ? ""
                        : lot.total() == 0 ? Texts.of("lot.reading")
                        : Texts.of("market.judging", Figures.number(lot.doneProperty().get(), 0), Figures.number(lot.total(), 0)),
                lot.busyProperty(), lot.doneProperty());
    }

    private void tellLot() {
        if (car.isOpen() && !car.scenarioProperty().get().listing().equals(known)) {
            known = car.scenarioProperty().get().listing();
            lot.change(known);
        }
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
