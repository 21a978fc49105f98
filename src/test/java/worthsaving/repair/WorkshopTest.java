package worthsaving.repair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import worthsaving.catalog.PartSource;
import worthsaving.quantity.Money;
import worthsaving.quantity.Probability;
import worthsaving.quantity.Range;
import worthsaving.quantity.Source;
import worthsaving.repair.Worker.OwnHands;
import worthsaving.repair.Worker.Shop;

class WorkshopTest {

    @Test
    void changed_copies_leave_the_original_alone() {
        Workshop plain = Workshop.ownHands(Money.usd(35));

        Workshop changed = plain.withOnly(EnumSet.of(PartSource.USED)).withUsedUnits(false)
                .withTools(Set.of("HOIST")).withShelf(Set.of("PUMP")).withChoice("PUMP", PartSource.MAKER)
                .withLeastSuccess(Probability.of(0.8)).withTerms(PartSource.USED, SourceTerms.certain())
                .withWorker(new Shop(Shop.Kind.DEALER, Money.usd(180)));

        assertThat(plain).isEqualTo(Workshop.ownHands(Money.usd(35)));
        assertThat(changed.allowedSources()).containsExactlyInAnyOrder(PartSource.USED, PartSource.ON_THE_SHELF);
        assertThat(changed.usedUnits()).isFalse();
        assertThat(changed.shelf()).containsExactly("PUMP");
        assertThat(changed.choice()).isEqualTo(Map.of("PUMP", PartSource.MAKER));
        assertThat(changed.leastSuccess().value()).isEqualTo(0.8);
        assertThat(changed.terms().get(PartSource.USED)).isEqualTo(SourceTerms.certain());
        assertThat(changed.worker().hourly()).isEqualTo(Money.usd(180));
        assertThat(changed.currency()).isEqualTo(Money.USD);
    }

    @Test
    void sets_handed_in_can_change_later_without_harm() {
        Set<String> tools = new HashSet<>(Set.of("HOIST"));
        Workshop shop = Workshop.ownHands(Money.usd(35)).withTools(tools);
        tools.add("PRESS");

        assertThat(shop.owns("HOIST")).isTrue();
        assertThat(shop.owns("PRESS")).isFalse();
    }

    @Test
    void a_shop_brings_its_tools_and_works_at_book_speed() {
        Workshop shop = Workshop.independent(Money.usd(130));

        assertThat(shop.owns("ANYTHING")).isTrue();
        assertThat(shop.worker().factor("ANY_JOB")).isEqualTo(1);
    }

    @Test
    void a_first_time_takes_longer_until_it_is_done() {
        OwnHands hands = new OwnHands(Money.usd(35), 1.25, 1.6, Set.of("CLUTCH"));

        assertThat(hands.factor("CLUTCH")).isEqualTo(1.25);
        assertThat(hands.factor("HEAD_OFF")).isEqualTo(1.25 * 1.6);
    }

    @ParameterizedTest
    @CsvSource({"-1, 1, 1, hour must be worth", "35, 0, 1, speed", "35, NaN, 1, speed", "35, 1, 0.9, first-time"})
    void impossible_hands_are_refused(double worth, double speed, double firstTime, String says) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new OwnHands(Money.usd(worth), speed, firstTime, Set.of()))
                .withMessageContaining(says);
    }

    @Test
    void impossible_terms_are_refused() {
        Range some = new Range(0.1, 0.2, 1.2);
        Source user = Source.user();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SourceTerms(some, Range.exactly(1), user))
                .withMessageContaining("comeback");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SourceTerms(Range.exactly(0), new Range(-1, 0, 1), user))
                .withMessageContaining("days");
    }

    @Test
    void every_source_needs_terms() {
        Map<PartSource, SourceTerms> partial = new EnumMap<>(SourceTerms.guessed());
        partial.remove(PartSource.USED);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Workshop(OwnHands.at(Money.usd(1)), Set.of(), Set.of(), Map.of(), Set.of(), true,
                        Workshop.EVEN_CHANCE, partial))
                .withMessageContaining("USED");
    }

    @ParameterizedTest
    @EnumSource(PartSource.class)
    void guessed_terms_say_that_they_are_guesses(PartSource source) {
        SourceTerms terms = SourceTerms.guessed().get(source);

        assertThat(terms.source().label()).isEqualTo(Source.Label.GUESS);
        assertThat(terms.comeback().width()).isPositive();
    }
}
