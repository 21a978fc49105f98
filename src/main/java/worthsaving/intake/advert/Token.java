package worthsaving.intake.advert;

/**
 * A run of letters and digits, or a currency sign.
 *
 * @param text lower case, without apostrophes and accents left as they are
 * @param gap the characters between the token before and this one
 * @param clause number of the clause; full stops, line ends, spaced dashes and brackets part clauses
 * @param segment number of the stretch between commas or clause ends
 */
record Token(Kind kind, String text, int start, int end, String gap, int clause, int segment) {

    enum Kind { WORD, NUMBER, MIXED, SIGN }

    boolean is(String word) {
        return text.equals(word);
    }

    boolean glued() {
        return gap.isEmpty();
    }
}
