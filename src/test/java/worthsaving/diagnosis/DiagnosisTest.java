package worthsaving.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import worthsaving.catalog.Applicability;
import worthsaving.vehicle.Exposure;

class DiagnosisTest {

    private static final double TOLERANCE = 1e-9;

    private static final SmallCatalogue OIL = new SmallCatalogue()
            .item("level", 0.20)
            .item("pump", 0.05)
            .item("bearing", 0.10)
            .item("tyre", 0.40)
            .damage("level", "bearing", 0.3)
            .damage("pump", "bearing", 0.5)
            .finding("light", 0.02)
            .finding("knock", 0.03)
            .finding("dipstick dry", 0.01)
            .shows("level", "light", 0.8)
            .shows("pump", "light", 0.9)
            .shows("bearing", "light", 0.3)
            .shows("bearing", "knock", 0.9)
            .shows("level", "dipstick dry", 0.95);

    private static final FailureNetwork NETWORK = OIL.network();

    private static BruteForce enumerated(Evidence evidence) {
        return new BruteForce(OIL.build(), Exposure.UNKNOWN, 10, evidence);
    }

    private static double posterior(Evidence evidence, String item) {
        return NETWORK.diagnose(evidence).belief(item).posterior().value();
    }

    @Test
    void low_level_explains_the_light_away() {
        Evidence light = Evidence.NONE.withFinding("light", Likelihood.TRUE);
        Evidence dry = light.withFinding("dipstick dry", Likelihood.TRUE);

        assertThat(posterior(light, "pump")).isGreaterThan(0.14);
        assertThat(posterior(dry, "pump")).isLessThan(0.08);
        assertThat(posterior(dry, "tyre")).isCloseTo(0.40, within(TOLERANCE));
    }

    @Test
    void influence_is_the_ratio_of_likelihoods_with_all_else_given() {
        Evidence rest = Evidence.NONE
                .withFinding("light", Likelihood.TRUE)
                .withItem("pump", new Likelihood(0.3, 0.6));
        Evidence all = rest.withFinding("knock", Likelihood.TRUE);
        double ifFailed = enumerated(rest.withItem("bearing", Likelihood.TRUE)).chance("knock");
        double ifSound = enumerated(rest.withItem("bearing", Likelihood.FALSE)).chance("knock");

        List<Influence> influences = NETWORK.diagnose(all).influences("bearing");

        assertThat(influences).extracting(Influence::subject).containsExactlyInAnyOrder("light", "knock", "pump");
        assertThat(influences.get(0).subject()).isEqualTo("knock");
        assertThat(influences.get(0).logRatio()).isCloseTo(Math.log(ifFailed / ifSound), within(TOLERANCE));
    }

    @Test
    void influence_that_settles_the_item_is_infinite() {
        Evidence seen = Evidence.NONE
                .withFinding("light", Likelihood.TRUE)
                .withItem("bearing", Likelihood.FALSE);

        assertThat(NETWORK.diagnose(seen).influences("bearing"))
                .anySatisfy(i -> {
                    assertThat(i.subject()).isEqualTo("bearing");
                    assertThat(i.logRatio()).isEqualTo(Double.NEGATIVE_INFINITY);
                })
                .anySatisfy(i -> {
                    assertThat(i.subject()).isEqualTo("light");
                    assertThat(i.logRatio()).isZero();
                });
    }

    @Test
    void unrelated_findings_have_no_influence() {
        Evidence seen = Evidence.NONE.withFinding("light", Likelihood.TRUE);

        assertThat(NETWORK.diagnose(seen).influences("tyre").get(0).logRatio()).isCloseTo(0, within(TOLERANCE));
    }

    @Test
    void prediction_of_a_finding_that_was_half_seen() {
        Likelihood half = new Likelihood(0.9, 0.2);
        Evidence before = Evidence.NONE.withFinding("light", Likelihood.TRUE);
        double chance = enumerated(before).chance("knock");
        Diagnosis diagnosis = NETWORK.diagnose(before.withFinding("knock", half));

        assertThat(diagnosis.predictive("knock").value())
                .isCloseTo(0.9 * chance / (0.9 * chance + 0.2 * (1 - chance)), within(TOLERANCE));
        assertThat(diagnosis.predictive("light").value()).isEqualTo(1);
    }

    @Test
    void stories_are_the_best_joint_states() {
        Evidence seen = Evidence.NONE
                .withFinding("light", Likelihood.TRUE)
                .withFinding("knock", Likelihood.TRUE);
        BruteForce states = enumerated(seen);

        List<Story> stories = NETWORK.diagnose(seen).stories(20);

        assertThat(stories).hasSize(8);
        assertThat(stories.stream().mapToDouble(s -> s.probability().value()).sum()).isCloseTo(1, within(TOLERANCE));
        assertThat(stories).isSortedAccordingTo((a, b) -> b.probability().compareTo(a.probability()));
        List<String> key = List.of("level", "pump", "bearing");
        for (Story story : stories) {
            int state = IntStream.range(0, 3).filter(k -> story.failed().contains(key.get(k))).map(k -> 1 << k).sum();
            assertThat(story.probability().value())
                    .isCloseTo(states.probability(state) + states.probability(state | 8), within(TOLERANCE));
            assertThat(story.failed().size() + story.sound().size()).isEqualTo(3);
            assertThat(story.failed()).noneMatch(story.sound()::contains);
        }
        assertThat(NETWORK.diagnose(seen).stories(2)).isEqualTo(stories.subList(0, 2));
        assertThat(NETWORK.diagnose(Evidence.NONE).stories(5)).isEmpty();
    }

    @Test
    void conflict_compares_singles_with_the_whole() {
        Evidence agreeing = Evidence.NONE
                .withFinding("light", Likelihood.TRUE)
                .withFinding("dipstick dry", Likelihood.TRUE);
        Evidence odd = Evidence.NONE
                .withFinding("light", Likelihood.FALSE)
                .withFinding("dipstick dry", Likelihood.TRUE);
        BruteForce none = enumerated(Evidence.NONE);

        assertThat(NETWORK.diagnose(agreeing).conflict())
                .isCloseTo(
                        Math.log(none.chance("light") * none.chance("dipstick dry") / enumerated(agreeing).total()),
                        within(TOLERANCE))
                .isNegative();
        assertThat(NETWORK.diagnose(odd).conflict()).isPositive();
        assertThat(NETWORK.diagnose(Evidence.NONE).conflict()).isCloseTo(0, within(TOLERANCE));
    }

    @Test
    void impossible_evidence_names_a_smallest_conflict() {
        FailureNetwork network = new SmallCatalogue()
                .item("pump", 0.1)
                .item("wet", 0.1, "flood", Applicability.ALL)
                .item("salt", 0.1, "flood", Applicability.ALL)
                .finding("light", 0)
                .finding("noise", 0.1)
                .shows("pump", "light", 0.5)
                .network();
        Evidence evidence = Evidence.NONE
                .withFinding("noise", Likelihood.TRUE)
                .withFinding("light", Likelihood.TRUE)
                .withItem("pump", Likelihood.FALSE)
                .withItem("wet", Likelihood.TRUE);

        assertThat(network.attempt(evidence)).isEqualTo(new Outcome.Impossible(List.of("light", "pump")));
        assertThatThrownBy(() -> network.diagnose(evidence))
                .isInstanceOf(ImpossibleEvidenceException.class)
                .hasMessageContaining("light, pump")
                .satisfies(e -> assertThat(((ImpossibleEvidenceException) e).conflicting())
                        .containsExactly("light", "pump"));
        assertThat(network.attempt(evidence.withItem("salt", Likelihood.TRUE).withoutFinding("light")))
                .isEqualTo(new Outcome.Impossible(List.of("salt", "wet")));
        assertThat(network.attempt(evidence.withoutFinding("light"))).isInstanceOf(Outcome.Explained.class);
    }

    @Test
    void unknown_names_are_refused() {
        assertThatThrownBy(() -> NETWORK.diagnose(Evidence.NONE.withFinding("nose", Likelihood.TRUE)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("'nose'");
        assertThatThrownBy(() -> NETWORK.diagnose(Evidence.NONE.withItem("pomp", Likelihood.TRUE)))
                .hasMessageContaining("'pomp'");
        assertThatThrownBy(() -> NETWORK.diagnose(Evidence.NONE).belief("pomp")).hasMessageContaining("'pomp'");
        assertThatThrownBy(() -> NETWORK.findingChance("nose", new BitSet())).hasMessageContaining("'nose'");
        assertThatThrownBy(() -> NETWORK.diagnose(Evidence.NONE).predictive("nose")).hasMessageContaining("'nose'");
    }

    @Test
    void exact_says_so() {
        assertThat(NETWORK.diagnose(Evidence.NONE).error()).isZero();
    }
}
