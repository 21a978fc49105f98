package worthsaving.desktop.lot;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import worthsaving.desktop.LatestWins;
import worthsaving.desktop.ScreenThread;
import worthsaving.desktop.Texts;
import worthsaving.ranking.Appraisal;
import worthsaving.ranking.Judge;
import worthsaving.ranking.Judged;
import worthsaving.vehicle.Listing;

/** Judges a few cars anew, whole, to be set side by side; holds no control. For the screen thread only. */
public final class CompareModel {

    private final LatestWins<List<Listing>, List<Appraisal>> judge;
    private final ReadOnlyObjectWrapper<List<Appraisal>> cars = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");

    CompareModel(Supplier<Judge> judges, Executor background, ScreenThread screen) {
        this.judge = new LatestWins<>((listings, cancelled, progress) -> judged(judges.get(), listings, cancelled, progress),
                (running, newer) -> false, new Arrival(), background, screen);
    }

    /** Says in words why not, when they are too few or too many. */
    public void compare(List<Listing> listings) {
        trouble.set("");
        if (listings.size() < Comparison.FEWEST || listings.size() > Comparison.MOST) {
            trouble.set(Texts.of("compare.how_many", Integer.toString(listings.size())));
            return;
        }
        busy.set(true);
        judge.submit(List.copyOf(listings));
    }

    public void close() {
        judge.cancel();
        busy.set(false);
        cars.set(List.of());
    }

    /** Empty while nothing is compared. */
    public ReadOnlyObjectProperty<List<Appraisal>> carsProperty() {
        return cars.getReadOnlyProperty();
    }

    public ReadOnlyBooleanProperty busyProperty() {
        return busy.getReadOnlyProperty();
    }

    /** What went wrong last, in words; blank when nothing did. */
    public ReadOnlyStringProperty troubleProperty() {
        return trouble.getReadOnlyProperty();
    }

    private static List<Appraisal> judged(
            Judge judge, List<Listing> listings, BooleanSupplier cancelled, IntConsumer progress) {
        List<Appraisal> all = new ArrayList<>();
        for (Listing listing : listings) {
            if (cancelled.getAsBoolean()) {
                throw new CancellationException("no longer compared");
            }
            if (judge.judge(listing) instanceof Judged.Done done) {
                all.add(done.appraisal());
            }
            progress.accept(all.size());
        }
        return List.copyOf(all);
    }

    private final class Arrival implements LatestWins.Listener<List<Listing>, List<Appraisal>> {

        @Override
        public void done(List<Listing> input, List<Appraisal> output, boolean latest) {
            cars.set(output);
            busy.set(!latest);
        }

        @Override
        public void failed(List<Listing> input, RuntimeException why) {
            trouble.set(Texts.of("failed", why.getMessage()));
            busy.set(false);
        }
    }
}
