package worthsaving.ranking;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import worthsaving.catalog.FindingKind;
import worthsaving.deal.Verdict;
import worthsaving.inspection.CheckValue;
import worthsaving.quantity.Money;
import worthsaving.quantity.Probability;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;
import worthsaving.vehicle.Observation.Sight;
import worthsaving.vehicle.Observation.Witness;

/**
 * What to ask the seller, by what knowing the answer would be worth, and how each answer moves the judgement. An
 * answer is a seller's word and counts as such, so that it moves less than a look would.
 */
public final class Interview {

    private final Judge judge;

    /**
     * @param worth what knowing it for certain would be worth: more than a seller's word ever is
     * @param chanceYes how probable it is that it is so
     */
    public record Question(FindingKind finding, Money worth, Probability chanceYes, Answer yes, Answer no) {}

    /** The judgement once the seller has said so. */
    public record Answer(Verdict.Kind verdict, Optional<Money> mostToPay) {}

    /** @param judge whose appraisals are asked about */
    public Interview(Judge judge) {
        this.judge = judge;
    }

    /**
     * @param appraisal of the judge
     * @param most questions wanted
     * @return dearest first; a question that stands for several findings comes once, and those that would change
     *     nothing are left out
     */
    public List<Question> questions(Appraisal appraisal, int most) {
        List<Question> questions = new ArrayList<>();
        Set<String> asked = new HashSet<>();
        List<CheckValue> byWorth = appraisal.checks().stream()
                .filter(c -> c.gross().amount() > 0 && !c.finding().question().isBlank())
                .sorted((a, b) -> b.gross().compareTo(a.gross()))
                .toList();
        for (CheckValue c : byWorth) {
            if (questions.size() < most && asked.add(c.finding().question())) {
                questions.add(new Question(c.finding(), c.gross(), c.chancePresent(),
                        answer(appraisal.listing(), c.finding(), Sight.PRESENT),
                        answer(appraisal.listing(), c.finding(), Sight.ABSENT)));
            }
        }
        return questions;
    }

    private Answer answer(Listing listing, FindingKind finding, Sight said) {
        List<Observation> more = new ArrayList<>(listing.observations());
        more.add(new Observation(finding.id(), said, Witness.SELLER));
        Judged judged = judge.judge(new Listing(listing.id(), listing.vehicle(), listing.ask(), listing.seen(),
                listing.towMiles(), listing.exposure(), more, listing.story(), listing.origin()));
        if (judged instanceof Judged.Done done) {
            return new Answer(done.appraisal().verdict().kind(), done.appraisal().assessment().mostToPay().wholeLimit());
        }
        return new Answer(Verdict.Kind.CHECK_FIRST, Optional.empty());
    }
}
