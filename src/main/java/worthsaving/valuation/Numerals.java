package worthsaving.valuation;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as text: the fewest digits that give the same number back, the same on every Java version. */
final class Numerals {

    private static final int FLOAT_DIGITS = 9;
    private static final int DOUBLE_DIGITS = 17;

    private Numerals() {}

    static BigDecimal shortest(float v) {
        BigDecimal exact = new BigDecimal(v);
        for (int digits = 1; digits < FLOAT_DIGITS; digits++) {
            BigDecimal rounded = exact.round(new MathContext(digits));
            if (rounded.floatValue() == v) {
                return rounded.stripTrailingZeros();
            }
        }
        return exact.round(new MathContext(FLOAT_DIGITS));
    }

    static BigDecimal shortest(double v) {
        BigDecimal exact = new BigDecimal(v);
        for (int digits = 1; digits < DOUBLE_DIGITS; digits++) {
            BigDecimal rounded = exact.round(new MathContext(digits));
            if (rounded.doubleValue() == v) {
                return rounded.stripTrailingZeros();
            }
        }
        return exact.round(new MathContext(DOUBLE_DIGITS));
    }

    /** A set of bits, 64 to a word, as hexadecimal words parted by points. */
    static String hex(long[] set) {
        StringBuilder text = new StringBuilder();
        for (long word : set) {
            text.append(text.length() == 0 ? "" : ".").append(Long.toHexString(word));
        }
        return text.toString();
    }

    static long[] set(String hex) {
        String[] words = hex.split("\\.");
        long[] set = new long[words.length];
        for (int i = 0; i < set.length; i++) {
            set[i] = Long.parseUnsignedLong(words[i], 16);
        }
        return set;
    }
}
