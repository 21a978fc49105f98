package worthsaving.market;

import java.util.Locale;

/** What a column of a price table may hold. */
public enum Field {
    PRICE, MAKE, MODEL, YEAR, ODOMETER, CONDITION, CYLINDERS, ENGINE_LITRES, POWER, FUEL, GEARBOX, BODY, DRIVE,
    TITLE, UNREPAIRED_DAMAGE, DATE;

    /** Name in mapping files, such as {@code engine-litres}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The field of a mapping key, or null. */
    static Field ofKey(String key) {
        for (Field field : values()) {
            if (field.key().equals(key)) {
                return field;
            }
        }
        return null;
    }

    boolean isNumber() {
        return switch (this) {
            case PRICE, YEAR, ODOMETER, CYLINDERS, ENGINE_LITRES, POWER, UNREPAIRED_DAMAGE -> true;
            default -> false;
        };
    }
}
