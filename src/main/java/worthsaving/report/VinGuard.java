package worthsaving.report;

import java.util.Optional;
import java.util.regex.Pattern;
import worthsaving.vehicle.Vehicle;
import worthsaving.vehicle.Vin;

/**
 * Keeps vehicle identification numbers out of what is handed on, unless asked for: also one that stands in an id
 * or a name. The last four characters stay, so that the user still knows the car.
 *
 * @param shown whether they are asked for
 */
public record VinGuard(boolean shown) {

    public static final VinGuard HIDDEN = new VinGuard(false);
    public static final VinGuard SHOWN = new VinGuard(true);

    /** 17 letters and digits without I, O and Q, both among them (ISO 3779). */
    private static final Pattern VIN = Pattern.compile(
            "(?<![A-Za-z0-9])(?=[A-Z0-9]*[0-9])(?=[A-Z0-9]*[A-Z])[A-HJ-NPR-Z0-9]{13}([A-HJ-NPR-Z0-9]{4})(?![A-Za-z0-9])",
            Pattern.CASE_INSENSITIVE);

    /** The text with every number hidden. */
    public String text(String text) {
        return shown ? text : VIN.matcher(text).replaceAll("VIN\u2026$1");
    }

    /** The car's number, if it may be shown and is known. */
    public Optional<String> of(Vehicle car) {
        return shown ? car.vin().get().map(Vin::toString) : Optional.empty();
    }
}
