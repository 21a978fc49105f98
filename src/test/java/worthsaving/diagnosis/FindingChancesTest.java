package worthsaving.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FindingKind;
import worthsaving.catalog.ShippedCatalogue;
import worthsaving.vehicle.Exposure;

class FindingChancesTest {

    private static final Catalogue CATALOGUE = ShippedCatalogue.load();
    private static final FailureNetwork NETWORK =
            FailureNetwork.of(CATALOGUE, SmallCatalogue.CAR, Exposure.UNKNOWN, SmallCatalogue.TODAY);

    @Test
    void many_patterns_at_once_come_to_what_each_comes_to_alone() {
        List<BitSet> patterns = NETWORK.diagnose(Evidence.NONE.withFinding("KNOCKS", Likelihood.TRUE))
                .patterns(PatternSettings.USUAL.withPoints(64)).patterns();
        FindingChances chances = NETWORK.findingChances(patterns);

        for (FindingKind finding : CATALOGUE.findings()) {
            double[] together = chances.of(finding.id());
            assertThat(together).hasSameSizeAs(patterns.toArray());
            for (int p = 0; p < together.length; p++) {
                assertThat(together[p]).isEqualTo(NETWORK.findingChance(finding.id(), patterns.get(p)));
            }
        }
    }

    @Test
    void nothing_failed_leaves_the_false_rate() {
        double[] chances = NETWORK.findingChances(List.of(new BitSet())).of("KNOCKS");

        assertThat(chances).containsExactly(NETWORK.findingChance("KNOCKS", new BitSet()));
    }

    @Test
    void an_unknown_finding_is_named() {
        assertThatThrownBy(() -> NETWORK.findingChances(List.of()).of("HUMS"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("HUMS");
    }
}
