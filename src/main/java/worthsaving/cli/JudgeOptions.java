package worthsaving.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import worthsaving.catalog.Catalogue;
import worthsaving.deal.BuyerRule;
import worthsaving.deal.Place;
import worthsaving.deal.PlaceReader;
import worthsaving.deal.Term;
import worthsaving.quantity.Money;
import worthsaving.quantity.Seed;
import worthsaving.ranking.JudgeSettings;
import worthsaving.valuation.Valuer;

/** What the user asks of a deal, and which price model to trust. */
final class JudgeOptions {

    private static final String PLACES = "shared/places.csv";

    @Option(names = "--target-profit", paramLabel = "MONEY",
            description = "Least expected profit per car (default: the catalogue's profit_target).")
    private Double targetProfit;

    @Option(names = "--chance-of-loss", paramLabel = "SHARE",
            description = "Greatest chance of a loss, 0 to 1 (default: 0.25).")
    private Double chanceOfLoss;

    @Option(names = "--hourly", paramLabel = "MONEY",
            description = "What an own hour is worth (default: the catalogue's own_hourly).")
    private Double hourly;

    @Option(names = "--tow-miles", paramLabel = "MILES",
            description = "How far a car is towed when its row does not say (default: 30).")
    private Double towMiles;

    @Option(names = "--no-used-units", description = "Fit no used engine, gearbox or battery pack.")
    private boolean noUsedUnits;

    @Option(names = "--model", paramLabel = "FILE", description = "Price model (default: models/us.json).")
    private Path model;

    @Option(names = "--place", paramLabel = "NAME",
            description = "Taxes and fees of a place or kind of purchase from " + PLACES + ", labelled examples.")
    private String place;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    Valuer valuer(Resources resources) {
        return PriceModels.load(resources, model, "us");
    }

    /** @throws UserError when an option is out of range */
    JudgeSettings settings(Catalogue catalogue, Seed seed) {
        try {
            JudgeSettings usual = JudgeSettings.usual(catalogue, seed);
            Money target = targetProfit == null ? usual.rule().targetProfit() : Money.usd(targetProfit);
            double risk = chanceOfLoss == null ? usual.rule().mostChanceOfLoss().value() : chanceOfLoss;
            JudgeSettings settings = usual.withRule(BuyerRule.of(target, risk));
            if (place != null) {
                settings = settings.withTerms(place(Resources.find()).applyTo(settings.terms()));
            }
            if (hourly != null) {
                settings = settings.withHourly(Money.usd(hourly))
                        .withTerms(settings.terms().with(Term.OWN_HOURLY, hourly));
            }
            if (towMiles != null) {
                settings = settings.withTowMiles(towMiles);
            }
            return noUsedUnits ? settings.withWorkshop(settings.workshop().withUsedUnits(false)) : settings;
        } catch (IllegalArgumentException e) {
            throw new UserError(ExitCode.USAGE, e.getMessage());
        }
    }

    private Place place(Resources resources) {
        PrintWriter err = spec.commandLine().getErr();
        PlaceReader.Reading reading;
        try (Reader in = resources.reader(PLACES)) {
            reading = PlaceReader.read(PLACES, in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        reading.faults().forEach(err::println);
        Place found = reading.places().stream().filter(p -> p.id().equals(place)).findFirst()
                .orElseThrow(() -> new UserError(ExitCode.USAGE, "There is no place '" + place + "' in " + PLACES
                        + "; it has " + reading.places().stream().map(Place::id).collect(Collectors.joining(", "))));
        err.println(found.name() + ". " + Place.CAUTION);
        return found;
    }
}
