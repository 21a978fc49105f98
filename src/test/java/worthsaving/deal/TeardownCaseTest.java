package worthsaving.deal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static worthsaving.deal.DecisionTree.branch;
import static worthsaving.deal.DecisionTree.end;
import static worthsaving.deal.DecisionTree.option;
import static worthsaving.quantity.Money.usd;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import worthsaving.deal.DecisionTree.Chance;
import worthsaving.deal.DecisionTree.Choice;

/** Oil pan off, guide plastic in the pickup: go on, look at the bearings first, or stop. Invented inputs. */
class TeardownCaseTest {

    private static final Offset<Double> CENT = within(0.005);
    private static final double FINISHED = SaleLedger.of(usd(6_200))
            .less("selling", usd(200))
            .less("holding", usd(120))
            .less("capital", usd(40))
            .lessShare("comeback reserve", 0.02)
            .net()
            .amount();
    private static final double ROLLER = 1_100 - 50;
    private static final double SUNK =
            TradeCases.SIX_PERCENT.costOf(usd(2_000)).amount() + 230 + 95 + 6 * 35;

    private final DecisionTree good = end("finish, bearings good", forward(mend("good", 650 + 120, 12)));
    private final DecisionTree marginal =
            end("finish, shells", forward(mend("marginal", 650 + 120 + 180, 12 + 5).withRepeat(.20, usd(2_500))));
    private final DecisionTree damaged = end("finish, used engine", forward(mend("damaged", 3_900 + 500, 24)));
    private final DecisionTree stop = end("sell the roller", ROLLER);
    private final DecisionTree blind = states(good, marginal, damaged);
    private final DecisionTree looked = states(
            goOrStop(good), goOrStop(marginal), goOrStop(damaged));
    private final Choice now = new Choice("oil pan off", List.of(
            option("stop now", 0, stop), option("go blind", 0, blind), option("pull two rod caps", 45, looked)));

    @Test
    void forward_values_by_state() {
        assertThat(FINISHED).isCloseTo(5_716, CENT);
        assertThat(good.value()).isCloseTo(4_526, CENT);
        assertThat(marginal.value()).isCloseTo(3_671, CENT);
        assertThat(damaged.value()).isCloseTo(476, CENT);
    }

    @Test
    void looking_first_is_the_best_of_three() {
        assertThat(stop.value()).isEqualTo(1_050);
        assertThat(blind.value()).isCloseTo(3_704.75, CENT);
        assertThat(now.value()).isCloseTo(3_745.85, CENT);
        assertThat(now.best().name()).isEqualTo("pull two rod caps");
    }

    @Test
    void value_of_the_cap_inspection() {
        assertThat(looked.value() - blind.value()).isCloseTo(86.10, CENT);
        assertThat(now.value() - blind.value()).isCloseTo(41.10, CENT);
    }

    @Test
    void whole_deal_with_sunk_money_counted_once_at_the_end() {
        assertThat(SUNK).isCloseTo(2_655, CENT);
        assertThat(now.value() - SUNK).isCloseTo(1_090.85, CENT);
        Outcome forward = now.outcome();
        assertThat(forward.below(SUNK)).isCloseTo(.15, within(1e-12));
        assertThat(good.value() - 45 - SUNK).isCloseTo(1_826, CENT);
        assertThat(marginal.value() - 45 - SUNK).isCloseTo(971, CENT);
        assertThat(forward.least() - SUNK).isCloseTo(-1_650, CENT);
        assertThat(damaged.value() - 45 - SUNK).isCloseTo(-2_224, CENT);
    }

    @Test
    void a_scored_journal_means_stop_whatever_is_sunk() {
        Choice found = goOrStop(damaged);
        assertThat(found.best().name()).isEqualTo("stop");
        assertThat(found.value() - damaged.value()).isCloseTo(574, CENT);
    }

    private Choice goOrStop(DecisionTree finish) {
        return new Choice("state known", List.of(option("finish", 0, finish), option("stop", 0, stop)));
    }

    private static Chance states(DecisionTree good, DecisionTree marginal, DecisionTree damaged) {
        return new Chance("bearings", List.of(
                branch("good", .60, good), branch("marginal", .25, marginal), branch("damaged", .15, damaged)));
    }

    private static Scenario mend(String name, double money, double hours) {
        return Scenario.mend(name, 1, usd(money), hours);
    }

    private static double forward(Scenario scenario) {
        return FINISHED - scenario.expectedCost(usd(35)).amount();
    }
}
