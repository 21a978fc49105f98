package worthsaving.desktop.teardown;

import java.util.List;
import java.util.stream.Collectors;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import java.util.function.Consumer;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.teardown.Opening;

/** How far the car is open: every step once, what is open filled, what can be opened next with its price. */
final class OpeningsPane extends VBox {

    private static final double INDENT = 1.1;
    private static final int SUSPECTS = 4;

    private final Consumer<String> onOpened;
    private final VBox steps = new VBox(7);

    /** @param onOpened told of the step whose button was pressed */
    OpeningsPane(Consumer<String> onOpened) {
        super(6);
        this.onOpened = onOpened;
        getStyleClass().add("padded");
        setId("openings");
        getChildren().addAll(
                Words.explained(Words.plain(Texts.of("teardown.openings"), "subheading"), Texts.of("teardown.openings.why")),
                Words.wrapped(Texts.of("teardown.openings.note"), "soft"), steps);
    }

    void show(List<Opening> openings) {
        steps.getChildren().setAll(openings.stream().map(this::step).toList());
        if (openings.isEmpty()) {
            steps.getChildren().add(Words.wrapped(Texts.of("teardown.openings.none")));
        }
    }

    private HBox step(Opening opening) {
        String state = opening.open() ? "open" : opening.next() ? "next" : "closed";
        Region mark = new Region();
        mark.getStyleClass().addAll("step-mark", state);
        Label name = Words.wrapped(opening.name(), opening.open() ? "subheading" : "step-name");
        VBox words = new VBox(1, name, Words.wrapped(price(opening), "soft"));
        if (!opening.shows().isEmpty()) {
            String shows = opening.shows().stream().limit(SUSPECTS)
                    .map(s -> Texts.of("teardown.suspect", s.name(), Figures.percent(s.chance())))
                    .collect(Collectors.joining("; "));
            int more = opening.shows().size() - SUSPECTS;
            words.getChildren().add(Words.wrapped(Texts.of(opening.open() ? "teardown.opening.sees"
                    : "teardown.opening.shows", more > 0 ? Texts.of("teardown.and_more", shows, more) : shows), "step-shows"));
        }
        words.setFillWidth(true);
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox row = new HBox(8, mark, words);
        if (opening.next()) {
            Button open = new Button(Texts.of("teardown.opening.done"));
            open.setId("open-" + opening.id());
            open.setMinWidth(Region.USE_PREF_SIZE);
            open.getStyleClass().add("plain");
            open.setAccessibleText(Texts.of("teardown.opening.done.of", opening.name()));
            open.setOnAction(e -> onOpened.accept(opening.id()));
            row.getChildren().add(open);
        }
        row.setAlignment(Pos.TOP_LEFT);
        double em = Words.plain("").getFont().getSize();
        row.setPadding(new Insets(0, 0, 0, INDENT * em * opening.depth()));
        row.setId("step-" + opening.id());
        row.setAccessibleText(Texts.of("teardown.opening.spoken", opening.name(), Texts.of("teardown.opening." + state),
                price(opening)));
        return row;
    }

    private static String price(Opening opening) {
        if (opening.open()) {
            return Texts.of("teardown.opening.open");
        }
        return Texts.of(opening.next() ? "teardown.opening.next" : "teardown.opening.closed",
                Figures.money(opening.cost()), Figures.hours(opening.hours().value()));
    }
}
