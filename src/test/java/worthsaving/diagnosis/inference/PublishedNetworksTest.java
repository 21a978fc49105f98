package worthsaving.diagnosis.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PublishedNetworksTest {

    private static Calibrated solve(int variables, List<Table> tables) {
        return BucketTree.compile(Factors.of(variables, tables)).orElseThrow().calibrate(tables);
    }

    private static Map<String, Double> parse(String pairs) {
        Map<String, Double> map = new LinkedHashMap<>();
        if (!pairs.equals("none")) {
            for (String pair : pairs.split(" ")) {
                map.put(pair.split("=")[0], Double.valueOf(pair.split("=")[1]));
            }
        }
        return map;
    }

    /** Expected values: full enumeration of the published tables, and to two digits the paper's own figures. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "none; 1.0; A=0.01 T=0.0104 S=0.5 L=0.055 B=0.45 E=0.064828 X=0.11029004 D=0.4359706",
        "D=1; 0.4359706; "
                + "A=0.0103249508 T=0.0188453075 S=0.6339968796 L=0.1027592228 B=0.8339673363 E=0.1205358343 X=0.1620983259",
        "X=1; 0.11029004; "
                + "A=0.0131555397 T=0.0924108832 S=0.6877538534 L=0.4887114013 B=0.506326156 E=0.5760396859 D=0.6407659694",
        "A=1 D=1; 0.004501374999999999; "
                + "T=0.087750965 S=0.6259198578 L=0.0995251451 B=0.8114020716 E=0.1822998528 X=0.2195388631",
        "A=1 D=1 X=1; 0.0009882267499999999; T=0.39171172 S=0.7020251172 L=0.4442705078 B=0.628821776 E=0.8137687024",
        "A=1 D=1 X=0; 0.0035131482499999997; T=0.0022486953 S=0.6045119217 L=0.002550419 B=0.862760773 E=0.0046715933",
        "A=1 X=1 S=0; 0.000526675; T=0.4651825129 L=0.0930365026 B=0.3 E=0.5535671904 D=0.5591052357",
    })
    void chest_clinic_posteriors(String seen, double probability, String posteriors) {
        Map<String, Integer> evidence = new HashMap<>();
        parse(seen).forEach((name, state) -> evidence.put(name, state.intValue()));
        Calibrated solved = solve(8, ChestClinic.tables(evidence));

        assertThat(Math.exp(solved.logPartition())).isCloseTo(probability, within(1e-9));
        parse(posteriors).forEach((name, expected) -> assertThat(solved.marginal(ChestClinic.NAMES.indexOf(name)))
                .as(name)
                .isCloseTo(expected, within(1e-9)));
    }

    /** Joint of tuberculosis, lung cancer and bronchitis after a visit to Asia with dyspnoea. */
    @ParameterizedTest
    @CsvSource({
        "1,1,1,0.0031490378", "1,1,0,0.0018272195", "1,0,1,0.0418372164", "1,0,0,0.0409374913",
        "0,1,1,0.0598317181", "0,1,0,0.0347171698", "0,0,1,0.7065840993", "0,0,0,0.1111160479"
    })
    void chest_clinic_joint(int t, int l, int b, double expected) {
        List<Table> tables = ChestClinic.tables(Map.of("A", 1, "D", 1));
        int[] stage = {0, 1, 0, 1, 1, 0, 0, 0};
        Calibrated chain = BucketTree.compile(Factors.of(8, tables), stage, BucketTree.WIDTH_GUARD)
                .orElseThrow()
                .calibrate(tables);
        BitSet asked = new BitSet();
        asked.set(1, t == 1);
        asked.set(3, l == 1);
        asked.set(4, b == 1);

        List<BestStates.State> states = BestStates.covering(chain, 3, 8, 1).orElseThrow();

        assertThat(states).hasSize(8);
        assertThat(states).filteredOn(s -> s.yes().equals(asked)).singleElement().satisfies(s ->
                assertThat(s.probability()).isCloseTo(expected, within(1e-9)));
    }

    @Test
    void chest_clinic_most_probable_explanation() {
        List<Table> tables = ChestClinic.tables(Map.of("A", 1, "D", 1));
        Calibrated chain = solve(8, tables);

        BestStates.State best = BestStates.covering(chain, 8, 1, 1e-9).orElseThrow().get(0);

        assertThat(best.yes()).isEqualTo(BitSet.valueOf(new long[] {0b10010101}));
        assertThat(best.probability() * Math.exp(chain.logPartition())).isCloseTo(0.0019494, within(1e-12));
    }

    /** Source: Murphy, Bayes Net Toolbox tutorial (.4298, .7079, .1945); further digits by enumeration. */
    @Test
    void sprinkler() {
        List<Table> wet = List.of(
                Table.of(0, 0.5, 0.5),
                Table.conditional(1, new int[] {0}, 0.5, 0.1),
                Table.conditional(2, new int[] {0}, 0.2, 0.8),
                Table.conditional(3, new int[] {1, 2}, 0, 0.9, 0.9, 0.99),
                Table.of(3, 1, 0));
        Calibrated solved = solve(4, wet);

        assertThat(Math.exp(solved.logPartition())).isCloseTo(0.6471, within(1e-12));
        assertThat(solved.marginal(1)).isCloseTo(0.42976356050069536, within(1e-12));
        assertThat(solved.marginal(2)).isCloseTo(0.7079276773296245, within(1e-12));
        List<Table> rain = new ArrayList<>(wet);
        rain.add(Table.of(2, 1, 0));
        assertThat(solve(4, rain).marginal(1)).isCloseTo(0.1944990176817289, within(1e-12));
    }

    /** Source: Pearl's alarm network in Russell and Norvig, Artificial Intelligence, ch. 14 (0.284). */
    @Test
    void burglary() {
        List<Table> bothCall = List.of(
                Table.of(0, 0.001, 0.999),
                Table.of(1, 0.002, 0.998),
                Table.conditional(2, new int[] {0, 1}, 0.001, 0.94, 0.29, 0.95),
                Table.conditional(3, new int[] {2}, 0.05, 0.9),
                Table.conditional(4, new int[] {2}, 0.01, 0.7),
                Table.of(3, 1, 0),
                Table.of(4, 1, 0));

        assertThat(solve(5, bothCall).marginal(0)).isCloseTo(0.2841718353643929, within(1e-12));
    }

    /** Source: formula of Pearl (1988) and Henrion (1989). */
    @Test
    void noisy_or() {
        NoisyOr or = new NoisyOr(0.05, new int[] {0, 1}, new double[] {0.8, 0.6});

        assertThat(or.chance(0b11)).isCloseTo(0.924, within(1e-12));
        assertThat(or.chance(0b01)).isCloseTo(0.81, within(1e-12));
        assertThat(or.chance(0b00)).isCloseTo(0.05, within(1e-12));
    }
}
