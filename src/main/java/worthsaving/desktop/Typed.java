package worthsaving.desktop;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What a user typed into a field, understood or not.
 *
 * @param value empty when it is blank or not understood
 * @param fault what is wrong and what mends it; blank when nothing is
 */
public record Typed<T>(Optional<T> value, String fault) {

    public boolean good() {
        return fault.isEmpty();
    }

    /**
     * A sum, such as {@code 1,800} or {@code 1800.50}.
     *
     * @param needed whether it may not be blank
     */
    public static Typed<Double> amount(String text, boolean needed) {
        String plain = text.replaceAll("[,\\s\u00a0$]", "");
        if (plain.isEmpty()) {
            return blank(needed);
        }
        return plain.matches("\\d{1,9}(\\.\\d{1,2})?") ? good(Double.parseDouble(plain))
                : bad(Texts.of("typed.amount", text.strip()));
    }

    /** A day, such as {@code 2025-11-20}, not after another. */
    public static Typed<LocalDate> day(String text, boolean needed, LocalDate last) {
        String plain = text.strip();
        if (plain.isEmpty()) {
            return blank(needed);
        }
        try {
            LocalDate day = LocalDate.parse(plain);
            return day.isAfter(last) ? bad(Texts.of("typed.day.later", plain)) : good(day);
        } catch (DateTimeException e) {
            return bad(Texts.of("typed.day", plain));
        }
    }

    /** Understood, but not right. */
    public Typed<T> but(String fault) {
        return new Typed<>(Optional.empty(), fault);
    }

    private static <T> Typed<T> good(T value) {
        return new Typed<>(Optional.of(value), "");
    }

    private static <T> Typed<T> bad(String fault) {
        return new Typed<>(Optional.empty(), fault);
    }

    private static <T> Typed<T> blank(boolean needed) {
        return new Typed<>(Optional.empty(), needed ? Texts.of("typed.needed") : "");
    }
}
