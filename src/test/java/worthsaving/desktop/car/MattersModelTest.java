package worthsaving.desktop.car;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import worthsaving.desktop.Figures;
import worthsaving.desktop.HandTurned;
import worthsaving.sensitivity.DealTornado.Kind;

class MattersModelTest {

    private final HandTurned threads = new HandTurned();
    private final CarModel car = new CarModel(Cars.GROUND, threads.background(), threads.screen());
    private final MattersModel model = car.matters();

    @BeforeEach
    void open() {
        car.open(Cars.overheated());
        threads.turnAll();
    }

    @Test
    void nothing_is_reckoned_until_the_page_is_looked_at() {
        assertThat(model.mattersProperty().get()).isNull();
        assertThat(model.busyProperty().get()).isFalse();
    }

    @Test
    void bars_are_sorted_by_swing_about_the_profit_shown_and_the_map_is_of_value_and_repair() {
        model.open(true);
        assertThat(model.busyProperty().get()).isTrue();
        threads.turnAll();
        assertThat(model.busyProperty().get()).isFalse();
        Matters matters = model.mattersProperty().get();
        CarPicture.Seen seen = car.seen().orElseThrow();
        assertThat(matters.base()).isCloseTo(
                seen.appraisal().assessment().way(seen.shown()).expectedProfit(), within(1e-6));
        List<Double> swings = matters.bars().stream().map(b -> b.greatest() - b.least()).toList();
        assertThat(swings).isSortedAccordingTo((a, b) -> Double.compare(b, a)).hasSizeGreaterThan(5);
        assertThat(matters.bars()).anySatisfy(b -> assertThat(b.figure().kind()).isEqualTo(Kind.ITEM));
        Matters.Drawn map = matters.map().orElseThrow();
        assertThat(map.across().kind()).isEqualTo(Kind.SALE_VALUE);
        assertThat(map.up().kind()).isEqualTo(Kind.REPAIR_COST);
        double[][] profit = map.map().results();
        int last = profit.length - 1;
        assertThat(profit[0][last]).isGreaterThan(profit[0][0]);
        assertThat(profit[last][0]).isLessThan(profit[0][0]);
        assertThat(matters.words().value(map.across(), 1)).isEqualTo(
                Figures.amount(seen.appraisal().value().mean().amount()));
    }

    @Test
    void another_pair_is_drawn_when_chosen_and_cancelling_keeps_what_was_shown() {
        model.open(true);
        threads.turnAll();
        Matters first = model.mattersProperty().get();
        String item = first.figures().stream().filter(f -> f.kind() == Kind.ITEM).map(Matters::key).findFirst()
                .orElseThrow();
        model.choose(item, Matters.key(first.map().orElseThrow().across()));
        model.cancel();
        threads.turnAll();
        assertThat(model.mattersProperty().get()).isSameAs(first);
        assertThat(model.busyProperty().get()).isFalse();
        model.open(true);
        threads.turnAll();
        assertThat(Matters.key(model.mattersProperty().get().map().orElseThrow().across())).isEqualTo(item);
    }
}
