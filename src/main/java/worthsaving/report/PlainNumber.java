package worthsaving.report;

import java.math.BigDecimal;

/** A number that prints without an exponent and without zeros after the point. */
final class PlainNumber extends Number {

    private static final long serialVersionUID = 1L;

    private final BigDecimal value;

    private PlainNumber(BigDecimal value) {
        this.value = value;
    }

    /** @throws IllegalArgumentException for infinity and what is no number */
    static Number of(Number number) {
        if (!(number instanceof Double d)) {
            return number;
        }
        if (!Double.isFinite(d)) {
            throw new IllegalArgumentException("a cell cannot hold the number " + d);
        }
        return new PlainNumber(BigDecimal.valueOf(d));
    }

    @Override
    public int intValue() {
        return value.intValue();
    }

    @Override
    public long longValue() {
        return value.longValue();
    }

    @Override
    public float floatValue() {
        return value.floatValue();
    }

    @Override
    public double doubleValue() {
        return value.doubleValue();
    }

    @Override
    public String toString() {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
}
