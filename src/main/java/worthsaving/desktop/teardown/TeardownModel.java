package worthsaving.desktop.teardown;

import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import worthsaving.casebook.CaseFile;
import worthsaving.casebook.Edit;
import worthsaving.casebook.JournalEntry;
import worthsaving.casebook.Photo;
import worthsaving.catalog.Catalogue;
import worthsaving.desktop.Ground;
import worthsaving.desktop.LatestWins;
import worthsaving.desktop.ScreenThread;
import worthsaving.desktop.Texts;
import worthsaving.desktop.book.BookModel;
import worthsaving.desktop.teardown.TeardownWork.Ask;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Listing;

/**
 * The teardown of one car; holds no control. What is written goes into the casebook, and the reckoning follows what is
 * there. To be used on the screen thread only.
 */
public final class TeardownModel {

    private final BookModel book;
    private final ScreenThread screen;
    private final LatestWins<Ask, TeardownPicture> reckoner;
    private final ObservableList<CaseFile> cars = FXCollections.observableArrayList();
    private final ReadOnlyObjectWrapper<CaseFile> file = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<Listing> offered = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<TeardownPicture> picture = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper stopped = new ReadOnlyBooleanWrapper();
    private final ReadOnlyIntegerWrapper done = new ReadOnlyIntegerWrapper();
    private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");
    private Ground ground;
    private boolean shown;
    private String wanted = "";
    /** The car that was worked on when the screen was opened last. */
    private String worked = "";
    private Ask asked;

    public TeardownModel(BookModel book, Ground ground, Executor background, ScreenThread screen) {
        this.book = book;
        this.ground = ground;
        this.screen = screen;
        this.reckoner = new LatestWins<>(TeardownWork::of, Ask::sameCar, new Arrival(), background, screen);
        book.revisionProperty().addListener((o, was, is) -> follow());
    }

    /** Begins with the car that is worked on, or with the one whose teardown is furthest under way. */
    public void open(Optional<Listing> worked) {
        screen.require();
        shown = true;
        worked.filter(car -> !car.id().equals(this.worked)).ifPresent(car -> {
            this.worked = car.id();
            wanted = car.id();
            offered.set(car);
        });
        follow();
    }

    /**
     * Another car.
     *
     * @param id of its case
     */
    public void choose(String id) {
        screen.require();
        wanted = id;
        offered.set(null);
        follow();
    }

    /** Takes the car that is worked on, and is no case yet, into the casebook. */
    public void begin() {
        Listing car = offered.get();
        if (car != null && book.caseOf(car.id()).isEmpty()) {
            book.save(new Edit.AddCase(car));
        }
    }

    /** Reckons anew on other ground. */
    public void use(Ground other) {
        screen.require();
        ground = other;
        follow();
    }

    private void follow() {
        if (!shown) {
            return;
        }
        List<CaseFile> now = book.cases().stream().filter(c -> c.actual().isEmpty() || c.id().equals(wanted)).toList();
        if (!now.equals(cars)) {
            cars.setAll(now);
        }
        Optional<CaseFile> chosen = book.caseOf(wanted);
        if (chosen.isEmpty() && offered.get() == null) {
            chosen = cars.stream().filter(c -> !c.teardown().opened().isEmpty()).findFirst()
                    .or(() -> cars.stream().filter(c -> !c.journal().isEmpty()).findFirst())
                    .or(() -> cars.stream().findFirst());
        }
        chosen.ifPresent(c -> wanted = c.id());
        if (picture.get() != null && !chosen.map(CaseFile::id).equals(Optional.of(picture.get().file().id()))) {
            picture.set(null);
        }
        file.set(chosen.orElse(null));
        chosen.ifPresent(this::ask);
    }

    private void ask(CaseFile of) {
        Ask next = new Ask(of, owner(), ground);
        if (!next.equals(asked)) {
            asked = next;
            submit();
        }
    }

    private void submit() {
        trouble.set("");
        stopped.set(false);
        busy.set(true);
        done.set(0);
        reckoner.submit(asked);
    }

    /** Stops reckoning; what was shown before stays, and is out of date. */
    public void cancel() {
        reckoner.cancel();
        busy.set(false);
        stopped.set(true);
    }

    /** Reckons what was stopped after all. */
    public void again() {
        if (asked != null) {
            submit();
        }
    }

    public void write(JournalEntry entry) {
        book.save(new Edit.Write(id(), entry));
    }

    /** @param car id of the case, which need no longer be the one shown */
    void write(String car, JournalEntry entry, Photo photo) {
        book.save(new Edit.Write(car, entry, List.of(photo)));
    }

    public void rewrite(long number, JournalEntry entry) {
        book.save(new Edit.Rewrite(number, entry));
    }

    public void strike(long number) {
        book.save(new Edit.Strike(number));
    }

    public void dropPhoto(long number) {
        book.save(new Edit.DropPhoto(number));
    }

    /** Whether the car is its owner's, and what is agreed. */
    public Optional<Owner> owner() {
        return file.get() == null ? Optional.empty() : Owner.of(id(), book.settings(), currency());
    }

    /** Keeps whether it is, and what is agreed. */
    public void keep(Optional<Owner> owner) {
        if (!owner.equals(owner())) {
            book.save(Owner.keep(id(), owner));
        }
    }

    /** The workshop's hour, as agreed or as the catalogue has it. */
    public Money rate(Owner owner) {
        return TeardownWork.rate(owner, ground.settings());
    }

    private String id() {
        return file.get().id();
    }

    public Currency currency() {
        return ground.settings().terms().currency();
    }

    public Catalogue catalogue() {
        return ground.catalogue();
    }

    public BookModel book() {
        return book;
    }

    /** Cases that are not finished. */
    public ObservableList<CaseFile> cars() {
        return FXCollections.unmodifiableObservableList(cars);
    }

    /** The case that is shown; null when there is none. */
    public ReadOnlyObjectProperty<CaseFile> fileProperty() {
        return file.getReadOnlyProperty();
    }

    /** The car that is worked on; null when a case was chosen here. */
    public ReadOnlyObjectProperty<Listing> offeredProperty() {
        return offered.getReadOnlyProperty();
    }

    /** What was reckoned last of the case that is shown; null before. */
    public ReadOnlyObjectProperty<TeardownPicture> pictureProperty() {
        return picture.getReadOnlyProperty();
    }

    public ReadOnlyBooleanProperty busyProperty() {
        return busy.getReadOnlyProperty();
    }

    /** Whether reckoning was stopped by the user, so that what is shown is out of date. */
    public ReadOnlyBooleanProperty stoppedProperty() {
        return stopped.getReadOnlyProperty();
    }

    /** Steps of the reckoning that are done, of {@link #steps()}. */
    public ReadOnlyIntegerProperty doneProperty() {
        return done.getReadOnlyProperty();
    }

    public int steps() {
        return TeardownWork.STEPS;
    }

    /** What went wrong in reckoning, in words; blank when nothing did. */
    public ReadOnlyStringProperty troubleProperty() {
        return trouble.getReadOnlyProperty();
    }

    private final class Arrival implements LatestWins.Listener<Ask, TeardownPicture> {

        @Override
        public void done(Ask input, TeardownPicture output, boolean latest) {
            if (file.get() != null && file.get().id().equals(output.file().id())) {
                picture.set(output);
            }
            busy.set(!latest);
        }

        @Override
        public void failed(Ask input, RuntimeException why) {
            trouble.set(Texts.of("failed", why.getMessage()));
            busy.set(reckoner.busy());
        }

        @Override
        public void progress(Ask input, int steps) {
            done.set(steps);
        }
    }
}
