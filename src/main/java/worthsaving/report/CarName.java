package worthsaving.report;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import worthsaving.vehicle.Vehicle;

/** How a car is called where people read it. */
public final class CarName {

    private CarName() {}

    /** Such as {@code "2012 Volkswagen Jetta GLI 2.0T"}; empty when nothing of it is known. */
    public static Optional<String> of(Vehicle car) {
        String model = car.model().orElse("").toLowerCase(Locale.ROOT);
        String name = Stream.of(
                        car.year().get().map(Object::toString),
                        car.make().get().map(CarName::capitals),
                        car.model().get().map(CarName::capitals),
                        car.trim().get().filter(trim -> !model.contains(trim.toLowerCase(Locale.ROOT))))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(" "));
        return Optional.of(name).filter(n -> !n.isBlank());
    }

    /** Price data spell in lower case; short words, and words with a digit, are taken for abbreviations. */
    public static String capitals(String words) {
        return Arrays.stream(words.strip().split(" +"))
                .map(w -> w.matches("bmw|gmc|.{0,2}|.{1,3}\\d.*|.*\\d.{0,2}|.{1,2}-.")
                        ? w.toUpperCase(Locale.ROOT)
                        : w.substring(0, 1).toUpperCase(Locale.ROOT) + w.substring(1))
                .collect(Collectors.joining(" "));
    }
}
