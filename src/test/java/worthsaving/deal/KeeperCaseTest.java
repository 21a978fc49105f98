package worthsaving.deal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static worthsaving.quantity.Money.usd;

import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Money;
import worthsaving.quantity.Probability;

/** Seized engine, dealer quote above the car's value; 36 months and 36,000 miles. Invented inputs. */
class KeeperCaseTest {

    private static final Offset<Double> CENT = within(0.005);

    private final KeeperOption usedEngine = option("used engine", .12, 3_300, 2_800,
            line("quote", 4_300), line("as-is value given up", 900));
    private final KeeperOption dealer = option("dealer, remanufactured", .03, 3_300, 3_200,
            line("quote", 7_400), line("as-is value given up", 900));
    private final KeeperOption replace = new KeeperOption("replace",
            List.of(line("price", 12_500), line("tax", 12_500 * .065), line("fees", 250)),
            Optional.empty(), usd(1_950), List.of(line("insurance", 720), line("fuel", -360)), usd(7_300));
    private final KeeperOption another = option("another car at 6,000", 0, 4_500, 2_600,
            line("price", 6_000), line("tax", 390), line("fees", 250), line("inspection", 150));
    private final KeeperPlan plan = new KeeperPlan(
            36, Distance.ofMiles(36_000), List.of(usedEngine, dealer, replace, another));

    @Test
    void net_cost_and_cents_per_mile() {
        assertRow(usedEngine, 5_200, 6_012, 16.70);
        assertRow(dealer, 8_300, 8_478, 23.55);
        assertRow(replace, 13_562.50, 8_572.50, 23.81);
        assertRow(another, 6_790, 8_690, 24.14);
        assertThat(plan.perYear(usedEngine).amount()).isCloseTo(2_004, CENT);
    }

    @Test
    void mending_wins_although_the_quote_is_most_of_the_value() {
        assertThat(plan.cheapest()).isEqualTo(usedEngine);
        assertThat(plan.saving(usedEngine, replace).amount()).isCloseTo(2_560.50, CENT);
        assertThat(plan.breakEvenQuote(usedEngine, usd(4_300), replace).amount()).isCloseTo(6_860.50, CENT);
    }

    @Test
    void a_second_used_engine_would_not_turn_it() {
        assertThat(usedEngine.netCostIfRepeated().amount()).isCloseTo(8_300, CENT);
        assertThat(plan.chanceDearer(usedEngine, replace)).isZero();
        assertThat(plan.chanceDearer(another, replace)).isEqualTo(1);
        assertThat(plan.chanceDearer(dealer, replace)).isEqualTo(.03);
    }

    @Test
    void rust_on_the_lift_turns_the_decision() {
        KeeperOption rusty = option("used engine", .12, 4_200, 2_000,
                line("quote", 4_300), line("weld", 1_400), line("as-is value given up", 900));
        KeeperPlan after = new KeeperPlan(36, plan.distance(), List.of(rusty, replace));
        assertThat(rusty.netCost().amount()).isCloseTo(9_112, CENT);
        assertThat(100 * after.perMile(rusty).amount()).isCloseTo(25.31, CENT);
        assertThat(after.cheapest()).isEqualTo(replace);
        assertThat(after.saving(replace, rusty).amount()).isCloseTo(539.50, CENT);
    }

    @Test
    void options_from_parts_and_terms_give_the_same_table() {
        KeeperOption mended = KeeperOption.repair("used engine", usd(4_300), usd(900),
                new Scenario.Repeat(Probability.of(.12), usd(2_600)), usd(3_300), usd(2_800));
        assertThat(mended.netCost().amount()).isCloseTo(6_012, CENT);
        DealTerms terms = SampleDeals.nothingElse().with(Term.SALES_TAX, 6.5).with(Term.TITLE_TRANSFER, 250)
                .with(Term.INSPECTION_PAID, 150);
        KeeperOption other = KeeperOption.replace("another car at 6,000", usd(6_000), terms, usd(4_500), List.of(),
                usd(2_600));
        assertThat(other.upfrontTotal().amount()).isCloseTo(6_790, CENT);
        assertThat(other.netCost().amount()).isCloseTo(8_690, CENT);
    }

    @Test
    void guesses_by_age_add_up_over_the_bands() {
        assertThat(KeeperGuesses.otherRepairs(9, 36, Money.usd(130)).amount()).isCloseTo(850 + 1_150 + 1_150, CENT);
        assertThat(KeeperGuesses.otherRepairs(20, 12, Money.usd(130)).amount()).isCloseTo(1_800, CENT);
        assertThat(KeeperGuesses.otherRepairs(5, 0, Money.usd(130)).amount()).isZero();
        assertThat(KeeperGuesses.endValue(usd(6_000), 24, usd(300)).amount()).isCloseTo(6_000 * .865 * .865, CENT);
        assertThat(KeeperGuesses.endValue(usd(400), 120, usd(300))).isEqualTo(usd(300));
        assertThatThrownBy(() -> KeeperGuesses.otherRepairs(-1, 12, Money.usd(130))).hasMessageContaining("zero or more");
    }

    private void assertRow(KeeperOption option, double upfront, double net, double cents) {
        assertThat(option.upfrontTotal().amount()).as(option.name()).isCloseTo(upfront, CENT);
        assertThat(option.netCost().amount()).as(option.name()).isCloseTo(net, CENT);
        assertThat(100 * plan.perMile(option).amount()).as(option.name()).isCloseTo(cents, CENT);
    }

    private static CashLine line(String name, double amount) {
        return new CashLine(name, usd(amount));
    }

    private static KeeperOption option(
            String name, double repeat, double other, double end, CashLine... upfront) {
        Optional<Scenario.Repeat> again = repeat == 0
                ? Optional.empty()
                : Optional.of(new Scenario.Repeat(Probability.of(repeat), usd(2_600)));
        return new KeeperOption(name, List.of(upfront), again, usd(other), List.of(), usd(end));
    }
}
