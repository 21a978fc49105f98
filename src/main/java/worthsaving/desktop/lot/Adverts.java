package worthsaving.desktop.lot;

import java.util.ArrayList;
import java.util.List;
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
import worthsaving.intake.advert.AdvertPile;
import worthsaving.intake.advert.AdvertReading;
import worthsaving.vehicle.Listing;

/** Reads pasted adverts, one or several at once, in the background. To be used on the screen thread only. */
public final class Adverts {

    private final Predicate<String> taken;
    private final Consumer<Listing> onListing;
    private final LatestWins<String, List<AdvertReading>> reader;
    private final ReadOnlyStringWrapper notes = new ReadOnlyStringWrapper("");
    private Consumer<Listing> onOpen = listing -> {};
    private volatile Ground ground;
    private int count;

    /**
     * @param taken whether a listing of the lot has this id already
     * @param onListing takes the listing into the lot
     */
    Adverts(Ground ground, Predicate<String> taken, Consumer<Listing> onListing, Executor background,
            ScreenThread screen) {
        this.ground = ground;
        this.taken = taken;
        this.onListing = onListing;
        this.reader = new LatestWins<>(
                (text, cancelled, progress) -> read(this.ground, text),
                (running, newer) -> true, new Arrival(), background, screen);
    }

    /** Reads as is usual on other ground from now on. */
    void use(Ground other) {
        ground = other;
    }

    private static List<AdvertReading> read(Ground on, String text) {
        return new AdvertPile(on.adverts()).split(text, on.today()).stream()
                .map(advert -> on.adverts().read(advert, on.today())).toList();
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

    private final class Arrival implements LatestWins.Listener<String, List<AdvertReading>> {

        @Override
        public void done(String text, List<AdvertReading> readings, boolean latest) {
            List<String> told = new ArrayList<>();
            Listing last = null;
            for (AdvertReading reading : readings) {
                last = reading.toListing(freshId(), Texts.of("advert.origin"));
                if (!reading.notes().isEmpty()) {
                    told.add(Texts.of("advert.notes", CarNames.title(last.vehicle()),
                            String.join("; ", reading.notes())));
                }
                onListing.accept(last);
            }
            notes.set(String.join("\n", told));
            if (last != null) {
                onOpen.accept(last);
            }
        }

        private String freshId() {
            String id;
            do {
                count++;
                id = Texts.of("advert.id", Integer.toString(count));
            } while (taken.test(id));
            return id;
        }

        @Override
        public void failed(String text, RuntimeException why) {
            notes.set(Texts.of("failed", why.getMessage()));
        }
    }
}
