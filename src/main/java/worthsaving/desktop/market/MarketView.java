package worthsaving.desktop.market;

import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import worthsaving.desktop.CarNames;
import worthsaving.desktop.Choices;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Look;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.desktop.market.MarketWork.Composed;
import worthsaving.market.Market;

/** The market: which one, on what the values rest, how prices moved since, factors, and the user's comparables. */
public final class MarketView extends BorderPane {

    private final MarketModel model;
    private final ComboBox<Market> markets;
    private final Label about = Words.wrapped("", "soft");
    private final VBox car = new VBox(4);
    private final DataPage data;
    private final IndexPage index;
    private final FactorsPage factors;
    private final OwnPage own;
    private final TabPane tabs;

    /** @param judging how far lot and car are with being judged anew; blank when they are done */
    public MarketView(MarketModel model, Look look, ObservableValue<String> judging) {
        this.model = model;
        this.data = new DataPage(look);
        this.index = new IndexPage(model);
        this.factors = new FactorsPage(model);
        this.own = new OwnPage(model, look);
        this.markets = Choices.box(model.markets(), market(model.chosenProperty().get()),
                m -> Texts.of("market.choice", m.name(), m.currency().getCurrencyCode()),
                m -> model.choose(m.code()));
        setId("market");
        getStyleClass().add("screen");
        markets.setId("market-choice");
        markets.setMinWidth(Region.USE_PREF_SIZE);
        markets.setAccessibleText(Texts.of("market.choose"));
        tabs = new TabPane(tab("market-data", "market.tab.data", scroll(data)), tab("market-prices", "market.tab.index", index),
                tab("market-factors", "market.tab.factors", scroll(factors)), tab("market-own-tab", "market.tab.own", own));
        tabs.getStyleClass().add("panel");
        setCenter(tabs);
        setTop(head(judging));
        model.chosenProperty().addListener((o, was, is) -> markets.setValue(market(is)));
        model.composedProperty().addListener((o, was, is) -> show(is));
        model.carProperty().addListener((o, was, is) -> showCar(is));
        look.unitsProperty().addListener((o, was, is) -> Optional.ofNullable(model.composedProperty().get())
                .ifPresent(this::show));
    }

    private Market market(String code) {
        return model.markets().stream().filter(m -> m.code().equals(code)).findFirst().orElse(null);
    }

    private VBox head(ObservableValue<String> judging) {
        Label by = Words.whole(Texts.of("market.choose"));
        by.setLabelFor(markets);
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        Label progress = new Label();
        progress.setId("market-judging");
        progress.textProperty().bind(judging);
        progress.setMinWidth(Region.USE_PREF_SIZE);
        HBox bar = new HBox(10, Words.whole(Texts.of("market.title"), "heading"), by, markets, about, space, progress);
        bar.getStyleClass().add("head");
        HBox.setHgrow(about, Priority.ALWAYS);
        Label trouble = Words.trouble(model.troubleProperty());
        trouble.setId("market-trouble");
        VBox head = new VBox(6, bar, car, trouble);
        head.getStyleClass().add("below-gap");
        return head;
    }

    private void show(Composed market) {
        data.show(market);
        index.show(market);
        factors.show(market);
        own.show(market, model.carProperty().get());
        Market home = market.shipped().market();
        about.setText(Texts.of("market.about", home.currency().getCurrencyCode(), home.unit()));
    }

    private void showCar(CarMarket seen) {
        if (model.composedProperty().get() != null) {
            own.show(model.composedProperty().get(), seen);
        }
        car.getChildren().clear();
        if (seen == null) {
            return;
        }
        Label value = Words.wrapped(Texts.of("market.car", CarNames.title(seen.listing().vehicle()),
                Figures.money(seen.value().mean()), Figures.money(seen.value().quantile(0.1)),
                Figures.money(seen.value().quantile(0.9))));
        value.setId("market-car");
        car.getChildren().add(value);
        seen.value().warnings().forEach(w -> car.getChildren().add(Words.wrapped(w, "notice")));
    }

    private static Tab tab(String id, String title, Node content) {
        Tab tab = new Tab(Texts.of(title), content);
        tab.setId(id);
        tab.setClosable(false);
        return tab;
    }

    private static ScrollPane scroll(Region page) {
        ScrollPane scroll = new ScrollPane(page);
        scroll.setFitToWidth(true);
        return scroll;
    }

    /** Shows one of the pages. */
    public void page(int number) {
        tabs.getSelectionModel().select(number);
    }
}
