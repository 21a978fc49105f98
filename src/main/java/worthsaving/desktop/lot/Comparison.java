package worthsaving.desktop.lot;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import worthsaving.deal.WayOut;
import worthsaving.deal.WayResult;
import worthsaving.desktop.CarNames;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Units;
import worthsaving.diagnosis.Belief;
import worthsaving.quantity.Money;
import worthsaving.ranking.Appraisal;
import worthsaving.ranking.Standing;

/**
 * Cars side by side, line by line.
 *
 * @param cars their names
 */
record Comparison(List<String> cars, List<Line> lines) {

    /** Fewest and most cars that are compared at once. */
    static final int FEWEST = 2;
    static final int MOST = 4;

    /** Figures within a hundredth of each other are alike. */
    private static final double ALIKE = 0.01;

    /**
     * One line.
     *
     * @param key of its name
     * @param texts one per car
     * @param best places of the cars that are better than the others; empty when none is, or it cannot be said
     */
    record Line(String key, List<String> texts, Set<Integer> best) {

        Line {
            texts = List.copyOf(texts);
            best = Set.copyOf(best);
        }

        boolean differs() {
            return texts.stream().distinct().count() > 1;
        }
    }

    /** What is known of a car beside its appraisal. */
    private record Car(Appraisal appraisal, Standing standing) {

        WayResult way(WayOut way) {
            return appraisal.assessment().way(way);
        }
    }

    Comparison {
        cars = List.copyOf(cars);
        lines = List.copyOf(lines);
    }

    /** @param itemName name of a failure item by its id */
    static Comparison of(List<Appraisal> appraisals, Function<String, String> itemName, Units units) {
        List<Car> cars = appraisals.stream().map(a -> new Car(a, Standing.of(a))).toList();
        List<Line> lines = new ArrayList<>();
        Table t = new Table(cars, lines);
        t.words("year", c -> c.appraisal().listing().vehicle().year().get().map(y -> Integer.toString(y)));
        t.words("odometer", c -> c.appraisal().listing().vehicle().odometer().get().map(units::text));
        t.words("title", c -> Optional.of(Texts.of("title", c.appraisal().listing().vehicle().title())));
        t.words("verdict", c -> Optional.of(Texts.of("verdict", c.standing().verdict().kind())));
        t.words("headline", c -> Optional.of(c.standing().verdict().headline()));
        t.figure("ask", c -> amount(c.appraisal().listing().ask().get()), -1, Figures::amount);
        t.figure("most", c -> amount(c.standing().mostToPay().wholeLimit()), 1, Figures::amount);
        t.figure("value", c -> c.standing().value().amount(), 1, Figures::amount);
        t.words("value_span", c -> Optional.of(Texts.of("compare.span",
                Figures.amount(c.standing().valueLow().amount()), Figures.amount(c.standing().valueHigh().amount()))));
        t.words("failed", c -> Optional.of(c.standing().likely().stream().map(b -> failed(b, itemName))
                .collect(Collectors.joining("; "))).filter(s -> !s.isEmpty()));
        t.figure("repair", c -> c.appraisal().likelyPlan().map(p -> p.meanCost().amount()).orElse(Double.NaN), -1,
                Figures::amount);
        for (WayOut way : WayOut.values()) {
            if (way != WayOut.WALK_AWAY) {
                t.figure("way." + way.name(), c -> c.way(way).expectedProfit(), 1, Figures::amount);
            }
        }
        t.figure("loss", c -> c.standing().chanceOfLoss(), -1, Figures::percent);
        t.figure("bad", c -> c.standing().worstTwentieth().amount(), 1, Figures::amount);
        t.figure("cash", c -> c.standing().cashOut().amount(), -1, Figures::amount);
        t.figure("hours", c -> c.standing().ownHours().value(), -1, Figures::hours);
        t.figure("per_hour", c -> c.standing().profitPerHour().orElse(Double.NaN), 1, Figures::amount);
        t.figure("days", c -> c.standing().days(), -1, Figures::days);
        t.words("check", c -> c.standing().nextCheck().map(n -> n.finding().name()));
        return new Comparison(appraisals.stream().map(a -> CarNames.title(a.listing().vehicle()) + " \u00b7 "
                + a.listing().id()).toList(), lines);
    }

    private static String failed(Belief b, Function<String, String> itemName) {
        return itemName.apply(b.item()) + " " + Figures.percent(b.posterior().value()).replace(' ', '\u00a0');
    }

    private static double amount(Optional<Money> money) {
        return money.map(Money::amount).orElse(Double.NaN);
    }

    /** Lines being written. */
    private record Table(List<Car> cars, List<Line> lines) {

        void words(String key, Function<Car, Optional<String>> text) {
            lines.add(new Line(key, cars.stream().map(c -> text.apply(c).orElse(Texts.of("none"))).toList(), Set.of()));
        }

        /** @param better 1 when more is better, -1 when less is */
        void figure(String key, ToDoubleFunction<Car> figure, int better, Function<Double, String> text) {
            List<Double> all = cars.stream().map(figure::applyAsDouble).toList();
            List<String> texts = all.stream().map(x -> Double.isNaN(x) ? Texts.of("none") : text.apply(x)).toList();
            lines.add(new Line(key, texts, best(all, better)));
        }

        private static Set<Integer> best(List<Double> all, int better) {
            double most = known(all).mapToDouble(x -> better * x).max().orElse(Double.NaN);
            double slack = ALIKE * known(all).mapToDouble(Math::abs).max().orElse(0);
            Set<Integer> best = new HashSet<>();
            for (int i = 0; i < all.size(); i++) {
                if (better * all.get(i) >= most - slack) {
                    best.add(i);
                }
            }
            return best.size() == all.size() ? Set.of() : best;
        }

        private static Stream<Double> known(List<Double> all) {
            return all.stream().filter(x -> !Double.isNaN(x));
        }
    }
}
