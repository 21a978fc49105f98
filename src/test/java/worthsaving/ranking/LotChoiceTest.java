package worthsaving.ranking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static worthsaving.ranking.Lots.appraise;
import static worthsaving.ranking.Lots.listing;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import worthsaving.deal.ToolNeed;
import worthsaving.deal.WayOut;
import worthsaving.quantity.Money;
import worthsaving.quantity.Seed;
import worthsaving.ranking.LotChoice.LeftOut;
import worthsaving.ranking.LotChoice.Reason;
import worthsaving.vehicle.Observation;
import worthsaving.vehicle.TitleBrand;

/** Invented listings of one invented car. */
class LotChoiceTest {

    private static final LotChoice.Settings SETTINGS = LotChoice.Settings.usual(Seed.DEFAULT);

    private static Standing battery(String id, double ask) {
        return Standing.of(appraise(listing(id, ask, Observation.present("BATT_12V"),
                Observation.present("NO_CRANK"))));
    }

    private static final List<Standing> LOT = List.of(
            battery("cheap", 1_500), battery("middling", 2_000), battery("dear", 4_500), battery("absurd", 30_000),
            Standing.of(appraise(listing("lost", Lots.car(2015).toBuilder().title(TitleBrand.LOST).build(),
                    Money.usd(300)))));

    private static Map<String, LeftOut> left(LotChoice choice) {
        return choice.leftOut().stream().collect(Collectors.toMap(l -> l.standing().listing().id(), l -> l));
    }

    @Test
    void says_why_each_car_is_left_out() {
        LotChoice choice = LotChoice.of(LOT, Budget.NONE.withBays(1), SETTINGS);

        assertThat(choice.chosen()).extracting(s -> s.listing().id()).containsExactly("cheap");
        Map<String, LeftOut> left = left(choice);
        assertThat(left.get("lost").reasons()).containsExactly(Reason.HARD_STOP);
        assertThat(left.get("absurd").reasons()).containsExactly(Reason.NOT_WORTH_IT);
        assertThat(left.get("dear").reasons()).containsExactly(Reason.ABOVE_LIMIT);
        assertThat(left.get("dear").words()).contains("asks 4,500");
        assertThat(left.get("middling").reasons()).containsExactly(Reason.BAYS);
        assertThat(left.get("middling").words()).contains("2 of 1 bays");
        assertThat(left.get("middling").costOfForcing().orElseThrow()).isCloseTo(
                LOT.get(0).expectedProfit().minus(LOT.get(1).expectedProfit()).amount(), within(0.01));
    }

    @Test
    void cash_is_named_with_what_is_needed() {
        double both = LOT.get(0).cashOut().amount() + LOT.get(1).cashOut().amount();
        LotChoice choice = LotChoice.of(LOT.subList(0, 2), Budget.NONE.withCash(both - 200), SETTINGS);

        assertThat(choice.chosen()).hasSize(1);
        assertThat(choice.leftOut().get(0).reasons()).containsExactly(Reason.CASH);
        LotChoice none = LotChoice.of(LOT.subList(0, 2), Budget.NONE.withCash(100), SETTINGS);
        assertThat(none.chosen()).isEmpty();
        assertThat(none.leftOut()).allSatisfy(l -> {
            assertThat(l.words()).startsWith("alone it takes");
            assertThat(l.costOfForcing()).isEmpty();
        });
    }

    @Test
    void a_car_above_its_limit_counts_when_the_user_says_so() {
        assertThat(LOT.get(2).expectedProfit().amount()).isPositive();
        LotChoice choice = LotChoice.of(LOT, Budget.NONE, new LotChoice.Settings(true, 0.1, Seed.DEFAULT));

        assertThat(choice.chosen()).extracting(s -> s.listing().id()).containsExactly("cheap", "middling", "dear");
    }

    @Test
    void profit_of_the_set_is_that_of_its_cars_and_what_sharing_tools_saves() {
        LotChoice choice = LotChoice.of(LOT, Budget.NONE, SETTINGS);
        double sum = choice.chosen().stream().mapToDouble(s -> s.expectedProfit().amount()).sum();

        assertThat(choice.set().toolsShared()).isNotNegative();
        assertThat(choice.set().profit()).isCloseTo(sum + choice.set().toolsShared(), within(0.01));
        assertThat(choice.together().mean()).isCloseTo(choice.set().profit(), within(0.02 * sum));
        assertThat(choice.together().meanOfWorst(.05)).isLessThan(choice.apart().meanOfWorst(.05));
    }

    /** The tools' chances times their prices are what owning all of them is worth to the same car. */
    @Test
    void tools_in_the_stake_are_what_owning_them_would_save() {
        Appraisal dead = appraise(listing("A", 500, Observation.present("ENG_DEAD")));
        List<ToolNeed> needs = dead.assessment().tools();
        JudgeSettings all = Lots.SETTINGS.withWorkshop(Lots.SETTINGS.workshop().withTools(
                Lots.CATALOGUE.tools().stream().map(t -> t.id()).collect(Collectors.toSet())));
        Appraisal owning = ((Judged.Done) new Judge(Lots.CATALOGUE, Lots.EIGHT_THOUSAND, all)
                .judge(listing("A", 500, Observation.present("ENG_DEAD")))).appraisal();
        double expected = needs.stream().mapToDouble(t -> t.expected().amount()).sum();
        double saved = owning.assessment().way(WayOut.REPAIR_AND_SELL).expectedProfit()
                - dead.assessment().way(WayOut.REPAIR_AND_SELL).expectedProfit();

        assertThat(expected).isPositive();
        assertThat(owning.assessment().tools()).isEmpty();
        // Usual faults are reckoned with tools as well, so that most of it cancels; plans may change with tools.
        assertThat(Math.abs(saved)).isLessThan(expected);
    }

    @Test
    void the_stake_keeps_mean_and_worst_twentieth_of_the_profit() {
        Standing s = LOT.get(0);

        assertThat(s.stake().profit().size()).isEqualTo(100);
        assertThat(s.stake().profit().mean()).isCloseTo(s.expectedProfit().amount(), within(0.01));
        assertThat(s.stake().profit().meanOfWorst(.05)).isCloseTo(s.worstTwentieth().amount(), within(0.01));
    }
}
