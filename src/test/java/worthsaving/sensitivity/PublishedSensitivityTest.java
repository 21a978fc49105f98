package worthsaving.sensitivity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

class PublishedSensitivityTest {

    /** Clemen, Making Hard Decisions, chapter 5, an air charter; inputs and base from memory, arithmetic run. */
    private static final List<Input> CHARTER = List.of(
            new Input("h", 500, 800, 1_000), new Input("cp", 300, 325, 350), new Input("tp", 95, 100, 108),
            new Input("cap", .4, .5, .6), new Input("ch", .45, .5, .7), new Input("oc", 230, 245, 260),
            new Input("ins", 18_000, 20_000, 25_000), new Input("fin", .3, .4, .5), new Input("ir", .105, .115, .13),
            new Input("pp", 85_000, 87_500, 90_000));

    private static double charter(double[] x) {
        double perHour = x[4] * x[1] + (1 - x[4]) * x[2] * x[3] * 5;
        return x[0] * perHour - x[0] * x[5] - x[6] - x[9] * x[7] * x[8];
    }

    @Test
    void tornado_of_an_air_charter() {
        Tornado tornado = Tornado.of(CHARTER, PublishedSensitivityTest::charter);
        assertThat(tornado.base()).isCloseTo(9_975, within(1e-6));
        assertThat(tornado.bars()).extracting(b -> b.input().name())
                .containsExactly("cap", "oc", "h", "cp", "ch", "tp", "ins", "fin", "ir", "pp");
        Map<String, double[]> expected = Map.of(
                "h", new double[] {-2_775, 18_475}, "cp", new double[] {-25, 19_975},
                "tp", new double[] {4_975, 17_975}, "cap", new double[] {-10_025, 29_975},
                "ch", new double[] {6_975, 21_975}, "oc", new double[] {21_975, -2_025},
                "ins", new double[] {11_975, 4_975}, "fin", new double[] {10_981.25, 8_968.75},
                "ir", new double[] {10_325, 9_450}, "pp", new double[] {10_090, 9_860});
        for (Tornado.Bar bar : tornado.bars()) {
            double[] ends = expected.get(bar.input().name());
            assertThat(bar.atLow()).as(bar.input().name()).isCloseTo(ends[0], within(1e-6));
            assertThat(bar.atHigh()).as(bar.input().name()).isCloseTo(ends[1], within(1e-6));
        }
    }

    @Test
    void break_even_of_an_air_charter() {
        ToDoubleFunction<double[]> model = PublishedSensitivityTest::charter;
        assertThat(Tornado.breakEven(CHARTER, 3, model, 4_200).orElseThrow()).isCloseTo(.471125, within(1e-6));
        assertThat(Tornado.breakEven(CHARTER, 5, model, 4_200).orElseThrow()).isCloseTo(252.21875, within(1e-6));
        assertThat(Tornado.breakEven(CHARTER, 9, model, 4_200)).as("out of reach").isEmpty();
    }

    /** Ishigami and Homma (1990), a = 7, b = 0.1; shares in closed form. */
    @Test
    void shares_of_the_ishigami_function() {
        VarianceShares shares = VarianceShares.of(3, u -> {
            double x1 = Math.PI * (2 * u[0] - 1);
            double x2 = Math.PI * (2 * u[1] - 1);
            double x3 = Math.PI * (2 * u[2] - 1);
            return Math.sin(x1) + 7 * Math.pow(Math.sin(x2), 2) + 0.1 * Math.pow(x3, 4) * Math.sin(x1);
        }, 1 << 14);
        assertThat(shares.mean()).isCloseTo(3.5, within(2e-3));
        assertThat(shares.variance()).isCloseTo(13.844587940719254, within(2e-2));
        assertThat(shares.first()).containsExactly(
                new double[] {0.31390519114781146, 0.4424111447900409, 0}, within(2e-3));
        assertThat(shares.total()).containsExactly(
                new double[] {0.5575888552099592, 0.4424111447900409, 0.24368366406214767}, within(2e-3));
    }

    /** The same by coalitions: closed variance of a set = sum of the effects within it; Owen (2014). */
    @Test
    void shapley_shares_of_the_ishigami_function() {
        double s1 = 0.31390519114781146;
        double s2 = 0.4424111447900409;
        double s13 = 0.24368366406214767;
        double[] shares = Shapley.values(3, set -> ((set & 1) != 0 ? s1 : 0) + ((set & 2) != 0 ? s2 : 0)
                + ((set & 5) == 5 ? s13 : 0));
        assertThat(shares).containsExactly(
                new double[] {0.43574702317888525, 0.4424111447900409, 0.12184183203107384}, within(1e-12));
    }

    /** Saltelli and Sobol (1995), g-function with a = 0, 1, 4.5, 9, 99 x 4; shares in closed form. */
    @Test
    void shares_of_the_g_function() {
        double[] a = {0, 1, 4.5, 9, 99, 99, 99, 99};
        VarianceShares shares = VarianceShares.of(8, u -> {
            double product = 1;
            for (int j = 0; j < a.length; j++) {
                product *= (Math.abs(4 * u[j] - 2) + a[j]) / (1 + a[j]);
            }
            return product;
        }, 1 << 14);
        assertThat(shares.first()).containsExactly(new double[] {0.7161921688790331, 0.17904804221975829,
            0.02367577417781928, 0.007161921688790333, 7.161921688790333e-05, 7.161921688790333e-05,
            7.161921688790333e-05, 7.161921688790333e-05}, within(2e-3));
        assertThat(shares.total()).containsExactly(new double[] {0.7871441266592748, 0.2421981928182384,
            0.03431691015408282, 0.010460387065239534, 0.00010494905191950601, 0.00010494905191950601,
            0.00010494905191950601, 0.00010494905191950601}, within(2e-3));
        for (int j = 4; j < a.length; j++) {
            assertThat(shares.first()[j]).isCloseTo(7.161921688790333e-05, within(2e-5));
            assertThat(shares.total()[j]).isCloseTo(0.00010494905191950601, within(1e-6));
        }
        assertThat(shares.total()[3]).isCloseTo(0.010460387065239534, within(1e-5));
    }

    /** Sum of two correlated normals, sd 1 and 2, correlation 0.5; Owen and Prieur (2017). */
    @Test
    void shapley_shares_of_dependent_normals() {
        double rho = 0.5;
        double[] sd = {1, 2};
        double total = sd[0] * sd[0] + sd[1] * sd[1] + 2 * rho * sd[0] * sd[1];
        double[] explained = {0, Math.pow(sd[0] + rho * sd[1], 2), Math.pow(sd[1] + rho * sd[0], 2), total};
        double[] shares = Shapley.values(2, set -> explained[set] / total);
        assertThat(shares).containsExactly(new double[] {0.3392857142857143, 0.6607142857142857}, within(1e-12));
    }

    /** Littlechild and Owen (1973): a runway for the largest aircraft. */
    @Test
    void the_airport_game() {
        double[] shares = Shapley.values(3, set -> {
            int most = 0;
            for (int j = 0; j < 3; j++) {
                most = (set >> j & 1) == 1 ? j + 1 : most;
            }
            return most;
        });
        assertThat(shares).containsExactly(new double[] {1 / 3.0, 5 / 6.0, 11 / 6.0}, within(1e-12));
    }

    @Test
    void a_map_holds_its_corners() {
        TwoWayMap map = TwoWayMap.of(new Input("x", 0, 1, 2), new Input("y", 10, 10, 30), 3, (x, y) -> x * 100 + y);
        assertThat(map.across()).containsExactly(0, 1, 2);
        assertThat(map.up()).containsExactly(10, 20, 30);
        assertThat(map.results()[2][1]).isEqualTo(130);
    }

    @Test
    void unusable_questions_are_refused() {
        assertThatThrownBy(() -> new Input("x", 2, 1, 3)).hasMessageContaining("x needs low");
        assertThatThrownBy(() -> Shapley.values(21, s -> 0)).hasMessageContaining("players");
        assertThatThrownBy(() -> VarianceShares.of(0, u -> 0, 8)).hasMessageContaining("input");
        assertThatThrownBy(() -> TwoWayMap.of(CHARTER.get(0), CHARTER.get(1), 1, Double::sum))
                .hasMessageContaining("two steps");
        assertThat(new ArrayList<>(Tornado.of(List.of(), x -> 5).bars())).isEmpty();
    }
}
