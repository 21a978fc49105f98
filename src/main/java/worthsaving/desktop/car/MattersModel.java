package worthsaving.desktop.car;

import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import worthsaving.desktop.LatestWins;
import worthsaving.desktop.ScreenThread;
import worthsaving.desktop.Texts;

/** What the deal hangs on, reckoned while its page is open; holds no control. For the screen thread only. */
public final class MattersModel {

    private final CarModel car;
    private final LatestWins<Matters.Request, Matters> reckoner;
    private final ReadOnlyObjectWrapper<Matters> matters = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
    private final ReadOnlyDoubleWrapper done = new ReadOnlyDoubleWrapper();
    private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");
    private Matters.Request last;
    private String across = "";
    private String up = "";
    private boolean open;

    MattersModel(CarModel car, Executor background, ScreenThread screen) {
        this.car = car;
        this.reckoner = new LatestWins<>(Matters::of, (running, newer) -> false, new Arrival(), background, screen);
        car.pictureProperty().addListener((o, was, is) -> refresh());
    }

    /** Whether the page is looked at; nothing is reckoned while it is not. */
    public void open(boolean isOpen) {
        open = isOpen;
        refresh();
    }

    /** @param acrossKey and {@code upKey} as {@link Matters#key} names the figures */
    public void choose(String acrossKey, String upKey) {
        across = acrossKey;
        up = upKey;
        refresh();
    }

    /** Ends the reckoning; what was shown stays. */
    public void cancel() {
        reckoner.cancel();
        last = null;
        busy.set(false);
    }

    private void refresh() {
        CarPicture picture = car.pictureProperty().get();
        if (!open || picture == null || picture.rough() || picture.seen().isEmpty()) {
            return;
        }
        Matters.Request request = new Matters.Request(picture, across, up);
        if (!request.equals(last)) {
            last = request;
            busy.set(true);
            done.set(0);
            trouble.set("");
            reckoner.submit(request);
        }
    }

    /** The latest known; null before the first. */
    public ReadOnlyObjectProperty<Matters> mattersProperty() {
        return matters.getReadOnlyProperty();
    }

    public ReadOnlyBooleanProperty busyProperty() {
        return busy.getReadOnlyProperty();
    }

    /** Share of the map that is done, from 0 to 1. */
    public ReadOnlyDoubleProperty doneProperty() {
        return done.getReadOnlyProperty();
    }

    /** What went wrong last, in words; blank when nothing did. */
    public ReadOnlyStringProperty troubleProperty() {
        return trouble.getReadOnlyProperty();
    }

    private final class Arrival implements LatestWins.Listener<Matters.Request, Matters> {

        @Override
        public void done(Matters.Request input, Matters output, boolean latest) {
            matters.set(output);
            busy.set(!latest);
        }

        @Override
        public void failed(Matters.Request input, RuntimeException why) {
            trouble.set(Texts.of("failed", why.getMessage()));
            busy.set(reckoner.busy());
        }

        @Override
        public void progress(Matters.Request input, int count) {
            done.set(count / (double) (Matters.STEPS * Matters.STEPS));
        }
    }
}
