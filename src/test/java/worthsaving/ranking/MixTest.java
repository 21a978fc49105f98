package worthsaving.ranking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.deal.MostToPay;
import worthsaving.deal.Verdict;
import worthsaving.deal.WayOut;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;

/** Figures are invented. Trade notes, case 9: by expected profit C, A, B; by profit per hour C, B, A. */
class MixTest {

    private static final Standing A = standing("A", Verdict.Kind.BUY, 900, 30, .10);
    private static final Standing B = standing("B", Verdict.Kind.BUY, 800, 60, .30);
    private static final Standing C = standing("C", Verdict.Kind.BUY, 1_500, 90, .40);
    private static final Standing STOP = standing("S", Verdict.Kind.HARD_STOP, 9_000, 500, 0);
    private static final List<Standing> LOT = List.of(STOP, B, A, C);

    private static Standing standing(String id, Verdict.Kind kind, double profit, double perHour, double loss) {
        Money none = Money.usd(0);
        return new Standing(Lots.listing(id, 1_000), new Verdict(kind, "", List.of(), List.of()),
                new MostToPay(Optional.of(Money.usd(1_000)), Optional.empty(), Optional.empty(),
                        WayOut.REPAIR_AND_SELL, MostToPay.Binding.TARGET_PROFIT),
                WayOut.REPAIR_AND_SELL, none, none, none, Money.usd(profit), loss, none, List.of(profit),
                Hours.of(10), OptionalDouble.of(perHour), none, 30, List.of(), Optional.empty(), List.of());
    }

    private static String order(String weights) {
        return String.join(" ", LOT.stream().sorted(Mix.parse(weights).among(LOT)).map(s -> s.listing().id()).toList());
    }

    /** Ranks: profit C A B = 1 2 3, hour C B A, loss A B C. */
    @ParameterizedTest
    @CsvSource({
        "profit=1, C A B S", "hour=2, C B A S", "loss=1, A B C S",
        "'profit=1,loss=1', A C B S", "'profit=1,loss=3', A B C S", "'profit=1,hour=0.5,loss=2', A C B S"
    })
    void weights_decide(String weights, String expected) {
        assertThat(order(weights)).isEqualTo(expected);
    }

    @Test
    void one_weight_orders_as_the_order_alone() {
        assertThat(LOT.stream().sorted(Order.EXPECTED_PROFIT.among(LOT)).toList())
                .isEqualTo(LOT.stream().sorted(Mix.parse("profit=7").among(LOT)).toList());
    }

    @Test
    void the_score_is_the_mean_rank_and_ties_share_theirs() {
        assertThat(Mix.parse("profit=1,loss=1").scores(LOT)).containsOnly(entry("A", 1.5), entry("B", 2.5),
                entry("C", 2.0));
        assertThat(Mix.parse("room=1").scores(LOT)).containsOnly(entry("A", 2.0), entry("B", 2.0), entry("C", 2.0));
        assertThat(Mix.parse(" Profit = 2 ").weights()).isEqualTo(Map.of(Order.EXPECTED_PROFIT, 2.0));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "profit", "profit=x", "luck=1", "profit=-1", "profit=0", "profit=1,profit=2",
        "profit=NaN", "profit=Infinity"})
    void what_cannot_be_read_is_refused(String weights) {
        assertThatThrownBy(() -> Mix.parse(weights)).isInstanceOf(IllegalArgumentException.class);
    }
}
