package worthsaving.inspection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FindingKind;
import worthsaving.catalog.ShippedCatalogue;
import worthsaving.deal.Assessment;
import worthsaving.deal.BuyerRule;
import worthsaving.deal.DealCase;
import worthsaving.deal.DealEngine;
import worthsaving.deal.DealTerms;
import worthsaving.deal.Labour;
import worthsaving.deal.PatternProfit;
import worthsaving.deal.WayOut;
import worthsaving.diagnosis.Diagnosis;
import worthsaving.diagnosis.Evidence;
import worthsaving.diagnosis.FailureNetwork;
import worthsaving.diagnosis.Likelihood;
import worthsaving.diagnosis.PatternSettings;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Money;
import worthsaving.quantity.Range;
import worthsaving.repair.RepairPlanner;
import worthsaving.repair.Workshop;
import worthsaving.valuation.ValueForecast;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Powertrain;
import worthsaving.vehicle.TitleBrand;
import worthsaving.vehicle.Vehicle;

class NextChecksTest {

    private static final Catalogue CATALOGUE = ShippedCatalogue.load();
    private static final Vehicle CAR = Vehicle.builder()
            .year(Fact.known(2014))
            .odometer(Fact.known(Distance.ofMiles(104_000)))
            .powertrain(new Powertrain(Fact.known(Powertrain.Engine.PETROL_TURBO),
                    Fact.known(Powertrain.TimingDrive.CHAIN), Fact.known(Powertrain.Gearbox.AUTOMATIC),
                    Fact.known(Powertrain.Drive.FRONT)))
            .build();
    private static final DealTerms TERMS = DealTerms.from(CATALOGUE.moneyLines(), Money.USD);
    private static final BuyerRule RULE = BuyerRule.of(Money.usd(500), 0.4);
    private static final Diagnosis DIAGNOSIS = FailureNetwork
            .of(CATALOGUE, CAR, Exposure.UNKNOWN, java.time.LocalDate.of(2026, 1, 1))
            .diagnose(Evidence.NONE.withFinding("OIL_LIGHT_ON", Likelihood.TRUE));

    private static Assessment assess(double ask) {
        RepairPlanner planner = new RepairPlanner(CATALOGUE, Workshop.ownHands(Money.usd(35)));
        ValueForecast value = new ValueForecast(
                new Range(6_000, 7_500, 9_000).asPert(), Money.USD, List.of(), List.of(), List.of(), "invented");
        DealCase deal = new DealCase(DIAGNOSIS.patterns(PatternSettings.USUAL.withPoints(1024)),
                failed -> planner.find(failed).found(), Labour.own(Money.usd(35)), value, 20, TitleBrand.CLEAN,
                CATALOGUE.itemsById(), Money.usd(1_500), Optional.of(Money.usd(ask)),
                DealCase.Method.USUAL.withPoints(1024), Map.of());
        return DealEngine.assess(deal, TERMS, RULE, Optional.of(Money.usd(ask)));
    }

    private static List<CheckValue> rank(Assessment assessment, CheckSettings settings) {
        return new NextChecks(CATALOGUE, settings).rank(DIAGNOSIS, assessment);
    }

    private static CheckSettings free() {
        return CheckSettings.beforeBuying(CATALOGUE.toolsById().keySet(), Money.usd(0));
    }

    private static CheckValue of(List<CheckValue> values, String finding) {
        return values.stream().filter(v -> v.finding().id().equals(finding)).findFirst().orElseThrow();
    }

    /** The definition, summed the long way round over every pattern of the assessment. */
    @Test
    void equals_the_definition_of_the_expected_value_of_sample_information() {
        Assessment assessment = assess(3_000);
        CheckValue filter = of(rank(assessment, free()), "FILTER_METAL");
        double[][] sums = new double[3][WayOut.values().length + 1];
        for (PatternProfit p : assessment.patternProfits()) {
            double chance = DIAGNOSIS.network().findingChance("FILTER_METAL", p.pattern());
            double[] shares = {p.weight(), p.weight() * chance, p.weight() * (1 - chance)};
            for (int s = 0; s < 3; s++) {
                for (WayOut way : WayOut.values()) {
                    sums[s][way.ordinal()] += shares[s] * (p.profit()[way.ordinal()] - 500);
                }
                sums[s][WayOut.values().length] += shares[s];
            }
        }
        double gross = gain(sums[1]) + gain(sums[2]) - gain(sums[0]);

        assertThat(gross).isPositive();
        assertThat(filter.gross().amount()).isCloseTo(gross, within(1e-6));
        assertThat(filter.chancePresent().value()).isCloseTo(sums[1][WayOut.values().length], within(1e-9));
    }

    private static double gain(double[] sums) {
        double best = 0;
        for (WayOut way : EnumSet.complementOf(EnumSet.of(WayOut.WALK_AWAY))) {
            best = Math.max(best, sums[way.ordinal()]);
        }
        return best;
    }

    /** Reweighted draws against the network's own prediction: sampling error of 1,024 quasi-random points. */
    @Test
    void foresees_each_finding_as_often_as_the_network_does() {
        for (CheckValue v : rank(assess(3_000), free())) {
            assertThat(v.chancePresent().value())
                    .as(v.finding().id())
                    .isCloseTo(DIAGNOSIS.predictive(v.finding().id()).value(), within(0.02));
        }
    }

    @Test
    void information_is_never_worth_less_than_nothing_nor_more_than_knowing_all() {
        Assessment assessment = assess(3_000);
        double everything = assessment.patternProfits().stream()
                .mapToDouble(p -> p.weight() * gain(shifted(p.profit())))
                .sum() - gainNow(assessment);

        for (CheckValue v : rank(assessment, free())) {
            assertThat(v.gross().amount()).as(v.finding().id()).isBetween(0.0, everything + 1e-6);
        }
    }

    private static double[] shifted(double[] profit) {
        double[] out = profit.clone();
        for (int i = 0; i < out.length; i++) {
            out[i] -= 500;
        }
        return out;
    }

    private static double gainNow(Assessment assessment) {
        double[] sums = new double[WayOut.values().length];
        for (PatternProfit p : assessment.patternProfits()) {
            for (int i = 0; i < sums.length; i++) {
                sums[i] += p.weight() * (p.profit()[i] - 500);
            }
        }
        return gain(sums);
    }

    @Test
    void no_check_is_worth_anything_where_nothing_can_change_the_decision() {
        assertThat(rank(assess(20_000), free())).allMatch(v -> v.gross().amount() == 0 && !v.decides());
    }

    @Test
    void what_is_known_is_not_offered_and_what_does_damage_only_when_allowed() {
        Assessment assessment = assess(3_000);
        List<String> usual = rank(assessment, free()).stream().map(v -> v.finding().id()).toList();
        List<String> bold = rank(assessment, free().withDamaging(true)).stream().map(v -> v.finding().id()).toList();

        assertThat(usual).doesNotContain("OIL_LIGHT_ON", "KNOCK_DEEP");
        assertThat(bold).contains("KNOCK_DEEP").hasSizeGreaterThan(usual.size());
        assertThat(rank(assessment, free())).noneMatch(v -> v.finding().stage() == FindingKind.Stage.OPENED_UP);
    }

    @Test
    void minutes_and_missing_tools_are_part_of_the_cost_and_the_best_net_value_comes_first() {
        List<CheckValue> values = rank(assess(3_000), CheckSettings.beforeBuying(java.util.Set.of(), Money.usd(60)));
        CheckValue filter = of(values, "FILTER_METAL");
        FindingKind kind = filter.finding();
        Map<String, worthsaving.catalog.Tool> tools = CATALOGUE.toolsById();
        double expected = kind.cost().amount() + 60 * kind.time().value()
                + kind.tools().stream().mapToDouble(t -> tools.get(t).price().mean().amount()).sum();

        assertThat(filter.cost().amount()).isCloseTo(expected, within(1e-9));
        assertThat(values).isSortedAccordingTo(
                Comparator.comparing(CheckValue::net).reversed().thenComparing(v -> v.finding().id()));
    }

    /** Two checks together, reckoned once more from the patterns with costs and a decision put up here. */
    @Test
    void looking_two_steps_ahead_equals_the_plan_over_the_same_patterns() {
        CheckSettings settings = CheckSettings.beforeBuying(CATALOGUE.toolsById().keySet(), Money.usd(20));
        int pairs = 0;
        for (double ask = 1_000; ask <= 5_000; ask += 500) {
            Assessment assessment = assess(ask);
            List<PatternProfit> profits = assessment.patternProfits();
            double[] prior = profits.stream().mapToDouble(PatternProfit::weight).toArray();
            double total = java.util.Arrays.stream(prior).sum();
            double[][] payoffs = new double[WayOut.values().length][prior.length];
            for (int s = 0; s < prior.length; s++) {
                prior[s] /= total;
                for (WayOut way : EnumSet.complementOf(EnumSet.of(WayOut.WALK_AWAY))) {
                    payoffs[way.ordinal()][s] = profits.get(s).profit()[way.ordinal()] - 500;
                }
            }
            List<TwoStep.Check> open = rank(assessment, settings).stream()
                    .map(v -> new TwoStep.Check(v.finding().id(),
                            profits.stream().mapToDouble(p -> DIAGNOSIS.network()
                                    .findingChance(v.finding().id(), p.pattern())).toArray(),
                            v.cost().amount()))
                    .toList();
            Optional<TwoStep.Plan> plan = new TwoStep(new DecisionProblem(prior, payoffs), open, 16).best()
                    .filter(p -> p.ifPresent().isPresent() || p.ifAbsent().isPresent());
            Optional<LookAhead.Pair> pair = new NextChecks(CATALOGUE, settings).lookAhead(DIAGNOSIS, assessment);

            assertThat(pair.isPresent()).as("ask " + ask).isEqualTo(plan.isPresent());
            if (pair.isPresent()) {
                pairs++;
                assertThat(pair.get().net().amount()).isCloseTo(plan.get().net(), within(1e-6));
                assertThat(pair.get().first().id()).isEqualTo(plan.get().first());
                assertThat(pair.get().ifPresent().map(FindingKind::id)).isEqualTo(plan.get().ifPresent());
                assertThat(pair.get().ifAbsent().map(FindingKind::id)).isEqualTo(plan.get().ifAbsent());
            }
        }
        assertThat(pairs).as("asks at which a pair of checks pays").isPositive();
    }

    @Test
    void looking_ahead_leaves_out_what_is_known_and_what_does_damage() {
        Optional<LookAhead.Pair> pair = new NextChecks(CATALOGUE, free()).lookAhead(DIAGNOSIS, assess(3_000));

        assertThat(pair).isPresent();
        assertThat(List.of(pair.get().first(), pair.get().ifPresent().or(pair.get()::ifAbsent).orElseThrow()))
                .noneMatch(f -> f.canDoDamage() || f.id().equals("OIL_LIGHT_ON"));
    }
}
