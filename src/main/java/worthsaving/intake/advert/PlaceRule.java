package worthsaving.intake.advert;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Where the car stands: "City, ST 12345", a well-known place, or the last short clause when it looks like a name. */
final class PlaceRule {

    private static final Set<String> WORDS_TOO = Set.of("in", "or", "me", "hi", "ok", "oh", "la", "de", "pa", "ma",
            "al",
            "id", "co", "mi", "ms", "md", "ar", "ct", "ca", "on", "as", "sc", "va", "mt", "mo", "ks", "pe", "ab");

    /** @param country where known, the country */
    record Where(Found<String> shown, Optional<String> country) {}

    private final Page page;
    private final Places places;

    PlaceRule(Page page) {
        this.page = page;
        this.places = page.vocabulary().places();
    }

    Optional<Where> find() {
        for (int i = page.tokens().size() - 1; i >= 0; i--) {
            Optional<Where> where = byRegion(i);
            if (where.isPresent()) {
                return where;
            }
        }
        return knownPlace().or(this::lastClause).or(this::titleRegion);
    }

    /** A region at token i with the town before it. */
    private Optional<Where> byRegion(int i) {
        Optional<Places.Place> region = Optional.empty();
        int to = i;
        for (int n = 3; n >= 1 && region.isEmpty(); n--) {
            if (i + n <= page.tokens().size()) {
                region = places.regionByName(joined(i, i + n - 1));
                to = i + n - 1;
            }
        }
        boolean code = region.isEmpty();
        if (code) {
            to = i;
            region = places.regionByCode(page.at(i));
        }
        if (region.isEmpty() || i == 0 || page.used(i, to) || code && withinName(i)) {
            return Optional.empty();
        }
        int town = town(i, code);
        if (town < 0) {
            return Optional.empty();
        }
        boolean zip = to + 1 < page.tokens().size() && Rx.is(page.at(to + 1), "\\d{5}")
                && page.token(to + 1).gap().isBlank();
        String shown = title(town, i - 1) + ", " + region.get().region() + (zip ? " " + page.at(to + 1) : "");
        int last = zip ? to + 1 : to;
        page.use(town, last);
        return Optional.of(new Where(
                Found.stated(shown, List.of(page.span(town, last))), Optional.of(region.get().country())));
    }

    /** "Stoke on Trent": the word is part of a town's name. */
    private boolean withinName(int i) {
        return i > 0 && i + 1 < page.tokens().size() && places.place(joined(i - 1, i + 1)).isPresent();
    }

    /** First token of the town that stands before a region, or -1. */
    private int town(int region, boolean code) {
        int before = region - 1;
        if (!Rx.is(page.token(region).gap(), "[ ,.]{1,3}") || page.token(before).kind() != Token.Kind.WORD) {
            return -1;
        }
        for (int n = 3; n >= 1; n--) {
            int from = region - n;
            if (from >= 0 && !page.used(from, before) && places.place(joined(from, before)).isPresent()) {
                return from;
            }
        }
        boolean capitals = page.text().equals(page.text().toUpperCase(Locale.ROOT));
        boolean comma = page.token(region).gap().indexOf(',') >= 0;
        boolean upper = !capitals && page.raw(region).equals(page.raw(region).toUpperCase(Locale.ROOT));
        boolean zip = Rx.is(page.at(region + 1), "\\d{5}");
        if (code && WORDS_TOO.contains(page.at(region)) && !upper && !zip && !(comma && ends(region))) {
            return -1;
        }
        int from = region;
        while (from > 0 && region - from < 3 && nameWord(from - 1, capitals)
                && (from == region || page.token(from).gap().equals(" ") && page.sameClause(from - 1, from))) {
            from--;
        }
        return from < region ? from : -1;
    }

    private boolean ends(int i) {
        return i + 1 >= page.tokens().size() || !page.sameClause(i, i + 1);
    }

    private boolean nameWord(int i, boolean capitals) {
        boolean plain = page.at(i).length() > 2 && !page.vocabulary().spelling().means(page.at(i));
        return page.token(i).kind() == Token.Kind.WORD && !page.used(i, i)
                && (plain || Rx.is(page.at(i), "ft|st|mt|falls|springs?|park|hills?"))
                && (capitals || Character.isUpperCase(page.raw(i).charAt(0)));
    }

    private Optional<Where> knownPlace() {
        double best = 0;
        int bestFrom = -1;
        int bestTo = -1;
        for (int i = 0; i < page.tokens().size(); i++) {
            for (int n = 3; n >= 1; n--) {
                int to = i + n - 1;
                if (to >= page.tokens().size() || page.used(i, to) || places.place(joined(i, to)).isEmpty()) {
                    continue;
                }
                double score = 0.5 + n * 0.3 + i * 0.001;
                score += alone(i, to) ? 2 : ends(to) ? 1 : page.endsSegment(to) ? 0.5 : 0;
                score += Rx.is(page.at(i - 1), "in|near|at|located|from|around") && page.sameClause(i - 1, i) ? 2 : 0;
                score += page.at(to + 1).equals("area") ? 2 : 0;
                if (score > best) {
                    best = score;
                    bestFrom = i;
                    bestTo = to;
                }
                break;
            }
        }
        if (best < 1) {
            return Optional.empty();
        }
        Places.Place place = places.place(joined(bestFrom, bestTo)).orElseThrow();
        List<Span> words = List.of(page.span(bestFrom, bestTo));
        boolean area = page.at(bestTo + 1).equals("area") && !place.region().isEmpty();
        page.use(bestFrom, bestTo);
        Found<String> shown = area
                ? Found.guessed(place.name() + ", " + place.region(), words, "the best-known place of that name")
                : Found.stated(place.name(), words);
        return Optional.of(new Where(shown, Optional.of(place.country())));
    }

    private boolean alone(int from, int to) {
        boolean before = from == 0 || page.token(from).segment() != page.token(from - 1).segment();
        return before && page.endsSegment(to);
    }

    /** One or two capitalised words that nothing else explains, at the very end. */
    private Optional<Where> lastClause() {
        int to = page.tokens().size() - 1;
        int from = to;
        boolean capitals = page.text().equals(page.text().toUpperCase(Locale.ROOT));
        while (from > 0 && page.sameClause(from, to) && nameWord(from, false)
                && (from == to || page.token(from + 1).gap().equals(" "))) {
            from--;
        }
        from++;
        boolean lone = from > 0 && !page.sameClause(from - 1, from);
        boolean sentence = lone || from > 0 && from <= to && Character.isLowerCase(page.raw(from - 1).charAt(0));
        boolean lender = from > 0 && Rx.is(page.at(from - 1), "with|w|by|to|for|through"); // "lien w/ ..."
        if (to < from || capitals || to - from > 1 || !sentence || lender) {
            return Optional.empty();
        }
        page.use(from, to);
        return Optional.of(new Where(Found.guessed(title(from, to), List.of(page.span(from, to)),
                "the last words, which nothing else explains"), Optional.empty()));
    }

    /** "clean CA title": the only place named is that of the papers. */
    private Optional<Where> titleRegion() {
        for (int i = 0; i + 1 < page.tokens().size(); i++) {
            Optional<Places.Place> region = places.regionByCode(page.at(i));
            boolean papers = Rx.is(page.at(i + 1), "title|ttl|registration|reg|plates|tags");
            boolean name = page.raw(i).equals(page.raw(i).toUpperCase(Locale.ROOT)) && !page.at(i).equals("in");
            if (region.isPresent() && papers && name && page.sameClause(i, i + 1)) {
                return Optional.of(new Where(Found.guessed(region.get().region(), List.of(page.span(i, i)),
                        "the region of the papers"), Optional.of(region.get().country())));
            }
        }
        return Optional.empty();
    }

    private String joined(int from, int to) {
        StringBuilder name = new StringBuilder();
        for (int k = from; k <= to; k++) {
            if (k > from && !Rx.is(page.token(k).gap(), "[ \\-.']{1,2}")) {
                return "";
            }
            name.append(k > from ? " " : "").append(page.at(k));
        }
        return name.toString();
    }

    private String title(int from, int to) {
        Optional<Places.Place> known = places.place(joined(from, to));
        if (known.isPresent()) {
            return known.get().name();
        }
        StringBuilder shown = new StringBuilder();
        for (int k = from; k <= to; k++) {
            String raw = page.at(k).equals("ft") ? "Fort" : page.raw(k);
            shown.append(k > from ? " " : "").append(Character.toUpperCase(raw.charAt(0)))
                    .append(raw.substring(1).toLowerCase(Locale.ROOT));
        }
        return shown.toString();
    }

    /** The country whose inspections and papers are spoken of, such as {@code AU} for a roadworthy certificate. */
    static Optional<String> countryOfPapers(Page page) {
        return Stream.of("AU", "NZ", "GB").filter(country -> !page.hits("cue:country_" + country).isEmpty()).findFirst();
    }
}
