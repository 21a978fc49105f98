package worthsaving.teardown;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.ShippedCatalogue;
import worthsaving.deal.DealCase;
import worthsaving.diagnosis.PatternSettings;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.quantity.Seed;
import worthsaving.ranking.Judge;
import worthsaving.ranking.JudgeSettings;
import worthsaving.ranking.Preparation;
import worthsaving.ranking.PreparedListing;
import worthsaving.ranking.SampleLot;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;

/** On the invented car L01 of the sample lot, at an invented value. */
class GoStopTest {

    private static final Catalogue CATALOGUE = ShippedCatalogue.load();
    private static final JudgeSettings SETTINGS = settings();
    private static final Judge JUDGE = new Judge(CATALOGUE, SampleLot.byAge(), SETTINGS);
    private static final Listing CAR = SampleLot.read(CATALOGUE).stream()
            .filter(l -> l.id().equals("L01")).findFirst().orElseThrow();
    private static final Journal COVER_OFF = Journal.EMPTY
            .with(new Entry.Opened("cover", "FRONT_COVER_OFF", ""))
            .with(item("TIM_CHAIN_WORN", true));

    private static JudgeSettings settings() {
        JudgeSettings usual = JudgeSettings.usual(CATALOGUE, Seed.DEFAULT);
        return new JudgeSettings(usual.workshop(), usual.terms(), usual.rule(), usual.trust(), usual.checks(),
                DealCase.Method.USUAL.withPoints(512), PatternSettings.USUAL.withPoints(512), 30);
    }

    static Entry item(String id, boolean failed) {
        return new Entry.Seen("", failed ? Observation.present(id) : Observation.absent(id), "");
    }

    private static PreparedListing prepared(Journal journal) {
        return ((Preparation.Ready) JUDGE.prepare(journal.addedTo(CAR))).listing();
    }

    private static Advice advise(Journal journal) {
        return new GoStop(CATALOGUE, SETTINGS, TeardownTerms.USUAL).advise(prepared(journal), journal);
    }

    private static OpenCar car(Journal journal, double closingShare) {
        return new OpenCar(CATALOGUE, SETTINGS, new TeardownTerms(closingShare, Hours.of(.25)), prepared(journal),
                journal);
    }

    @Test
    void sunk_money_is_listed_and_never_counted() {
        Advice before = advise(COVER_OFF);
        Advice after = advise(COVER_OFF
                .with(new Entry.Paid("bought", "price", Money.usd(9_000), ""))
                .with(new Entry.Worked("cover", "taking it off", Hours.of(40), "")));
        assertThat(after.spent().receipts()).isEqualTo(Money.usd(9_000));
        assertThat(after.spent().total().amount()).isCloseTo(
                9_000 + 40 * SETTINGS.workshop().worker().hourly().amount(), within(1e-9));
        assertThat(after.best()).isEqualTo(before.best());
        assertThat(after.options()).isEqualTo(before.options());
    }

    @Test
    void the_best_is_the_first_option_or_better_and_no_end_beats_it() {
        Advice advice = advise(COVER_OFF);
        assertThat(advice.best().worth().amount())
                .isCloseTo(advice.options().get(0).move().worth().amount(), within(1e-6));
        assertThat(advice.options()).extracting(o -> o.move().kind())
                .contains(Move.Kind.STOP, Move.Kind.FINISH);
        assertThat(advice.options()).isSortedAccordingTo(
                (a, b) -> b.move().worth().compareTo(a.move().worth()));
        assertThat(advice.chanceStopIsBetter()).isBetween(0.0, 1.0);
    }

    /** With nothing to be paid for closing, what is open can only make finishing cheaper. */
    @Test
    void open_access_costs_nothing_more_but_closing() {
        Journal found = Journal.EMPTY.with(item("TIM_CHAIN_WORN", true));
        OpenCar closed = car(found, 0);
        OpenCar open = car(COVER_OFF, 0);
        double saved = closed.costToFinish().orElseThrow().mean() - open.costToFinish().orElseThrow().mean();
        assertThat(saved).isPositive();
        assertThat(open.closing()).isEqualTo(Hours.NONE);
        OpenCar half = car(COVER_OFF, 0.5);
        assertThat(half.closing().value()).isPositive();
        assertThat(half.open).contains("FRONT_COVER_OFF", "BELT_AND_MOUNT_OFF", "VALVE_COVER_OFF", "UNDERTRAY_OFF");
        double finish = end(half, "FINISH")[0] + half.closingCost().amount();
        assertThat(finish).isGreaterThanOrEqualTo(end(open, "FINISH")[0] - 1e-6);
    }

    private static double[] end(OpenCar car, String id) {
        return car.ends(List.of()).stream().filter(e -> e.id().equals(id)).findFirst().orElseThrow().money();
    }

    @Test
    void a_dead_engine_found_makes_the_unit_the_only_remedy_and_is_a_reason_to_stop() {
        Advice dead = advise(COVER_OFF.with(item("ENG_DEAD", true)));
        Advice alive = advise(COVER_OFF);
        assertThat(dead.chanceOfUnit()).isGreaterThan(.95);
        assertThat(alive.chanceOfUnit()).isLessThan(.5);
        assertThat(dead.best().worth()).isLessThan(alive.best().worth());
        assertThat(dead.costToFinish().orElseThrow().mean()).isGreaterThan(alive.costToFinish().orElseThrow().mean());
    }

    @Test
    void what_is_mended_or_bought_makes_finishing_cheaper() {
        double bare = advise(COVER_OFF).costToFinish().orElseThrow().mean();
        double part = advise(COVER_OFF.with(new Entry.PartBought("", "TIM_CHAIN_WORN", Money.usd(300), "")))
                .costToFinish().orElseThrow().mean();
        Advice mended = advise(COVER_OFF.with(new Entry.Mended("", "TIM_CHAIN_WORN", "")));
        assertThat(part).isLessThan(bare);
        assertThat(mended.costToFinish().orElseThrow().mean()).isLessThan(part);
        assertThat(mended.order().places()).noneMatch(p -> p.item().equals("TIM_CHAIN_WORN"));
    }

    @Test
    void a_stop_rule_says_what_it_says() {
        Advice advice = advise(COVER_OFF);
        assertThat(advice.rules()).isNotEmpty();
        for (Advice.Rule rule : advice.rules()) {
            assertThat(rule.then() == Move.Kind.STOP).isEqualTo(rule.stop().compareTo(rule.goOn()) >= 0);
            assertThat(rule.chance()).isBetween(.005, .995);
        }
    }

    @Test
    void the_search_order_is_never_worse_than_the_plain_one() {
        Advice.SearchOrder order = advise(Journal.EMPTY).order();
        assertThat(order.places()).isNotEmpty();
        assertThat(order.places().stream().mapToDouble(Advice.Place::chance).sum()).isCloseTo(1, within(1e-9));
        assertThat(order.expectedHours()).isLessThanOrEqualTo(order.plainHours().orElseThrow() + 1e-9);
    }

    @Test
    void risky_tests_are_left_out_unless_allowed_and_tests_of_a_whole_car_once_it_is_open() {
        Set<String> risky = Set.copyOf(CATALOGUE.findings().stream().filter(f -> f.canDoDamage())
                .map(f -> f.id()).toList());
        assertThat(advise(Journal.EMPTY).options()).noneMatch(o -> risky.contains(o.move().id()));
        Set<String> all = CATALOGUE.findingsById().keySet();
        assertThat(advise(COVER_OFF).options()).noneMatch(o -> all.contains(o.move().id()));
    }

    @Test
    void items_of_the_shipped_catalogue_are_found_in_the_advice() {
        assertThat(CATALOGUE.items()).extracting(FailureItem::id).contains("TIM_CHAIN_WORN", "ENG_DEAD");
        assertThat(advise(COVER_OFF).cautions()).anyMatch(c -> c.contains("do not crank"));
    }
}
