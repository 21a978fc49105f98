package worthsaving.desktop.car;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.catalog.Catalogue;
import worthsaving.deal.Assessment;
import worthsaving.deal.BuyerRule;
import worthsaving.deal.Term;
import worthsaving.desktop.car.CarWork.Ask;
import worthsaving.diagnosis.Diagnosis;
import worthsaving.quantity.Money;
import worthsaving.quantity.Source;
import worthsaving.ranking.Appraisal;
import worthsaving.ranking.Judge;
import worthsaving.ranking.JudgeSettings;
import worthsaving.ranking.Judged;
import worthsaving.ranking.Preparation;
import worthsaving.ranking.ValueSource;
import worthsaving.repair.Worker;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation.Sight;
import worthsaving.vehicle.Vehicle;

/** The screen's figures against those of the core for the same case, settings and seed. */
class CarWorkTest {

    private final CarWork work = new CarWork(Cars.GROUND);
    private final Scenario first = Scenario.of(Cars.overheated());
    private final JudgeSettings usual = Cars.GROUND.settings();

    private Appraisal shown(Scenario scenario) {
        return work.of(new Ask(scenario, false), () -> false, n -> {}).seen().orElseThrow().appraisal();
    }

    private static Appraisal core(
            Catalogue catalogue, ValueSource values, JudgeSettings settings, Listing listing, Optional<Money> price) {
        Preparation prepared = new Judge(catalogue, values, settings).prepare(listing);
        return ((Preparation.Ready) prepared).listing().appraise(settings.terms(), settings.rule(), price);
    }

    private Appraisal judged(Scenario scenario) {
        return ((Judged.Done) new Judge(Cars.GROUND.catalogue(), Cars.GROUND.values(), usual)
                .judge(scenario.listing())).appraisal();
    }

    private static void same(Appraisal shown, Appraisal core) {
        assertThat(shown.verdict()).isEqualTo(core.verdict());
        assertThat(shown.checks()).isEqualTo(core.checks());
        assertThat(shown.value().mean()).isEqualTo(core.value().mean());
        Assessment a = shown.assessment();
        Assessment b = core.assessment();
        assertThat(a.mostToPay()).isEqualTo(b.mostToPay());
        for (int i = 0; i < a.ways().size(); i++) {
            assertThat(a.ways().get(i).expectedProfit()).isEqualTo(b.ways().get(i).expectedProfit());
            assertThat(a.ways().get(i).chanceOfLoss()).isEqualTo(b.ways().get(i).chanceOfLoss());
            assertThat(a.ways().get(i).days().mean()).isEqualTo(b.ways().get(i).days().mean());
        }
    }

    private JudgeSettings expected(Lever lever, double value) {
        return switch (lever) {
            case TARGET -> usual.withRule(BuyerRule.of(Money.usd(value), usual.rule().mostChanceOfLoss().value()));
            case LOSS -> usual.withRule(BuyerRule.of(usual.rule().targetProfit(), value / 100));
            case DAYS -> usual.withTerms(usual.terms().with(Term.DAYS_TO_SELL, usual.terms().get(Term.DAYS_TO_SELL)
                    .times(value / usual.terms().get(Term.DAYS_TO_SELL).mode()), Source.user()));
            case HOURLY -> {
                JudgeSettings hourly = usual.withHourly(Money.usd(value));
                yield hourly.withTerms(hourly.terms().with(Term.OWN_HOURLY, value));
            }
            case SPEED -> {
                Worker.OwnHands own = (Worker.OwnHands) usual.workshop().worker();
                yield usual.withWorkshop(usual.workshop().withWorker(
                        new Worker.OwnHands(own.hourly(), value / 100, own.firstTime(), own.done())));
            }
            default -> usual;
        };
    }

    @Test
    void with_no_lever_moved_it_shows_what_the_core_says() {
        same(shown(first), judged(first));
    }

    /** Each lever is moved after the car was shown once, so that what is kept between edits is tried too. */
    @ParameterizedTest
    @CsvSource({"PRICE,700", "TARGET,400", "LOSS,60", "DAYS,60", "HOURLY,12", "SPEED,180", "VALUE,120", "PARTS,150"})
    void each_lever_does_what_the_same_setting_does(Lever lever, double value) {
        shown(first);
        Scenario moved = first.with(lever, value);
        Catalogue catalogue = lever == Lever.PARTS
                ? Cars.GROUND.catalogue().withPartPrices(value / 100) : Cars.GROUND.catalogue();
        ValueSource values = lever == Lever.VALUE ? Cars.GROUND.values().times(value / 100) : Cars.GROUND.values();
        Optional<Money> price = lever == Lever.PRICE ? Optional.of(Money.usd(value)) : first.listing().ask().get();
        same(shown(moved), core(catalogue, values, expected(lever, value), first.listing(), price));
        same(shown(first), judged(first));
    }

    @Test
    void a_finding_moves_the_chances_as_the_diagnosis_says() {
        shown(first);
        Scenario moved = first.seen("WHITE_SMOKE_SWEET", Sight.PRESENT);
        CarPicture.Seen seen = work.of(new Ask(moved, false), () -> false, n -> {}).seen().orElseThrow();
        Diagnosis diagnosis = judged(moved).diagnosis();
        assertThat(seen.items()).isNotEmpty();
        for (CarPicture.Item item : seen.items()) {
            assertThat(item.now()).isEqualTo(diagnosis.belief(item.id()).posterior().value());
            assertThat(item.before()).isEqualTo(diagnosis.belief(item.id()).prior().value());
        }
        CarPicture.Item gasket = seen.items().stream().filter(i -> i.id().equals("HEAD_GASKET")).findFirst()
                .orElseThrow();
        assertThat(gasket.now()).isGreaterThan(gasket.before());
        assertThat(gasket.pulls()).anySatisfy(pull -> {
            assertThat(pull.seen()).isEqualTo(Sight.PRESENT);
            assertThat(pull.logRatio()).isPositive();
        });
        assertThat(seen.stories()).isNotEmpty()
                .allSatisfy(s -> assertThat(s.probability()).isBetween(0.0, 1.0));
    }

    @Test
    void the_sellers_word_is_shown_as_his() {
        CarPicture.Seen seen = work.of(new Ask(first, false), () -> false, n -> {}).seen().orElseThrow();
        List<CarPicture.Pull> pulls = seen.items().stream()
                .filter(i -> i.id().equals("WATER_PUMP")).findFirst().orElseThrow().pulls();
        assertThat(pulls).anySatisfy(p -> assertThat(p.seller()).isTrue());
    }

    @Test
    void the_quote_adds_up_to_the_plan() {
        CarPicture.Seen seen = work.of(new Ask(first, false), () -> false, n -> {}).seen().orElseThrow();
        assertThat(seen.quote().orElseThrow().mean().amount())
                .isCloseTo(seen.appraisal().likelyPlan().orElseThrow().meanCost().amount(), within(0.01));
    }

    @Test
    void a_car_that_cannot_be_judged_says_why_and_the_next_one_is_judged() {
        Scenario nothing = Scenario.of(new Listing("T2",
                Vehicle.builder().build(), Fact.unknown(),
                first.listing().seen(), Fact.unknown(), Exposure.UNKNOWN,
                List.of(), "", ""));
        CarPicture picture = work.of(new Ask(nothing, false), () -> false, n -> {});
        assertThat(picture.seen()).isEmpty();
        assertThat(picture.refused().map(Judged.Refused::mend)).isEqualTo(Optional.of("enter at least one of them"));
        assertThat(work.of(new Ask(first, false), () -> false, n -> {}).seen()).isPresent();
    }
}
