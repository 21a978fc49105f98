package worthsaving.vehicle;

import java.util.Locale;
import java.util.OptionalInt;

/**
 * A vehicle identification number: 17 characters without I, O and Q (ISO 3779).
 *
 * <p>The check digit (position 9) is the weighted sum of the transliterated characters modulo 11,
 * with X for 10. Source: 49 CFR 565.15, tables III to V. It is compulsory in North America only,
 * so a wrong one elsewhere is a warning and no proof of an error.
 */
public record Vin(String text) {

    private static final int LENGTH = 17;
    private static final int CHECK_POSITION = 8;
    private static final int[] WEIGHTS = {8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2};
    private static final String YEAR_CODES = "ABCDEFGHJKLMNPRSTVWXY123456789";
    private static final int FIRST_CODED_YEAR = 1980;

    public Vin {
        text = text.strip().toUpperCase(Locale.ROOT);
        if (text.length() != LENGTH) {
            throw new IllegalArgumentException(
                    "a VIN has 17 characters, this one has " + text.length() + "; check it against the car");
        }
        for (int i = 0; i < LENGTH; i++) {
            if (valueOf(text.charAt(i)) < 0) {
                throw new IllegalArgumentException("character " + (i + 1) + " of the VIN, '" + text.charAt(i)
                        + "', is not allowed: only digits and letters other than I, O and Q");
            }
        }
    }

    /** Part of the world that the maker's identifier belongs to. */
    public enum Region { AFRICA, ASIA, EUROPE, NORTH_AMERICA, OCEANIA, SOUTH_AMERICA }

    /** By the first character, as ISO 3780 allots them: A to H, J to R, S to Z, 1 to 5, 6 and 7, 8, 9 and 0. */
    public Region region() {
        char c = text.charAt(0);
        if (c >= 'A') {
            return c <= 'H' ? Region.AFRICA : c <= 'R' ? Region.ASIA : Region.EUROPE;
        }
        return northAmerican() ? Region.NORTH_AMERICA : c == '6' || c == '7' ? Region.OCEANIA : Region.SOUTH_AMERICA;
    }

    /** The weighted sum that the check digit is taken from. */
    public int weightedSum() {
        int sum = 0;
        for (int i = 0; i < LENGTH; i++) {
            sum += WEIGHTS[i] * valueOf(text.charAt(i));
        }
        return sum;
    }

    public char expectedCheckDigit() {
        int remainder = weightedSum() % 11;
        return remainder == 10 ? 'X' : (char) ('0' + remainder);
    }

    public boolean checkDigitHolds() {
        return text.charAt(CHECK_POSITION) == expectedCheckDigit();
    }

    /** True for a first character 1 to 5, where the check digit is compulsory. */
    public boolean northAmerican() {
        char c = text.charAt(0);
        return c >= '1' && c <= '5';
    }

    /**
     * Model year by position 10 and, for cars and light trucks, position 7: a digit there means 1980 to
     * 2009, a letter 2010 to 2039 (49 CFR 565.15, table VII). Empty for a character that codes no year.
     */
    public OptionalInt modelYear() {
        int code = YEAR_CODES.indexOf(text.charAt(9));
        if (code < 0) {
            return OptionalInt.empty();
        }
        boolean later = Character.isLetter(text.charAt(6));
        return OptionalInt.of(FIRST_CODED_YEAR + code + (later ? YEAR_CODES.length() : 0));
    }

    @Override
    public String toString() {
        return text;
    }

    /** Transliteration of 49 CFR 565.15 table III, or -1 for a character that a VIN cannot hold. */
    private static int valueOf(char c) {
        if (c >= '0' && c <= '9') {
            return c - '0';
        }
        if (c >= 'A' && c <= 'H') {
            return c - 'A' + 1;
        }
        if (c >= 'J' && c <= 'R' && c != 'O' && c != 'Q') {
            return c - 'J' + 1;
        }
        return c >= 'S' && c <= 'Z' ? c - 'S' + 2 : -1;
    }
}
