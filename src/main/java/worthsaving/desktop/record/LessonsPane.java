package worthsaving.desktop.record;

import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.VBox;
import worthsaving.casebook.LearningSwitch;
import worthsaving.catalog.MoneyLine;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.record.ItemLesson;
import worthsaving.record.Learning;
import worthsaving.record.Lesson;

/** What finished cars teach, before and after, and a switch for each lesson. */
final class LessonsPane extends VBox {

    private final RecordModel model;

    LessonsPane(RecordModel model) {
        super(8);
        this.model = model;
        setId("record-lessons");
        getStyleClass().addAll("panel", "padded");
        model.shownLearningProperty().addListener((o, was, is) -> show(is));
        model.exampleProperty().addListener(o -> show(model.shownLearningProperty().get()));
        show(model.shownLearningProperty().get());
    }

    private void show(Learning learning) {
        getChildren().setAll(Words.plain(Texts.of("lesson.title"), "subheading"), Words.wrapped(
                Texts.of(model.exampleProperty().get() ? "lesson.example" : "lesson.why"), "soft"));
        for (Lesson lesson : learning.lessons()) {
            LearningSwitch.of(lesson.term()).ifPresent(s -> getChildren().add(line(s, words(lesson), lesson.on(),
                    Texts.of("lesson.prior", lesson.prior()))));
        }
        boolean on = learning.items().stream().allMatch(ItemLesson::on);
        VBox items = line(LearningSwitch.ITEMS,
                learning.items().isEmpty() ? Texts.of("lesson.nothing") : Texts.of("lesson.items.why"), on,
                Texts.of("lesson.items.explain"));
        learning.items().forEach(lesson -> items.getChildren().add(indented(item(lesson))));
        getChildren().add(items);
    }

    private VBox line(LearningSwitch lesson, String words, boolean on, String why) {
        CheckBox box = new CheckBox(Texts.of("lesson", lesson));
        box.setId("lesson-" + lesson);
        box.setSelected(on);
        box.setTooltip(new Tooltip(Texts.of("lesson.switch.why")));
        box.setDisable(model.exampleProperty().get() || model.book().readOnly());
        box.setOnAction(e -> model.turn(lesson, box.isSelected()));
        return new VBox(2, box, indented(Words.explained(Words.wrapped(words), why)));
    }

    private static Label indented(Label label) {
        label.getStyleClass().add("indented");
        return label;
    }

    private static String words(Lesson lesson) {
        if (lesson.cars() == 0) {
            return Texts.of("lesson.nothing");
        }
        boolean percent = lesson.term().unit() == MoneyLine.Unit.PERCENT;
        return Texts.of(percent ? "lesson.moved.percent" : "lesson.moved.days", Figures.number(lesson.before().median(), 0),
                Figures.number(lesson.after().median(), 0), lesson.cars() == 1 ? Texts.of("lesson.car")
                        : Texts.of("lesson.cars", Integer.toString(lesson.cars())));
    }

    private Label item(ItemLesson lesson) {
        return Words.explained(Words.wrapped(Texts.of("lesson.item", model.itemName(lesson.item()),
                        Figures.percent(lesson.before().mean()), Figures.percent(lesson.after().mean()),
                        Texts.of("lesson.failed", Integer.toString(lesson.failed()), Integer.toString(lesson.cars())))),
                Texts.of("lesson.item.why"));
    }
}
