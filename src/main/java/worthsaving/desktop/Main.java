package worthsaving.desktop;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.application.Application;

/** Starts the window; does not extend Application, so that the jar runs without a module path. */
public final class Main {

    /** What the program ends with when there is no screen to open a window on. */
    public static final int NO_DISPLAY = 5;

    private Main() {}

    public static void main(String[] arguments) {
        Optional<String> obstacle = obstacle(System.getProperty("os.name", ""), System.getenv());
        if (obstacle.isPresent()) {
            System.err.println(obstacle.get());
            System.exit(NO_DISPLAY);
        }
        try {
            Application.launch(App.class, arguments);
        } catch (RuntimeException cannotOpen) {
            Throwable cause = cannotOpen;
            while (cause.getCause() != null) {
                cause = cause.getCause();
            }
            System.err.println(Texts.of("main.cannot_open", cause, command()));
            System.exit(NO_DISPLAY);
        }
    }

    /** Why no window can be opened; empty when one can. */
    static Optional<String> obstacle(String system, Map<String, String> environment) {
        boolean needsDisplay = system.toLowerCase(Locale.ROOT).matches(".*(linux|bsd|sunos|aix).*");
        if (!needsDisplay || !environment.getOrDefault("DISPLAY", "").isBlank()) {
            return Optional.empty();
        }
        boolean wayland = !environment.getOrDefault("WAYLAND_DISPLAY", "").isBlank();
        return Optional.of(Texts.of(wayland ? "main.only_wayland" : "main.no_display", command()));
    }

    /** What the command line is started by: the script says its own name, a packaged image has the plain one. */
    private static String command() {
        return System.getProperty("worthsaving.command", "worthsaving");
    }
}
