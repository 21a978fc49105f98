package worthsaving.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import worthsaving.catalog.Catalogue;
import worthsaving.deal.DealTerms;
import worthsaving.deal.Term;
import worthsaving.quantity.Range;
import worthsaving.quantity.Source;

/**
 * What the finished cars teach: own speed, own part prices and days to sell as money lines, and how often items had
 * failed. Every lesson starts from the line as it stands, says what moved it and can be switched off.
 *
 * <p>Cars still for sale teach nothing about days to sell, so that line leans to the short side while some stand unsold.
 */
public record Learning(List<Lesson> lessons, List<ItemLesson> items) {

    /** Chances are kept off 0 and 1, where nothing could move them. */
    private static final double EDGE = 1e-6;

    public Learning {
        lessons = List.copyOf(lessons);
        items = List.copyOf(items);
    }

    /** @param terms the money lines to start from */
    public static Learning of(List<FinishedCar> cars, DealTerms terms, LearningSettings settings) {
        List<Lesson> lessons = new ArrayList<>();
        lesson(Term.SPEED, cars, c -> times100(c.speed()), terms, settings, lessons);
        lesson(Term.PARTS_PRICE, cars, c -> times100(c.partPrice()), terms, settings, lessons);
        lesson(Term.DAYS_TO_SELL, cars, FinishedCar::daysToSell, terms, settings, lessons);
        return new Learning(lessons, items(cars, settings));
    }

    /** Only the lessons that move something: switched on, and taught by at least one car. */
    public Learning inForce() {
        return new Learning(lessons.stream().filter(lesson -> lesson.on() && lesson.cars() > 0).toList(),
                items.stream().filter(ItemLesson::on).toList());
    }

    /** The lines with every lesson that is in force. */
    public DealTerms applyTo(DealTerms terms) {
        DealTerms learnt = terms;
        for (Lesson lesson : inForce().lessons()) {
            learnt = learnt.with(lesson.term(), lesson.range(),
                    new Source(Source.Label.MEASURED, "own record, " + lesson.words()));
        }
        return learnt;
    }

    /**
     * The catalogue with the prior odds of every item moved by its lesson, where that is in force. An
     * item's own prior moves, not the damage that other items do to it.
     */
    public Catalogue applyTo(Catalogue catalogue) {
        Map<String, Double> factors = new TreeMap<>();
        inForce().items().forEach(lesson -> factors.put(lesson.item(), lesson.oddsFactor()));
        return catalogue.withOdds(factors);
    }

    private static void lesson(Term term, List<FinishedCar> cars, Function<FinishedCar, OptionalDouble> seen,
            DealTerms terms, LearningSettings settings, List<Lesson> into) {
        Range range = terms.get(term);
        if (range.low() <= 0 || range.width() == 0) {
            return; // the user is sure of this line: there is nothing to learn
        }
        LogNormal before = LogNormal.of(range, settings.priorCars());
        // A day of nought is half a day: sold on the day it was ready.
        double[] values = cars.stream().map(seen).filter(OptionalDouble::isPresent)
                .mapToDouble(v -> Math.max(0.5, v.getAsDouble())).toArray();
        String prior = terms.sources().get(term).text() + "; taken as worth " + settings.priorCars() + " cars";
        into.add(new Lesson(term, values.length, before, before.after(values), prior, !settings.off().contains(term)));
    }

    private static List<ItemLesson> items(List<FinishedCar> cars, LearningSettings settings) {
        Map<String, List<Chance>> byItem = new TreeMap<>();
        cars.forEach(c -> c.items().forEach(i -> byItem.computeIfAbsent(i.subject(), s -> new ArrayList<>()).add(i)));
        List<ItemLesson> lessons = new ArrayList<>();
        byItem.forEach((item, seen) -> {
            double mean = seen.stream().mapToDouble(Chance::forecast).average().orElseThrow();
            int failed = (int) seen.stream().filter(Chance::happened).count();
            Share before = Share.of(Math.max(EDGE, Math.min(1 - EDGE, mean)), settings.itemPriorCars());
            lessons.add(new ItemLesson(item, failed, seen.size(), before, before.after(failed, seen.size()), settings.items()));
        });
        return lessons;
    }

    private static OptionalDouble times100(OptionalDouble ratio) {
        return ratio.isPresent() ? OptionalDouble.of(100 * ratio.getAsDouble()) : ratio;
    }
}
