package worthsaving.desktop.car;

import java.util.BitSet;
import java.util.List;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import worthsaving.desktop.Look;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;

/** The screen of one car: findings on the left, sliders on the right, what follows from them between. */
public final class CarView extends BorderPane {

    /** Widths of the side columns: partly by the text, partly by the window, so that large text leaves a middle. */
    private static final double LEFT = 10;
    private static final double LEFT_SHARE = 0.142;
    private static final double RIGHT = 9;
    private static final double RIGHT_SHARE = 0.115;

    private static final double WHY_SHARE = 0.36;

    private final CarModel model;
    private final List<Consumer<CarPicture.Seen>> pages;
    /** Pages that do not show the latest picture yet. */
    private final BitSet stale = new BitSet();
    private final ChecklistView checklist;
    private final TabPane tabs = new TabPane();

    public CarView(CarModel model, CarBook book, KeepingModel keeping, Look look) {
        ReadOnlyDoubleProperty em = look.textSizeProperty();
        this.model = model;
        setId("car");
        getStyleClass().add("screen");
        checklist = new ChecklistView(model);
        checklist.prefWidthProperty().bind(em.multiply(LEFT).add(widthProperty().multiply(LEFT_SHARE)));
        WhyPane why = new WhyPane(model);
        why.maxHeightProperty().bind(heightProperty().multiply(WHY_SHARE));
        LeverPanel levers = new LeverPanel(model);
        ScrollPane right = scroll(levers);
        right.prefWidthProperty().bind(em.multiply(RIGHT).add(widthProperty().multiply(RIGHT_SHARE)));
        DecisionView decision = new DecisionView(checklist::seek, why);
        ItemsView items = new ItemsView(why);
        PlanView plan = new PlanView(why);
        WaysView ways = new WaysView();
        ValueView value = new ValueView(why);
        FactsView facts = new FactsView(model, look.unitsProperty());
        MattersView matters = new MattersView(model.matters());
        tabs.getStyleClass().add("panel");
        tab("decision", decision);
        Node mattersPage = tab("matters", matters);
        tab("items", items);
        tab("plan", plan);
        Node waysPage = tab("ways", new VBox(ways, new KeepingView(keeping, model, look.unitsProperty())));
        tab("value", value);
        tab("facts", facts);
        pages = List.of(decision::show, seen -> {}, items::show, plan::show, ways::show, value::show, facts::show);
        model.pictureProperty().addListener((o, was, is) -> {
            stale.set(0, pages.size());
            refresh();
        });
        tabs.getSelectionModel().selectedIndexProperty().addListener((o, was, is) -> {
            Node front = tabs.getTabs().get(is.intValue()).getContent();
            model.matters().open(front == mattersPage);
            keeping.open(front == waysPage);
            refresh();
        });
        CarHeader header = new CarHeader(model, book, why);
        VBox top = new VBox(8, header, Words.trouble(model.troubleProperty()));
        BorderPane.setMargin(top, new Insets(0, 0, 8, 0));
        VBox.setVgrow(tabs, Priority.ALWAYS);
        VBox middle = new VBox(8, tabs, why);
        BorderPane.setMargin(middle, new Insets(0, 8, 0, 8));
        setTop(top);
        setLeft(checklist);
        setCenter(middle);
        setRight(right);
    }

    /** Puts the cursor into the search of the checklist. */
    public void find() {
        checklist.find();
    }

    /** Opens the page with this index, from the left. */
    void page(int index) {
        tabs.getSelectionModel().select(index);
    }

    /** Only the page that is looked at is drawn; the others when they come to the front. */
    private void refresh() {
        int page = tabs.getSelectionModel().getSelectedIndex();
        if (stale.get(page)) {
            model.seen().ifPresent(seen -> {
                stale.clear(page);
                pages.get(page).accept(seen);
            });
        }
    }

    private Node tab(String key, Node page) {
        Tab tab = new Tab(Texts.of("tab." + key), scroll(page));
        tab.setId("tab-" + key);
        tab.setClosable(false);
        tabs.getTabs().add(tab);
        return tab.getContent();
    }

    private static ScrollPane scroll(Node content) {
        ScrollPane scroll = new ScrollPane(content);
        scroll.setFitToWidth(true);
        return scroll;
    }
}
