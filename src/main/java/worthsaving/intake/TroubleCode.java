package worthsaving.intake;

import java.util.Locale;
import java.util.Optional;

/**
 * A diagnostic trouble code in the form of SAE J2012 / ISO 15031-6: a system letter, a digit 0 to 3 and
 * three hexadecimal digits. In two bytes the top two bits are the system (P, C, B, U) and the next two
 * the digit (ISO 15031-5).
 *
 * @param text five characters in upper case, such as {@code P0016}
 */
public record TroubleCode(String text) {

    private static final String SYSTEMS = "PCBU";
    private static final String HEXADECIMAL = "0123456789ABCDEF";

    /** Part of the car that the code belongs to. */
    public enum System { POWERTRAIN, CHASSIS, BODY, NETWORK }

    /** Who says what the code means. */
    public enum DefinedBy { STANDARD, MAKER, RESERVED }

    public TroubleCode {
        if (!hasShape(text)) {
            throw new IllegalArgumentException(
                    "a trouble code is P, C, B or U, a digit 0 to 3 and three hexadecimal digits, not '" + text + "'");
        }
    }

    /** Reads a code in either case, spaces around it allowed; empty when it has another form. */
    public static Optional<TroubleCode> parse(String text) {
        String code = text.strip().toUpperCase(Locale.ROOT);
        return hasShape(code) ? Optional.of(new TroubleCode(code)) : Optional.empty();
    }

    /** No pattern: tables hold codes by the million. */
    private static boolean hasShape(String text) {
        boolean fits = text.length() == 5 && SYSTEMS.indexOf(text.charAt(0)) >= 0 && "0123".indexOf(text.charAt(1)) >= 0;
        for (int i = 2; i < 5 && fits; i++) {
            fits = HEXADECIMAL.indexOf(text.charAt(i)) >= 0;
        }
        return fits;
    }

    /** @param bytes the code as the car sends it, 0 to 0xffff */
    public static TroubleCode ofBytes(int bytes) {
        if (bytes < 0 || bytes > 0xffff) {
            throw new IllegalArgumentException("a trouble code is two bytes, 0 to 65535, not " + bytes);
        }
        return new TroubleCode(String.format(
                Locale.ROOT, "%c%d%03X", SYSTEMS.charAt(bytes >> 14), bytes >> 12 & 3, bytes & 0xfff));
    }

    public int bytes() {
        return SYSTEMS.indexOf(text.charAt(0)) << 14 | Integer.parseInt(text.substring(1), 16);
    }

    public System system() {
        return System.values()[SYSTEMS.indexOf(text.charAt(0))];
    }

    /**
     * P0, P2 and P3400 to P3FFF are the standard's, P1 and P3000 to P33FF the maker's; of the others
     * x0 is the standard's, x1 and x2 the maker's, x3 reserved. Source: SAE J2012 / ISO 15031-6 by
     * secondary summaries; the B, C and U part is from memory.
     */
    public DefinedBy definedBy() {
        char second = text.charAt(1);
        if (system() == System.POWERTRAIN) {
            boolean makers = second == '1' || second == '3' && text.charAt(2) < '4';
            return makers ? DefinedBy.MAKER : DefinedBy.STANDARD;
        }
        return switch (second) {
            case '0' -> DefinedBy.STANDARD;
            case '3' -> DefinedBy.RESERVED;
            default -> DefinedBy.MAKER;
        };
    }

    @Override
    public String toString() {
        return text;
    }
}
