package worthsaving.intake.advert;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import worthsaving.quantity.Distance;

/** Scores every number as a reading of the odometer. */
final class MileageRule {

    private static final double MOST = 1_200_000;

    /** A number read as an odometer, with its score. */
    record Candidate(Num num, double score, Mileage mileage, int last) {}

    private final Page page;

    MileageRule(Page page) {
        this.page = page;
    }

    List<Candidate> candidates() {
        List<Candidate> found = new ArrayList<>();
        for (Num num : page.numbers()) {
            if (!page.used(num.from(), num.to()) && !num.spelled() && !signed(num)) {
                Candidate candidate = candidate(num);
                if (candidate.score() > 0) {
                    found.add(candidate);
                }
            }
        }
        return found;
    }

    /** The seller says that the true mileage is unknown. */
    Optional<Found<Mileage>> unknown() {
        return page.hits("cue:tmu").stream().findFirst().map(hit ->
                Found.stated(new Mileage(Optional.empty(), false, "TMU"), page.spans(hit)));
    }

    private boolean signed(Num num) {
        return num.from() > 0 && page.token(num.from() - 1).kind() == Token.Kind.SIGN
                && page.token(num.from()).gap().isBlank()
                || num.to() + 1 < page.tokens().size() && page.token(num.to() + 1).kind() == Token.Kind.SIGN
                        && page.token(num.to() + 1).glued();
    }

    private Candidate candidate(Num num) {
        int i = num.to() + 1;
        boolean k = num.suffix().startsWith("k") && !num.suffix().startsWith("km");
        double value = num.value();
        if (!k && page.at(i).equals("k") && page.sameClause(num.to(), i) && value < 1000) {
            k = true;
            value = value * 1000;
            i++;
        } else if (!k && page.at(i).equals("thousand") && value < 1000) {
            value = value * 1000;
            i++;
        }
        String unit = num.suffix().startsWith("km") || num.suffix().endsWith("km") ? "km"
                : num.suffix().endsWith("miles") ? "miles" : num.suffix().endsWith("mi") ? "mi" : "";
        int last = i - 1;
        if (unit.isEmpty() && page.sameClause(num.to(), i)) {
            int u = Rx.is(page.at(i), "original|orig|actual|highway|hwy|true|org") ? i + 1 : i;
            unit = unitWord(page.at(u));
            last = unit.isEmpty() ? last : u;
        }
        if (unit.isEmpty() && num.from() > 0 && page.sameClause(num.from() - 1, num.from())
                && value >= 1000 && !k) {
            unit = unitBefore(page.at(num.from() - 1));
        }
        double score = k ? 3 : 0;
        score += num.masked() ? 6 : 0;
        score += unit.isEmpty() ? 0 : 5;
        if (score == 0 && value >= 10_000 && value <= 450_000 && !num.yearLike()) {
            score = num.grouped() || value >= 20_000 ? 1.5 : 0.5;
        }
        boolean cueBefore = page.near("cue:miles", num.from(), last, 2, 0);
        if (score == 0 && cueBefore && value >= 1000 && page.near("cue:miles", num.from(), last, 1, 0)
                && !num.yearLike()) {
            score = 0.5;
        }
        if (score > 0) {
            score += cueBefore ? 2 : 0;
            score -= !cueBefore && page.near("cue:not_miles_before", num.from(), last, 2, 0) ? 5 : 0;
            score -= !cueBefore && page.near("cue:miles_then", num.from(), last, 1, 0)
                    && page.near("cue:event", num.from(), last, 8, 3) ? 5 : 0;
            score += page.near("cue:miles_after", num.from(), last, 0, 1) ? 3 : 0;
            score -= page.near("cue:not_miles_after", num.from(), last, 0, 2) && !page.endsSegment(last) ? 5 : 0;
            score += value >= 10_000 && value <= 450_000 ? 1 : value < 5000 ? -3 : 0;
            score -= unit.isEmpty() && page.near("cue:unit", num.from(), last, 0, 1) ? 6 : 0;
            score -= value > MOST ? 20 : 0;
            score -= fraction(num) ? 10 : 0;
        }
        return new Candidate(num, score, mileage(num, value, k, unit), last);
    }

    /** "Miles: 127,400". */
    private static String unitBefore(String word) {
        return word.equals("miles") ? "miles" : word.equals("km") ? "km" : "";
    }

    private static String unitWord(String word) {
        return switch (word) {
            case "mi", "mls" -> "mi";
            case "mile", "miles", "milage", "mileage" -> "miles";
            case "km", "tkm", "kms", "kilometers", "kilometres", "kilometer", "klm", "klms" -> "km";
            default -> "";
        };
    }

    private boolean fraction(Num num) {
        return page.token(num.from()).gap().equals("/") && num.value() < 1000
                || num.to() + 1 < page.tokens().size() && page.token(num.to() + 1).gap().equals("/")
                        && num.value() < 100;
    }

    private Mileage mileage(Num num, double value, boolean k, String unit) {
        Distance distance = unit.equals("km") ? Distance.ofKilometres(value) : Distance.ofMiles(value);
        String shown = unit;
        if (num.masked()) {
            shown = "masked";
        } else if (k) {
            boolean capital = page.text().indexOf('K', page.token(num.from()).start()) >= 0
                    && page.text().substring(page.token(num.from()).start(),
                            Math.min(page.text().length(), page.token(num.to()).end() + 2)).indexOf('K') >= 0;
            shown = (capital ? "K" : "k") + (unit.isEmpty() || unit.equals("miles") ? "" : " " + unit);
        }
        return new Mileage(Optional.of(distance), num.masked(), shown);
    }

    Found<Mileage> found(Candidate candidate, List<Mileage> others) {
        List<Span> words = List.of(page.span(candidate.num().from(), candidate.last()));
        Found<Mileage> found = candidate.mileage().unit().isEmpty() && candidate.score() < 4
                ? Found.guessed(candidate.mileage(), words, "a bare number of the size of an odometer")
                : candidate.mileage().lowerBound()
                        ? Found.guessed(candidate.mileage(), words, "digits are hidden: the least it can be")
                        : Found.stated(candidate.mileage(), words);
        return found.orElse(others);
    }
}
