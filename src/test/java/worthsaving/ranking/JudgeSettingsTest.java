package worthsaving.ranking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Set;
import org.junit.jupiter.api.Test;
import worthsaving.deal.BuyerRule;
import worthsaving.deal.Term;
import worthsaving.inspection.CheckSettings;
import worthsaving.quantity.Money;

class JudgeSettingsTest {

    private static final JudgeSettings USUAL = Lots.SETTINGS;

    @Test
    void one_thing_is_changed_and_the_others_stay() {
        BuyerRule rule = BuyerRule.of(Money.usd(777), 0.1);

        assertThat(USUAL.withRule(rule)).isNotEqualTo(USUAL);
        assertThat(USUAL.withRule(rule).rule()).isEqualTo(rule);
        assertThat(USUAL.withRule(rule).withRule(USUAL.rule())).isEqualTo(USUAL);
        assertThat(USUAL.withTerms(USUAL.terms().with(Term.HAGGLE, 3)).terms().mean(Term.HAGGLE)).isEqualTo(3);
        assertThat(USUAL.withTerms(USUAL.terms())).isEqualTo(USUAL);
        assertThat(USUAL.withTowMiles(77).towMilesAssumed()).isEqualTo(77);
        assertThat(USUAL.withTowMiles(77).withTowMiles(USUAL.towMilesAssumed())).isEqualTo(USUAL);
        CheckSettings checks = CheckSettings.beforeBuying(Set.of(), Money.usd(5));
        assertThat(USUAL.withChecks(checks).checks()).isEqualTo(checks);
        assertThat(USUAL.withChecks(checks).withChecks(USUAL.checks())).isEqualTo(USUAL);
    }

    @Test
    void an_hour_and_the_tools_hold_in_the_workshop_and_in_looking() {
        JudgeSettings dear = USUAL.withHourly(Money.usd(99));
        assertThat(dear.workshop().worker().hourly()).isEqualTo(Money.usd(99));
        assertThat(dear.checks().hourly()).isEqualTo(Money.usd(99));
        assertThat(dear.terms()).isEqualTo(USUAL.terms());

        String tool = Lots.CATALOGUE.tools().get(0).id();
        JudgeSettings armed = USUAL.withTools(Set.of(tool));
        assertThat(armed.workshop().owns(tool)).isTrue();
        assertThat(armed.checks().ownedTools()).containsExactly(tool);
        assertThat(armed.checks().stages()).isEqualTo(USUAL.checks().stages());
    }

    @Test
    void a_distance_of_tow_must_be_one() {
        assertThatThrownBy(() -> USUAL.withTowMiles(-1)).hasMessageContaining("-1");
        assertThatThrownBy(() -> USUAL.withTowMiles(Double.POSITIVE_INFINITY)).hasMessageContaining("Infinity");
    }
}
