package worthsaving.ranking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static worthsaving.ranking.Lots.listing;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.deal.CashLine;
import worthsaving.deal.KeeperGuesses;
import worthsaving.deal.KeeperOption;
import worthsaving.deal.Scenario;
import worthsaving.deal.Term;
import worthsaving.quantity.Money;
import worthsaving.quantity.Probability;
import worthsaving.quantity.Range;
import worthsaving.repair.RepairPlan;
import worthsaving.valuation.ValueForecast;
import worthsaving.vehicle.Observation;

/** An invented car with a seized engine, worth 8,000 running whatever its age. */
class RescuerTest {

    private static final Offset<Double> CENT = within(0.005);
    private static final Appraisal DEAD = Lots.appraise(listing("A", 900, Observation.present("ENG_DEAD"),
            Observation.present("NO_CRANK")));
    private static final Rescuer RESCUER = new Rescuer(Lots.CATALOGUE, Lots.EIGHT_THOUSAND, Lots.SETTINGS);
    private static final RescueTerms THREE_YEARS = RescueTerms.of(3, 12_000).withAsItStands(Money.usd(900));

    private static KeeperOption option(Rescue rescue, String name) {
        return rescue.plan().options().stream().filter(o -> o.name().equals(name)).findFirst().orElseThrow();
    }

    private static double line(KeeperOption option, String name) {
        return option.upfront().stream().filter(l -> l.name().equals(name)).mapToDouble(l -> l.amount().amount()).sum();
    }

    @Test
    void every_way_is_there_and_adds_up_from_its_lines() {
        Rescue rescue = RESCUER.compare(DEAD, THREE_YEARS.withQuote(Money.usd(7_400)));

        assertThat(rescue.plan().options()).extracting(KeeperOption::name).containsExactly("pay the quote",
                "independent shop", "independent shop, no used unit", "own hands", "sell as it stands, buy a like car");
        KeeperOption quote = option(rescue, "pay the quote");
        double later = KeeperGuesses.otherRepairs(DEAD.listing().vehicle().ageYears(Lots.TODAY).orElseThrow(), 36, Money.usd(130))
                .amount();
        assertThat(quote.upfrontTotal().amount()).isCloseTo(7_400 + 900, CENT);
        assertThat(quote.netCost().amount())
                .isCloseTo(8_300 + quote.repeat().orElseThrow().expected().amount() + later - 8_000, CENT);
        assertThat(rescue.plan().perMile(quote).amount()).isCloseTo(quote.netCost().amount() / 36_000, within(1e-9));
        assertThat(rescue.plan().perYear(quote).amount()).isCloseTo(quote.netCost().amount() / 3, CENT);
        assertThat(rescue.replace().upfront()).extracting(CashLine::name).contains("unknown faults");
        assertThat(line(rescue.replace(), "price with tax and fees"))
                .isCloseTo(Lots.SETTINGS.terms().priceTerms().costOf(Money.usd(8_000)).amount(), CENT);
    }

    @Test
    void what_the_repair_leaves_alone_is_told_with_its_chance_and_cost() {
        Rescue rescue = RESCUER.compare(DEAD, THREE_YEARS);
        Map<String, Probability> needed =
                new Holding(3, 12_000).needed(Lots.CATALOGUE, DEAD.listing(), DEAD.diagnosis());

        assertThat(rescue.left()).extracting(l -> l.item().id()).doesNotContain("ENG_DEAD").doesNotHaveDuplicates();
        assertThat(rescue.left()).extracting(RemainingLife::expected).isSortedAccordingTo(Comparator.reverseOrder());
        for (RemainingLife left : rescue.left()) {
            String id = left.item().id();
            assertThat(left.chance().value()).isCloseTo(
                    needed.get(id).value() - DEAD.diagnosis().belief(id).posterior().value(), within(1e-12));
            assertThat(left.cost().amount()).isPositive();
        }
        assertThat(rescue.expectedMeanwhile().amount()).isCloseTo(
                rescue.left().stream().mapToDouble(l -> l.chance().value() * l.cost().amount()).sum(), CENT);
    }

    @ParameterizedTest
    @CsvSource({"0", "3000", "12000"})
    void at_the_break_even_quote_both_cost_the_same_whatever_was_quoted(double quoted) {
        Rescue first = RESCUER.compare(DEAD, THREE_YEARS.withQuote(Money.usd(quoted)));
        Rescue again = RESCUER.compare(DEAD, THREE_YEARS.withQuote(first.breakEvenQuote()));
        Rescue best = RESCUER.compare(DEAD, THREE_YEARS.withQuote(first.breakEvenAgainstBest()));

        assertThat(first.breakEvenQuote().amount()).isPositive();
        assertThat(option(again, "pay the quote").netCost().amount())
                .isCloseTo(again.replace().netCost().amount(), CENT);
        assertThat(option(best, "pay the quote").netCost().amount())
                .isCloseTo(best.plan().cheapest().netCost().amount(), CENT);
        assertThat(best.margin().amount()).isCloseTo(0, CENT);
    }

    @Test
    void without_a_quote_that_way_is_missing_and_the_break_even_quote_is_the_same() {
        Rescue none = RESCUER.compare(DEAD, THREE_YEARS);

        assertThat(none.plan().options()).extracting(KeeperOption::name).doesNotContain("pay the quote");
        assertThat(none.breakEvenQuote().amount()).isCloseTo(
                RESCUER.compare(DEAD, THREE_YEARS.withQuote(Money.usd(5_000))).breakEvenQuote().amount(), CENT);
    }

    @Test
    void own_hands_cost_less_than_a_shop_and_a_used_engine_less_than_none() {
        Rescue rescue = RESCUER.compare(DEAD, THREE_YEARS);

        assertThat(option(rescue, "own hands").netCost()).isLessThan(option(rescue, "independent shop").netCost());
        assertThat(option(rescue, "independent shop").netCost())
                .isLessThan(option(rescue, "independent shop, no used unit").netCost());
    }

    @Test
    void unknown_faults_of_the_replacement_count_at_their_share() {
        double none = RESCUER.compare(DEAD, THREE_YEARS.withUnknownFaults(0)).replace().netCost().amount();
        double half = RESCUER.compare(DEAD, THREE_YEARS.withUnknownFaults(.5)).replace().netCost().amount();
        double all = RESCUER.compare(DEAD, THREE_YEARS.withUnknownFaults(1)).replace().netCost().amount();

        assertThat(all).isGreaterThan(none + 500);
        assertThat(half).isCloseTo((none + all) / 2, CENT);
    }

    @Test
    void another_car_brings_its_price_its_age_and_its_running_costs() {
        RescueTerms.Other newer = new RescueTerms.Other(Lots.car(2022), Money.usd(12_500), Money.usd(240));
        Rescue rescue = RESCUER.compare(DEAD, THREE_YEARS.withOther(newer));

        assertThat(rescue.replace().name()).contains("the other car");
        assertThat(rescue.replace().running()).extracting(l -> l.amount().amount()).containsExactly(720.0);
        assertThat(rescue.replace().otherRepairs()).isLessThan(RESCUER.compare(DEAD, THREE_YEARS).replace()
                .otherRepairs());
        assertThat(rescue.replace().endValue().amount()).isCloseTo(12_500, CENT);
    }

    @Test
    void every_assumption_is_labelled_and_what_was_given_is_none() {
        List<String> given = RESCUER.compare(DEAD, THREE_YEARS).assumptions().stream()
                .map(Rescue.Assumption::text).toList();
        List<String> guessed = RESCUER.compare(DEAD, RescueTerms.of(3, 12_000)).assumptions().stream()
                .map(Rescue.Assumption::text).toList();

        assertThat(given).noneMatch(t -> t.startsWith("fetches"));
        assertThat(guessed).anyMatch(t -> t.startsWith("fetches 2,400 as it stands: 30 %"));
        assertThat(guessed).anyMatch(t -> t.contains("unplanned repairs")).anyMatch(t -> t.contains("unknown faults"));
    }

    @Test
    void bad_terms_are_refused() {
        assertThatThrownBy(() -> RescueTerms.of(0, 12_000)).hasMessageContaining("years");
        assertThatThrownBy(() -> RescueTerms.of(3, 0)).hasMessageContaining("miles a year");
        assertThatThrownBy(() -> THREE_YEARS.withUnknownFaults(2)).hasMessageContaining("0 to 1");
        assertThat(THREE_YEARS.quoteAgain()).isEqualTo(Probability.of(.03));
    }

    /** Worth 12,000 new and a fifth less every year, whatever the miles. */
    private static final ValueSource BY_AGE = (car, on) -> {
        double mean = 12_000 * Math.pow(0.8, car.ageYears(on).orElse(10));
        return new ValueForecast(new Range(mean, mean, mean).asPert(), Money.USD, List.of(), List.of(), List.of(), "by age");
    };

    private static Rescue aging(RescueTerms terms) {
        Judge judge = new Judge(Lots.CATALOGUE, BY_AGE, Lots.SETTINGS);
        Appraisal dead = ((Judged.Done) judge.judge(DEAD.listing())).appraisal();
        return new Rescuer(Lots.CATALOGUE, BY_AGE, Lots.SETTINGS).compare(dead, terms);
    }

    @Test
    void both_cars_lose_what_the_years_take() {
        double now = BY_AGE.forecast(DEAD.listing().vehicle(), DEAD.listing().seen()).mean().amount();
        Rescue rescue = aging(THREE_YEARS);
        double after = now * Math.pow(0.8, 3);

        assertThat(option(rescue, "own hands").endValue().amount()).isCloseTo(after, CENT);
        assertThat(rescue.replace().endValue().amount()).isCloseTo(after, CENT);
        RescueTerms.Other newer = new RescueTerms.Other(Lots.car(2022), Money.usd(9_000), Money.usd(0));
        assertThat(aging(THREE_YEARS.withOther(newer)).replace().endValue().amount())
                .isCloseTo(9_000 * Math.pow(0.8, 3), CENT);
        double scrap = Lots.SETTINGS.terms().money(Term.JUNK_WHOLE).amount();
        assertThat(option(aging(RescueTerms.of(15, 12_000)), "own hands").endValue().amount())
                .isCloseTo(Math.max(scrap, now * Math.pow(0.8, 15)), CENT);
        assertThat(now * Math.pow(0.8, 15)).as("the case of less than scrap takes part").isLessThan(scrap);
    }

    @Test
    void a_repair_is_done_again_unless_every_job_holds() {
        RepairPlan plan = DEAD.likelyPlan().orElseThrow();
        double holds = plan.jobs().stream()
                .mapToDouble(j -> j.success().value() * (1 - j.comeback().value())).reduce(1, (a, b) -> a * b);
        Scenario.Repeat again = option(RESCUER.compare(DEAD, THREE_YEARS), "own hands").repeat().orElseThrow();

        assertThat(again.chance().value()).isCloseTo(1 - holds, within(1e-12)).isBetween(0.01, 0.9);
        assertThat(again.expected().amount()).isCloseTo(plan.comebackReserve().amount(), CENT);
    }

    @ParameterizedTest
    @CsvSource({"900", "7900"})
    void what_the_trade_says_of_a_quote_is_told_beside_the_sums(double quote) {
        double margin = Lots.CATALOGUE.moneyById().get("single_quote_margin").figure().mode() / 100;
        double alarm = Lots.CATALOGUE.moneyById().get("keeper_alarm").figure().mode() / 100;
        List<String> said = RESCUER.compare(DEAD, THREE_YEARS.withQuote(Money.usd(quote))).assumptions().stream()
                .map(Rescue.Assumption::text).filter(t -> t.startsWith("not in the sums")).toList();

        assertThat(said).hasSize(2);
        assertThat(said.get(0)).contains(String.format("by %.0f %% to %,d", 100 * margin, Math.round(quote * (1 + margin))));
        assertThat(said.get(1)).contains(String.format("above %.0f %%", 100 * alarm),
                String.format("this quote is %.0f %%", quote / 80))
                .endsWith(quote / 8_000 > alarm ? "so it would scrap" : "so it would mend");
        assertThat(alarm).isBetween(900.0 / 8_000, 7_900.0 / 8_000);
    }

    @Test
    void what_a_car_fetches_unmended_is_guessed_but_never_below_a_junk_yard() {
        double share = Lots.SETTINGS.terms().mean(Term.ASIS_SHARE) / 100;
        double scrap = Lots.SETTINGS.terms().money(Term.JUNK_WHOLE).amount();
        assertThat(RESCUER.compare(DEAD, RescueTerms.of(3, 12_000)).asItStands().amount()).isCloseTo(8_000 * share, CENT);
        ValueSource worthless = ValueSource.between(100, 200, Money.USD);
        Appraisal dead = ((Judged.Done) new Judge(Lots.CATALOGUE, worthless, Lots.SETTINGS).judge(DEAD.listing())).appraisal();
        assertThat(new Rescuer(Lots.CATALOGUE, worthless, Lots.SETTINGS).compare(dead, RescueTerms.of(3, 12_000)).asItStands()
                .amount()).isCloseTo(scrap, CENT);
    }

    @Test
    void a_like_car_is_said_to_run_as_dear_and_another_one_is_not() {
        assertThat(RESCUER.compare(DEAD, THREE_YEARS).assumptions()).extracting(Rescue.Assumption::text)
                .contains("insurance and fuel are the same for both cars")
                .anyMatch(t -> t.startsWith("the replacement costs 8,000 before tax, the value of a like running car"));
        RescueTerms.Other newer = new RescueTerms.Other(Lots.car(2022), Money.usd(12_500), Money.usd(240));
        assertThat(RESCUER.compare(DEAD, THREE_YEARS.withOther(newer)).assumptions()).extracting(Rescue.Assumption::text)
                .doesNotContain("insurance and fuel are the same for both cars")
                .anyMatch(t -> t.equals("the replacement costs 12,500 before tax"));
    }
}
