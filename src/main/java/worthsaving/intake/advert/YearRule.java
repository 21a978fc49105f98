package worthsaving.intake.advert;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Model year: four digits anywhere, two digits beside the name of the car or after an apostrophe. */
final class YearRule {

    private record Candidate(int year, int token, double score, boolean short1) {}

    /** Tokens between the name of a car and two digits that may still be its year. */
    private static final int FAR = 5;

    private YearRule() {}

    /** Two digits as a year: up to next year this century, else the last. */
    static int century(int twoDigits, LocalDate on) {
        int year = on.getYear() / 100 * 100 + twoDigits;
        return year <= on.getYear() + 1 ? year : year - 100;
    }

    static Optional<Found<Integer>> find(Page page, VehicleRule.Vehicle vehicle) {
        List<Candidate> candidates = new ArrayList<>();
        for (int i = 0; i < page.tokens().size(); i++) {
            candidate(page, vehicle, i).ifPresent(candidates::add);
        }
        candidates.removeIf(c -> c.score() < 1);
        candidates.sort(Comparator.comparingDouble((Candidate c) -> -c.score()).thenComparingInt(Candidate::token));
        if (candidates.isEmpty()) {
            return Optional.empty();
        }
        Candidate best = candidates.get(0);
        page.use(best.token(), best.token());
        List<Span> words = List.of(page.span(best.token(), best.token()));
        Found<Integer> found = best.score() < 3
                ? Found.guessed(best.year(), words, "the only number that can be the model year")
                : Found.stated(best.year(), words);
        return Optional.of(found.orElse(candidates.stream()
                .map(Candidate::year).distinct().filter(y -> y != best.year()).limit(3).toList()));
    }

    private static Optional<Candidate> candidate(Page page, VehicleRule.Vehicle vehicle, int i) {
        String t = page.at(i);
        boolean inName = vehicle.from() >= 0 && i > vehicle.from() && i < vehicle.to();
        if (page.used(i, i) && !inName || money(page, i) || fraction(page, i)) {
            return Optional.empty();
        }
        int distance = distance(vehicle, i);
        if (Rx.is(t, "\\d{4}")) {
            int year = Integer.parseInt(t);
            if (year < 1950 || year > page.on().getYear() + 1) {
                return Optional.empty();
            }
            double score = 1.5 + near(page, vehicle, i, distance, 5) + (i <= 1 ? 2 : 0);
            boolean opens = i > 0 && page.token(i).segment() != page.token(i - 1).segment();
            boolean plate = Rx.is(page.at(i + 1), "on") && Rx.is(page.at(i + 2), "an?|\\d{2}") || page.at(i + 1).equals("plate");
            // "Volvo V70 Summum from 2009", "BMW 118d Sport 2011 in grey": the words beside it belong to the car
            boolean named = distance <= 4 && page.sameClause(i, vehicle.from());
            int back = opens || named && Rx.is(page.at(i - 1), "from|of") ? 0 : 3;
            score -= distance > 1 && !plate && page.near("cue:event", i, i, back, named ? 0 : 1) ? 6 : 0;
            score += page.at(i + 1).equals("model") ? 1 : 0;
            score -= unitAfter(page, i) ? 5 : 0;
            score -= distance > 1 && page.near("cue:price", i, i, 1, 1) ? 3 : 0;
            return Optional.of(new Candidate(year, i, score, false));
        }
        if (Rx.is(t, "\\d{2}")) {
            boolean apostrophe = Rx.is(page.token(i).gap(), "(?s).*['’‘`]") && page.token(i).start() > 0;
            boolean before = vehicle.from() == i + 1 && page.sameClause(i, i + 1);
            boolean after = vehicle.to() == i - 1 && page.sameClause(i, i - 1) && (apostrophe || !unitAfter(page, i));
            // "Toyota Avensis 2.0 Strata 08."
            boolean last = t.compareTo("30") < 0 && vehicle.to() >= 0 && vehicle.to() < i && page.endsSegment(i)
                    && page.sameClause(vehicle.to(), i) && i - vehicle.to() <= FAR && page.token(i).gap().equals(" ");
            if (apostrophe || before || after || last) {
                double score = (before ? 5 : after ? 3 : last ? 2 : 1) + (apostrophe ? 2 : 0) - (unitAfter(page, i) ? 5 : 0);
                return Optional.of(new Candidate(century(Integer.parseInt(t), page.on()), i, score, true));
            }
        }
        return Optional.empty();
    }

    private static double near(Page page, VehicleRule.Vehicle vehicle, int i, int distance, double most) {
        if (vehicle.from() < 0) {
            return 0;
        }
        if (distance <= 1) {
            return most;
        }
        boolean same = page.sameClause(i, vehicle.from());
        return distance <= 4 && same ? 3 : same ? 1 : 0;
    }

    private static int distance(VehicleRule.Vehicle vehicle, int i) {
        if (vehicle.from() < 0) {
            return Integer.MAX_VALUE;
        }
        return i < vehicle.from() ? vehicle.from() - i : i > vehicle.to() ? i - vehicle.to() : 0;
    }

    private static boolean money(Page page, int i) {
        return i > 0 && page.token(i - 1).kind() == Token.Kind.SIGN && page.token(i).glued()
                || i + 1 < page.tokens().size() && page.token(i + 1).kind() == Token.Kind.SIGN && page.token(i
                        + 1).glued();
    }

    private static boolean fraction(Page page, int i) {
        return page.token(i).gap().equals("/") && i > 0 && page.token(i - 1).kind() == Token.Kind.NUMBER
                && page.at(i).length() < 4;
    }

    private static boolean unitAfter(Page page, int i) {
        return Rx.is(page.at(i + 1),
                "k|mi|miles|km|kms|xxx|thousand|mpg|years?|months?|days?|hours|mins?|minutes|obo|firm|ono|cash|dollars|bucks|rpm|lbs|cc");
    }
}
