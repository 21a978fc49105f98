package worthsaving.intake.advert;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Make and model: every mention is scored by its neighbours (make, year), its length and its place. */
final class VehicleRule {

    private static final int LONGEST_NAME = 5;
    private static final int NEIGHBOURS = 4;
    private static final int RAM_ITS_OWN_MAKE = 2010;

    /**
     * @param from first
     * @param to last token of the name of the car; -1 where there is none
     */
    record Vehicle(Optional<Found<String>> make, Optional<Found<String>> model, Optional<Model> entry, int from,
            int to) {

        static final Vehicle NONE = new Vehicle(Optional.empty(), Optional.empty(), Optional.empty(), -1, -1);
    }

    private record MakeAt(String make, int from, int to, boolean exact) {}

    private record ModelAt(Model model, int from, int to, boolean exact, int start, double score, boolean beside) {}

    private final Page page;
    private final ModelIndex index;
    private final List<MakeAt> makes = new ArrayList<>();

    VehicleRule(Page page) {
        this.page = page;
        this.index = page.vocabulary().models();
    }

    Vehicle find() {
        List<ModelAt> mentions = new ArrayList<>();
        for (int i = 0; i < page.tokens().size(); i++) {
            collectMakes(i);
        }
        for (int i = 0; i < page.tokens().size(); i++) {
            collectModels(i, mentions);
        }
        mentions.removeIf(m -> m.score() <= 0);
        mentions.sort(Comparator.comparingDouble((ModelAt m) -> -m.score()).thenComparingInt(ModelAt::from)
                .thenComparing(m -> m.model().make()));
        if (mentions.isEmpty()) {
            return makeOnly();
        }
        ModelAt best = mentions.get(0);
        page.use(best.start(), best.to());
        return vehicle(best, mentions);
    }

    private Vehicle vehicle(ModelAt best, List<ModelAt> mentions) {
        List<Span> modelWords = List.of(page.span(best.from(), best.to()));
        Set<String> otherModels = new LinkedHashSet<>();
        Set<String> otherMakes = new LinkedHashSet<>();
        for (ModelAt m : mentions) {
            otherModels.add(m.model().name());
            otherMakes.add(m.model().make());
        }
        otherModels.remove(best.model().name());
        otherMakes.remove(best.model().make());
        Found<String> model = best.exact()
                ? Found.stated(best.model().name(), modelWords)
                : Found.guessed(best.model().name(), modelWords, "read as a slip of the pen");
        Optional<MakeAt> written = makes.stream()
                .filter(m -> m.make().equals(best.model().make()))
                .filter(m -> m.from() >= best.start() - 1 && m.to() <= best.to() + 2)
                .findFirst();
        Found<String> make = written.map(m -> m.exact()
                        ? Found.stated(m.make(), List.of(page.span(m.from(), m.to())))
                        : Found.guessed(m.make(), List.of(page.span(m.from(), m.to())), "read as a slip of the pen"))
                .orElseGet(() -> Found.guessed(best.model().make(), modelWords, "the make that has this model"));
        return new Vehicle(Optional.of(make.orElse(limited(otherMakes))),
                Optional.of(model.orElse(limited(otherModels))),
                Optional.of(best.model()), best.start(), best.to());
    }

    private static List<String> limited(Set<String> names) {
        return names.stream().limit(3).collect(Collectors.toList());
    }

    private Vehicle makeOnly() {
        for (MakeAt m : makes) {
            boolean trusted = m.exact() && (yearBeside(m.from(), m.to())
                    || m.from() <= 2 || m.from() <= 8 && m.make().length() > 4);
            if (trusted && !traded(m.from())) {
                page.use(m.from(), m.to());
                return new Vehicle(Optional.of(Found.stated(m.make(), List.of(page.span(m.from(), m.to())))),
                        Optional.empty(), Optional.empty(), m.from(), m.to());
            }
        }
        return Vehicle.NONE;
    }

    private void collectMakes(int i) {
        for (int n = 2; n >= 1; n--) {
            String name = joined(i, n);
            Optional<String> make = name == null ? Optional.empty() : index.make(name);
            if (make.isPresent()) {
                makes.add(new MakeAt(make.get(), i, i + n - 1, true));
                return;
            }
        }
        Token token = page.token(i);
        if (token.kind() == Token.Kind.WORD && !page.vocabulary().spelling().knows(token.text())) {
            index.makeLike(token.text()).ifPresent(make -> makes.add(new MakeAt(make, i, i, false)));
        }
    }

    private void collectModels(int i, List<ModelAt> mentions) {
        for (int n = LONGEST_NAME; n >= 1; n--) {
            String name = joined(i, n);
            if (name != null) {
                for (Model model : index.models(name)) {
                    mentions.add(score(model, i, i + n - 1, true, name.length()));
                }
            }
        }
        Token token = page.token(i);
        if (token.kind() == Token.Kind.WORD && !page.vocabulary().spelling().knows(token.text())
                && index.make(token.text()).isEmpty()) {
            for (Model model : index.modelsLike(token.text())) {
                mentions.add(score(model, i, i, false, token.text().length()));
            }
        }
    }

    /** Tokens run together without spaces and hyphens, or null where something else parts them. */
    private String joined(int i, int n) {
        if (i + n > page.tokens().size()) {
            return null;
        }
        StringBuilder name = new StringBuilder();
        for (int k = i; k < i + n; k++) {
            Token token = page.token(k);
            if (token.kind() == Token.Kind.SIGN || token.text().indexOf(',') >= 0 || token.text().indexOf('.') >= 0
                    || k > i && !Rx.is(token.gap(), "[\\s\\-&'/.]{0,3}") || k > i && token.gap().contains("\n")) {
                return null;
            }
            name.append(token.text());
        }
        return ModelIndex.bare(name.toString());
    }

    private ModelAt score(Model model, int from, int to, boolean exact, int length) {
        double score = 2 + Math.min(length, 14) * 0.35 + (exact ? 0 : -2) - Math.min(from, 60) * 0.03;
        int start = from;
        boolean beside = false;
        boolean inside = false;
        for (MakeAt m : makes) {
            if (m.to() < from - NEIGHBOURS || m.from() > to + NEIGHBOURS || !m.make().equals(model.make())) {
                continue;
            }
            if (m.from() >= from && m.to() <= to && m.to() - m.from() < to - from) {
                inside = true;
            } else if (m.to() < from && between(m.to(), from) <= 1 || m.from() > to && m.from() - to <= 1) {
                beside = true;
                start = Math.min(start, m.from());
            }
        }
        boolean ownName = ModelIndex.bare(model.make() + model.name()).equals(joined(from, to - from + 1));
        score += beside ? 6 : inside || ownName ? 3 : 0;
        boolean year = yearBeside(start, to);
        score += year ? 4 : 0;
        if (traded(start)) {
            score -= 12;
        }
        boolean numeric = joined(from, to - from + 1).chars().allMatch(Character::isDigit);
        boolean believed = beside || inside || ownName || year && !numeric && model.yearWillDo();
        if ((model.weak() || !exact || numeric) && !believed || page.token(from).kind() != Token.Kind.WORD
                && signBefore(from)) {
            score = 0;
        }
        if (score > 0) {
            score += ram(model, beside, yearOf(start, to));
        }
        return new ModelAt(model, from, to, exact, start, score, beside);
    }

    /** Ram trucks were Dodges before the name became a make of its own. */
    private static double ram(Model model, boolean beside, int year) {
        boolean old = year > 0 && year < RAM_ITS_OWN_MAKE;
        if (model.make().equals("Ram")) {
            return old ? -8 : 0;
        }
        return model.name().startsWith("Ram ") && !beside && old ? 4 : 0;
    }

    private boolean signBefore(int i) {
        return i > 0 && page.token(i - 1).kind() == Token.Kind.SIGN;
    }

    /** Tokens between a make and a model that are not the year. */
    private int between(int make, int model) {
        int count = 0;
        for (int i = make + 1; i < model; i++) {
            if (!page.sameClause(i, make)) {
                return Integer.MAX_VALUE;
            }
            count += year(i) > 0 ? 0 : 1;
        }
        return page.sameClause(make, model) ? count : Integer.MAX_VALUE;
    }

    private boolean yearBeside(int from, int to) {
        return yearOf(from, to) > 0;
    }

    private int yearOf(int from, int to) {
        for (int i = from + 1; i < to; i++) {
            if (year(i) > 0) {
                return year(i);
            }
        }
        if (from > 0 && page.sameClause(from - 1, from)) {
            int before = year(from - 1);
            if (before > 0) {
                return before;
            }
            if (Rx.is(page.at(from - 1), "\\d{2}") && !signBefore(from - 1)) {
                return YearRule.century(Integer.parseInt(page.at(from - 1)), page.on());
            }
        }
        for (int i = to + 1; i <= to + 3 && i < page.tokens().size(); i++) {
            if (year(i) > 0 && page.sameClause(i, to)) {
                return year(i);
            }
        }
        return 0;
    }

    private int year(int i) {
        String t = page.at(i);
        if (!Rx.is(t, "(?:19[5-9]|20[0-4])\\d") || signBefore(i)) {
            return 0;
        }
        int year = Integer.parseInt(t);
        return year <= page.on().getYear() + 1 ? year : 0;
    }

    private boolean traded(int from) {
        return page.near("cue:other_car", from, from, 4, 0);
    }
}
