package worthsaving.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReferenceNetworksTest {

    /** The chance that lifts a leak to a conditional probability given the one cause. */
    private static double link(double leak, double withCause) {
        return 1 - (1 - withCause) / (1 - leak);
    }

    private static final FailureNetwork TURBO = new SmallCatalogue()
            .item("Turbo", 0.15)
            .item("LowOil", 0.04)
            .item("Bearing", 0.02)
            .damage("Turbo", "LowOil", link(0.04, 0.50))
            .damage("LowOil", "Bearing", link(0.02, 0.60))
            .finding("Smoke", 0.10)
            .finding("Knock", 0.05)
            .finding("OilLamp", 0.05)
            .shows("Turbo", "Smoke", link(0.10, 0.80))
            .shows("Bearing", "Knock", link(0.05, 0.90))
            .shows("LowOil", "OilLamp", link(0.05, 0.85))
            .network();

    private static Evidence evidence(FailureNetwork network, String seen) {
        Evidence evidence = Evidence.NONE;
        for (String pair : seen.equals("none") ? new String[0] : seen.split(" ")) {
            String id = pair.split("=")[0];
            Likelihood likelihood = pair.endsWith("=1") ? Likelihood.TRUE : Likelihood.FALSE;
            evidence = network.items().contains(id)
                    ? evidence.withItem(id, likelihood)
                    : evidence.withFinding(id, likelihood);
        }
        return evidence;
    }

    /** Constructed chain turbo, low oil, bearing with numbers of its own; expected: full enumeration. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "none; 1.0; Turbo=0.15000000000000005 LowOil=0.10899999999999999 Bearing=0.08321999999999996",
        "Smoke=1; 0.20499999999999996; Turbo=0.5853658536585367 LowOil=0.3092682926829268 Bearing=0.19937560975609758",
        "Smoke=1 Knock=1; 0.044991199999999995; "
                + "Turbo=0.836163516420989 LowOil=0.7891320969434024 Bearing=0.817599886199968",
        "Smoke=1 Knock=0; 0.16000879999999995; "
                + "Turbo=0.5148466834324112 LowOil=0.17434041127737981 Bearing=0.025543595102269372",
        "Smoke=0 Knock=1 OilLamp=1; 0.024216089999999996; "
                + "Turbo=0.2969203533683596 LowOil=0.8963296717182666 Bearing=0.8921696277144658",
        "Bearing=1; 0.08321999999999996; Turbo=0.5587599134823362 LowOil=0.7858687815428985",
    })
    void turbo_oil_bearing_chain(String seen, double probability, String posteriors) {
        Diagnosis diagnosis = TURBO.diagnose(evidence(TURBO, seen));

        assertThat(Math.exp(diagnosis.logEvidence())).isCloseTo(probability, within(1e-12));
        for (String pair : posteriors.split(" ")) {
            String id = pair.split("=")[0];
            assertThat(diagnosis.belief(id).posterior().value())
                    .as(id)
                    .isCloseTo(Double.parseDouble(pair.split("=")[1]), within(1e-12));
        }
    }

    private static final FailureNetwork CHAIN = new SmallCatalogue()
            .item("chain", 0.30)
            .item("pickup", 0.10)
            .item("bearing", 0.15)
            .damage("chain", "pickup", 0.35)
            .damage("pickup", "bearing", 0.30)
            .finding("light", 0.02)
            .finding("chips", 0.02)
            .finding("metal", 0.10)
            .shows("pickup", "light", 0.70)
            .shows("bearing", "light", 0.45)
            .shows("chain", "chips", 0.45)
            .shows("pickup", "chips", 0.60)
            .shows("bearing", "metal", 0.85)
            .network();

    /** Expected: trade notes, section 4, rounded to four digits; full enumeration. */
    @ParameterizedTest
    @CsvSource({
        "none,                      .3000, .1945, .1996, .0504",
        "light=1,                   .5052, .6804, .5607, .1947",
        "light=1 chips=1,           .7083, .9297, .4720, .2894",
        "light=1 chips=1 metal=1,   .7149, .8911, .8855, .5430",
        "light=1 chips=1 metal=0,   .7028, .9627, .1182, .0725"
    })
    void chain_pickup_bearing(String seen, double chain, double pickup, double bearing, double all) {
        Diagnosis diagnosis = CHAIN.diagnose(evidence(CHAIN, seen));
        FailurePatterns patterns = diagnosis.patterns(new PatternSettings(8, 1, 1, PatternSettings.USUAL.seed()));
        int together = patterns.patterns().indexOf(BitSet.valueOf(new long[] {7}));

        assertThat(diagnosis.beliefs().stream().map(b -> b.posterior().value()).toList())
                .usingElementComparator((a, b) -> Math.abs(a - b) <= 0.5001e-4 ? 0 : 1)
                .isEqualTo(List.of(chain, pickup, bearing));
        assertThat(patterns.weights()[together]).isCloseTo(all, within(0.5001e-4));
    }

    @Test
    void leak_is_the_chance_without_any_cause() {
        assertThat(CHAIN.findingChance("light", new BitSet())).isCloseTo(0.02, within(1e-15));
        assertThat(CHAIN.findingChance("light", BitSet.valueOf(new long[] {0b110})))
                .isCloseTo(1 - 0.98 * 0.30 * 0.55, within(1e-15));
    }
}
