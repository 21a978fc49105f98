package worthsaving.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.ShippedCatalogue;
import worthsaving.quantity.Money;
import worthsaving.quantity.Seed;
import worthsaving.ranking.Appraisal;
import worthsaving.ranking.Interview;
import worthsaving.ranking.Judge;
import worthsaving.ranking.JudgeSettings;
import worthsaving.ranking.Judged;
import worthsaving.ranking.SampleLot;
import worthsaving.vehicle.Listing;

/** Over the invented sample lot, at invented values. */
class LookAheadTest {

    private static final Catalogue CATALOGUE = ShippedCatalogue.load();
    private static final Judge JUDGE =
            new Judge(CATALOGUE, SampleLot.byAge(), JudgeSettings.usual(CATALOGUE, Seed.DEFAULT));
    private static final List<Listing> LOT = SampleLot.read(CATALOGUE).subList(20, 25);

    private static Optional<Appraisal> appraisal(Listing listing) {
        return JUDGE.judge(listing) instanceof Judged.Done done ? Optional.of(done.appraisal()) : Optional.empty();
    }

    @Test
    void two_checks_are_offered_only_where_none_is_worth_its_cost_alone() {
        int judged = 0;
        for (Listing listing : LOT) {
            Appraisal a = appraisal(listing).orElseThrow();
            Optional<LookAhead.Pair> pair = JUDGE.lookAhead(a);
            if (a.nextCheck().isPresent()) {
                assertThat(pair).isEmpty();
            }
            pair.ifPresent(p -> {
                assertThat(p.net()).isGreaterThan(Money.usd(0));
                assertThat(p.ifPresent().isPresent() || p.ifAbsent().isPresent()).isTrue();
                assertThat(p.first().canDoDamage()).isFalse();
            });
            judged++;
        }
        assertThat(judged).isEqualTo(LOT.size());
    }

    @Test
    void questions_are_asked_once_and_the_dearest_first() {
        int asked = 0;
        for (Listing listing : LOT) {
            Appraisal a = appraisal(listing).orElseThrow();
            List<Interview.Question> questions = new Interview(JUDGE).questions(a, 3);
            assertThat(questions).extracting(q -> q.finding().question()).doesNotHaveDuplicates()
                    .noneMatch(String::isBlank);
            assertThat(questions).isSortedAccordingTo((x, y) -> y.worth().compareTo(x.worth()));
            assertThat(questions).allMatch(q -> q.worth().amount() > 0);
            assertThat(Set.copyOf(questions)).hasSameSizeAs(questions);
            asked += questions.size();
        }
        assertThat(asked).isPositive();
    }
}
