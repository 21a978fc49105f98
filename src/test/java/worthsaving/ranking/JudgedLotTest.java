package worthsaving.ranking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.ShippedCatalogue;
import worthsaving.deal.Verdict;
import worthsaving.deal.WayOut;
import worthsaving.deal.WayResult;
import worthsaving.diagnosis.Belief;
import worthsaving.inspection.CheckValue;
import worthsaving.quantity.Money;
import worthsaving.quantity.Seed;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;
import worthsaving.vehicle.Observation.Sight;
import worthsaving.vehicle.Observation.Witness;

/** What is said of each car of the sample lot, at its ask and at fractions of it, follows from its own figures. */
class JudgedLotTest {

    private static final Catalogue CATALOGUE = ShippedCatalogue.load();
    private static final Judge JUDGE =
            new Judge(CATALOGUE, SampleLot.byAge(), JudgeSettings.usual(CATALOGUE, Seed.DEFAULT));
    private static final List<Appraisal> LOT = SampleLot.read(CATALOGUE).stream()
            .flatMap(l -> List.of(l, asked(l, 0.5), asked(l, 0.2)).stream())
            .map(l -> ((Judged.Done) JUDGE.judge(l)).appraisal()).toList();

    private static Listing asked(Listing l, double share) {
        Fact<Money> ask = l.ask().get().map(m -> Fact.known(m.times(share))).orElse(l.ask());
        return new Listing(l.id() + "-" + share, l.vehicle(), ask, l.seen(), l.towMiles(), l.exposure(),
                l.observations(), l.story(), l.origin());
    }

    @Test
    void a_check_goes_before_the_decision_when_it_decides_pays_and_may_come_out_either_way() {
        int looks = 0;
        for (Appraisal a : LOT) {
            Verdict plain = a.assessment().verdict();
            Optional<CheckValue> first = a.checks().stream().findFirst();
            boolean open = plain.kind() != Verdict.Kind.CHECK_FIRST && plain.kind() != Verdict.Kind.HARD_STOP;
            boolean look = open && a.checkedAt().equals(a.assessment().price())
                    && first.isPresent() && first.get().decides() && first.get().net().amount() > 0
                    && first.get().chancePresent().value() >= 0.1 && first.get().chancePresent().value() <= 0.9;
            if (look) {
                assertThat(a.verdict().kind()).isEqualTo(Verdict.Kind.CHECK_FIRST);
                assertThat(a.verdict().headline()).contains(first.get().finding().name());
            } else if (a.checkedAt().equals(a.assessment().price())) {
                assertThat(a.verdict()).isEqualTo(plain);
            }
            looks += look ? 1 : 0;
        }
        assertThat(looks).isBetween(3, LOT.size() - 3);
    }

    @Test
    void items_are_shown_that_are_likely_and_much_likelier_than_usual() {
        for (Appraisal a : LOT) {
            List<Belief> shown = Standing.of(a).likely();

            assertThat(shown).hasSizeLessThanOrEqualTo(5).isSortedAccordingTo(
                    Comparator.comparing(Belief::posterior).reversed().thenComparing(Belief::item));
            List<Belief> due = a.diagnosis().beliefs().stream()
                    .filter(b -> b.posterior().value() / b.prior().value() > 1.2 && b.posterior().value() >= 0.05).toList();
            assertThat(due).containsAll(shown);
            assertThat(shown.size()).isEqualTo(Math.min(5, due.size()));
        }
    }

    @Test
    void a_stake_has_the_profit_and_the_receipt_of_its_way_out() {
        int mended = 0;
        int otherwise = 0;
        for (Appraisal a : LOT) {
            Stake stake = Stake.of(a);
            WayResult best = a.assessment().bestWay();

            assertThat(stake.profit().mean()).isCloseTo(best.expectedProfit(), within(1e-6));
            if (best.way() == WayOut.REPAIR_AND_SELL) {
                assertThat(stake.receipt()).isEqualTo(a.value().mean());
                assertThat(stake.tools()).isEqualTo(a.assessment().tools());
                mended++;
            } else {
                assertThat(stake.receipt().amount())
                        .isCloseTo(best.expectedProfit() + best.cashOut().mean(), within(1e-9));
                assertThat(stake.tools()).isEmpty();
                otherwise++;
            }
        }
        assertThat(mended).isPositive();
        assertThat(otherwise).isPositive();
    }

    @Test
    void each_order_puts_what_is_not_to_be_bought_last_and_the_best_first() {
        List<Standing> lot = LOT.stream().map(Standing::of).toList();
        for (Order order : Order.values()) {
            List<Standing> sorted = lot.stream().sorted(order.comparator()).toList();
            for (int i = 1; i < sorted.size(); i++) {
                Standing a = sorted.get(i - 1);
                Standing b = sorted.get(i);
                assertThat(rank(a)).isLessThanOrEqualTo(rank(b));
                if (rank(a) == rank(b)) {
                    assertThat(better(order).applyAsDouble(a)).isGreaterThanOrEqualTo(better(order).applyAsDouble(b));
                }
            }
        }
        assertThat(lot.stream().map(JudgedLotTest::rank).collect(Collectors.toSet())).contains(0, 1);
    }

    @Test
    void equals_go_by_room_then_by_id() {
        Standing any = Standing.of(LOT.get(0));
        Standing cheap = twin(any, "B", 100);
        Standing dear = twin(any, "A", 900);
        Standing same = twin(any, "C", 100);

        assertThat(List.of(same, dear, cheap).stream().sorted(Order.EXPECTED_PROFIT.comparator()))
                .extracting(s -> s.listing().id()).containsExactly("B", "C", "A");
    }

    private static Standing twin(Standing s, String id, double ask) {
        Listing l = s.listing();
        Listing named = new Listing(id, l.vehicle(), Fact.known(Money.usd(ask)), l.seen(), l.towMiles(), l.exposure(),
                l.observations(), l.story(), l.origin());
        return new Standing(named, s.verdict(), s.mostToPay(), s.way(), s.value(), s.valueLow(), s.valueHigh(),
                s.expectedProfit(), s.chanceOfLoss(), s.worstTwentieth(), s.strip(), s.ownHours(), s.profitPerHour(),
                s.cashOut(), s.days(), s.likely(), s.nextCheck(), s.warnings(), s.stake());
    }

    private static int rank(Standing s) {
        return s.verdict().kind() == Verdict.Kind.HARD_STOP ? 2 : s.way() == WayOut.WALK_AWAY ? 1 : 0;
    }

    private static ToDoubleFunction<Standing> better(Order order) {
        return switch (order) {
            case EXPECTED_PROFIT -> s -> s.expectedProfit().amount();
            case PROFIT_PER_HOUR -> s -> s.profitPerHour().orElse(Double.NEGATIVE_INFINITY);
            case CHANCE_OF_LOSS -> s -> -s.chanceOfLoss();
            case ROOM -> s -> {
                double ask = s.listing().ask().get().orElseThrow().amount();
                return s.mostToPay().limit().map(Money::amount).orElse(0.0) - ask;
            };
        };
    }

    @Test
    void questions_come_once_by_worth_and_their_answers_are_judged_like_any_seller_s_word() {
        Interview interview = new Interview(JUDGE);
        int asked = 0;
        for (Appraisal a : LOT.subList(0, 30)) {
            List<Interview.Question> all = interview.questions(a, 100);

            assertThat(all).isSortedAccordingTo(
                    Comparator.comparing(Interview.Question::worth, Comparator.comparing(Money::amount)).reversed());
            assertThat(all).extracting(q -> q.finding().question()).doesNotHaveDuplicates().doesNotContain("");
            assertThat(all).allSatisfy(q -> assertThat(q.worth().amount()).isPositive());
            assertThat(all).hasSize(new HashSet<>(a.checks().stream().filter(c -> c.gross().amount() > 0)
                    .map(c -> c.finding().question()).filter(q -> !q.isBlank()).toList()).size());
            assertThat(interview.questions(a, 2)).isEqualTo(all.subList(0, Math.min(2, all.size())));
            for (Interview.Question q : all.subList(0, Math.min(2, all.size()))) {
                assertThat(q.yes()).isEqualTo(told(a.listing(), q.finding().id(), Sight.PRESENT));
                assertThat(q.no()).isEqualTo(told(a.listing(), q.finding().id(), Sight.ABSENT));
                asked++;
            }
        }
        assertThat(asked).isGreaterThan(8);
    }

    private static Interview.Answer told(Listing l, String finding, Sight sight) {
        List<Observation> more = new ArrayList<>(l.observations());
        more.add(new Observation(finding, sight, Witness.SELLER));
        Appraisal after = ((Judged.Done) JUDGE.judge(new Listing(l.id(), l.vehicle(), l.ask(), l.seen(), l.towMiles(),
                l.exposure(), more, l.story(), l.origin()))).appraisal();
        return new Interview.Answer(after.verdict().kind(), after.assessment().mostToPay().wholeLimit());
    }

    @Test
    void a_car_made_ready_gives_back_what_it_was_made_of() {
        Listing listing = LOT.get(0).listing();
        PreparedListing ready = ((Preparation.Ready) JUDGE.prepare(listing)).listing();
        JudgeSettings settings = JUDGE.settings();
        Money price = Money.usd(1_000);

        assertThat(ready.listing()).isSameAs(listing);
        PreparedListing dearer = ready.with(ready.deal().withValueTimes(1.5));
        assertThat(dearer.deal()).isNotSameAs(ready.deal());
        assertThat(dearer.appraise(settings.terms(), settings.rule(), Optional.of(price)).assessment().bestWay()
                .expectedProfit()).isGreaterThan(ready.appraise(settings.terms(), settings.rule(), Optional.of(price))
                        .assessment().bestWay().expectedProfit());
    }
}
