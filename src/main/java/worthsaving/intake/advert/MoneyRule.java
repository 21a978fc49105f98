package worthsaving.intake.advert;

import java.util.ArrayList;
import java.util.Currency;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import worthsaving.quantity.Money;

/** Scores every number as the asking price, and tells what the other sums are. */
final class MoneyRule {

    /** A number read as money. */
    record Candidate(Num num, double score, boolean marked, MoneyCue.Role role, Span span) {}

    private static final String CURRENCY_WORD =
            "dollars?|bucks|cad|cdn|aud|nzd|usd|us|eur|euros?|gbp|pounds?|quid|canadian";

    private record Said(String code, String words) {}

    /** Ways of naming a currency, those without doubt first. */
    private static final List<Said> SAID = List.of(
            new Said("GBP", "(?s).*(?:£|\\b(?:gbp|pounds?|quid)\\b).*"),
            new Said("EUR", "(?s).*(?:€|\\b(?:eur|euros?)\\b).*"),
            new Said("CAD", "(?s).*\\b(?:cad|cdn|canadian)\\b.*"),
            new Said("NZD", "(?s).*\\b(?:nzd|nz)\\b.*"),
            new Said("AUD", "(?s).*\\b(?:aud|au)\\b.*"),
            new Said("USD", "(?s).*\\b(?:usd|us)\\b.*"));
    /** Currencies whose sign is a plain $. */
    private static final Set<String> DOLLARS = Set.of("USD", "CAD", "AUD", "NZD");

    private final Page page;
    private final String usual;
    private final Map<MoneyCue, List<Hit>> cues = new java.util.LinkedHashMap<>();
    private boolean negotiable;
    private List<Span> negotiableWords = List.of();

    /** @param usual currency of sums of which nothing tells it */
    MoneyRule(Page page, Currency usual) {
        this.page = page;
        this.usual = usual.getCurrencyCode();
        Map<String, List<Hit>> found = page.vocabulary().moneyPhrases().find(page.words());
        boolean[] firm = new boolean[page.words().size()];
        for (List<Hit> hits : found.values()) {
            hits.stream().filter(h -> page.vocabulary().moneyCue(h).role() == MoneyCue.Role.FIRM)
                    .forEach(h -> h.take(firm));
        }
        for (List<Hit> hits : found.values()) {
            for (Hit hit : hits) {
                MoneyCue cue = page.vocabulary().moneyCue(hit);
                if (cue.role() == MoneyCue.Role.NEGOTIABLE) {
                    if (hit.shares(firm)) {
                        continue;
                    }
                    negotiable = true;
                    negotiableWords = page.spans(hit);
                } else {
                    cues.computeIfAbsent(cue, c -> new ArrayList<>()).add(hit);
                }
            }
        }
    }

    Found<Boolean> negotiable() {
        return Found.stated(negotiable, negotiable ? negotiableWords : List.of());
    }

    List<Candidate> candidates() {
        List<Candidate> found = new ArrayList<>();
        for (Num num : page.numbers()) {
            if (!page.used(num.from(), num.to()) && !num.masked() && plausible(num)) {
                found.add(candidate(num));
            }
        }
        return found;
    }

    private static boolean plausible(Num num) {
        return num.value() > 0 && num.value() < 10_000_000
                && (num.suffix().isEmpty() || Rx.is(num.suffix(), "k|grand|usd|cad|eur|gbp"));
    }

    private Candidate candidate(Num num) {
        int before = num.from() - 1;
        int after = num.to() + 1;
        boolean signBefore = before >= 0 && page.token(before).kind() == Token.Kind.SIGN
                && page.token(num.from()).gap().isBlank();
        boolean signAfter = after < page.tokens().size() && page.token(after).kind() == Token.Kind.SIGN
                && page.token(after).gap().isBlank() && !startsOther(after);
        boolean word = Rx.is(page.at(after), CURRENCY_WORD) && page.sameClause(num.to(), after)
                || Rx.is(page.at(before), "cad|cdn|usd|eur|gbp") || Rx.is(num.suffix(), "usd|cad|eur|gbp");
        boolean marked = signBefore || signAfter || word;
        double score = marked ? 5 : num.suffix().equals("k") || num.suffix().equals("grand") ? 1 : num.spelled()
                ? 2 : 0;
        Map<MoneyCue.Role, Double> votes = new EnumMap<>(MoneyCue.Role.class);
        cues.forEach((cue, hits) -> hits.forEach(hit -> {
            double weight = weight(cue, hit, num);
            if (weight > 0) {
                votes.merge(cue.role(), weight, Math::max);
            }
        }));
        MoneyCue.Role role = MoneyCue.Role.ASK;
        double worst = 0;
        for (Map.Entry<MoneyCue.Role, Double> vote : votes.entrySet()) {
            score += vote.getKey() == MoneyCue.Role.ASK ? vote.getValue() : -vote.getValue();
            if (vote.getKey() != MoneyCue.Role.ASK && vote.getValue() > worst) {
                worst = vote.getValue();
                role = vote.getKey();
            }
        }
        score += arrows(num) + size(num, marked, votes.containsKey(MoneyCue.Role.ASK)) + (marked ? 0 : standing(num));
        score -= guide(before) ? 5 : 0;
        int first = signBefore ? before : num.from();
        Span span = page.span(first, signAfter ? after : num.to());
        score -= aside(num, first, span) ? 2 : 0;
        return new Candidate(num, score, marked, score < 1 && worst == 0 ? MoneyCue.Role.OTHER : role, span);
    }

    /** "charger failed ($2,700)": a figure alone in brackets is said by the way. */
    private boolean aside(Num num, int first, Span span) {
        return Rx.is(num.suffix(), "k?") && !num.spelled() && Rx.is(page.token(first).gap(), "(?s).*\\(\\W?")
                && (page.text().startsWith(")", span.end()) || page.text().startsWith(" )", span.end()));
    }

    /** The sign belongs to the number after it. */
    private boolean startsOther(int sign) {
        return sign + 1 < page.tokens().size() && page.token(sign + 1).glued()
                && page.token(sign + 1).kind() != Token.Kind.WORD && !page.token(sign).glued();
    }

    private double weight(MoneyCue cue, Hit hit, Num num) {
        int a = page.firstWord(num.from());
        int b = page.firstWord(num.to() + 1) - 1;
        int distance;
        int between;
        if (cue.side() == MoneyCue.Side.BEFORE && hit.last() < a) {
            distance = a - hit.last();
            between = page.words().get(hit.last()).index();
        } else if (cue.side() == MoneyCue.Side.AFTER && hit.first() > b) {
            distance = hit.first() - b;
            between = page.words().get(hit.first()).index();
        } else {
            return 0;
        }
        if (distance > cue.reach() || !page.sameClause(between, num.from()) || numberBetween(between, num)) {
            return 0;
        }
        boolean same = page.token(between).segment() == page.token(num.from()).segment();
        return cue.weight() * (1 - 0.15 * (distance - 1)) * (same ? 1 : 0.5);
    }

    private boolean numberBetween(int token, Num num) {
        int from = Math.min(token, num.to());
        int to = Math.max(token, num.from());
        for (Num other : page.numbers()) {
            if (other != num && other.from() >= from && other.to() <= to && other.value() >= 100) {
                return true;
            }
        }
        return false;
    }

    private double arrows(Num num) {
        String ahead = page.token(Math.max(0, num.from())).gap();
        int sign = num.from() - 1;
        if (sign >= 0 && page.token(sign).kind() == Token.Kind.SIGN) {
            ahead = page.token(sign).gap() + ahead;
        }
        String behind = num.to() + 1 < page.tokens().size() ? page.token(num.to() + 1).gap() : "";
        return (arrow(ahead) ? 3 : 0) - (arrow(behind) ? 4 : 0);
    }

    private static boolean arrow(String gap) {
        return gap.contains("->") || gap.contains("→") || gap.contains(">>");
    }

    private double size(Num num, boolean marked, boolean asked) {
        double value = num.value();
        double score = value >= 200 && value <= 60_000 ? 1 : value < 100 && !(marked && asked) ? -5 : -1;
        score -= value > 200_000 ? 8 : 0;
        if (!marked && !asked) {
            score -= num.yearLike() ? 4 : 0;
            score -= value > 20_000 && !num.grouped() ? 3 : 0;
            score -= num.decimal() && value < 100 ? 6 : 0;
        }
        boolean unit = page.near("cue:unit", num.from(), num.to(), 0, 1)
                && page.token(Math.min(num.to() + 1,
                        page.tokens().size() - 1)).segment() == page.token(num.to()).segment();
        score -= unit && !marked ? 8 : 0;
        boolean miles = Rx.is(page.at(num.to() + 1), "mi|miles?|km|kms|mls|original|orig|kilomet\\w+")
                && page.sameClause(num.to(), num.to() + 1);
        score -= miles && !marked ? 9 : miles ? 3 : 0;
        boolean part = page.token(num.from()).gap().equals("/") || page.token(num.from()).gap().endsWith("#")
                || num.to() + 1 < page.tokens().size() && page.token(num.to() + 1).gap().equals("/") && value < 100;
        return score - (part && !marked ? 6 : 0);
    }

    /** A number that stands alone between full stops or commas, or between one and the place: "3,000 Dayton OH". */
    private double standing(Num num) {
        int before = num.from() - 1;
        int after = num.to() + 1;
        boolean clauseStart = before < 0 || !page.sameClause(before, num.from());
        boolean clauseEnd = after >= page.tokens().size() || !page.sameClause(after, num.to())
                || clauseStart && page.used(after, after);
        boolean start = clauseStart || page.token(before).segment() != page.token(num.from()).segment();
        boolean end = clauseEnd || page.token(after).segment() != page.token(num.to()).segment();
        return clauseStart && clauseEnd ? 2.5 : start && end ? 1.5 : start || end ? 0.5 : 0;
    }

    /** An abbreviation without vowels just before the sum names a price guide, more often than not. */
    private boolean guide(int before) {
        for (int i = before; i >= 0 && i >= before - 2; i--) {
            String word = page.at(i);
            if (Rx.is(word, "[bcdfghjklmnpqrstvwxz]{3,4}") && !Rx.is(word, "cad|cdn|gbp|nzd|obo|mph|hwy|xxx")
                    && !page.vocabulary().spelling().knows(word) && page.sameClause(i, before)) {
                return true;
            }
        }
        return false;
    }

    String currency(Candidate candidate, Optional<String> country, boolean kilometres) {
        String near = page.text().substring(candidate.span().start(), candidate.span().end())
                + " " + page.at(candidate.num().to() + 1) + " " + page.at(candidate.num().to() + 2)
                + " " + page.at(candidate.num().from() - 1) + " " + page.at(candidate.num().from() - 2);
        String all = near.toLowerCase(java.util.Locale.ROOT);
        boolean canadianSign = page.at(candidate.num().from() - 2).equals("c")
                && page.token(candidate.num().from() - 1).kind() == Token.Kind.SIGN;
        Optional<String> said = canadianSign ? Optional.of("CAD")
                : SAID.stream().filter(way -> Rx.is(all, way.words())).map(Said::code).findFirst();
        if (said.isPresent()) {
            return said.get();
        }
        String local = country.map(MoneyRule::currencyOf).orElse("");
        if (DOLLARS.contains(local) || !local.isEmpty() && !all.contains("$")) {
            return local;
        }
        String unsaid = all.contains("$") ? "USD" : usual;
        return country.isEmpty() && kilometres && unsaid.equals("USD") ? "CAD" : unsaid;
    }

    private static String currencyOf(String country) {
        return switch (country) {
            case "GB" -> "GBP";
            case "US" -> "USD";
            case "CA" -> "CAD";
            case "AU" -> "AUD";
            case "NZ" -> "NZD";
            default -> "EUR";
        };
    }

    Found<Money> found(Candidate candidate, Money money, List<Money> others) {
        Found<Money> found = candidate.score() >= 4
                ? Found.stated(money, List.of(candidate.span()))
                : Found.guessed(money, List.of(candidate.span()), "the likeliest of the figures");
        return found.orElse(others);
    }
}
