package worthsaving.repair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.catalog.PartSource;
import worthsaving.quantity.HoursRange;
import worthsaving.quantity.Money;
import worthsaving.quantity.Probability;

class PreventiveTest {

    private static final Workshop SHOP = Trade.withoutComebacks(Workshop.independent(Money.usd(130)));

    /**
     * Head off for its gasket: the chain then needs 1.8 h instead of 7.6 h. Hours are expert estimates of the
     * trade notes; the kit at 350 is invented.
     */
    private static Trade headOff() {
        return new Trade()
                .step("FRONT_COVER", 5.8)
                .step("HEAD_OFF", 8.6, "FRONT_COVER")
                .step("GEARBOX_OUT", 8.5)
                .item("HEAD_GASKET", 1.5, 220, "HEAD_OFF")
                .item("CHAIN", 1.8, 350, "FRONT_COVER")
                .item("CLUTCH", 1.0, 280, "GEARBOX_OUT")
                .item("HORN", 0.5, 30);
    }

    private static Map<String, Probability> all(double chance) {
        Probability p = Probability.of(chance);
        return Map.of("HEAD_GASKET", p, "CHAIN", p, "CLUTCH", p, "HORN", p);
    }

    @Test
    void the_chain_is_weighed_once_the_head_is_off() {
        RepairPlanner planner = new RepairPlanner(headOff().catalogue(), SHOP);

        List<Preventive> advice = planner.whileInThere(planner.plan(Set.of("HEAD_GASKET")), all(0.5));

        assertThat(advice).singleElement().satisfies(chain -> {
            assertThat(chain.item()).isEqualTo("CHAIN");
            assertThat(chain.now().amount()).isEqualTo(350 + 1.8 * 130, within(1e-9));
            assertThat(chain.later().amount()).isEqualTo(350 + 7.6 * 130, within(1e-9));
            assertThat(chain.hoursNow().value()).isEqualTo(1.8, within(1e-9));
            assertThat(chain.hoursLater().value()).isEqualTo(7.6, within(1e-9));
            assertThat(chain.breakEven().value()).isEqualTo(584.0 / 1_338.0, within(1e-12));
        });
    }

    @ParameterizedTest
    @CsvSource({"0.43, false", "0.44, true"})
    void it_pays_above_the_break_even_chance(double chance, boolean pays) {
        RepairPlanner planner = new RepairPlanner(headOff().catalogue(), SHOP);

        Preventive chain = planner.whileInThere(planner.plan(Set.of("HEAD_GASKET")), all(chance)).get(0);

        assertThat(chain.pays()).isEqualTo(pays);
        assertThat(chain.gain().amount()).isEqualTo(chance * 1_338 - 584, within(1e-9));
    }

    /**
     * A turbocharger's oil line, 30 + 1 h at 130, reached on its own; failed it kills the new turbocharger (900 + 4.5
     * h, 1,485) with 0.28. Prices as in the trade's worked turbocharger case, the line's and the chance invented.
     */
    @Test
    void a_root_cause_rides_with_the_part_it_protects() {
        Trade trade = new Trade()
                .item("LINE", 1, 30)
                .item("TURBO", HoursRange.of(4.5, 4.5, 4.5), Map.of(PartSource.AFTERMARKET, Trade.usd(900)),
                        Trade.usd(0), List.of(), Set.of("LINE"))
                .item("HORN", 0.5, 30)
                .damage("LINE", "TURBO", .28);
        RepairPlanner planner = new RepairPlanner(trade.catalogue(), SHOP);
        Probability p = Probability.of(0.4);

        List<Preventive> advice = planner.whileInThere(planner.plan(Set.of("TURBO")), Map.of("LINE", p, "HORN", p));

        assertThat(advice).singleElement().satisfies(line -> {
            assertThat(line.item()).isEqualTo("LINE");
            assertThat(line.protects()).isEqualTo("worn TURBO");
            assertThat(line.now().amount()).isEqualTo(160, within(1e-9));
            assertThat(line.later().amount()).isEqualTo(160 + .28 * 1_485, within(1e-9));
            assertThat(line.breakEven().value()).isEqualTo(160 / 575.8, within(1e-12));
            assertThat(line.pays()).isTrue();
        });
    }

    @Test
    void what_the_plan_already_renews_is_not_advised() {
        Trade trade = headOff().remedy("USED_ENGINE", Set.of("HEAD_GASKET", "CHAIN"), PartSource.USED, 1, 10,
                List.of(), 1, 0, true, "HEAD_OFF");
        RepairPlanner planner = new RepairPlanner(trade.catalogue(), SHOP);

        assertThat(planner.whileInThere(planner.plan(Set.of("HEAD_GASKET")), all(0.9))).isEmpty();
    }

    @Test
    void items_without_a_chance_are_left_out() {
        RepairPlanner planner = new RepairPlanner(headOff().catalogue(), SHOP);

        assertThat(planner.whileInThere(planner.plan(Set.of("HEAD_GASKET")), Map.of())).isEmpty();
    }

    @Test
    void a_tool_bought_for_the_plan_is_owned_now_and_later() {
        Trade trade = new Trade()
                .step("COVER", 4)
                .tool("LOCK", 100)
                .tool("PULLER", 60)
                .item("BROKEN", 1, Map.of(PartSource.MAKER, 50.0), 0, List.of("LOCK"), Set.of(), "COVER")
                .item("SOUND", 1, Map.of(PartSource.MAKER, 80.0), 10, List.of("LOCK", "PULLER"), Set.of(), "COVER");
        RepairPlanner planner =
                new RepairPlanner(trade.catalogue(), Trade.withoutComebacks(Workshop.ownHands(Money.usd(20))));

        Preventive sound = planner
                .whileInThere(planner.plan(Set.of("BROKEN")), Map.of("SOUND", Probability.of(0.3)))
                .get(0);

        assertThat(sound.now().amount()).isEqualTo(80 + 10 + 60 + 20, within(1e-9));
        assertThat(sound.later().amount()).isEqualTo(80 + 10 + 60 + 5 * 20, within(1e-9));
    }

    @Test
    void an_item_whose_access_is_a_trifle_gains_nothing_from_being_open() {
        Trade trade = headOff().step("TRAY", 0.2).item("LONG_JOB", 9, 900, "TRAY").item("SUMP_PLUG", 0.1, 9, "TRAY");
        RepairPlanner planner = new RepairPlanner(trade.catalogue(), SHOP);
        Probability likely = Probability.of(0.9);

        List<Preventive> advice = planner.whileInThere(
                planner.plan(Set.of("SUMP_PLUG")), Map.of("LONG_JOB", likely, "HORN", likely, "CHAIN", likely));

        assertThat(advice).isEmpty();
    }

    @Test
    void the_best_gain_comes_first() {
        Trade trade = headOff().item("TENSIONER", 0.2, 20, "FRONT_COVER");
        RepairPlanner planner = new RepairPlanner(trade.catalogue(), SHOP);

        List<Preventive> advice = planner.whileInThere(
                planner.plan(Set.of("HEAD_GASKET")),
                Map.of("CHAIN", Probability.of(0.1), "TENSIONER", Probability.of(0.9)));

        assertThat(advice).extracting(Preventive::item).containsExactly("TENSIONER", "CHAIN");
        assertThat(advice).extracting(Preventive::pays).containsExactly(true, false);
    }
}
