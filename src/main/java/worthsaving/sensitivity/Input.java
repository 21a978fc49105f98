package worthsaving.sensitivity;

import java.util.Objects;

/** A figure that may be off: its base value and how low and how high it may be. */
public record Input(String name, double low, double base, double high) {

    public Input {
        Objects.requireNonNull(name, "name");
        if (!(Double.isFinite(low) && Double.isFinite(high) && low <= base && base <= high)) {
            throw new IllegalArgumentException(
                    name + " needs low <= base <= high, not " + low + ", " + base + ", " + high);
        }
    }
}
