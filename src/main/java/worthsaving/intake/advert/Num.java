package worthsaving.intake.advert;

/**
 * A number in the text.
 *
 * @param from first token
 * @param to last token
 * @param suffix letters written on to it, lower case ("k", "mi"), or empty
 * @param masked true for hidden digits, read as noughts
 * @param grouped written with separators of thousands
 * @param decimal written with a fraction
 * @param spelled written in words ("four grand")
 */
record Num(int from, int to, double value, String suffix, boolean masked, boolean grouped, boolean decimal,
        boolean spelled) {

    boolean yearLike() {
        return !grouped && !decimal && suffix.isEmpty() && value >= 1950 && value <= 2035;
    }
}
