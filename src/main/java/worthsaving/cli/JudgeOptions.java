package worthsaving.cli;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import worthsaving.catalog.Catalogue;
import worthsaving.deal.BuyerRule;
import worthsaving.deal.WayOut;
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

    @Option(names = "--per-hour", paramLabel = "MONEY",
            description = "Least expected profit per own hour, own hours counted at nothing (default: no limit).")
    private Double perHour;

    @Option(names = "--risk-tolerance", paramLabel = "MONEY",
            description = "For who cannot stand to lose much: the stake R at which an even chance of winning R and "
                    + "losing R/2 is only just worth taking. Then what the profit is worth for sure must reach the "
                    + "target (default: no aversion).")
    private Double riskTolerance;

    @Option(names = "--ways", paramLabel = "WAY", split = ",",
            description = "Ways out you are ready to take: repair_and_sell, sell_as_it_stands, part_out, scrap "
                    + "(default: all).")
    private List<String> ways;

    @Option(names = "--tow-miles", paramLabel = "MILES",
            description = "How far a car is towed when its row does not say (default: 30).")
    private Double towMiles;

    @Option(names = "--allow-risky-checks",
            description = "Offer checks that can hurt the car too, such as cranking a suspected jumped chain; each "
                    + "carries its caution.")
    private boolean riskyChecks;

    @Option(names = "--model", paramLabel = "FILE", description = "Price model (default: models/us.json).")
    private Path model;

    @Mixin
    private WorkshopOptions workshop;

    @Mixin
    private MoneyOptions money;

    Valuer valuer(Resources resources) {
        return PriceModels.load(resources, model, "us");
    }

    /** @throws UserError when an option is out of range */
    JudgeSettings settings(Catalogue catalogue, Seed seed) {
        try {
            JudgeSettings usual = JudgeSettings.usual(catalogue, seed);
            JudgeSettings settings = usual.withRule(rule(usual.rule())).withTerms(money.applyTo(usual.terms()));
            if (towMiles != null) {
                settings = settings.withTowMiles(towMiles);
            }
            JudgeSettings equipped = workshop.applyTo(settings, catalogue);
            return equipped.withChecks(equipped.checks().withDamaging(riskyChecks));
        } catch (IllegalArgumentException e) {
            throw new UserError(ExitCode.USAGE, e.getMessage());
        }
    }

    private BuyerRule rule(BuyerRule usual) {
        Money target = targetProfit == null ? usual.targetProfit() : Money.usd(targetProfit);
        BuyerRule rule = BuyerRule.of(target, chanceOfLoss == null ? usual.mostChanceOfLoss().value() : chanceOfLoss);
        if (perHour != null) {
            rule = rule.withLeastPerHour(perHour);
        }
        if (ways != null) {
            rule = rule.withWays(ways.stream().map(JudgeOptions::way).collect(Collectors.toSet()));
        }
        return riskTolerance == null ? rule : rule.withRiskTolerance(Money.usd(riskTolerance));
    }

    private static WayOut way(String name) {
        Set<WayOut> all = Set.of(WayOut.REPAIR_AND_SELL, WayOut.SELL_AS_IT_STANDS, WayOut.PART_OUT, WayOut.SCRAP);
        return all.stream().filter(w -> w.name().equalsIgnoreCase(name.trim().replace('-', '_'))).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("'" + name + "' is no way out; take one of "
                        + Arrays.stream(WayOut.values()).filter(all::contains)
                                .map(w -> w.name().toLowerCase(Locale.ROOT)).collect(Collectors.joining(", "))));
    }
}
