package worthsaving.repair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.quantity.Money;

class SharedLabourTest {

    /**
     * Access steps and job hours at their modes: expert estimates of the trade notes, order of
     * magnitude, not measured. The expected sums are worked out by hand beside them.
     */
    private static final Trade ENGINE = new Trade()
            .step("UNDERTRAY", 0.4)
            .step("CAM_COVER", 1.2)
            .step("INTAKE", 2.0)
            .step("ENGINE_MOUNT", 1.2, "UNDERTRAY")
            .step("FRONT_COVER", 3.0, "ENGINE_MOUNT", "CAM_COVER")
            .step("TURBO_OFF", 2.5, "UNDERTRAY")
            .step("COOLANT", 0.6)
            .step("HEAD_OFF", 3.5, "CAM_COVER", "INTAKE", "FRONT_COVER", "TURBO_OFF", "COOLANT")
            .step("SUBFRAME", 2.2, "UNDERTRAY")
            .step("OIL_PAN", 1.5, "SUBFRAME")
            .step("SHAFTS", 1.4, "UNDERTRAY")
            .step("GEARBOX_OUT", 4.5, "SUBFRAME", "SHAFTS")
            .item("HEAD_GASKET", 1.5, 220, "HEAD_OFF")
            .item("CHAIN", 1.8, 300, "FRONT_COVER")
            .item("TURBO", 1.0, 700, "TURBO_OFF", "COOLANT")
            .item("CARBON", 2.0, 30, "INTAKE")
            .item("PICKUP", 0.8, 35, "OIL_PAN")
            .item("ROD_SHELLS", 3.0, 250, "OIL_PAN")
            .item("CLUTCH", 1.0, 280, "GEARBOX_OUT")
            .item("REAR_MAIN", 0.7, 35, "GEARBOX_OUT")
            .item("AXLE", 0.3, 120, "SHAFTS")
            .item("GEARBOX_BEARING", 1.5, 900, "GEARBOX_OUT");

    @ParameterizedTest
    @CsvSource({
        "HEAD_GASKET, 15.9, 15.9",
        "CHAIN, 7.6, 7.6",
        "TURBO, 4.5, 4.5",
        "CARBON, 4.0, 4.0",
        "HEAD_GASKET+CHAIN+TURBO+CARBON, 32.0, 20.7",
        "CHAIN+PICKUP+TURBO+ROD_SHELLS, 24.1, 19.2",
        "CLUTCH+REAR_MAIN+AXLE+GEARBOX_BEARING, 30.8, 12.0"
    })
    void shared_access_is_paid_once(String items, double alone, double together) {
        RepairPlanner planner = new RepairPlanner(ENGINE.catalogue(), Workshop.independent(Money.usd(130)));

        RepairPlan plan = planner.plan(Set.of(items.split("\\+")));

        assertThat(plan.separateHours().value()).isEqualTo(alone, within(1e-9));
        assertThat(plan.meanHours().value()).isEqualTo(together, within(1e-9));
        assertThat(plan.hoursSaved().value()).isEqualTo(alone - together, within(1e-9));
    }

    @Test
    void after_the_head_is_off_the_chain_costs_only_its_own_hours() {
        RepairPlanner planner = new RepairPlanner(ENGINE.catalogue(), Workshop.independent(Money.usd(130)));

        double head = planner.plan(Set.of("HEAD_GASKET")).meanHours().value();
        double both = planner.plan(Set.of("HEAD_GASKET", "CHAIN")).meanHours().value();

        assertThat(both - head).isEqualTo(1.8, within(1e-9));
    }

    /** Check SHARE-SETUP: constructed; labour as a union of steps (Rhys 1970, Balinski 1970). */
    private static RepairPlanner fiveJobs() {
        Trade trade = new Trade()
                .step("drain", 0.5)
                .step("intake", 1)
                .step("timing", 2)
                .step("head", 3)
                .step("susp", 0.7)
                .item("headgasket", 2, 300, "drain", "intake", "timing", "head")
                .item("waterpump", 0.5, 120, "drain", "timing")
                .item("injectors", 1, 400, "intake")
                .item("valves", 1.5, 250, "drain", "intake", "timing", "head")
                .item("strut", 1, 150, "susp");
        return new RepairPlanner(trade.catalogue(), Workshop.independent(Money.usd(100)));
    }

    @ParameterizedTest
    @CsvSource({
        "headgasket, 1150, 1150",
        "headgasket+waterpump, 1320, 1570",
        "headgasket+waterpump+valves, 1720, 2620",
        "headgasket+waterpump+injectors+valves+strut, 2540, 3540"
    })
    void cost_of_a_set_is_the_union_of_its_steps(String items, double together, double singles) {
        RepairPlanner planner = fiveJobs();
        String[] ids = items.split("\\+");

        assertThat(planner.plan(Set.of(ids)).meanCost().amount()).isEqualTo(together, within(1e-9));
        assertThat(Arrays.stream(ids).mapToDouble(id -> planner.plan(Set.of(id)).meanCost().amount()).sum())
                .isEqualTo(singles, within(1e-9));
    }

    /** Check SHARE-EXP: 32-state enumeration equals the closed form E = sum c_s(1-prod(1-p_j)) + sum p_j d_j. */
    @Test
    void expected_cost_over_all_failure_patterns() {
        RepairPlanner planner = fiveJobs();
        Map<String, Double> chance = Map.of(
                "headgasket", 0.4, "waterpump", 0.3, "injectors", 0.2, "valves", 0.15, "strut", 0.1);
        String[] ids = chance.keySet().toArray(String[]::new);
        double mean = 0;
        double square = 0;
        for (int pattern = 0; pattern < 1 << ids.length; pattern++) {
            double weight = 1;
            Set<String> failed = new HashSet<>();
            for (int i = 0; i < ids.length; i++) {
                boolean bad = (pattern >> i & 1) != 0;
                weight *= bad ? chance.get(ids[i]) : 1 - chance.get(ids[i]);
                if (bad) {
                    failed.add(ids[i]);
                }
            }
            double cost = planner.plan(failed).meanCost().amount();
            mean += weight * cost;
            square += weight * cost * cost;
        }

        assertThat(mean).isEqualTo(809.95, within(1e-9));
        assertThat(Math.sqrt(square - mean * mean)).isEqualTo(620.1771500950352, within(1e-9));
    }
}
