package worthsaving.ranking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static worthsaving.ranking.Lots.listing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.deal.WayOut;
import worthsaving.deal.WayResult;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;
import worthsaving.vehicle.TitleBrand;

class LotRankingTest {

    private static final List<Listing> LOT = List.of(
            listing("dead", 2_500, Observation.present("ENG_DEAD")),
            listing("battery", 2_500, Observation.present("BATT_12V"), Observation.present("NO_CRANK")),
            listing("dear battery", 3_500, Observation.present("BATT_12V"), Observation.present("NO_CRANK")),
            listing("lost", Lots.car(2015).toBuilder().title(TitleBrand.LOST).build(), Money.usd(300)),
            listing("foreign", Lots.car(2015), Money.of(500, "EUR")));

    private static Ranked rank(List<Listing> lot) {
        return new LotRanking(Lots.JUDGE).rank(lot, Order.EXPECTED_PROFIT, done -> {}, () -> false);
    }

    private static List<String> ids(Ranked ranked) {
        return ranked.places().stream().map(p -> p.standing().listing().id()).toList();
    }

    @Test
    void the_best_deal_comes_first_and_a_hard_stop_last() {
        Ranked ranked = rank(LOT);

        assertThat(ids(ranked)).containsExactly("battery", "dear battery", "dead", "lost");
        assertThat(ranked.refused()).extracting(r -> r.listing().id()).containsExactly("foreign");
    }

    @Test
    void a_dearer_twin_is_marked_as_dominated() {
        Ranked ranked = rank(LOT);

        assertThat(ranked.places().get(1).dominatedBy()).contains("battery");
        assertThat(ranked.places().get(0).dominatedBy()).isEmpty();
    }

    @Test
    void a_car_not_worth_buying_shows_what_mending_it_would_bring() {
        Appraisal dear = Lots.appraise(listing("dear", 9_000, Observation.present("ENG_DEAD")));
        Standing standing = Standing.of(dear);
        WayResult mended = dear.assessment().way(WayOut.REPAIR_AND_SELL);

        assertThat(standing.way()).isEqualTo(WayOut.WALK_AWAY);
        assertThat(standing.figuresFor()).isEqualTo(WayOut.REPAIR_AND_SELL);
        assertThat(standing.expectedProfit().amount()).isEqualTo(mended.expectedProfit()).isNegative();
        assertThat(standing.chanceOfLoss()).isEqualTo(mended.chanceOfLoss()).isGreaterThan(0.5);
        assertThat(standing.ownHours()).isEqualTo(mended.ownHours());
        assertThat(standing.strip()).isSorted().doesNotHaveDuplicates();
        assertThat(Ranked.of(List.of(standing), List.of(), Order.EXPECTED_PROFIT).places().get(0).dominatedBy())
                .isEmpty();
    }

    @Test
    void the_order_does_not_depend_on_the_order_of_the_table() {
        List<Listing> turned = new ArrayList<>(LOT);
        Collections.reverse(turned);

        assertThat(ids(rank(turned))).isEqualTo(ids(rank(LOT)));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 8})
    void figures_are_the_same_on_any_number_of_threads(int threads) throws Exception {
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            Ranked ranked = pool.submit(() -> rank(LOT)).get();
            Ranked reference = rank(LOT);
            for (int i = 0; i < ranked.places().size(); i++) {
                Standing a = ranked.places().get(i).standing();
                Standing b = reference.places().get(i).standing();
                assertThat(a.expectedProfit()).isEqualTo(b.expectedProfit());
                assertThat(a.mostToPay()).isEqualTo(b.mostToPay());
                assertThat(a.strip()).isEqualTo(b.strip());
            }
        } finally {
            pool.shutdown();
        }
    }

    @Test
    void can_be_cancelled() {
        assertThatThrownBy(() -> new LotRanking(Lots.JUDGE).rank(LOT, Order.ROOM, done -> {}, () -> true))
                .isInstanceOf(CancellationException.class);
    }

    @Test
    void orders_by_what_is_asked_for() {
        Ranked byRisk = new LotRanking(Lots.JUDGE)
                .rank(LOT.subList(0, 3), Order.CHANCE_OF_LOSS, done -> {}, () -> false);
        List<Double> risks = byRisk.places().stream()
                .map(Ranked.Place::standing)
                .map(Standing::chanceOfLoss)
                .toList();

        assertThat(risks).isSorted().hasSize(3);
    }
}
