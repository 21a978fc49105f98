package worthsaving.cli;

import java.util.Currency;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Money;
import worthsaving.ranking.RescueTerms;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Vehicle;

/** What an owner wants of a car, and what is known of the other ways to have one. */
final class RescueOptions {

    @Option(names = "--years", paramLabel = "N", defaultValue = "3",
            description = "How long the car is to be kept (default: ${DEFAULT-VALUE}).")
    private int years;

    @Option(names = "--miles-per-year", paramLabel = "MILES", defaultValue = "12000",
            description = "How far it is driven (default: ${DEFAULT-VALUE}).")
    private double milesPerYear;

    @Option(names = "--quote", paramLabel = "MONEY", description = "The shop's quote, instead of the table's.")
    private Double quote;

    @Option(names = "--as-it-stands", paramLabel = "MONEY", description = "What somebody offers for it unmended.")
    private Double asItStands;

    @Option(names = "--unknown-faults", paramLabel = "SHARE", defaultValue = "0.25",
            description = "Share of the faults usual at its age that a replacement soon has mended on top of the "
                    + "yearly repairs (default: ${DEFAULT-VALUE}, a guess).")
    private double unknownFaults;

    @ArgGroup(exclusive = false)
    private OtherCar other;

    /** Another car than one like the owner's. */
    private static final class OtherCar {
        @Option(names = "--other-price", required = true, paramLabel = "MONEY",
                description = "Price of another car to buy instead, before tax.")
        private double price;

        @Option(names = "--other-year", required = true, paramLabel = "YEAR", description = "Its model year.")
        private int year;

        @Option(names = "--other-miles", required = true, paramLabel = "MILES", description = "Its mileage.")
        private double miles;

        @Option(names = "--other-running", paramLabel = "MONEY",
                description = "What it costs more a year in insurance and fuel; negative when less (default: 0).")
        private double running;
    }

    /** @throws UserError when an option is out of range */
    RescueTerms terms(ReadLot lot, Listing listing, Currency currency) {
        try {
            RescueTerms terms = RescueTerms.of(years, milesPerYear).withUnknownFaults(unknownFaults);
            if (quote != null) {
                terms = terms.withQuote(money("--quote", quote, currency));
            } else if (lot.quote(listing).isPresent()) {
                terms = terms.withQuote(lot.quote(listing).get());
            }
            if (asItStands != null) {
                terms = terms.withAsItStands(money("--as-it-stands", asItStands, currency));
            }
            return other == null ? terms : terms.withOther(new RescueTerms.Other(
                    otherCar(listing.vehicle()), money("--other-price", other.price, currency),
                    new Money(other.running, currency)));
        } catch (IllegalArgumentException e) {
            throw new UserError(ExitCode.USAGE, e.getMessage());
        }
    }

    private Vehicle otherCar(Vehicle like) {
        return like.toBuilder().year(Fact.known(other.year)).odometer(Fact.known(Distance.ofMiles(other.miles)))
                .build();
    }

    private static Money money(String option, double amount, Currency currency) {
        if (!(amount >= 0)) {
            throw new IllegalArgumentException(option + " must be zero or more, not " + amount);
        }
        return new Money(amount, currency);
    }
}
