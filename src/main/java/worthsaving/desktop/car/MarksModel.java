package worthsaving.desktop.car;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import worthsaving.desktop.LatestWins;
import worthsaving.desktop.ScreenThread;
import worthsaving.sensitivity.Turning;

/** The marks of the sliders, found in the background whenever a car was judged; for the screen thread only. */
final class MarksModel {

    private final CarModel car;
    private volatile Marks marksOf;
    private final LatestWins<Marks.Request, Map<Dial, Turning>> finder;
    private final ReadOnlyObjectWrapper<Map<Dial, Turning>> marks = new ReadOnlyObjectWrapper<>(Map.of());

    private final ReadOnlyBooleanWrapper outdated = new ReadOnlyBooleanWrapper();

    MarksModel(CarModel car, Marks finder, Executor background, ScreenThread screen) {
        this.car = car;
        this.marksOf = finder;
        this.finder = new LatestWins<>((request, cancelled, progress) -> marksOf.of(request, cancelled, progress),
                (running, newer) -> false, new Arrival(), background, screen);
    }

    /** Finds them on other ground from now on; what is being found is of no use any more. */
    void use(Marks other) {
        marksOf = other;
        forget();
    }

    /** @param picture an exact one of a car that could be judged */
    void reckon(CarPicture picture) {
        Map<Dial, Double> stand = new LinkedHashMap<>();
        car.dials().forEach(dial -> stand.put(dial, car.given(dial)));
        finder.submit(new Marks.Request(picture, stand));
    }

    /** While a lever is dragged the marks stay as they were. */
    void stop() {
        finder.cancel();
    }

    /** What is shown belongs to figures that have changed since; new ones come once the car is judged anew. */
    void outdate() {
        outdated.set(true);
    }

    /** Those of another car are of no use. */
    void forget() {
        finder.cancel();
        marks.set(Map.of());
    }

    /** Empty while they are not known. */
    ReadOnlyObjectProperty<Map<Dial, Turning>> marksProperty() {
        return marks.getReadOnlyProperty();
    }

    ReadOnlyBooleanProperty outdatedProperty() {
        return outdated.getReadOnlyProperty();
    }

    private final class Arrival implements LatestWins.Listener<Marks.Request, Map<Dial, Turning>> {

        @Override
        public void done(Marks.Request input, Map<Dial, Turning> output, boolean latest) {
            if (input.picture().scenario().equals(car.scenarioProperty().get())) {
                marks.set(output);
                outdated.set(false);
            }
        }

        /** A figure without its mark is still right. */
        @Override
        public void failed(Marks.Request input, RuntimeException why) {
            marks.set(Map.of());
        }
    }
}
