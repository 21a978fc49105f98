package worthsaving.quantity;

/** A probability, from 0 to 1 inclusive. */
public record Probability(double value) implements Comparable<Probability> {

    public static final Probability NEVER = new Probability(0);
    public static final Probability CERTAIN = new Probability(1);

    public Probability {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException("a probability must lie in 0 to 1, not " + value);
        }
    }

    public static Probability of(double value) {
        return new Probability(value);
    }

    public Probability complement() {
        return new Probability(1 - value);
    }

    @Override
    public int compareTo(Probability other) {
        return Double.compare(value, other.value);
    }
}
