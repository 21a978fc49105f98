package worthsaving.desktop.record;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import worthsaving.casebook.CaseFile;
import worthsaving.casebook.LearningSwitch;
import worthsaving.catalog.FailureItem;
import worthsaving.desktop.Ground;
import worthsaving.desktop.LatestWins;
import worthsaving.desktop.ScreenThread;
import worthsaving.desktop.Texts;
import worthsaving.desktop.book.BookModel;
import worthsaving.quantity.Seed;
import worthsaving.record.FinishedCar;
import worthsaving.record.Learning;
import worthsaving.record.TrackRecord;

/**
 * Finished cars, how good their forecasts were, and what they teach; holds no control. Without a finished car of the
 * user's the invented ones are shown, from which nothing is learnt. To be used on the screen thread only.
 */
public final class RecordModel {

    private final BookModel book;
    private final LatestWins<List<FinishedCar>, TrackRecord> scorer;
    private final ObservableList<FinishedRow> rows = FXCollections.observableArrayList();
    private final ObservableList<CaseFile> underWay = FXCollections.observableArrayList();
    private final ReadOnlyBooleanWrapper example = new ReadOnlyBooleanWrapper();
    private final ReadOnlyObjectWrapper<TrackRecord> track = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<Learning> shown = new ReadOnlyObjectWrapper<>(new Learning(List.of(), List.of()));
    private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");
    private Learning learning = new Learning(List.of(), List.of());
    private Ground ground;

    /** @param ground without what finished cars have taught */
    public RecordModel(BookModel book, Ground ground, Executor background, ScreenThread screen) {
        this.book = book;
        this.ground = ground;
        Seed seed = ground.settings().method().seed();
        this.scorer = new LatestWins<>((cars, cancelled, progress) -> TrackRecord.of(cars, seed),
                (running, newer) -> false, new Arrival(), background, screen);
    }

    /** Starts from other money lines. */
    public void use(Ground other) {
        ground = other;
        follow();
    }

    /** Looks at the casebook anew. */
    public void follow() {
        List<FinishedRow> all = book.cases().stream().map(FinishedRow::of).flatMap(Optional::stream)
                .sorted(Comparator.comparing((FinishedRow r) -> r.actual().sold())).toList();
        List<FinishedRow> own = all.stream().filter(r -> !r.of().invented()).toList();
        List<FinishedRow> now = own.isEmpty() ? all : own;
        example.set(own.isEmpty() && !all.isEmpty());
        learning = learning(own);
        shown.set(own.isEmpty() ? learning(all) : learning);
        List<CaseFile> open = new ArrayList<>(book.cases().stream().filter(c -> c.actual().isEmpty()).toList());
        open.sort(Comparator.comparing(c -> book.bought(c.id()).isEmpty()));
        if (!open.equals(underWay)) {
            underWay.setAll(open);
        }
        if (!now.equals(rows) || track.get() == null) {
            rows.setAll(now);
            scorer.submit(now.stream().map(FinishedRow::car).toList());
        }
    }

    private Learning learning(List<FinishedRow> of) {
        return Learning.of(of.stream().map(FinishedRow::car).toList(), ground.settings().terms(),
                LearningSwitch.settings(book.settings()));
    }

    /** What the user's own finished cars teach; invented ones teach nothing. */
    public Learning learning() {
        return learning;
    }

    /** What is shown to be taught: of the invented cars while there are no own ones. */
    public ReadOnlyObjectProperty<Learning> shownLearningProperty() {
        return shown.getReadOnlyProperty();
    }

    /** Turns a lesson on or off; figures follow once that is kept. */
    public void turn(LearningSwitch lesson, boolean on) {
        book.save(lesson.turn(on));
    }

    /** Whether the cars shown are the invented ones. */
    public ReadOnlyBooleanProperty exampleProperty() {
        return example.getReadOnlyProperty();
    }

    /** In the order in which they were sold. */
    public ObservableList<FinishedRow> rows() {
        return rows;
    }

    /** Cases not finished, those that were bought first. */
    public ObservableList<CaseFile> underWay() {
        return underWay;
    }

    /** Scores of the cars shown; null before the first. */
    public ReadOnlyObjectProperty<TrackRecord> trackProperty() {
        return track.getReadOnlyProperty();
    }

    /** What went wrong last, in words; blank when nothing did. */
    public ReadOnlyStringProperty troubleProperty() {
        return trouble.getReadOnlyProperty();
    }

    BookModel book() {
        return book;
    }

    Ground ground() {
        return ground;
    }

    String itemName(String id) {
        FailureItem item = ground.catalogue().itemsById().get(id);
        return item == null ? id : item.name();
    }

    private final class Arrival implements LatestWins.Listener<List<FinishedCar>, TrackRecord> {

        @Override
        public void done(List<FinishedCar> cars, TrackRecord output, boolean latest) {
            trouble.set("");
            track.set(output);
        }

        @Override
        public void failed(List<FinishedCar> cars, RuntimeException why) {
            trouble.set(Texts.of("failed", why.getMessage()));
        }
    }
}
