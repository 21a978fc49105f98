package worthsaving.desktop.car;

import java.time.LocalDate;
import java.util.Currency;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import worthsaving.catalog.FindingKind;
import worthsaving.desktop.Ground;
import worthsaving.desktop.History;
import worthsaving.desktop.LatestWins;
import worthsaving.desktop.ScreenThread;
import worthsaving.desktop.Texts;
import worthsaving.desktop.car.CarWork.Ask;
import worthsaving.sensitivity.Turning;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation.Sight;

/** One car being worked on; holds no control. To be used on the screen thread only. */
public final class CarModel {

    private Ground ground;
    private Levers levers;
    private volatile CarWork work;
    private final ScreenThread screen;
    private final LatestWins<Ask, CarPicture> reckoner;
    private final MarksModel marks;
    private final MattersModel matters;
    private Whys whys;
    private final ReadOnlyObjectWrapper<Scenario> scenario = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<CarPicture> picture = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper canUndo = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper canRedo = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");
    private History<Scenario> history;
    private Keeper keeper = Keeper.NONE;
    private boolean dragging;

    public CarModel(Ground ground, Executor background, ScreenThread screen) {
        this.ground = ground;
        this.levers = new Levers(ground.settings());
        this.screen = screen;
        this.work = new CarWork(ground);
        this.reckoner = new LatestWins<>(
                (input, cancelled, progress) -> work.of(input, cancelled, progress), Ask::sameCar, new Arrival(),
                background, screen);
        this.marks = new MarksModel(this, new Marks(levers, work::exactProfit), background, screen);
        this.matters = new MattersModel(this, background, screen);
        this.whys = new Whys(ground.catalogue());
    }

    /** Keeps the edits from now on. */
    public void keepBy(Keeper other) {
        keeper = other;
    }

    /** Begins with a listing as it came. */
    public void open(Listing listing) {
        open(Scenario.of(listing));
    }

    /** Begins with a car as it was left; edits of the car before are with the casebook. */
    public void open(Scenario first) {
        screen.require();
        dragging = false;
        history = History.of(first);
        picture.set(null);
        marks.forget();
        show(history.now(), false);
    }

    /** Judges the car anew on other ground. */
    public void use(Ground other) {
        screen.require();
        ground = other;
        levers = new Levers(other.settings());
        work = new CarWork(other);
        marks.use(new Marks(levers, work::exactProfit));
        whys = new Whys(other.catalogue());
        if (isOpen()) {
            show(history.now(), false);
        }
    }

    /** Shows an edit and remembers it for undo. */
    public void edit(Scenario next) {
        keeper.keep(history.now(), next);
        history = history.push(next);
        show(next, false);
    }

    /** Shows the car as it was changed elsewhere, as by undo; that is kept already. Not while a slider is dragged. */
    void follow(Scenario other) {
        if (!dragging && !other.equals(history.now())) {
            history = history.push(other);
            show(other, false);
        } else {
            offer();
        }
    }

    /** Shows no car any more, as when it was taken out of the lot. */
    public void close() {
        screen.require();
        history = null;
        reckoner.cancel();
        marks.stop();
        busy.set(false);
        canUndo.set(false);
        canRedo.set(false);
    }

    public void seen(String subject, Sight sight) {
        edit(scenario.get().seen(subject, sight));
    }

    /** The listing as the user corrected it. */
    public void correct(Listing listing) {
        edit(scenario.get().withListing(listing));
    }

    /** Shows where a lever is being dragged to, without remembering every step. */
    public void drag(Dial lever, double value) {
        marks.stop();
        dragging = true;
        show(scenario.get().with(lever, value), true);
    }

    /** Remembers where the lever was let go, and reckons it exactly. */
    public void letGo() {
        dragging = false;
        keeper.keep(history.now(), scenario.get());
        history = history.push(scenario.get());
        show(history.now(), false);
    }

    public void reset(Dial lever) {
        edit(scenario.get().without(lever));
    }

    public void undo() {
        if (keeper.keeps()) {
            keeper.undo();
        } else {
            history = history.undo();
            show(history.now(), false);
        }
    }

    public void redo() {
        if (keeper.keeps()) {
            keeper.redo();
        } else {
            history = history.redo();
            show(history.now(), false);
        }
    }

    public boolean isOpen() {
        return history != null;
    }

    public double value(Dial lever) {
        return scenario.get().lever(lever).orElse(given(lever));
    }

    /** Where the lever stands when it is not moved. */
    public double given(Dial dial) {
        return dial instanceof Lever lever ? levers.given(lever, scenario.get().listing())
                : seen().map(s -> s.main().getOrDefault(dial, 0.0)).orElse(0.0);
    }

    /** Every slider: first the levers, then the items that the deal hangs on most, or that were moved. */
    public List<Dial> dials() {
        Set<Dial> dials = new LinkedHashSet<>(List.of(Lever.values()));
        seen().ifPresent(s -> dials.addAll(s.main().keySet()));
        if (scenario.get() != null) {
            dials.addAll(scenario.get().levers().keySet());
        }
        return List.copyOf(dials);
    }

    public boolean moved(Dial lever) {
        return scenario.get().lever(lever).isPresent();
    }

    public List<FindingKind> findings() {
        return ground.catalogue().findings();
    }

    /** Makes that the price data know, to suggest. */
    public Set<String> makes() {
        return ground.makes();
    }

    /** Models of a make that the price data know. */
    public Set<String> models(String make) {
        return ground.models().apply(make);
    }

    String catalogueVersion() {
        return ground.catalogue().version();
    }

    LocalDate today() {
        return ground.today();
    }

    public Currency currency() {
        return levers.currency();
    }

    public ReadOnlyObjectProperty<Scenario> scenarioProperty() {
        return scenario.getReadOnlyProperty();
    }

    /** What is known of the latest scenario reckoned; null before the first one. */
    public ReadOnlyObjectProperty<CarPicture> pictureProperty() {
        return picture.getReadOnlyProperty();
    }

    public Optional<CarPicture.Seen> seen() {
        return Optional.ofNullable(picture.get()).flatMap(CarPicture::seen);
    }

    /** Where each slider turns the deal, as far as it is known. */
    public ReadOnlyObjectProperty<Map<Dial, Turning>> marksProperty() {
        return marks.marksProperty();
    }

    /** Whether the marks belong to figures that have changed since; while a lever is dragged they are not called so. */
    public ReadOnlyBooleanProperty marksOutdatedProperty() {
        return marks.outdatedProperty();
    }

    public MattersModel matters() {
        return matters;
    }

    public Whys whys() {
        return whys;
    }

    public ReadOnlyBooleanProperty busyProperty() {
        return busy.getReadOnlyProperty();
    }

    public ReadOnlyBooleanProperty canUndoProperty() {
        return canUndo.getReadOnlyProperty();
    }

    public ReadOnlyBooleanProperty canRedoProperty() {
        return canRedo.getReadOnlyProperty();
    }

    /** What went wrong last, in words; blank when nothing did. */
    public ReadOnlyStringProperty troubleProperty() {
        return trouble.getReadOnlyProperty();
    }

    private void show(Scenario next, boolean rough) {
        screen.require();
        if (scenario.get() != null && !next.sameCar(scenario.get())) {
            marks.forget();
        }
        if (!rough) {
            marks.outdate();
        }
        scenario.set(next);
        offer();
        trouble.set("");
        busy.set(true);
        reckoner.submit(new Ask(next, rough));
    }

    /** Says anew what can be undone. */
    void offer() {
        canUndo.set(keeper.keeps() ? keeper.canUndo() : history.canUndo());
        canRedo.set(keeper.keeps() ? keeper.canRedo() : history.canRedo());
    }

    private final class Arrival implements LatestWins.Listener<Ask, CarPicture> {

        @Override
        public void done(Ask input, CarPicture output, boolean latest) {
            if (!isOpen()) {
                return;
            }
            picture.set(output);
            busy.set(!latest);
            if (latest && !output.rough() && output.seen().isPresent()) {
                marks.reckon(output);
            }
        }

        @Override
        public void failed(Ask input, RuntimeException why) {
            trouble.set(Texts.of("failed", why.getMessage()));
            busy.set(reckoner.busy());
        }
    }
}
