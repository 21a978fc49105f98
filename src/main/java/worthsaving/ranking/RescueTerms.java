package worthsaving.ranking;

import java.util.Objects;
import java.util.Optional;
import worthsaving.quantity.Money;
import worthsaving.quantity.Probability;
import worthsaving.vehicle.Vehicle;

/**
 * What an owner wants of a car, and what may be known of the ways to have one.
 *
 * @param years how long it is to be kept, 1 to 15
 * @param milesPerYear above 0
 * @param quote a shop's price for the repair
 * @param quoteAgain chance that the quoted repair must be done again
 * @param asItStands what the car fetches unmended; guessed from its value when not known
 * @param unknownFaults share of the faults usual at its age that the buyer of a running car soon has mended on
 *     top of the yearly repairs, because nobody told of them
 * @param other another car to buy instead; one like this when not known
 */
public record RescueTerms(
        int years, double milesPerYear, Optional<Money> quote, Probability quoteAgain, Optional<Money> asItStands,
        Probability unknownFaults, Optional<Other> other) {

    public static final int MOST_YEARS = 15;
    public static final double MOST_MILES_PER_YEAR = 200_000;

    /** Chance that a dealer's repair with a rebuilt unit must be done again; a guess from memory. */
    public static final Probability USUAL_AGAIN = Probability.of(0.03);

    /** A guess from memory, 0.1 to 0.5 likely. */
    public static final Probability USUAL_UNKNOWN_FAULTS = Probability.of(0.25);

    /**
     * Another car.
     *
     * @param price its price before tax
     * @param runningPerYear what it costs more a year in insurance and fuel; negative when less
     */
    public record Other(Vehicle vehicle, Money price, Money runningPerYear) {}

    public RescueTerms {
        Objects.requireNonNull(quote, "quote");
        Objects.requireNonNull(quoteAgain, "quoteAgain");
        Objects.requireNonNull(asItStands, "asItStands");
        Objects.requireNonNull(unknownFaults, "unknownFaults");
        Objects.requireNonNull(other, "other");
        if (years < 1 || years > MOST_YEARS) {
            throw new IllegalArgumentException("the years must be 1 to 15, not " + years);
        }
        if (!(milesPerYear > 0 && milesPerYear <= MOST_MILES_PER_YEAR)) {
            throw new IllegalArgumentException("the miles a year must be above 0 and at most 200,000, not "
                    + milesPerYear);
        }
    }

    public static RescueTerms of(int years, double milesPerYear) {
        return new RescueTerms(years, milesPerYear, Optional.empty(), USUAL_AGAIN, Optional.empty(),
                USUAL_UNKNOWN_FAULTS, Optional.empty());
    }

    public RescueTerms withQuote(Money price) {
        return new RescueTerms(years, milesPerYear, Optional.of(price), quoteAgain, asItStands,
                unknownFaults, other);
    }

    public RescueTerms withAsItStands(Money price) {
        return new RescueTerms(years, milesPerYear, quote, quoteAgain, Optional.of(price), unknownFaults,
                other);
    }

    public RescueTerms withOther(Other car) {
        return new RescueTerms(years, milesPerYear, quote, quoteAgain, asItStands, unknownFaults,
                Optional.of(car));
    }

    public RescueTerms withUnknownFaults(double share) {
        return new RescueTerms(years, milesPerYear, quote, quoteAgain, asItStands, Probability.of(share), other);
    }
}
