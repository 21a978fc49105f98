package worthsaving.desktop.teardown;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import worthsaving.catalog.Catalogue;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.teardown.Opening;

/** How far the car is open: every step once, down a rail: open, next with its price, and what lies behind. */
final class OpeningsPane extends VBox {

    private static final int SUSPECTS = 2;
    private static final double BAR = 11;

    private final Consumer<String> onOpened;
    private final VBox steps = new VBox(10);
    private Catalogue catalogue;

    /** @param onOpened told of the step whose button was pressed */
    OpeningsPane(Consumer<String> onOpened) {
        super(6);
        this.onOpened = onOpened;
        getStyleClass().add("padded");
        setId("openings");
        getChildren().addAll(
                Words.explained(Words.plain(Texts.of("teardown.openings"), "subheading"), Texts.of("teardown.openings.why")),
                steps);
    }

    void show(List<Opening> openings, Catalogue now) {
        catalogue = now;
        steps.getChildren().setAll(Words.wrapped(Texts.of("teardown.caution.usual"), "caution"));
        if (openings.isEmpty()) {
            steps.getChildren().add(Words.wrapped(Texts.of("teardown.openings.none")));
        }
        Map<String, Opening> all = openings.stream().collect(Collectors.toMap(Opening::id, Function.identity()));
        group("open", openings, all, Opening::open);
        group("next", openings, all, Opening::next);
        group("closed", openings, all, o -> !o.open() && !o.next());
    }

    private void group(String state, List<Opening> openings, Map<String, Opening> all, Predicate<Opening> in) {
        List<Opening> some = openings.stream().filter(in).toList();
        if (!some.isEmpty()) {
            VBox rail = new VBox(6);
            rail.getStyleClass().addAll("rail", state);
            some.forEach(o -> rail.getChildren().add(step(o, state, all)));
            steps.getChildren().add(new VBox(3, Words.explained(
                    Words.plain(Texts.of("teardown.opening.group." + state), "stage-of-journal"),
                    Texts.of("teardown.opening.explain." + state)), rail));
        }
    }

    private HBox step(Opening opening, String state, Map<String, Opening> all) {
        Region mark = new Region();
        mark.getStyleClass().addAll("step-mark", state);
        VBox words = new VBox(1, Words.wrapped(opening.name()));
        HBox.setHgrow(words, Priority.ALWAYS);
        if (!opening.open()) {
            words.getChildren().add(price(opening, all));
        }
        if (state.equals("closed")) {
            words.getChildren().add(Words.wrapped(Texts.of("teardown.opening.after", opening.requires().stream().sorted()
                    .filter(r -> !all.get(r).open()).map(r -> all.get(r).name()).collect(Collectors.joining("; "))), "soft"));
        }
        if (!opening.shows().isEmpty()) {
            words.getChildren().add(suspects(opening));
        }
        if (!state.equals("closed")) {
            opening.shows().stream().limit(SUSPECTS).map(s -> catalogue.itemsById().get(s.item()).caution())
                    .filter(c -> !c.isBlank()).distinct()
                    .forEach(c -> words.getChildren().add(Words.wrapped(Texts.of("caution", c), "caution")));
        }
        HBox row = new HBox(8, mark, words);
        row.setAlignment(Pos.TOP_LEFT);
        row.setId("step-" + opening.id());
        row.setAccessibleText(Texts.of("teardown.opening.spoken", opening.name(),
                Texts.of("teardown.opening.group." + state)));
        return row;
    }

    /** The price of opening as a bar against the dearest, and the button that says that it is open now. */
    private HBox price(Opening opening, Map<String, Opening> all) {
        double dearest = all.values().stream().mapToDouble(o -> o.cost().amount()).max().orElse(1);
        double em = Words.plain("").getFont().getSize();
        Region bar = new Region();
        bar.getStyleClass().add("price-of-opening");
        double width = Math.max(2, BAR / 2 * em * opening.cost().amount() / Math.max(1, dearest));
        bar.setMinWidth(width);
        bar.setMaxWidth(width);
        Label price = Words.explained(Words.whole(Figures.money(opening.cost())),
                Texts.of("teardown.opening.price.why", Figures.hours(opening.hours().value())));
        HBox line = new HBox(6, price, bar);
        line.setAlignment(Pos.CENTER_LEFT);
        if (opening.next()) {
            Region space = new Region();
            HBox.setHgrow(space, Priority.ALWAYS);
            Button open = new Button(Texts.of("teardown.opening.done"));
            open.setId("open-" + opening.id());
            open.setMinWidth(Region.USE_PREF_SIZE);
            open.getStyleClass().addAll("plain", "small-button");
            open.setAccessibleText(Texts.of("teardown.opening.done.of", opening.name()));
            open.setOnAction(e -> onOpened.accept(opening.id()));
            line.getChildren().addAll(space, open);
        }
        return line;
    }

    private static Label suspects(Opening opening) {
        List<String> all = opening.shows().stream()
                .map(s -> Texts.of("teardown.suspect", s.name(), AdviceWords.percent(s.chance()))).toList();
        String some = all.stream().limit(SUSPECTS).collect(Collectors.joining("; "));
        int more = all.size() - SUSPECTS;
        Label label = Words.wrapped(Texts.of(opening.open() ? "teardown.opening.sees" : "teardown.opening.shows",
                more > 0 ? Texts.of("teardown.and_more", some, more) : some), "soft");
        return Words.explained(label, String.join("\n", all));
    }
}
