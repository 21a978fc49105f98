package worthsaving.ranking;

import java.util.Optional;

/**
 * What became of one listing of many: either a standing or a refusal. The appraisal's thousands of outcomes are let go,
 * so that many can be held.
 */
public record Scored(Optional<Standing> standing, Optional<Judged.Refused> refused) {

    static Scored of(Judged judged) {
        if (judged instanceof Judged.Done done) {
            return new Scored(Optional.of(Standing.of(done.appraisal())), Optional.empty());
        }
        return new Scored(Optional.empty(), Optional.of((Judged.Refused) judged));
    }
}
