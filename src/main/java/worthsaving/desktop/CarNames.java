package worthsaving.desktop;

import worthsaving.report.CarName;
import worthsaving.vehicle.Vehicle;

/** How a car is called on screen. */
public final class CarNames {

    private CarNames() {}

    /** Such as {@code "2012 Volkswagen Jetta GLI 2.0T"}. */
    public static String title(Vehicle car) {
        return CarName.of(car).orElse(Texts.of("car.unknown"));
    }

    /** See {@link CarName#capitals}. */
    public static String capitals(String words) {
        return CarName.capitals(words);
    }
}
