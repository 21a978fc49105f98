package worthsaving.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import worthsaving.quantity.Money;
import worthsaving.ranking.Standing;

/** One figure of a standing under its name, for scripts and spreadsheets. */
record StandingColumn(String name, Function<Standing, Object> figure) {

    /** The last column. */
    static final String WARNINGS = "warnings";

    /** A number, text, list of texts, or null where there is none. */
    Object of(Standing standing) {
        return figure.apply(standing);
    }

    /** As one cell of a table: what is several is parted by spaces. */
    static Object cell(Object figure) {
        return figure instanceof List<?> list
                ? list.stream().map(Object::toString).collect(Collectors.joining(" ")) : figure;
    }

    static List<StandingColumn> all(VinGuard vin) {
        Table table = new Table();
        table.add("id", s -> vin.text(s.listing().id()));
        table.add("car", s -> vin.text(s.listing().vehicle().label()));
        if (vin.shown()) {
            table.add("vin", s -> vin.of(s.listing().vehicle()).orElse(null));
        }
        table.add("verdict", s -> s.verdict().kind().name().toLowerCase(Locale.ROOT));
        table.add("headline", s -> s.verdict().headline());
        table.add("currency", s -> s.value().currency().getCurrencyCode());
        table.add("ask", s -> s.listing().ask().get().map(StandingColumn::cents).orElse(null));
        table.add("most_to_pay", s -> s.mostToPay().limit().map(StandingColumn::cents).orElse(null));
        table.add("opening_offer", s -> s.mostToPay().opening().map(StandingColumn::cents).orElse(null));
        table.add("way_out", s -> s.way().label());
        table.add("figures_for", s -> s.figuresFor().label());
        table.add("expected_profit", s -> cents(s.expectedProfit()));
        table.add("chance_of_loss", Standing::chanceOfLoss);
        table.add("mean_of_worst_5_percent", s -> cents(s.worstTwentieth()));
        table.add("own_hours", s -> s.ownHours().value());
        table.add("profit_per_own_hour",
                s -> s.profitPerHour().isPresent() ? s.profitPerHour().getAsDouble() : null);
        table.add("cash_out", s -> cents(s.cashOut()));
        table.add("days", Standing::days);
        table.add("value_running", s -> cents(s.value()));
        table.add("value_running_p10", s -> cents(s.valueLow()));
        table.add("value_running_p90", s -> cents(s.valueHigh()));
        table.add("next_check", s -> s.nextCheck().map(c -> c.finding().id()).orElse(null));
        table.add("next_check_net_value", s -> s.nextCheck().map(c -> cents(c.net())).orElse(null));
        table.add("likely_failed", s -> s.likely().stream()
                .map(b -> String.format(Locale.ROOT, "%s:%.3f", b.item(), b.posterior().value())).toList());
        table.add(WARNINGS, Standing::warnings);
        return List.copyOf(table.columns);
    }

    private static double cents(Money money) {
        return Math.round(money.amount() * 100) / 100.0;
    }

    private static final class Table {
        private final List<StandingColumn> columns = new ArrayList<>();

        void add(String name, Function<Standing, Object> figure) {
            columns.add(new StandingColumn(name, figure));
        }
    }
}
