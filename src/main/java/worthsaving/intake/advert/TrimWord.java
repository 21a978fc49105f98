package worthsaving.intake.advert;

import java.util.Set;

/**
 * A word of the trim.
 *
 * @param makes makes it is used with, empty for any
 * @param near believed only beside the name of the car
 */
record TrimWord(Kind kind, String shown, Set<String> makes, boolean near) {

    enum Kind { LEVEL, CAB, DRIVE, BADGE }

    boolean fits(String make) {
        return makes.isEmpty() || makes.contains(make);
    }
}
