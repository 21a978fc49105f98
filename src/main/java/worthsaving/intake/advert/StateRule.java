package worthsaving.intake.advert;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One word for whether it runs and drives: the worst that is said or follows counts. */
final class StateRule {

    /** Worst first; a state not listed ranks before those that run well. */
    private static final List<String> WORST_FIRST = List.of("not_running", "no_crank", "no_start", "starts_dies",
            "limited_restart", "runs_will_not_move", "runs_do_not_drive", "runs_overheats", "runs_slips", "runs_limp",
            "runs_rough", "runs_drives", "runs");
    private static final String NOT_RUNNING = "not_running";
    private static final String UNKNOWN = "unknown";

    private StateRule() {}

    static Found<String> find(Page page, Polarity polarity, List<String> symptoms, List<String> implied) {
        String worst = null;
        List<Span> words = List.of();
        boolean stated = false;
        for (Hit hit : page.hits("state")) {
            if (polarity.meant(hit) && worse(hit.means(), worst)) {
                worst = hit.means();
                words = page.spans(hit);
                stated = true;
            }
        }
        boolean told = symptoms.stream().anyMatch(word -> starting(page, word));
        if (NOT_RUNNING.equals(worst) && told) {
            worst = null; // a non-runner of which is told how it does not start
        }
        boolean runs = stated && worst != null && worst.startsWith("runs");
        List<String> following = new ArrayList<>();
        for (String word : symptoms) {
            Optional<String> state = page.vocabulary().symptoms().get(word).state();
            state.ifPresent(following::add);
        }
        if (!runs) {
            implied.stream().filter(state -> !told || !state.equals(NOT_RUNNING)).forEach(following::add);
        }
        for (String state : following) {
            if (worse(state, worst)) {
                worst = state;
                words = List.of();
                stated = false;
            }
        }
        if (worst == null) {
            return Found.guessed(UNKNOWN, List.of(), "the advert does not say whether it runs");
        }
        return stated ? Found.stated(worst, words) : Found.guessed(worst, words, "follows from what is described");
    }

    private static boolean starting(Page page, String symptom) {
        return page.vocabulary().symptoms().get(symptom).state()
                .filter(s -> s.equals("no_start") || s.equals("no_crank")).isPresent();
    }

    private static boolean worse(String state, String than) {
        return than == null || rank(state) < rank(than);
    }

    private static int rank(String state) {
        int rank = WORST_FIRST.indexOf(state);
        return rank < 0 ? WORST_FIRST.indexOf("runs_drives") : rank;
    }
}
