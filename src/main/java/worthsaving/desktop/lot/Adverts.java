package worthsaving.desktop.lot;

import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import worthsaving.desktop.CarNames;
import worthsaving.desktop.Ground;
import worthsaving.desktop.LatestWins;
import worthsaving.desktop.ScreenThread;
import worthsaving.desktop.Texts;
import worthsaving.intake.advert.AdvertReading;
import worthsaving.vehicle.Listing;

/** Reads pasted adverts in the background. To be used on the screen thread only. */
public final class Adverts {

    private final Predicate<String> taken;
    private final Consumer<Listing> onListing;
    private final LatestWins<String, AdvertReading> reader;
    private final ReadOnlyStringWrapper notes = new ReadOnlyStringWrapper("");
    private Consumer<Listing> onOpen = listing -> {};
    private int count;

    /**
     * @param taken whether a listing of the lot has this id already
     * @param onListing takes the listing into the lot
     */
    Adverts(Ground ground, Predicate<String> taken, Consumer<Listing> onListing, Executor background,
            ScreenThread screen) {
        this.taken = taken;
        this.onListing = onListing;
        this.reader = new LatestWins<>(
                (text, cancelled, progress) -> ground.adverts().read(text, ground.today()),
                (running, newer) -> true, new Arrival(), background, screen);
    }

    public void read(String text) {
        notes.set("");
        reader.submit(text);
    }

    /** Told of each listing read, once the lot has it. */
    public void onOpen(Consumer<Listing> other) {
        onOpen = other;
    }

    /** What could not be read of the last advert, in words. */
    public ReadOnlyStringProperty notesProperty() {
        return notes.getReadOnlyProperty();
    }

    private final class Arrival implements LatestWins.Listener<String, AdvertReading> {

        @Override
        public void done(String text, AdvertReading reading, boolean latest) {
            String id;
            do {
                count++;
                id = Texts.of("advert.id", Integer.toString(count));
            } while (taken.test(id));
            Listing listing = reading.toListing(id, Texts.of("advert.origin"));
            notes.set(reading.notes().isEmpty() ? "" : Texts.of("advert.notes",
                    CarNames.title(listing.vehicle()), String.join("; ", reading.notes())));
            onListing.accept(listing);
            onOpen.accept(listing);
        }

        @Override
        public void failed(String text, RuntimeException why) {
            notes.set(Texts.of("failed", why.getMessage()));
        }
    }
}
