package worthsaving.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import worthsaving.catalog.Catalogue;
import worthsaving.deal.BuyerRule;
import worthsaving.deal.WayOut;
import worthsaving.market.MarketSettings;
import worthsaving.quantity.Money;
import worthsaving.quantity.Seed;
import worthsaving.ranking.JudgeSettings;
import worthsaving.shell.MarketGround;

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

    @Option(names = "--model", paramLabel = "FILE|NAME", defaultValue = "us",
            description = "Price model: a file, or the name of one in models, such as us or de (default: "
                    + "${DEFAULT-VALUE}). Market, currency and units follow it.")
    private String model;

    @Option(names = "--comparables", paramLabel = "FILE",
            description = "Running cars that you saw for sale or know sold, such as shared/samples/comparables.csv: they "
                    + "move the price level.")
    private Path comparables;

    @Option(names = "--catalogue-money", paramLabel = "FACTOR",
            description = "What one unit of the catalogue's currency costs in the market's (default: "
                    + "shared/market/market_settings.csv).")
    private Double catalogueMoney;

    @Mixin
    private WorkshopOptions workshop;

    @Mixin
    private MoneyOptions money;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    /**
     * The market of the price model, without comparables.
     *
     * @throws UserError when the model cannot be used
     */
    MarketGround market(Resources resources) {
        MarketGround ground = PriceModels.load(resources, model);
        if (catalogueMoney == null) {
            return ground;
        }
        if (!(catalogueMoney > 0) || Double.isInfinite(catalogueMoney)) {
            throw new UserError(ExitCode.USAGE, "--catalogue-money must be above zero, not " + catalogueMoney);
        }
        return ground.with(ground.valuer().settings().with(MarketSettings.CATALOGUE_MONEY, catalogueMoney));
    }

    /**
     * The market of the price model, its level moved by the user's comparables.
     *
     * @throws UserError when model or comparables cannot be used
     */
    MarketGround market(Resources resources, LocalDate today) throws IOException {
        MarketGround ground = market(resources);
        return comparables == null
                ? ground
                : new ComparablesFile(comparables).read(ground, CatalogueFiles.load(resources), today,
                        spec.commandLine().getErr());
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
        Money target = targetProfit == null ? usual.targetProfit() : new Money(targetProfit, usual.targetProfit().currency());
        BuyerRule rule = BuyerRule.of(target, chanceOfLoss == null ? usual.mostChanceOfLoss().value() : chanceOfLoss);
        if (perHour != null) {
            rule = rule.withLeastPerHour(perHour);
        }
        if (ways != null) {
            rule = rule.withWays(ways.stream().map(JudgeOptions::way).collect(Collectors.toSet()));
        }
        return riskTolerance == null ? rule : rule.withRiskTolerance(new Money(riskTolerance, usual.targetProfit().currency()));
    }

    private static WayOut way(String name) {
        Set<WayOut> all = Set.of(WayOut.REPAIR_AND_SELL, WayOut.SELL_AS_IT_STANDS, WayOut.PART_OUT, WayOut.SCRAP);
        return all.stream().filter(w -> w.name().equalsIgnoreCase(name.trim().replace('-', '_'))).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("'" + name + "' is no way out; take one of "
                        + Arrays.stream(WayOut.values()).filter(all::contains)
                                .map(w -> w.name().toLowerCase(Locale.ROOT)).collect(Collectors.joining(", "))));
    }
}
