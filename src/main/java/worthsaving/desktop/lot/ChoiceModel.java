package worthsaving.desktop.lot;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Executor;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import worthsaving.desktop.LatestWins;
import worthsaving.desktop.ScreenThread;
import worthsaving.desktop.Texts;
import worthsaving.quantity.Seed;
import worthsaving.ranking.Budget;
import worthsaving.ranking.LotChoice;
import worthsaving.ranking.Standing;

/** The set of cars to buy together under cash, bays and hours; holds no control. For the screen thread only. */
public final class ChoiceModel {

    /** What is chosen from. */
    record Request(List<Standing> lot, Budget budget, boolean aboveLimit) {}

    private final Seed seed;
    private final LatestWins<Request, LotChoice> chooser;
    private final ReadOnlyObjectWrapper<LotChoice> choice = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");
    private Map<String, String> marks = Map.of();

    ChoiceModel(Seed seed, Executor background, ScreenThread screen) {
        this.seed = seed;
        this.chooser = new LatestWins<>((request, cancelled, progress) -> choose(request),
                (running, newer) -> false, new Arrival(), background, screen);
    }

    void choose(List<Standing> lot, Limits limits) {
        Limits.Reading reading = limits.read();
        trouble.set(reading.trouble());
        reading.budget().ifPresent(budget -> {
            busy.set(true);
            chooser.submit(new Request(List.copyOf(lot), budget, limits.aboveLimit()));
        });
    }

    /** No set any more, as when the lot has changed. */
    void clear() {
        chooser.cancel();
        busy.set(false);
        marks = Map.of();
        choice.set(null);
    }

    void cancel() {
        chooser.cancel();
        busy.set(false);
    }

    /** Null while nothing is chosen. */
    public ReadOnlyObjectProperty<LotChoice> choiceProperty() {
        return choice.getReadOnlyProperty();
    }

    public ReadOnlyBooleanProperty busyProperty() {
        return busy.getReadOnlyProperty();
    }

    /** What is wrong with the limits, in words; blank when nothing is. */
    public ReadOnlyStringProperty troubleProperty() {
        return trouble.getReadOnlyProperty();
    }

    /** What became of a listing, in a few words; blank when nothing is chosen. */
    public String mark(String id) {
        return marks.getOrDefault(id, "");
    }

    public boolean holds(String id) {
        return choice.get() != null && choice.get().set().holds(id);
    }

    private LotChoice choose(Request request) {
        LotChoice.Settings usual = LotChoice.Settings.usual(seed);
        return LotChoice.of(request.lot(), request.budget(),
                new LotChoice.Settings(request.aboveLimit(), usual.marketSpread(), seed));
    }

    private static Map<String, String> marks(LotChoice choice) {
        Map<String, String> marks = new HashMap<>();
        choice.chosen().forEach(s -> marks.put(s.listing().id(), Texts.of("choose.in")));
        choice.leftOut().forEach(no -> marks.put(no.standing().listing().id(), Texts.of("choose.out",
                no.reasons().stream().map(r -> Texts.of("choose.reason", r)).collect(Collectors.joining(", ")))));
        return marks;
    }

    private final class Arrival implements LatestWins.Listener<Request, LotChoice> {

        @Override
        public void done(Request input, LotChoice output, boolean latest) {
            marks = marks(output);
            choice.set(output);
            busy.set(!latest);
        }

        @Override
        public void failed(Request input, RuntimeException why) {
            trouble.set(Texts.of("failed", why.getMessage()));
            busy.set(false);
        }
    }
}
