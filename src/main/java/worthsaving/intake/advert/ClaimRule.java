package worthsaving.intake.advert;

import java.util.ArrayList;
import java.util.List;
import worthsaving.intake.advert.Claim.Standing;

/** What the seller says of parts: failed, doubted, denied, or already replaced. */
final class ClaimRule {

    private static final int REACH = 4;
    /** So many further words make a stretch a statement, which must say what is wrong; fewer are a list of faults. */
    private static final int STATEMENT = 3;

    private final Page page;
    private final Words words;
    private final Polarity polarity;
    private final boolean[] repaired;
    private final boolean[] unfitted;
    private final boolean[] need;
    private final boolean[] fine;
    private final boolean[] failing;

    ClaimRule(Page page, Polarity polarity) {
        this.page = page;
        this.words = page.words();
        this.polarity = polarity;
        this.repaired = marks("cue:repaired");
        this.unfitted = marks("cue:unfitted");
        this.need = marks("cue:need");
        this.fine = marks("cue:fine");
        this.failing = marks("cue:failing");
        page.hits("symptom").forEach(hit -> hit.take(failing));
    }

    private boolean[] marks(String kind) {
        boolean[] marks = new boolean[words.size()];
        page.hits(kind).forEach(hit -> hit.take(marks));
        return marks;
    }

    List<Found<Claim>> read() {
        List<Hit> hits = page.hits("item");
        List<Standing> standings = new ArrayList<>();
        for (int i = 0; i < hits.size(); i++) {
            standings.add(standing(hits.get(i), i == 0 ? null : hits.get(i - 1), i == 0 ? null : standings.get(i - 1)));
        }
        for (int i = hits.size() - 2; i >= 0; i--) {
            boolean listBefore = standings.get(i) == Standing.FAILED && standings.get(i + 1) == Standing.REPAIRED;
            if (listBefore && listed(hits.get(i), hits.get(i + 1)) && behind(hits.get(i + 1)) && !needed(hits.get(i),
                    words.get(hits.get(i).first()).token()) && !within(need, hits.get(i).first(), hits.get(i).last())) {
                standings.set(i, Standing.REPAIRED);
            }
        }
        List<Found<Claim>> claims = new ArrayList<>();
        for (int i = 0; i < hits.size(); i++) {
            Hit hit = hits.get(i);
            Standing standing = standings.get(i);
            List<Span> spans = page.spans(hit);
            Claim claim = new Claim(hit.means(), standing);
            claims.add(standing == Standing.DOUBTED
                    ? Found.guessed(claim, spans, "the seller is not sure")
                    : Found.stated(claim, spans));
        }
        return claims;
    }

    private Standing standing(Hit hit, Hit before, Standing last) {
        if (polarity.elsewhere(hit)) {
            return Standing.MENTIONED;
        }
        if (polarity.denied(hit) || fine(hit)) {
            return Standing.DENIED;
        }
        if (replaced(hit, before, last)) {
            return Standing.REPAIRED;
        }
        if (polarity.doubted(hit)) {
            return Standing.DOUBTED;
        }
        return mentioned(hit) ? Standing.MENTIONED : Standing.FAILED;
    }

    /** "pulled the valve cover to have a look": a part named in a statement that says nothing bad. */
    private boolean mentioned(Hit hit) {
        if (hit.last() - hit.first() >= hit.places().length) {
            return false; // words apart make a statement of their own
        }
        int segment = words.get(hit.first()).token().segment();
        int from = hit.first();
        int to = hit.last();
        while (from > 0 && words.get(from - 1).token().segment() == segment) {
            from--;
        }
        while (to + 1 < words.size() && words.get(to + 1).token().segment() == segment) {
            to++;
        }
        return to - from + 1 - hit.places().length > STATEMENT && !within(failing, from, to) && !within(need, from, to);
    }

    /** "timing chains fine", "clutch is good", but not "blocked solid". */
    private boolean fine(Hit hit) {
        Token first = words.get(hit.first()).token();
        for (int i = hit.last() + 1; i < Math.min(words.size(), hit.last() + 3); i++) {
            boolean stuck = failing[i - 1] && words.get(i).text().equals("solid");
            if (fine[i] && !stuck && words.get(i).token().segment() == first.segment()) {
                return i == hit.last() + 1 || Rx.is(words.get(i - 1).text(),
                        "is|are|still|all|feels|looks|seems|fluid|oil|level|itself|tests|tested");
            }
        }
        return false;
    }

    private boolean replaced(Hit hit, Hit before, Standing last) {
        Token first = words.get(hit.first()).token();
        if (within(need, hit.first(), hit.last()) || needed(hit, first)) {
            return false;
        }
        boolean ahead = false;
        for (int i = hit.first() - 1; i >= Math.max(0, hit.first() - REACH); i--) {
            if (words.get(i).token().segment() != first.segment() || polarity.turns(i)) {
                break;
            }
            ahead |= repaired[i];
        }
        if (unfitted(first)) {
            return false;
        }
        boolean inherited = last == Standing.REPAIRED && before != null && listed(before, hit);
        return ahead || headed(hit) || behind(hit) || inherited;
    }

    /** "Replaced already: plugs, wires, water pump". */
    private boolean headed(Hit hit) {
        int clause = words.get(hit.first()).token().clause();
        for (int i = hit.first(); i > 0 && words.get(i).token().clause() == clause; i--) {
            if (words.get(i).token().gap().startsWith(":") && (repaired[i - 1] || i > 1 && repaired[i - 2])) {
                return true;
            }
        }
        return false;
    }

    /** "water pump replaced", "starter is new". */
    private boolean behind(Hit hit) {
        Token first = words.get(hit.first()).token();
        boolean behind = false;
        for (int i = hit.last() + 1; i <= Math.min(words.size() - 1, hit.last() + REACH); i++) {
            if (words.get(i).token().segment() != first.segment() || need[i]) {
                break;
            }
            boolean theNext = repaired[i] && isNew(i) && i + 1 < words.size() && startsItem(i + 1);
            behind |= repaired[i] && !theNext;
        }
        return behind;
    }

    private boolean isNew(int i) {
        return words.get(i).text().startsWith("new") || words.get(i).text().equals("brand");
    }

    private boolean startsItem(int word) {
        return page.hits("item").stream().anyMatch(h -> h.first() == word);
    }

    private boolean unfitted(Token first) {
        for (int i = 0; i < words.size(); i++) {
            if (unfitted[i] && words.get(i).token().clause() == first.clause()) {
                return true;
            }
        }
        return false;
    }

    /** A need named before in the same stretch outweighs "new": "needs new starter". */
    private boolean needed(Hit hit, Token first) {
        for (int i = hit.first() - 1; i >= 0 && words.get(i).token().segment() == first.segment(); i--) {
            if (need[i]) {
                return true;
            }
        }
        for (int i = hit.last() + 1; i < Math.min(words.size(), hit.last() + 3); i++) {
            if (words.get(i).token().segment() == first.segment() && need[i]) {
                return true;
            }
        }
        return false;
    }

    private static boolean within(boolean[] marks, int from, int to) {
        for (int i = from; i <= to; i++) {
            if (marks[i]) {
                return true;
            }
        }
        return false;
    }

    /** The next entry of a list: it follows at once, after a comma or "and". */
    private boolean listed(Hit before, Hit hit) {
        Token a = words.get(before.last()).token();
        Token b = words.get(hit.first()).token();
        for (int i = before.last() + 1; i < hit.first(); i++) {
            if (!Rx.is(words.get(i).text(), "and|n|plus|the|a|all")) {
                return false;
            }
        }
        return a.clause() == b.clause();
    }
}
