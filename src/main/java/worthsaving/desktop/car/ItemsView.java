package worthsaving.desktop.car;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.desktop.car.CarPicture.Item;
import worthsaving.desktop.car.CarPicture.Pull;
import worthsaving.desktop.car.CarPicture.Together;

/** What may have failed: before and with the findings, and which findings moved it; then what goes together. */
final class ItemsView extends VBox {

    private static final int PULLS = 4;
    private static final double BAR = 11;

    private final VBox items = new VBox(9);
    private final VBox stories = new VBox(4);

    private final WhyPane why;

    ItemsView(WhyPane why) {
        super(10);
        this.why = why;
        getStyleClass().add("tab-page");
        getChildren().addAll(
                Words.explained(Words.plain(Texts.of("stories.title"), "subheading"), Texts.of("stories.why")), stories,
                Words.explained(Words.plain(Texts.of("items.title"), "subheading"), Texts.of("items.why")), items);
    }

    void show(CarPicture.Seen seen) {
        items.getChildren().setAll(seen.items().stream().map(this::line).toList());
        if (seen.items().isEmpty()) {
            items.getChildren().add(Words.wrapped(Texts.of("items.none")));
        }
        stories.getChildren().setAll(seen.stories().stream().map(ItemsView::story).toList());
        if (seen.stories().isEmpty()) {
            stories.getChildren().add(Words.wrapped(Texts.of("stories.none")));
        }
    }

    private VBox line(Item item) {
        Label name = Words.wrapped(item.name(), "subheading");
        HBox.setHgrow(name, Priority.ALWAYS);
        name.setMaxWidth(Double.MAX_VALUE);
        Label chance = Words.whole(Texts.of(item.yours() ? "items.chance.yours" : "items.chance", Figures.percent(item.before()),
                Figures.percent(item.now())));
        chance.setId("item-" + item.id());
        double em = Words.plain("").getFont().getSize();
        ChanceBar bar = new ChanceBar(item.before(), item.now());
        bar.setPrefWidth(BAR * em);
        bar.setMinWidth(Region.USE_PREF_SIZE);
        HBox head = new HBox(10, name, chance, bar,
                why.button(Why.Topic.ITEM, item.id(), item.name()));
        VBox box = new VBox(2, head);
        box.getStyleClass().add("ruled");
        List<Pull> pulls = item.pulls();
        pulls.stream().limit(PULLS).forEach(p -> box.getChildren().add(pull(p)));
        if (pulls.isEmpty()) {
            box.getChildren().add(Words.wrapped(Texts.of("items.no_pull"), "soft"));
        }
        if (!item.caution().isBlank()) {
            box.getChildren().add(Words.wrapped(Texts.of("caution", item.caution()), "caution"));
        }
        return box;
    }

    private static Label pull(Pull pull) {
        String strength = Texts.of(Pulls.key(pull.logRatio()));
        String said = Texts.of(pull.seller() ? "pull.seller" : "pull.seen", Texts.of("pull", pull.seen()));
        Label line = Words.wrapped(Texts.of("pull.line", Pulls.arrow(pull.logRatio()), strength, pull.finding(), said),
                "soft");
        line.setTooltip(new Tooltip(Texts.of("pull.explain", Pulls.times(pull.logRatio()))));
        return line;
    }

    private static GridPane story(Together story) {
        GridPane row = new GridPane();
        row.setHgap(10);
        Label chance = Words.whole(Figures.percent(story.probability()), "subheading");
        chance.setMinWidth(50);
        String names = story.failed().isEmpty() ? Texts.of("stories.nothing") : String.join(" + ", story.failed());
        Label what = Words.wrapped(names);
        GridPane.setHgrow(what, Priority.ALWAYS);
        row.addRow(0, chance, what);
        return row;
    }
}
