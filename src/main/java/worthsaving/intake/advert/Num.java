package worthsaving.intake.advert;

/**
 * A number in the text.
 *
 * @param from first token, @param to last token
 * @param suffix letters written on to it, lower case ("k", "mi"), or empty
 * @param masked true for hidden digits, read as noughts
 * @param exact true for grouped digits or a multiple too long for a year, so no ordinary small number
 */
record Num(int from, int to, double value, String suffix, boolean masked, boolean grouped, boolean decimal, boolean spelled) {

    boolean yearLike() {
        return !grouped && !decimal && suffix.isEmpty() && value >= 1950 && value <= 2035;
    }
}
