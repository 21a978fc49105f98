package worthsaving.intake.advert;

/**
 * A phrase found in an advert.
 *
 * @param framed built from a part's name and a frame, so it yields to a phrase written out
 * @param places numbers of the words it matched, rising; words in between belong to nobody
 */
record Hit(String kind, String means, boolean framed, int[] places) {

    int first() {
        return places[0];
    }

    int last() {
        return places[places.length - 1];
    }

    boolean shares(boolean[] taken) {
        for (int place : places) {
            if (taken[place]) {
                return true;
            }
        }
        return false;
    }

    void take(boolean[] taken) {
        for (int place : places) {
            taken[place] = true;
        }
    }
}
