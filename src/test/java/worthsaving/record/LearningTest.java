package worthsaving.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.apache.commons.statistics.distribution.GammaDistribution;
import org.apache.commons.statistics.distribution.LogNormalDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.ShippedCatalogue;
import worthsaving.deal.DealTerms;
import worthsaving.deal.Term;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Money;
import worthsaving.quantity.Range;
import worthsaving.quantity.Seed;
import worthsaving.quantity.Source;

class LearningTest {

    private static final DealTerms TERMS = DealTerms.usual(Money.USD);

    /** The update of Murphy (2007), section 3, worked by hand: prior (0, 2, 3, 1), logarithms 1 and 3. */
    @Test
    void normal_inverse_gamma_update_by_hand() {
        LogNormal after = new LogNormal(0, 2, 3, 1).after(Math.exp(1), Math.exp(3));
        assertThat(after.mu()).isCloseTo(1, within(1e-12));
        assertThat(after.kappa()).isEqualTo(4);
        assertThat(after.alpha()).isEqualTo(4);
        assertThat(after.beta()).isCloseTo(1 + 1 + 2 * 2 * 4 / (2 * 4.0), within(1e-12));
    }

    /** Conjugate: one by one or all at once, the order does not matter. */
    @Test
    void updates_add_up() {
        LogNormal prior = LogNormal.of(TERMS.get(Term.SPEED), 4);
        LogNormal all = prior.after(90, 130, 155, 120);
        LogNormal one = prior.after(155).after(120, 90).after(130);
        assertThat(one.mu()).isCloseTo(all.mu(), within(1e-12));
        assertThat(one.beta()).isCloseTo(all.beta(), within(1e-12));
        assertThat(one.alpha()).isEqualTo(all.alpha());
    }

    /** The share of Gelman et al. (2013), section 2.4: uniform prior, 437 of 980, posterior mean 0.446. */
    @Test
    void beta_binomial_update_as_published() {
        Share after = new Share(1, 1).after(437, 980);
        assertThat(after.a()).isEqualTo(438);
        assertThat(after.b()).isEqualTo(544);
        assertThat(after.mean()).isCloseTo(0.446, within(5e-4));
        assertThat(after.quantile(0.025)).isCloseTo(0.415, within(5e-4));
        assertThat(after.quantile(0.975)).isCloseTo(0.477, within(5e-4));
    }

    /** Turning a line into a belief and back leaves its mean and spread about where they were. */
    @Test
    void a_belief_without_news_is_the_line_it_came_from() {
        for (Term term : List.of(Term.SPEED, Term.PARTS_PRICE, Term.DAYS_TO_SELL)) {
            Range line = TERMS.get(term);
            LogNormal belief = LogNormal.of(line, 4);
            double mean = line.mean();
            assertThat(belief.predictiveVariance()).isCloseTo(Math.log1p(line.variance() / mean / mean), within(1e-12));
            assertThat(belief.range().mean()).as(term.id()).isCloseTo(mean, within(0.1 * mean));
        }
    }

    @Test
    void beliefs_converge_to_the_truth() {
        SplittableRandom random = Seed.DEFAULT.derive("slow hands").generator();
        LogNormalDistribution slow = LogNormalDistribution.of(Math.log(130), 0.2);
        double[] truth = new double[5_000];
        Arrays.setAll(truth, i -> slow.inverseCumulativeProbability(Simulated.inside(random)));
        LogNormal prior = LogNormal.of(TERMS.get(Term.SPEED), 4);
        double last = Double.MAX_VALUE;
        for (int n : new int[] {0, 10, 100, 5_000}) {
            LogNormal belief = prior.after(Arrays.copyOf(truth, n));
            double error = Math.abs(Math.log(belief.median() / 130));
            assertThat(error).as("after " + n).isLessThan(last);
            last = error;
        }
        LogNormal taught = prior.after(truth);
        assertThat(taught.median()).isCloseTo(130, within(1.5));
        assertThat(taught.quantile(0.9)).isCloseTo(slow.inverseCumulativeProbability(0.9), within(3.0));
        Share share = Share.of(0.2, 20).after(3_500, 5_000);
        assertThat(share.mean()).isCloseTo(0.7, within(0.005));
    }

    /** With the right prior the next car falls anywhere in the forecast alike, at every stage of learning. */
    @Test
    void learning_stays_calibrated() {
        SplittableRandom random = Seed.DEFAULT.derive("hands of many").generator();
        double[] places = new double[600];
        for (int i = 0; i < places.length; i++) {
            // A mechanic drawn from the prior itself: variance inverse gamma, mean normal given the variance.
            LogNormal belief = new LogNormal(4.6, 4, 3, 0.05);
            double precision = GammaDistribution.of(3, 1 / 0.05)
                    .inverseCumulativeProbability(Simulated.inside(random));
            double sigma = Math.sqrt(1 / precision);
            double mu = 4.6 + sigma / 2 * normal(random);
            for (int car = 0; car < i % 5; car++) {
                belief = belief.after(Math.exp(mu + sigma * normal(random)));
            }
            places[i] = belief.cumulative(Math.exp(mu + sigma * normal(random)));
        }
        assertThat(Pit.ofValues(places).pValue().orElseThrow()).isGreaterThan(0.05);
    }

    private static double normal(SplittableRandom random) {
        return NormalDistribution.of(0, 1)
                .inverseCumulativeProbability(Simulated.inside(random));
    }

    @Test
    void lessons_move_the_lines_and_say_so() {
        List<FinishedCar> cars = cars(1.4, 1.4, 1.4);
        Learning learning = Learning.of(cars, TERMS, LearningSettings.USUAL);
        Lesson speed = learning.lessons().get(0);
        assertThat(speed.term()).isEqualTo(Term.SPEED);
        assertThat(speed.words()).isEqualTo("hours needed against the estimate: moved from 103 to 117 by 3 cars");
        assertThat(speed.prior()).contains("guess").contains("worth 4.0 cars");

        DealTerms learnt = learning.applyTo(TERMS);
        assertThat(learnt.mean(Term.SPEED)).isGreaterThan(TERMS.mean(Term.SPEED));
        assertThat(learnt.sources().get(Term.SPEED).label()).isEqualTo(Source.Label.MEASURED);
        assertThat(learnt.get(Term.PARTS_PRICE)).as("no car taught it").isEqualTo(TERMS.get(Term.PARTS_PRICE));
        assertThat(learnt.get(Term.DAYS_TO_SELL)).isEqualTo(TERMS.get(Term.DAYS_TO_SELL));
    }

    @Test
    void a_lesson_switched_off_moves_nothing() {
        LearningSettings off = LearningSettings.USUAL.with(Term.SPEED, false).withItems(false);
        Learning learning = Learning.of(cars(1.4, 1.5), TERMS, off);
        assertThat(learning.applyTo(TERMS)).isEqualTo(TERMS);
        assertThat(learning.lessons().get(0).words()).endsWith("(switched off)");
        assertThat(learning.items()).allMatch(i -> !i.on());
        assertThat(off.with(Term.SPEED, true).withItems(true)).isEqualTo(LearningSettings.USUAL);
    }

    @Test
    void lessons_of_no_car_are_not_in_force() {
        Learning nothing = Learning.of(List.of(), TERMS, LearningSettings.USUAL);
        assertThat(nothing.lessons()).isNotEmpty();
        assertThat(nothing.inForce()).isEqualTo(new Learning(List.of(), List.of()));
        assertThat(nothing.applyTo(TERMS)).isEqualTo(TERMS);
    }

    @Test
    void a_line_the_user_is_sure_of_is_left_alone() {
        DealTerms sure = TERMS.with(Term.SPEED, 100);
        assertThat(Learning.of(cars(2, 2), sure, LearningSettings.USUAL).lessons())
                .extracting(Lesson::term).containsExactly(Term.PARTS_PRICE, Term.DAYS_TO_SELL);
    }

    @Test
    void items_move_by_how_often_they_had_failed() {
        Learning learning = Learning.of(cars(1, 1, 1, 1, 1), TERMS, LearningSettings.USUAL);
        ItemLesson pack = learning.items().get(0);
        assertThat(pack.words()).isEqualTo("PACK: moved from 40 to 52 % by 5 cars, failed in 5");
        assertThat(pack.oddsFactor()).isCloseTo(0.52 / 0.48 / (0.4 / 0.6), within(1e-12));
    }

    /** Five water pumps forecast at 40 % and all failed: prior odds of the item by (0.52/0.48)/(0.4/0.6), of no other. */
    @Test
    void a_lesson_on_an_item_moves_its_prior_in_the_catalogue() {
        List<FinishedCar> cars = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            cars.add(new FinishedCar("C" + i, Map.of(), Map.of(), List.of(new Chance("WATER_PUMP", 0.4, true)),
                    OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty()));
        }
        Catalogue before = ShippedCatalogue.load();
        Learning learning = Learning.of(cars, TERMS, LearningSettings.USUAL);
        Catalogue after = learning.applyTo(before);
        double p = prior(before, "WATER_PUMP");
        double odds = p / (1 - p) * learning.items().get(0).oddsFactor();
        assertThat(prior(after, "WATER_PUMP")).isCloseTo(odds / (1 + odds), within(1e-12)).isGreaterThan(1.2 * p);
        assertThat(prior(after, "HEAD_GASKET")).isEqualTo(prior(before, "HEAD_GASKET"));
        assertThat(Learning.of(cars, TERMS, LearningSettings.USUAL.withItems(false)).applyTo(before)).isEqualTo(before);
    }

    private static double prior(Catalogue catalogue, String item) {
        return catalogue.itemsById().get(item).onset().prior(10, Distance.ofMiles(120_000)).value();
    }

    @Test
    void only_what_is_above_zero_teaches() {
        LogNormal belief = LogNormal.of(TERMS.get(Term.SPEED), 4);
        assertThat(belief.after()).isSameAs(belief);
        assertThatThrownBy(() -> belief.after(0)).hasMessageContaining("above zero");
        assertThatThrownBy(() -> new Share(1, 1).after(3, 2)).hasMessageContaining("3 of 2");
    }

    private static List<FinishedCar> cars(double... speeds) {
        List<FinishedCar> cars = new ArrayList<>();
        for (double speed : speeds) {
            cars.add(new FinishedCar("C" + cars.size(), Map.of(), Map.of(), List.of(new Chance("PACK", 0.4, true)),
                    OptionalDouble.of(speed), OptionalDouble.empty(), OptionalDouble.empty()));
        }
        return cars;
    }
}
