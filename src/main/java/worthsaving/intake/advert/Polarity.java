package worthsaving.intake.advert;

import java.util.List;
import java.util.Set;

/**
 * Whether a phrase is meant: "no knocks, leaks or smoke" and "salvage? NO" deny it, "probably" and a question mark
 * doubt it. A negator that is itself part of a phrase ("no start") denies nothing else.
 */
final class Polarity {

    private static final int REACH = 4;
    private static final int LIST_ITEM = 3;
    private static final Set<String> LIST_OPENERS = Set.of("no", "without", "zero", "never", "none", "not");
    private static final Set<String> VERB_NEGATORS = Set.of("doesnt", "dont", "didnt", "isnt", "hasnt", "havent", "wont");

    private final Page page;
    private final Words words;
    private final boolean[] negator;
    private final boolean[] partner;
    private final boolean[] doubt;
    private final boolean[] answer;
    private final boolean[] deniedAfter;
    /** By clause. */
    private final boolean[] notHere;
    private final boolean[] elsewhere;

    Polarity(Page page) {
        this.page = page;
        this.words = page.words();
        this.negator = marks("cue:negation");
        this.partner = marks("cue:partner");
        this.doubt = marks("cue:doubt");
        this.answer = marks("cue:answer_no");
        this.deniedAfter = new boolean[words.size()];
        page.hits("cue:denied_after").forEach(hit -> deniedAfter[hit.first()] = true);
        this.notHere = clauses("cue:not_here");
        this.elsewhere = clauses("cue:elsewhere");
        for (String kind : List.of("symptom", "item", "title", "state", PhraseBook.SKIP)) {
            for (Hit hit : page.hits(kind)) {
                for (int place : hit.places()) {
                    negator[place] = false;
                }
            }
        }
        for (int i = 1; i < words.size(); i++) {
            if (answers(i)) {
                negator[i] = false;
            }
        }
    }

    private boolean[] marks(String kind) {
        boolean[] marks = new boolean[words.size()];
        page.hits(kind).forEach(hit -> hit.take(marks));
        return marks;
    }

    private boolean[] clauses(String kind) {
        boolean[] marks = new boolean[page.tokens().size()];
        page.hits(kind).forEach(hit -> marks[clause(hit)] = true);
        return marks;
    }

    private int clause(Hit hit) {
        return words.get(hit.first()).token().clause();
    }

    private boolean answers(int i) {
        String gap = words.get(i).token().gap();
        return answer[i] && (gap.indexOf('?') >= 0 || gap.strip().equals(":"));
    }

    /** True when the phrase is said of another car, which tells nothing of this one. */
    boolean elsewhere(Hit hit) {
        return elsewhere[clause(hit)] && !notHere[clause(hit)];
    }

    /** Said of this car and not denied. */
    boolean meant(Hit hit) {
        return !elsewhere(hit) && !denied(hit);
    }

    boolean denied(Hit hit) {
        if (notHere[clause(hit)]) {
            return true;
        }
        int next = hit.last() + 1;
        if (next < words.size() && (answers(next) || words.get(next).text().equals("free")
                && words.get(next).token().gap().length() == 1)) {
            return true;
        }
        return negatedWithin(hit) || negatedAfter(hit) || negatedBefore(hit);
    }

    /** "uses no oil": the negator stands between the words of the phrase and is none of them. */
    private boolean negatedWithin(Hit hit) {
        int[] places = hit.places();
        for (int k = 1; k < places.length; k++) {
            for (int i = places[k - 1] + 1; i < places[k]; i++) {
                if (negator[i] && (LIST_OPENERS.contains(words.get(i).text())
                        || VERB_NEGATORS.contains(words.get(i).text()))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** "the oil light never came on". */
    private boolean negatedAfter(Hit hit) {
        int next = hit.last() + 1;
        for (int i = next; i < Math.min(words.size(), next + 2); i++) {
            if (words.get(i).token().segment() != words.get(hit.last()).token().segment()) {
                return false;
            }
            if (deniedAfter[i]) {
                return true;
            }
        }
        return false;
    }

    private boolean negatedBefore(Hit hit) {
        Token first = words.get(hit.first()).token();
        int steps = 0;
        boolean crossed = false;
        for (int i = hit.first() - 1; i >= 0; i--) {
            Token token = words.get(i).token();
            if (token.clause() != first.clause() || partner[i] && !negator[i]) {
                return false;
            }
            if (token.segment() != first.segment() && !crossed) {
                if (!listed(hit)) {
                    return false;
                }
                crossed = true;
            }
            if (negator[i]) {
                return !crossed || LIST_OPENERS.contains(words.get(i).text());
            }
            if (words.get(i).text().equals("and") && !(i == hit.first() - 1 && nominal(i))) {
                return false;
            }
            if (!crossed && !words.get(i).text().equals("or") && ++steps > REACH) {
                return false;
            }
        }
        return false;
    }

    /** "no knocks and smoke": the and joins nouns only after a negator of nouns. */
    private boolean nominal(int and) {
        for (int i = and - 1; i >= 0 && i >= and - 4; i--) {
            if (negator[i]) {
                return LIST_OPENERS.contains(words.get(i).text());
            }
        }
        return false;
    }

    /** An entry of a list that "or" or "nor" ends: short, and begun right after the comma. */
    private boolean listed(Hit hit) {
        Token first = words.get(hit.first()).token();
        int start = hit.first();
        while (start > 0 && words.get(start - 1).token().segment() == first.segment()) {
            start--;
        }
        boolean afterOr = hit.first() > 0 && Rx.is(words.get(hit.first() - 1).text(), "or|nor");
        if (hit.first() - start > 1 && !afterOr) {
            return false;
        }
        for (int i = start; i < words.size() && words.get(i).token().clause() == first.clause(); i++) {
            String word = words.get(i).text();
            if (word.equals("or") || word.equals("nor")) {
                return i - start <= 3 * LIST_ITEM;
            }
        }
        return false;
    }

    /** "battery is new so probably the starter": what is said before this word is not said of what follows it. */
    boolean turns(int i) {
        return partner[i] || doubt[i];
    }

    boolean doubted(Hit hit) {
        Token first = words.get(hit.first()).token();
        int next = hit.last() + 1;
        String after = next < words.size() ? words.get(next).token().gap() : page.text().substring(
                words.get(hit.last()).token().end());
        if (after.startsWith("?")) {
            return true;
        }
        for (int i = hit.first() - 1; i >= Math.max(0, hit.first() - REACH); i--) {
            if (words.get(i).token().clause() != first.clause()) {
                break;
            }
            if (doubt[i]) {
                return true;
            }
        }
        for (int i = next; i < Math.min(words.size(), next + 3); i++) {
            if (words.get(i).token().segment() == first.segment() && doubt[i]) {
                return true;
            }
        }
        return false;
    }
}
