package worthsaving.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;
import worthsaving.catalog.Catalogue;
import worthsaving.deal.BuyerRule;
import worthsaving.deal.Term;
import worthsaving.quantity.Money;
import worthsaving.quantity.Seed;
import worthsaving.ranking.JudgeSettings;
import worthsaving.valuation.Valuer;

/** What the user asks of a deal, and which price model to trust. */
final class JudgeOptions {

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
}
