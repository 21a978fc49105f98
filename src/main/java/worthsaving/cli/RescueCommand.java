package worthsaving.cli;

import java.io.IOException;
import java.util.Currency;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import worthsaving.catalog.Catalogue;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Money;
import worthsaving.ranking.Appraisal;
import worthsaving.ranking.Judge;
import worthsaving.ranking.JudgeSettings;
import worthsaving.ranking.RescueTerms;
import worthsaving.ranking.Rescuer;
import worthsaving.ranking.ValueSource;
import worthsaving.report.RescueReport;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Vehicle;

/** An owner's choice between mending a car and replacing it. */
@Command(
        name = "rescue",
        description = "For the owner of a car: paying the quote, a shop, own hands, or selling it as it stands and "
                + "buying another, over the years and miles wanted. The quote is taken from the column 'quote'.",
        mixinStandardHelpOptions = true)
final class RescueCommand implements Callable<Integer> {

    @ParentCommand
    private Main main;

    @Mixin
    private OneListing one;

    @Mixin
    private Output output;

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

    @Spec
    private CommandSpec spec;

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

    @Override
    public Integer call() throws IOException {
        JudgingInput.Opened opened = one.open(spec.commandLine().getErr());
        Catalogue catalogue = opened.catalogue();
        ValueSource values = opened.valuer()::forecastWithoutReasons;
        Listing listing = one.in(opened);
        JudgeSettings settings = one.settings(catalogue, main.seed());
        RescueTerms terms = terms(opened.lot(), listing, catalogue.currency());
        Appraisal appraisal = JudgingInput.appraisal(
                new Judge(catalogue, values, settings).judge(listing), listing.id());
        output.print(new RescueReport(new Rescuer(catalogue, values, settings).compare(appraisal, terms)),
                spec.commandLine().getOut(), opened.note());
        return ExitCode.OK;
    }

    private RescueTerms terms(ReadLot lot, Listing listing, Currency currency) {
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
