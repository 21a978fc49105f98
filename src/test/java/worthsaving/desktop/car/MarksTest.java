package worthsaving.desktop.car;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import worthsaving.deal.WayOut;
import worthsaving.desktop.HandTurned;
import worthsaving.desktop.car.CarWork.Ask;
import worthsaving.quantity.Money;
import worthsaving.sensitivity.Turning;

/** The marks on the sliders of one invented car. */
class MarksTest {

    private static final HandTurned THREADS = new HandTurned();
    private static final CarModel MODEL = new CarModel(Cars.GROUND, THREADS.background(), THREADS.screen());

    @BeforeAll
    static void open() {
        MODEL.open(Cars.overheated());
        THREADS.turnAll();
    }

    private static double profitAt(Dial dial, double value) {
        CarPicture.Seen seen = MODEL.seen().orElseThrow();
        return new CarWork(Cars.GROUND).of(new Ask(seen.scenario().with(dial, value), false), () -> false, n -> {})
                .seen().orElseThrow().appraisal().assessment().way(seen.shown()).expectedProfit();
    }

    @Test
    void every_slider_has_a_mark_or_says_that_there_is_none() {
        Map<Dial, Turning> marks = MODEL.marksProperty().get();
        assertThat(marks.keySet()).containsExactlyInAnyOrderElementsOf(MODEL.dials());
        assertThat(MODEL.dials()).anyMatch(ItemDial.class::isInstance);
    }

    /** The exact judgement at a mark, prepared anew: nothing is earned and nothing lost, to the step of the slider. */
    @Test
    void where_a_mark_stands_the_exact_profit_is_nothing() {
        Map<Dial, Turning> marks = MODEL.marksProperty().get();
        List<Dial> turning = marks.keySet().stream()
                .filter(d -> d != Lever.TARGET && d != Lever.LOSS && marks.get(d).at().isPresent()).toList();
        assertThat(turning).contains(Lever.PRICE, Lever.VALUE);
        for (Dial dial : turning) {
            double at = marks.get(dial).at().getAsDouble();
            double step = Math.abs(profitAt(dial, Math.min(dial.high(0), at + dial.step())) - profitAt(dial, at));
            assertThat(profitAt(dial, at)).as(dial.label()).isCloseTo(0, within(Math.max(2, step)));
        }
    }

    @Test
    void the_marks_of_the_rule_are_the_figures_themselves() {
        CarPicture.Seen seen = MODEL.seen().orElseThrow();
        var way = seen.appraisal().assessment().way(seen.shown());
        Map<Dial, Turning> marks = MODEL.marksProperty().get();
        assertThat(marks.get(Lever.LOSS).at().orElseThrow()).isEqualTo(100 * way.chanceOfLoss());
        assertThat(marks.get(Lever.TARGET)).isEqualTo(Turning.at(way.expectedProfit(), true, 0, 6_000));
    }

    @Test
    void marks_are_outdated_from_a_change_to_the_next_marks_but_not_while_a_slider_is_dragged() {
        HandTurned threads = new HandTurned();
        CarModel model = new CarModel(Cars.GROUND, threads.background(), threads.screen());
        model.open(Cars.overheated());
        threads.turnAll();
        assertThat(model.marksOutdatedProperty().get()).isFalse();
        model.drag(Lever.VALUE, 80);
        threads.turnAll();
        assertThat(model.marksOutdatedProperty().get()).isFalse();
        Map<Dial, Turning> before = model.marksProperty().get();
        model.letGo();
        assertThat(model.marksOutdatedProperty().get()).isTrue();
        threads.turnAll();
        assertThat(model.marksOutdatedProperty().get()).isFalse();
        assertThat(model.marksProperty().get()).isNotEqualTo(before);
    }

    @Test
    void a_mark_is_read_in_words() {
        assertThat(TurningWords.of(Lever.PRICE, Turning.at(5_100, true, 0, 9_000), Money.USD))
                .contains("loses money above USD 5,100");
        assertThat(TurningWords.of(Lever.VALUE, Turning.at(99, false, 0, 9_000), Money.USD))
                .contains("loses money below 99 %");
        assertThat(TurningWords.of(Lever.DAYS, Turning.at(999, true, 0, 120), Money.USD))
                .isEqualTo("does not turn here: always earns");
    }

    @Test
    void an_item_can_be_set_and_its_figures_follow_by_jeffreys_rule() {
        CarPicture.Seen seen = MODEL.seen().orElseThrow();
        ItemDial dial = seen.main().keySet().iterator().next();
        double sound = profitAt(dial, 0);
        double failed = profitAt(dial, 100);
        assertThat(profitAt(dial, 40)).isCloseTo(0.6 * sound + 0.4 * failed, within(0.02 * Math.abs(sound - failed)));
        CarPicture.Item item = new CarWork(Cars.GROUND).of(new Ask(seen.scenario().with(dial, 40), false),
                () -> false, n -> {}).seen().orElseThrow().items().stream()
                .filter(i -> i.id().equals(dial.item())).findFirst().orElseThrow();
        assertThat(item.yours()).isTrue();
        assertThat(item.now()).isCloseTo(0.4, within(1e-6));
    }

    @Test
    void while_dragging_rough_figures_are_near_the_exact_ones() {
        CarWork work = new CarWork(Cars.GROUND);
        Scenario first = Scenario.of(Cars.overheated());
        work.of(new Ask(first, false), () -> false, n -> {});
        CarPicture rough = work.of(new Ask(first.with(Lever.PRICE, 900), true), () -> false, n -> {});
        CarPicture exact = work.of(new Ask(first.with(Lever.PRICE, 900), false), () -> false, n -> {});
        assertThat(rough.rough()).isTrue();
        assertThat(exact.rough()).isFalse();
        double there = exact.seen().orElseThrow().appraisal().assessment().way(WayOut.REPAIR_AND_SELL).expectedProfit();
        assertThat(rough.seen().orElseThrow().appraisal().assessment().way(WayOut.REPAIR_AND_SELL).expectedProfit())
                .isCloseTo(there, within(100.0));
    }
}
