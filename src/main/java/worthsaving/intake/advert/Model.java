package worthsaving.intake.advert;

import java.util.Optional;

/**
 * A model of the vocabulary.
 *
 * @param usual what such a car usually has (CVT, DUAL_CLUTCH, DIESEL, HYBRID, ELECTRIC), or empty
 * @param usualFrom first model year for that, 0 for all
 * @param pricedAs make and model under which price data hold it, in lower case, separated by a slash
 * @param weak believed only beside its make or, if {@code yearWillDo}, beside the year
 */
record Model(String make, String name, String usual, int usualFrom, Optional<String> pricedAs, boolean weak,
        boolean yearWillDo) {

    boolean usually(String what, Optional<Integer> year) {
        return usual.equals(what) && (usualFrom == 0 || year.isPresent() && year.get() >= usualFrom);
    }
}
