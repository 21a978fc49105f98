package worthsaving.repair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.PartSource;
import worthsaving.quantity.Money;
import worthsaving.quantity.Range;
import worthsaving.quantity.Source;

class PartSourceTest {

    /** Invented: the used part is 80 cheaper, but the job behind it is long. */
    private static final Catalogue CATALOGUE = new Trade()
            .step("DEEP", 9)
            .item("SENSOR", 1, Map.of(PartSource.MAKER, 200.0, PartSource.USED, 120.0), 20, List.of(), Set.of(), "DEEP")
            .item("CLEANING", 2, Map.of(), 15, List.of(), Set.of())
            .item("PAPERS", 5, Map.of(PartSource.ON_THE_SHELF, 250.0), 0, List.of(), Set.of())
            .catalogue();

    private static final Workshop SHOP = Workshop.independent(Money.usd(100))
            .withTerms(PartSource.MAKER, terms(0.01, 3))
            .withTerms(PartSource.USED, terms(0.20, 6));

    private static SourceTerms terms(double comeback, double days) {
        return new SourceTerms(Range.exactly(comeback), Range.exactly(days), Source.user());
    }

    private static PartSource chosen(Workshop shop) {
        return new RepairPlanner(CATALOGUE, shop).plan(Set.of("SENSOR")).jobs().get(0).partSource();
    }

    @Test
    void comeback_risk_times_the_repeat_is_part_of_the_price() {
        List<SourceOffer> offers = new RepairPlanner(CATALOGUE, SHOP).sources("SENSOR");

        assertThat(offers).extracting(SourceOffer::source).containsExactly(PartSource.MAKER, PartSource.USED);
        assertThat(offers.get(0).expectedCost().amount()).isEqualTo(200 + 0.01 * (200 + 20 + 1_000), within(1e-9));
        assertThat(offers.get(1).expectedCost().amount()).isEqualTo(120 + 0.20 * (120 + 20 + 1_000), within(1e-9));
        assertThat(offers).extracting(SourceOffer::chosen).containsExactly(true, false);
        assertThat(offers).extracting(o -> o.days().mode()).containsExactly(3.0, 6.0);
        assertThat(chosen(SHOP)).isEqualTo(PartSource.MAKER);
    }

    @Test
    void the_reserve_is_kept_apart_from_the_cost() {
        RepairPlan plan = new RepairPlanner(CATALOGUE, SHOP).plan(Set.of("SENSOR"));

        assertThat(plan.meanCost().amount()).isEqualTo(200 + 20 + 1_000, within(1e-9));
        assertThat(plan.comebackReserve().amount()).isEqualTo(12.20, within(1e-9));
        assertThat(plan.expectedCost().amount()).isEqualTo(1_232.20, within(1e-9));
    }

    @Test
    void the_users_choice_goes_before_price_and_before_the_allowed_list() {
        assertThat(chosen(SHOP.withChoice("SENSOR", PartSource.USED))).isEqualTo(PartSource.USED);
        assertThat(chosen(SHOP.withOnly(EnumSet.of(PartSource.MAKER)).withChoice("SENSOR", PartSource.USED)))
                .isEqualTo(PartSource.USED);
    }

    @Test
    void a_choice_that_nobody_offers_is_reported() {
        PlanResult result = new RepairPlanner(CATALOGUE, SHOP.withChoice("SENSOR", PartSource.REBUILT))
                .find(Set.of("SENSOR"));

        assertThat(((PlanResult.Infeasible) result).message())
                .contains("SENSOR")
                .contains("is to come from REBUILT, but it is offered from MAKER, USED");
    }

    @Test
    void only_these_sources_leaves_the_others_visible_but_not_allowed() {
        List<SourceOffer> offers =
                new RepairPlanner(CATALOGUE, SHOP.withOnly(EnumSet.of(PartSource.USED))).sources("SENSOR");

        assertThat(offers).extracting(SourceOffer::allowed).containsExactly(false, true);
        assertThat(offers).extracting(SourceOffer::chosen).containsExactly(false, true);
    }

    @Test
    void a_part_on_the_shelf_costs_nothing_and_is_shown() {
        RepairPlanner planner = new RepairPlanner(CATALOGUE, SHOP.withShelf(Set.of("SENSOR")));

        RepairPlan plan = planner.plan(Set.of("SENSOR"));

        assertThat(plan.jobs().get(0).partSource()).isEqualTo(PartSource.ON_THE_SHELF);
        assertThat(plan.jobs().get(0).parts().mean()).isEqualTo(Money.usd(0));
        assertThat(planner.quote(plan).lines())
                .anySatisfy(line -> assertThat(line.stage()).isEqualTo(Quote.Stage.PART));
    }

    @Test
    void a_shelf_part_that_comes_back_has_to_be_bought_after_all() {
        Workshop shop = SHOP.withShelf(Set.of("SENSOR")).withTerms(PartSource.ON_THE_SHELF, terms(0.1, 0));

        List<SourceOffer> offers = new RepairPlanner(CATALOGUE, shop).sources("SENSOR");

        assertThat(offers).filteredOn(o -> o.source() == PartSource.ON_THE_SHELF).singleElement()
                .satisfies(o -> assertThat(o.expectedCost().amount())
                        .isEqualTo(0.1 * (120 + 20 + 1_000), within(1e-9)));
    }

    @Test
    void a_job_that_needs_no_part_never_comes_back_for_one() {
        RepairPlan plan = new RepairPlanner(CATALOGUE, SHOP).plan(Set.of("CLEANING"));

        assertThat(plan.meanCost().amount()).isEqualTo(15 + 200, within(1e-9));
        assertThat(plan.comebackReserve().amount()).isZero();
    }

    @Test
    void a_catalogue_price_from_the_shelf_is_paid_for_a_job_without_a_part() {
        RepairPlan plan = new RepairPlanner(CATALOGUE, SHOP.withOnly(Set.of())).plan(Set.of("PAPERS"));

        assertThat(plan.meanCost().amount()).isEqualTo(250 + 500, within(1e-9));
        assertThat(plan.comebackReserve().amount()).isZero();
    }
}
