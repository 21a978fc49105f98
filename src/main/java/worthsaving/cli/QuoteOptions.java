package worthsaving.cli;

import java.util.Currency;
import java.util.Optional;
import picocli.CommandLine.Option;
import worthsaving.catalog.Catalogue;
import worthsaving.deal.Term;
import worthsaving.quantity.Money;
import worthsaving.ranking.Appraisal;
import worthsaving.ranking.JudgeSettings;
import worthsaving.ranking.Quoter;
import worthsaving.ranking.ShopQuote;

/** A workshop's rate, and what its owner agreed to. */
final class QuoteOptions {

    @Option(names = "--rate", paramLabel = "MONEY",
            description = "The workshop's hour (default: the catalogue's shop_hourly).")
    private Double rate;

    @Option(names = "--ceiling", paramLabel = "MONEY",
            description = "Most the owner agreed to (default: the price not exceeded with 95 %%).")
    private Double ceiling;

    /** @throws UserError when an option is out of range, or there is nothing to quote */
    ShopQuote write(Appraisal appraisal, Catalogue catalogue, JudgeSettings settings) {
        return new Quoter(catalogue, settings, hourly(settings)).write(appraisal, agreed(catalogue.currency()))
                .orElseThrow(() -> new UserError(ExitCode.SOME_ROWS_REFUSED, appraisal.listing().id()
                        + " cannot be quoted: nothing is suspected, or nothing allowed mends it; enter what was found"));
    }

    /** @throws UserError when the rate is out of range */
    Money hourly(JudgeSettings settings) {
        return rate == null ? settings.terms().money(Term.SHOP_HOURLY)
                : positive("--rate", rate, settings.terms().currency());
    }

    /** @throws UserError when the ceiling is out of range */
    Optional<Money> agreed(Currency currency) {
        return Optional.ofNullable(ceiling).map(c -> positive("--ceiling", c, currency));
    }

    private static Money positive(String option, double amount, Currency currency) {
        if (!(amount > 0) || Double.isInfinite(amount)) {
            throw new UserError(ExitCode.USAGE, option + " must be above zero, not " + amount);
        }
        return new Money(amount, currency);
    }
}
