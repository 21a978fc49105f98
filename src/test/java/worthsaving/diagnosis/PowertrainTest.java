package worthsaving.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import worthsaving.catalog.Applicability;
import worthsaving.catalog.Catalogue;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Powertrain;
import worthsaving.vehicle.Powertrain.Drive;
import worthsaving.vehicle.Powertrain.Engine;
import worthsaving.vehicle.Powertrain.Gearbox;
import worthsaving.vehicle.Powertrain.TimingDrive;
import worthsaving.vehicle.Vehicle;

class PowertrainTest {

    private static Applicability only(
            EnumSet<Engine> engines, EnumSet<TimingDrive> timings, EnumSet<Gearbox> gearboxes, EnumSet<Drive> drives) {
        return new Applicability(engines, timings, gearboxes, drives);
    }

    private static final EnumSet<Engine> BURNS = EnumSet.complementOf(EnumSet.of(Engine.ELECTRIC));
    private static final EnumSet<TimingDrive> ANY_TIMING = EnumSet.allOf(TimingDrive.class);
    private static final EnumSet<Gearbox> ANY_GEARBOX = EnumSet.allOf(Gearbox.class);
    private static final EnumSet<Drive> ANY_DRIVE = EnumSet.allOf(Drive.class);

    private static final Catalogue CATALOGUE = new SmallCatalogue()
            .item("chain", 0.3, "", only(BURNS, EnumSet.of(TimingDrive.CHAIN), ANY_GEARBOX, ANY_DRIVE))
            .item("belt", 0.2, "", only(BURNS, EnumSet.of(TimingDrive.BELT), ANY_GEARBOX, ANY_DRIVE))
            .item("turbo", 0.2, "", only(
                    EnumSet.of(Engine.PETROL_TURBO, Engine.DIESEL), ANY_TIMING, ANY_GEARBOX, ANY_DRIVE))
            .item("clutch", 0.4, "", only(BURNS, ANY_TIMING, EnumSet.of(Gearbox.MANUAL), ANY_DRIVE))
            .item("transfer", 0.1, "", only(
                    EnumSet.allOf(Engine.class), ANY_TIMING, ANY_GEARBOX, EnumSet.of(Drive.ALL)))
            .item("cells", 0.3, "", only(
                    EnumSet.of(Engine.HYBRID, Engine.ELECTRIC), ANY_TIMING, ANY_GEARBOX, ANY_DRIVE))
            .item("battery", 0.25)
            .damage("chain", "turbo", 0.2)
            .damage("belt", "battery", 0.1)
            .finding("rattle", 0.05)
            .finding("no move", 0.02)
            .shows("chain", "rattle", 0.7)
            .shows("turbo", "rattle", 0.2)
            .shows("clutch", "no move", 0.8)
            .shows("transfer", "no move", 0.3)
            .shows("cells", "no move", 0.6)
            .shows("battery", "no move", 0.3)
            .build();

    private static final Evidence EVIDENCE = Evidence.NONE
            .withFinding("rattle", Likelihood.TRUE)
            .withFinding("no move", new Likelihood(0.9, 0.2));

    private static FailureNetwork network(Fact<Engine> e, Fact<TimingDrive> t, Fact<Gearbox> g, Fact<Drive> d) {
        Vehicle car = Vehicle.builder().year(Fact.known(2016)).powertrain(new Powertrain(e, t, g, d)).build();
        return FailureNetwork.of(CATALOGUE, car, Exposure.UNKNOWN, SmallCatalogue.TODAY);
    }

    private record Weighed(double weight, Diagnosis diagnosis) {}

    /** Every powertrain with its share and P(evidence), each with everything known. */
    private static List<Weighed> all() {
        PowertrainShares shares = PowertrainShares.USUAL;
        List<Weighed> all = new ArrayList<>();
        shares.engines().forEach((e, pe) -> shares.timings().forEach((t, pt) ->
                shares.gearboxes().get(e).forEach((g, pg) -> shares.drives().forEach((d, pd) -> {
                    Diagnosis diagnosis = network(Fact.known(e), Fact.known(t), Fact.known(g), Fact.known(d))
                            .diagnose(EVIDENCE);
                    all.add(new Weighed(pe * pt * pg * pd * Math.exp(diagnosis.logEvidence()), diagnosis));
                }))));
        return all;
    }

    private static double posterior(Diagnosis diagnosis, String item) {
        return diagnosis.network().items().contains(item) ? diagnosis.belief(item).posterior().value() : 0;
    }

    @Test
    void unknown_powertrain_is_the_mixture_of_all_known_ones() {
        List<Weighed> all = all();
        double total = all.stream().mapToDouble(Weighed::weight).sum();
        Diagnosis mixed = network(Fact.unknown(), Fact.unknown(), Fact.unknown(), Fact.unknown()).diagnose(EVIDENCE);

        assertThat(Math.exp(mixed.logEvidence())).isCloseTo(total, within(1e-12));
        for (Belief belief : mixed.beliefs()) {
            double expected = all.stream()
                    .mapToDouble(w -> w.weight() * posterior(w.diagnosis(), belief.item()))
                    .sum();
            assertThat(belief.posterior().value()).as(belief.item()).isCloseTo(expected / total, within(1e-12));
        }
    }

    @Test
    void draws_and_stories_respect_what_excludes_itself() {
        FailureNetwork open = network(Fact.unknown(), Fact.unknown(), Fact.unknown(), Fact.unknown());
        Diagnosis diagnosis = open.diagnose(EVIDENCE);
        int chain = open.items().indexOf("chain");
        int belt = open.items().indexOf("belt");
        FailurePatterns patterns = diagnosis.patterns(PatternSettings.USUAL);

        assertThat(patterns.patterns()).noneMatch(p -> p.get(chain) && p.get(belt));
        assertThat(patterns.patterns()).anyMatch(p -> p.get(belt));
        for (int i = 0; i < open.items().size(); i++) {
            int item = i;
            assertThat(patterns.patterns().stream().filter(p -> p.get(item)).count() / 4096.0)
                    .isCloseTo(diagnosis.beliefs().get(i).posterior().value(), within(0.01));
        }
        assertThat(diagnosis.stories(1000)).noneMatch(s -> s.failed().containsAll(List.of("chain", "belt")));
        assertThat(diagnosis.stories(1000).stream().mapToDouble(s -> s.probability().value()).sum())
                .isCloseTo(1, within(1e-12));
    }

    @Test
    void items_of_other_powertrains_are_not_there() {
        FailureNetwork petrol = network(
                Fact.known(Engine.PETROL), Fact.known(TimingDrive.BELT), Fact.known(Gearbox.AUTOMATIC),
                Fact.known(Drive.FRONT));

        assertThat(petrol.items()).containsExactly("belt", "battery");
        assertThat(petrol.assumptions()).hasSize(1).first().asString().contains("mileage unknown");
        assertThat(petrol.attempt(Evidence.NONE.withItem("chain", Likelihood.TRUE)))
                .isEqualTo(new Outcome.Impossible(List.of("chain")));
        assertThat(petrol.diagnose(Evidence.NONE.withItem("chain", Likelihood.FALSE)).logEvidence())
                .isCloseTo(0, within(1e-15));
    }

    @Test
    void gearbox_and_timing_speak_of_the_engine() {
        PowertrainShares shares = PowertrainShares.USUAL;
        Powertrain belt = new Powertrain(
                Fact.unknown(), Fact.known(TimingDrive.BELT), Fact.unknown(), Fact.unknown());
        Powertrain manual = new Powertrain(
                Fact.unknown(), Fact.unknown(), Fact.known(Gearbox.MANUAL), Fact.unknown());

        assertThat(shares.engines(belt)).doesNotContainKey(Engine.ELECTRIC);
        assertThat(shares.engines(manual)).containsOnlyKeys(Engine.PETROL, Engine.PETROL_TURBO, Engine.DIESEL);
        assertThat(shares.engines(Powertrain.UNKNOWN)).isEqualTo(shares.engines());
        assertThat(shares.assumptions(Powertrain.UNKNOWN)).hasSize(4);
    }

    @Test
    void shares_sum_to_one() {
        PowertrainShares shares = PowertrainShares.USUAL;
        List<Map<?, Double>> all = new ArrayList<>(shares.gearboxes().values());
        all.addAll(List.of(shares.engines(), shares.timings(), shares.drives()));

        assertThat(all).allSatisfy(map -> assertThat(
                        map.values().stream().mapToDouble(Double::doubleValue).sum())
                .isCloseTo(1, within(1e-12)));
    }
}
