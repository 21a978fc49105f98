package worthsaving.desktop.car;

import java.util.Currency;
import java.util.List;
import java.util.Optional;
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
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation.Sight;

/** One car being worked on; holds no control. To be used on the screen thread only. */
public final class CarModel {

    private Ground ground;
    private Levers levers;
    private volatile CarWork work;
    private final ScreenThread screen;
    private final LatestWins<Scenario, CarPicture> reckoner;
    private final ReadOnlyObjectWrapper<Scenario> scenario = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<CarPicture> picture = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper canUndo = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper canRedo = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");
    private History<Scenario> history;

    public CarModel(Ground ground, Executor background, ScreenThread screen) {
        this.ground = ground;
        this.levers = new Levers(ground.settings());
        this.screen = screen;
        this.work = new CarWork(ground);
        this.reckoner = new LatestWins<>(
                (input, cancelled, progress) -> work.of(input, cancelled, progress), Scenario::sameCar, new Arrival(), background, screen);
    }

    /** Begins with a listing; edits of the car before are forgotten, its listing is with the lot. */
    public void open(Listing listing) {
        screen.require();
        history = History.of(Scenario.of(listing));
        picture.set(null);
        show(history.now());
    }

    /** Judges the car anew on other ground. */
    public void use(Ground other) {
        screen.require();
        ground = other;
        levers = new Levers(other.settings());
        work = new CarWork(other);
        if (isOpen()) {
            show(history.now());
        }
    }

    /** Shows an edit and remembers it for undo. */
    public void edit(Scenario next) {
        history = history.push(next);
        show(next);
    }

    public void seen(String subject, Sight sight) {
        edit(scenario.get().seen(subject, sight));
    }

    /** The listing as the user corrected it. */
    public void correct(Listing listing) {
        edit(scenario.get().withListing(listing));
    }

    /** Shows where a lever is being dragged to, without remembering every step. */
    public void drag(Lever lever, double value) {
        show(scenario.get().with(lever, value));
    }

    /** Remembers where the lever was let go. */
    public void letGo() {
        screen.require();
        history = history.push(scenario.get());
        offer();
    }

    public void reset(Lever lever) {
        edit(scenario.get().without(lever));
    }

    public void undo() {
        history = history.undo();
        show(history.now());
    }

    public void redo() {
        history = history.redo();
        show(history.now());
    }

    public boolean isOpen() {
        return history != null;
    }

    public double value(Lever lever) {
        return levers.value(lever, scenario.get());
    }

    /** Where the lever stands when it is not moved. */
    public double given(Lever lever) {
        return levers.given(lever, scenario.get().listing());
    }

    public boolean moved(Lever lever) {
        return scenario.get().lever(lever).isPresent();
    }

    public List<FindingKind> findings() {
        return ground.catalogue().findings();
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

    private void show(Scenario next) {
        screen.require();
        scenario.set(next);
        offer();
        trouble.set("");
        busy.set(true);
        reckoner.submit(next);
    }

    private void offer() {
        canUndo.set(history.canUndo());
        canRedo.set(history.canRedo());
    }

    private final class Arrival implements LatestWins.Listener<Scenario, CarPicture> {

        @Override
        public void done(Scenario input, CarPicture output, boolean latest) {
            picture.set(output);
            busy.set(!latest);
        }

        @Override
        public void failed(Scenario input, RuntimeException why) {
            trouble.set(Texts.of("failed", why.getMessage()));
            busy.set(reckoner.busy());
        }
    }
}
