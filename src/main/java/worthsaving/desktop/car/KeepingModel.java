package worthsaving.desktop.car;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import worthsaving.casebook.PhotoFile;
import worthsaving.desktop.Ground;
import worthsaving.desktop.LatestWins;
import worthsaving.desktop.ScreenThread;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Typed;
import worthsaving.desktop.Units;
import worthsaving.desktop.book.BookModel;
import worthsaving.quantity.Money;
import worthsaving.ranking.Rescue;
import worthsaving.ranking.RescueTerms;
import worthsaving.report.sheet.PdfSheet;
import worthsaving.shell.PhotoToShow;

/** The car mended and kept, or replaced; reckoned while its page is open. Holds no control; for the screen thread only. */
public final class KeepingModel {

    /** What can be typed. */
    public enum Field { YEARS, DISTANCE, QUOTE, OFFER }

    private final CarModel car;
    private final BookModel book;
    private final LatestWins<Request, Rescue> reckoner;
    private final ReadOnlyObjectWrapper<Rescue> rescue = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<Keeping> keeping = new ReadOnlyObjectWrapper<>(Keeping.USUAL);
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");
    private SheetWork work;
    private Request last;
    private boolean open;

    /** @param by holds catalogue and settings, so that a change of either is another request */
    private record Request(SheetWork by, CarPicture picture, Keeping keeping) {}

    public KeepingModel(CarModel car, BookModel book, Ground ground, Executor background, ScreenThread screen) {
        this.car = car;
        this.book = book;
        this.work = new SheetWork(ground);
        this.reckoner = new LatestWins<>(
                (request, cancelled, progress) -> request.by().rescue(request.picture().scenario(),
                        request.picture().seen().orElseThrow().appraisal(), request.keeping().terms()),
                (running, newer) -> false, new Arrival(), background, screen);
        car.scenarioProperty().addListener((o, was, is) -> {
            if (was == null || !was.sameCar(is)) {
                follow();
            }
        });
        car.pictureProperty().addListener((o, was, is) -> {
            if (is == null) {
                follow(); // a car is opened, the same one perhaps, whose settings may have changed while it was closed
            } else {
                refresh();
            }
        });
        book.revisionProperty().addListener(o -> follow());
    }

    /** Reckons on other ground from now on. */
    public void use(Ground other) {
        work = new SheetWork(other);
        follow();
    }

    /** Whether the page is looked at; nothing is reckoned while it is not. */
    void open(boolean isOpen) {
        open = isOpen;
        refresh();
    }

    /**
     * Takes over what was typed.
     *
     * @return what is wrong with it and what mends it; blank when it is kept
     */
    String enter(Field field, String text, Units units) {
        Keeping now = keeping.get();
        Typed<Double> typed = Typed.amount(text, field == Field.YEARS || field == Field.DISTANCE);
        if (!typed.good()) {
            return typed.fault();
        }
        double number = typed.value().orElse(0.0);
        Optional<Money> money = Optional.of(number).filter(n -> n > 0).map(n -> new Money(n, car.currency()));
        if (field == Field.YEARS && !(number >= 1 && number <= RescueTerms.MOST_YEARS && number == Math.rint(number))) {
            return Texts.of("keep.bad.years", RescueTerms.MOST_YEARS);
        }
        double miles = field == Field.DISTANCE ? units.distance(number).miles() : now.milesPerYear();
        if (!(miles > 0 && miles <= RescueTerms.MOST_MILES_PER_YEAR)) {
            return Texts.of("keep.bad.distance");
        }
        Keeping next = switch (field) {
            case YEARS -> new Keeping((int) number, miles, now.quote(), now.offer());
            case DISTANCE -> new Keeping(now.years(), miles, now.quote(), now.offer());
            case QUOTE -> new Keeping(now.years(), miles, money, now.offer());
            case OFFER -> new Keeping(now.years(), miles, now.quote(), money);
        };
        if (!next.equals(now) && car.isOpen()) {
            keeping.set(next);
            book.save(next.edit(id()));
            refresh();
        }
        return "";
    }

    /** The decision sheet of the same car; its owner's terms are those entered here. */
    public SheetModel sheet(Ground ground, Executor background, ScreenThread screen) {
        return new SheetModel(car, keeping::get, this::photos, ground, background, screen);
    }

    private List<PhotoToShow> photos() {
        return book.caseOf(id()).stream()
                .flatMap(file -> file.newestPhotos(PdfSheet.MOST_PHOTOS).stream())
                .map(photo -> new PhotoToShow(PhotoFile.place(photo, book.file()), photo.title()))
                .toList();
    }

    ReadOnlyObjectProperty<Keeping> keepingProperty() {
        return keeping.getReadOnlyProperty();
    }

    /** The latest of this car; null before the first. */
    ReadOnlyObjectProperty<Rescue> rescueProperty() {
        return rescue.getReadOnlyProperty();
    }

    ReadOnlyBooleanProperty busyProperty() {
        return busy.getReadOnlyProperty();
    }

    /** What went wrong last, in words; blank when nothing did. */
    ReadOnlyStringProperty troubleProperty() {
        return trouble.getReadOnlyProperty();
    }

    private String id() {
        return car.scenarioProperty().get().listing().id();
    }

    /** Reads anew how the car shown is kept. */
    private void follow() {
        if (!car.isOpen()) {
            return;
        }
        if (rescue.get() != null && !rescue.get().appraisal().listing().id().equals(id())) {
            rescue.set(null);
        }
        if (!book.busyProperty().get()) {
            keeping.set(Keeping.of(id(), book.settings(), car.currency()));
        }
        refresh();
    }

    private void refresh() {
        CarPicture picture = car.pictureProperty().get();
        if (!car.isOpen() || !open || picture == null || picture.rough() || picture.seen().isEmpty()
                || !picture.scenario().listing().id().equals(id())) {
            return;
        }
        Request request = new Request(work, picture, keeping.get());
        if (!request.equals(last)) {
            last = request;
            busy.set(true);
            trouble.set("");
            reckoner.submit(request);
        }
    }

    private final class Arrival implements LatestWins.Listener<Request, Rescue> {

        @Override
        public void done(Request input, Rescue output, boolean latest) {
            if (car.isOpen() && input.picture().scenario().listing().id().equals(id())) {
                rescue.set(output);
            }
            busy.set(!latest);
        }

        @Override
        public void failed(Request input, RuntimeException why) {
            trouble.set(Texts.of("failed", why.getMessage()));
            busy.set(reckoner.busy());
        }
    }
}
