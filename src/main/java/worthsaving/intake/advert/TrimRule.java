package worthsaving.intake.advert;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Trim as people name it: level, cab, driven wheels ("SLT Crew 4x4"; a maker's own name for them keeps its place:
 * "4MATIC Sport"); where no level is named, the badge ("2.0T
 * quattro"). Sure words count anywhere, common ones only where they join the name of the car.
 */
final class TrimRule {

    private static final int LONGEST = 4;

    private record At(TrimWord word, int from, int to) {}

    private final Page page;
    private final String make;
    private final boolean[] joins;

    private TrimRule(Page page, String make) {
        this.page = page;
        this.make = make;
        this.joins = new boolean[page.tokens().size()];
    }

    static String bare(String name) {
        return name.toLowerCase(Locale.ROOT).replace(" ", "").replace("-", "").replace("/", "");
    }

    static Optional<Found<String>> find(Page page, VehicleRule.Vehicle vehicle, Optional<Found<Integer>> year) {
        if (vehicle.from() < 0) {
            return Optional.empty();
        }
        TrimRule rule = new TrimRule(page, vehicle.make().map(Found::value).orElse(""));
        return rule.run(vehicle, year);
    }

    private Optional<Found<String>> run(VehicleRule.Vehicle vehicle, Optional<Found<Integer>> year) {
        for (int i = vehicle.from(); i <= vehicle.to(); i++) {
            joins[i] = i == vehicle.from() || i == vehicle.to() || !foreign(vehicle, page.at(i));
        }
        List<At> candidates = candidates();
        markTransparent(year);
        List<At> chosen = new ArrayList<>();
        boolean grown = true;
        while (grown) {
            grown = false;
            for (At at : candidates) {
                if (!chosen.contains(at) && !overlaps(chosen, at) && accepted(at)) {
                    chosen.add(at);
                    for (int i = at.from(); i <= at.to(); i++) {
                        joins[i] = true;
                    }
                    grown = true;
                }
            }
        }
        return shown(chosen);
    }

    /** "Cooper S Clubman": the S stands inside the name but is no part of the model. */
    private static boolean foreign(VehicleRule.Vehicle vehicle, String word) {
        return word.length() == 1 && Character.isLetter(word.charAt(0)) && vehicle.model().isPresent()
                && !List.of(vehicle.model().get().value().toLowerCase(Locale.ROOT).split("[ \\-]")).contains(word);
    }

    private List<At> candidates() {
        List<At> found = new ArrayList<>();
        for (int i = 0; i < page.tokens().size(); i++) {
            for (int n = LONGEST; n >= 1; n--) {
                Optional<TrimWord> word = word(i, n);
                if (word.isPresent()) {
                    found.add(new At(word.get(), i, i + n - 1));
                    break;
                }
            }
        }
        found.sort(Comparator.comparingInt((At at) -> at.from() - at.to()).thenComparingInt(At::from));
        return found;
    }

    private Optional<TrimWord> word(int i, int n) {
        if (i + n > page.tokens().size()) {
            return Optional.empty();
        }
        StringBuilder name = new StringBuilder();
        for (int k = i; k < i + n; k++) {
            if (joins[k] || k > i && !Rx.is(page.token(k).gap(), "[ \\-/]{0,2}")
                    || page.token(k).kind() == Token.Kind.SIGN) {
                return Optional.empty();
            }
            name.append(page.at(k));
        }
        boolean otherUse = Rx.is(page.at(i + n),
                "pkg|package|mode|tires|seats|utility|brakes|line|battery|system|pack|engine|motor") && n == 1;
        boolean levelBesideName = i > 0 && page.used(i - 1, i - 1) && page.sameClause(i - 1, i)
                && Rx.is(name.toString(), "[a-z]{1,3}");
        if (otherUse && !levelBesideName && page.token(i + n).gap().equals(" ")) {
            return Optional.empty();
        }
        return page.vocabulary().trims(bare(name.toString())).stream().filter(w -> w.fits(make))
                .min(Comparator.comparing(w -> w.makes().isEmpty()));
    }

    /** Year, engine, gearbox and body words may stand between the name and the trim. */
    private void markTransparent(Optional<Found<Integer>> year) {
        year.ifPresent(y -> y.words().forEach(span -> {
            for (int i = 0; i < page.tokens().size(); i++) {
                joins[i] |= page.token(i).start() == span.start();
            }
        }));
        for (String kind : List.of("engine", "gearbox", "body")) {
            for (Hit hit : page.hits(kind)) {
                for (int place : hit.places()) {
                    joins[page.words().get(place).index()] = true;
                }
            }
        }
        for (int i = 0; i < page.tokens().size(); i++) {
            joins[i] |= Rx.is(page.at(i),
                    "\\d\\.\\d[lt]?|[vi][34568]|\\dcyl|l|liter|turbo|door|dr|cyl|super|duty|edition"
                            + "|\\d{2,3}(?:ps|bhp|hp)|v?vti?|16v|crdi|multijet"
                            + "|vtec|ivtec|dtec|gdi|mpi|puretech|tce|skyactiv|mk\\d|ecotec");
        }
    }

    private boolean accepted(At at) {
        boolean beside = beside(at.from() - 1, at) || beside(at.to() + 1, at);
        return switch (at.word().kind()) {
            case LEVEL, CAB -> !at.word().near() || beside && reachesName(at);
            case DRIVE -> beside && reachesName(at);
            case BADGE -> page.sameClause(at.from(), 0) || beside;
        };
    }

    private boolean beside(int i, At at) {
        return i >= 0 && i < joins.length && joins[i] && page.sameClause(i, at.from());
    }

    /** Some word of the name or an accepted trim word lies at the end of the run of joining words. */
    private boolean reachesName(At at) {
        for (int i = at.from() - 1; i >= 0 && joins[i] && page.sameClause(i, at.from()); i--) {
            if (page.used(i, i) || anchored(i)) {
                return true;
            }
        }
        for (int i = at.to() + 1; i < joins.length && joins[i] && page.sameClause(i, at.from()); i++) {
            if (page.used(i, i) || anchored(i)) {
                return true;
            }
        }
        return false;
    }

    private boolean anchored(int i) {
        return page.vocabulary().trims(page.at(i)).stream().anyMatch(w -> w.fits(make) && !w.near())
                || page.at(i).equals("cab");
    }

    /** Right behind, or with only the year between. */
    private boolean follows(At first, At second) {
        return second.from() == first.to() + 1
                || second.from() == first.to() + 2 && Rx.is(page.at(first.to() + 1), "(?:19|20)\\d\\d");
    }

    private static boolean overlaps(List<At> chosen, At at) {
        return chosen.stream().anyMatch(c -> c.from() <= at.to() && at.from() <= c.to());
    }

    private Optional<Found<String>> shown(List<At> chosen) {
        List<At> parts = new ArrayList<>();
        chosen.stream().filter(a -> a.word().kind() == TrimWord.Kind.LEVEL)
                .min(Comparator.comparingInt(At::from)).ifPresent(parts::add);
        chosen.stream().filter(a -> a.word().kind() == TrimWord.Kind.LEVEL && !parts.isEmpty()
                        && follows(parts.get(0), a))
                .findFirst().ifPresent(parts::add);
        if (parts.isEmpty()) {
            chosen.stream().filter(a -> a.word().kind() == TrimWord.Kind.BADGE)
                    .min(Comparator.comparingInt(At::from)).ifPresent(parts::add);
        }
        Optional<At> drive = chosen.stream().filter(a -> a.word().kind() == TrimWord.Kind.DRIVE)
                .min(Comparator.comparingInt(At::from));
        boolean ahead = drive.isPresent() && !drive.get().word().makes().isEmpty() && !parts.isEmpty()
                && drive.get().to() + 1 == parts.get(0).from();
        if (ahead) {
            parts.add(0, drive.get());
        }
        for (TrimWord.Kind kind : ahead ? List.of(TrimWord.Kind.CAB) : List.of(TrimWord.Kind.CAB, TrimWord.Kind.DRIVE)) {
            chosen.stream().filter(a -> a.word().kind() == kind)
                    .min(Comparator.comparingInt(At::from)).ifPresent(parts::add);
        }
        if (parts.isEmpty()) {
            return Optional.empty();
        }
        String text = String.join(" ", parts.stream().map(p -> p.word().shown()).toList());
        List<Span> spans = parts.stream().map(p -> page.span(p.from(), p.to()))
                .sorted(Comparator.comparingInt(Span::start)).toList();
        parts.forEach(p -> page.use(p.from(), p.to()));
        return Optional.of(Found.stated(text, spans));
    }
}
