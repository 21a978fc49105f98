package worthsaving.vehicle;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/** One field of a car, with the state of our knowledge: stated, assumed for a reason, or unknown. */
public sealed interface Fact<T> {

    /** Stated by the advert, the seller or the user. */
    record Known<T>(T value) implements Fact<T> {
        public Known {
            Objects.requireNonNull(value, "value");
        }
    }

    /** Filled in by us; {@code why} is shown beside it. */
    record Assumed<T>(T value, String why) implements Fact<T> {
        public Assumed {
            Objects.requireNonNull(value, "value");
            Objects.requireNonNull(why, "why");
        }
    }

    /** Nothing to go by. */
    record Unknown<T>() implements Fact<T> {}

    static <T> Fact<T> known(T value) {
        return new Known<>(value);
    }

    static <T> Fact<T> assumed(T value, String why) {
        return new Assumed<>(value, why);
    }

    static <T> Fact<T> unknown() {
        return new Unknown<>();
    }

    /** Known when a value is present, unknown when it is null. */
    static <T> Fact<T> ofNullable(T value) {
        return value == null ? unknown() : known(value);
    }

    default Optional<T> get() {
        if (this instanceof Known<T> known) {
            return Optional.of(known.value());
        }
        if (this instanceof Assumed<T> assumed) {
            return Optional.of(assumed.value());
        }
        return Optional.empty();
    }

    default T orElse(T other) {
        return get().orElse(other);
    }

    default boolean isKnown() {
        return this instanceof Known<T>;
    }

    default <R> Fact<R> map(Function<? super T, ? extends R> f) {
        if (this instanceof Known<T> known) {
            return known(f.apply(known.value()));
        }
        if (this instanceof Assumed<T> assumed) {
            return assumed(f.apply(assumed.value()), assumed.why());
        }
        return unknown();
    }
}
