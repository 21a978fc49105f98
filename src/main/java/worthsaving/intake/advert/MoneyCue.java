package worthsaving.intake.advert;

/**
 * Words that tell what a figure near them is.
 *
 * @param reach how many words away at most
 * @param weight how strongly they speak
 */
record MoneyCue(Role role, Side side, int reach, double weight) {

    enum Role { ASK, WAS, QUOTE, VALUE, SPENT, OTHER, NEGOTIABLE, FIRM }

    enum Side { BEFORE, AFTER, ANY }
}
