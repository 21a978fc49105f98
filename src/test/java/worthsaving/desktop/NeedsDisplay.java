package worthsaving.desktop;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.condition.EnabledIfEnvironmentVariable;

/** Drives a real window; skipped where there is no screen. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Tag("display")
@EnabledIfEnvironmentVariable(named = "DISPLAY", matches = ".+",
        disabledReason = "no DISPLAY; run the tests under: xvfb-run -a")
@interface NeedsDisplay {}
