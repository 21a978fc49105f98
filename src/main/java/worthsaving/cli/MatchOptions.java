package worthsaving.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;
import worthsaving.market.MatchWishes;
import worthsaving.market.PriceKind;
import worthsaving.quantity.Distance;

/** What the user says about a price table of his own that has no shape. */
final class MatchOptions {

    private enum Unit { MI, KM }

    private enum Kind { ASKED, SOLD }

    @Option(names = "--column", paramLabel = "FIELD=HEADER",
            description = "Without SHAPE: the column of a field, such as price=Asking; may be given again.")
    private Map<String, String> columns = new LinkedHashMap<>();

    @Option(names = "--currency", paramLabel = "CODE", description = "Without SHAPE: currency of the prices.")
    private String currency;

    @Option(names = "--units", paramLabel = "mi|km", description = "Without SHAPE: unit of the odometers.")
    private Unit unit;

    @Option(names = "--date", paramLabel = "DATE", converter = Day.class,
            description = "Without SHAPE: day of all prices, for a table without a column of days.")
    private LocalDate date;

    @Option(names = "--kind", paramLabel = "asked|sold", description = "Without SHAPE: what the prices are.")
    private Kind kind;

    @Option(names = "--market", paramLabel = "CODE",
            description = "Without SHAPE: market of shared/market/markets.csv (default: by the currency).")
    private String market;

    /** @throws UserError when the currency is none */
    MatchWishes wishes(Path data) {
        return new MatchWishes(
                data.getFileName().toString(),
                columns,
                Optional.ofNullable(currency).map(MatchOptions::currency),
                Optional.ofNullable(unit).map(u -> u == Unit.KM ? Distance.Unit.KILOMETRES : Distance.Unit.MILES),
                Optional.ofNullable(date),
                Optional.ofNullable(kind).map(k -> k == Kind.SOLD ? PriceKind.SALE : PriceKind.ASKING),
                Optional.ofNullable(market));
    }

    static Currency currency(String code) {
        try {
            return Currency.getInstance(code.toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException noSuchCode) {
            throw new UserError(ExitCode.USAGE, "'" + code + "' is no currency; give a code such as USD");
        }
    }
}
