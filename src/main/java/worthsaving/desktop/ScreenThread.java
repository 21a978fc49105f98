package worthsaving.desktop;

import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;

/**
 * The one thread on which models and controls are touched.
 *
 * @param executor runs on that thread, later
 * @param here whether the caller is on it
 */
public record ScreenThread(Executor executor, BooleanSupplier here) {

    /** The thread of JavaFX. */
    public static ScreenThread ofJavaFx() {
        return new ScreenThread(Platform::runLater, Platform::isFxApplicationThread);
    }

    /** @throws IllegalStateException when called from any other thread, which is a programming error */
    public void require() {
        if (!here.getAsBoolean()) {
            throw new IllegalStateException(
                    "models and controls belong to the screen thread, not to " + Thread.currentThread().getName());
        }
    }
}
