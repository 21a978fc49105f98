package worthsaving.desktop.market;

import java.time.YearMonth;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import worthsaving.catalog.Catalogue;
import worthsaving.desktop.Ground;
import worthsaving.desktop.History;
import worthsaving.desktop.LatestWins;
import worthsaving.desktop.ScreenThread;
import worthsaving.desktop.Settings;
import worthsaving.desktop.Texts;
import worthsaving.desktop.market.MarketWork.Ask;
import worthsaving.desktop.market.MarketWork.Composed;
import worthsaving.market.Market;
import worthsaving.vehicle.Listing;

/** The market in use and the user's changes of it; holds no control. To be used on the screen thread only. */
public final class MarketModel {

    private static final String CHOSEN = "market";
    private static final String NOTE = "market.";

    private final MarketShelf shelf;
    private final MarketNotes notes;
    private final Settings settings;
    private final Consumer<Ground> onGround;
    private final ScreenThread screen;
    private final LatestWins<Ask, Composed> composing;
    private final CarLook car;
    private final LatestWins<OwnTable, OwnCars> trying;
    private final Map<String, History<MarketEdits>> histories = new HashMap<>();
    private final ReadOnlyObjectWrapper<Composed> composed = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<String> chosen = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");
    private Ground base;
    private Runnable takeBack = this::undo;
    private Runnable doAgain = this::redo;

    /** @param onGround told of new ground for lot and car */
    public MarketModel(
            Ground ground, MarketShelf shelf, MarketNotes notes, Settings settings, Consumer<Ground> onGround,
            Executor background, ScreenThread screen) {
        this.base = ground;
        this.shelf = shelf;
        this.notes = notes;
        this.settings = settings;
        this.onGround = onGround;
        this.screen = screen;
        MarketWork work = new MarketWork(shelf);
        this.composing = new LatestWins<>(
                (ask, cancelled, progress) -> work.of(ask), (running, newer) -> false, new Arrival(), background, screen);
        this.car = new CarLook(trouble::set, background, screen);
        this.trying = new LatestWins<>((table, cancelled, progress) -> OwnCars.of(List.of(table), base),
                (running, newer) -> true, new TableArrival(), background, screen);
        chosen.set(ground.home().market().code());
        histories.put(chosen.get(), History.of(MarketEdits.NONE));
    }

    /** The market chosen at an earlier start; the first when none was or it is not there any more. */
    public static String remembered(Settings settings, MarketShelf shelf) {
        List<String> codes = shelf.markets().stream().map(Market::code).toList();
        return settings.get(CHOSEN).filter(codes::contains).orElse(codes.isEmpty() ? "US" : codes.get(0));
    }

    private static Optional<MarketEdits> kept(MarketNotes notes, String code) {
        try {
            return notes.get(NOTE + code).map(MarketEditsText::read);
        } catch (IllegalArgumentException damaged) {
            return Optional.empty();
        }
    }

    /** Reads the market in use, once. */
    public void open() {
        screen.require();
        if (composed.get() == null && !busy.get()) {
            compose(false);
        }
    }

    /** Markets to choose from. */
    public List<Market> markets() {
        return shelf.markets();
    }

    /** Judges everything on another market from now on, and at the next start. */
    public void choose(String code) {
        screen.require();
        if (!code.equals(chosen.get())) {
            chosen.set(code);
            compose(true);
        }
    }

    /** Looks at a car, to say what the market means for it. */
    public void look(Optional<Listing> other) {
        screen.require();
        car.look(other);
    }

    /** Goes on with another catalogue, its money as its files have it. */
    public void use(Catalogue kept) {
        screen.require();
        base = base.with(kept);
        if (composed.get() == null) {
            onGround.accept(base);
        } else {
            compose(true);
        }
    }

    /** @param month such as 2026-07 */
    void setLevel(String month, String level) {
        typed(() -> Typed.level(edits(), month, level));
    }

    void removeLevel(YearMonth month) {
        typed(() -> Typed.withoutLevel(edits(), month, composed.get().settings().index()));
    }

    void publishedIndex() {
        edit(edits().withPublishedIndex());
    }

    /** @param typed blank for the usual value */
    void setFactor(String key, String typed) {
        typed(() -> Typed.factor(edits(), composed.get().shipped().valuer().settings().factor(key), typed));
    }

    private void typed(Supplier<MarketEdits> edit) {
        try {
            edit(edit.get());
        } catch (IllegalArgumentException e) {
            trouble.set(e.getMessage());
        }
    }

    /** Adds a table of priced cars, if a row of it can be used. */
    void add(String name, String text) {
        screen.require();
        if (text.isBlank()) {
            return;
        }
        trouble.set("");
        busy.set(true);
        trying.submit(new OwnTable(name, base.today(), text, Set.of()));
    }

    void say(String what) {
        trouble.set(what);
    }

    void remove(OwnCars.Row row) {
        edit(edits().without(row));
    }

    void removeAll() {
        edit(edits().withoutTables());
    }

    public void undo() {
        if (history().canUndo()) {
            become(history().undo());
        }
    }

    public void redo() {
        if (history().canRedo()) {
            become(history().redo());
        }
    }

    private void edit(MarketEdits next) {
        screen.require();
        become(history().push(next));
    }

    private void become(History<MarketEdits> next) {
        if (next.equals(history())) {
            trouble.set("");
            return;
        }
        histories.put(chosen.get(), next);
        notes.put(NOTE + chosen.get(), Optional.of(next.now()).filter(e -> !e.isEmpty()).map(MarketEditsText::write));
        compose(true);
    }

    /** The notes may have changed, as by opening the casebook or by its undo. */
    public void follow() {
        screen.require();
        MarketEdits noted = kept(notes, chosen.get()).orElse(MarketEdits.NONE);
        if (notes.keeps() && !noted.equals(edits())) {
            histories.put(chosen.get(), history().push(noted));
            compose(true);
        }
    }

    /** Who takes back and does again when that is asked for in a field of this screen. */
    public void onUndo(Runnable back, Runnable again) {
        takeBack = back;
        doAgain = again;
    }

    void takeBack() {
        takeBack.run();
    }

    void doAgain() {
        doAgain.run();
    }

    private History<MarketEdits> history() {
        return histories.computeIfAbsent(chosen.get(), code -> History.of(kept(notes, code).orElse(MarketEdits.NONE)));
    }

    MarketEdits edits() {
        return history().now();
    }

    private void compose(boolean tell) {
        screen.require();
        busy.set(true);
        trouble.set("");
        composing.submit(new Ask(chosen.get(), edits(), base, tell));
    }

    /** Null until the market is read. */
    ReadOnlyObjectProperty<Composed> composedProperty() {
        return composed.getReadOnlyProperty();
    }

    /** Null while there is none to look at. */
    ReadOnlyObjectProperty<CarMarket> carProperty() {
        return car.seenProperty();
    }

    /** Code of the market chosen, which may be being read. */
    public ReadOnlyObjectProperty<String> chosenProperty() {
        return chosen.getReadOnlyProperty();
    }

    public ReadOnlyBooleanProperty busyProperty() {
        return busy.getReadOnlyProperty();
    }

    /** What went wrong last, in words; blank when nothing did. */
    public ReadOnlyStringProperty troubleProperty() {
        return trouble.getReadOnlyProperty();
    }

    private final class Arrival implements LatestWins.Listener<Ask, Composed> {

        @Override
        public void done(Ask ask, Composed output, boolean latest) {
            busy.set(!latest);
            base = output.ground();
            settings.put(CHOSEN, ask.code());
            composed.set(output);
            if (ask.tell()) {
                onGround.accept(base);
            }
            car.on(output);
        }

        @Override
        public void failed(Ask ask, RuntimeException why) {
            busy.set(false);
            trouble.set(Texts.of("market.unreadable", ask.code(), why.getMessage()));
            if (composed.get() != null) {
                chosen.set(composed.get().shipped().market().code());
            }
        }
    }

    private final class TableArrival implements LatestWins.Listener<OwnTable, OwnCars> {

        @Override
        public void done(OwnTable table, OwnCars output, boolean latest) {
            busy.set(false);
            if (output.rows().isEmpty()) {
                trouble.set(Texts.of("market.own.nothing", table.name(),
                        output.faults().isEmpty() ? Texts.of("market.own.no_rows") : output.faults().get(0)));
            } else {
                edit(edits().with(table));
            }
        }

        @Override
        public void failed(OwnTable table, RuntimeException why) {
            busy.set(false);
            trouble.set(Texts.of("failed", why.getMessage()));
        }
    }
}
