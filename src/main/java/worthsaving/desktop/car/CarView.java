package worthsaving.desktop.car;

import java.util.List;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;

/** The screen of one car: findings on the left, sliders on the right, what follows from them between. */
public final class CarView extends BorderPane {

    /** Widths of the side columns: partly by the text, partly by the window, so that large text leaves a middle. */
    private static final double LEFT = 10;
    private static final double LEFT_SHARE = 0.142;
    private static final double RIGHT = 9;
    private static final double RIGHT_SHARE = 0.115;

    private final ChecklistView checklist;
    private final TabPane tabs = new TabPane();

    /** @param em size of ordinary text in pixels, by which the columns are measured */
    public CarView(CarModel model, ReadOnlyDoubleProperty em) {
        setId("car");
        getStyleClass().add("screen");
        checklist = new ChecklistView(model);
        checklist.prefWidthProperty().bind(em.multiply(LEFT).add(widthProperty().multiply(LEFT_SHARE)));
        LeverPanel levers = new LeverPanel(model);
        ScrollPane right = scroll(levers);
        right.prefWidthProperty().bind(em.multiply(RIGHT).add(widthProperty().multiply(RIGHT_SHARE)));
        DecisionView decision = new DecisionView(checklist::seek);
        ItemsView items = new ItemsView();
        PlanView plan = new PlanView();
        WaysView ways = new WaysView();
        ValueView value = new ValueView();
        FactsView facts = new FactsView(model);
        tabs.getStyleClass().add("panel");
        tab("decision", decision);
        tab("items", items);
        tab("plan", plan);
        tab("ways", ways);
        tab("value", value);
        tab("facts", facts);
        List<Consumer<CarPicture.Seen>> pages = List.of(
                decision::show, items::show, plan::show, ways::show, value::show, facts::show);
        model.pictureProperty().addListener((o, was, is) ->
                model.seen().ifPresent(seen -> pages.forEach(page -> page.accept(seen))));
        CarHeader header = new CarHeader(model);
        VBox top = new VBox(8, header, Words.trouble(model.troubleProperty()));
        BorderPane.setMargin(top, new Insets(0, 0, 8, 0));
        BorderPane.setMargin(tabs, new Insets(0, 8, 0, 8));
        setTop(top);
        setLeft(checklist);
        setCenter(tabs);
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

    private void tab(String key, Node page) {
        Tab tab = new Tab(Texts.of("tab." + key), scroll(page));
        tab.setId("tab-" + key);
        tab.setClosable(false);
        tabs.getTabs().add(tab);
    }

    private static ScrollPane scroll(Node content) {
        ScrollPane scroll = new ScrollPane(content);
        scroll.setFitToWidth(true);
        return scroll;
    }
}
