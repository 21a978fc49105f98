package worthsaving.cli;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;
import worthsaving.ranking.Mix;
import worthsaving.ranking.Order;
import worthsaving.ranking.Ordering;

/** What a lot is ordered by. */
final class OrderOptions {

    private static final String MIX = "mix";

    @Option(names = "--order", paramLabel = "ORDER",
            description = "What to order by: expected_profit, profit_per_hour, chance_of_loss, room, or mix of them "
                    + "(default: expected_profit).")
    private String order;

    @Option(names = "--weights", paramLabel = "WEIGHTS",
            description = "Weights of a mix, such as profit=1,hour=0.5,loss=2, of any of profit, hour, loss and room: "
                    + "listings are ordered by the weighted mean of their ranks.")
    private String weights;

    /** @throws UserError when they cannot be read */
    Ordering ordering() {
        boolean mix = MIX.equalsIgnoreCase(order);
        if (weights != null && order != null && !mix) {
            throw new UserError(ExitCode.USAGE, "--weights goes with --order mix, not with --order " + order);
        }
        if (mix && weights == null) {
            throw new UserError(ExitCode.USAGE, "--order mix needs --weights, such as profit=1,hour=0.5,loss=2");
        }
        if (weights != null) {
            try {
                return Mix.parse(weights);
            } catch (IllegalArgumentException e) {
                throw new UserError(ExitCode.USAGE, "--weights: " + e.getMessage());
            }
        }
        return order == null ? Order.EXPECTED_PROFIT : named();
    }

    private Order named() {
        return Arrays.stream(Order.values())
                .filter(o -> o.name().equalsIgnoreCase(order.replace('-', '_')))
                .findFirst()
                .orElseThrow(() -> new UserError(ExitCode.USAGE, "there is no order '" + order + "'; take one of "
                        + Arrays.stream(Order.values()).map(o -> o.name().toLowerCase(Locale.ROOT))
                                .collect(Collectors.joining(", ")) + ", " + MIX));
    }
}
