package worthsaving.teardown;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.Flag;
import worthsaving.diagnosis.Belief;
import worthsaving.diagnosis.Diagnosis;
import worthsaving.inspection.LookOrder;
import worthsaving.inspection.LookOrder.Suspect;
import worthsaving.teardown.Advice.Place;
import worthsaving.teardown.Advice.SearchOrder;

/**
 * The order in which to look at what the findings made likelier, as if exactly one of them were behind the
 * complaint, in hours: opening there and back, each step once, and the look itself.
 */
final class Searching {

    private static final double WORTH_LOOKING = 0.02;
    private static final double KNOWN = 0.98;
    private static final double LIFTED = 1.2;
    private static final int MOST = 14;

    private Searching() {}

    static SearchOrder order(Catalogue catalogue, OpenCar car, Diagnosis diagnosis, TeardownTerms terms) {
        Map<String, FailureItem> items = catalogue.itemsById();
        List<Belief> beliefs = diagnosis.beliefs().stream()
                .filter(b -> car.failed.getOrDefault(b.item(), 0.0) > 0)
                .filter(b -> b.posterior().value() > WORTH_LOOKING && b.posterior().value() < KNOWN
                        && b.posterior().value() > LIFTED * b.prior().value())
                .filter(b -> !items.get(b.item()).flags().contains(Flag.SALE_PREPARATION))
                .sorted(Comparator.comparing(Belief::posterior).reversed().thenComparing(Belief::item))
                .limit(MOST)
                .toList();
        double sum = beliefs.stream().mapToDouble(b -> b.posterior().value()).sum();
        Map<String, Double> openings = new TreeMap<>();
        List<Suspect> suspects = new ArrayList<>();
        for (Belief b : beliefs) {
            Set<String> behind = new TreeSet<>();
            car.planner.stillToOpen(items.get(b.item()).access()).forEach((step, hours) -> {
                openings.merge(step, hours.value(), Math::max);
                behind.add(step);
            });
            suspects.add(new Suspect(b.item(), b.posterior().value() / sum, terms.look().value(), behind));
        }
        LookOrder order = new LookOrder(openings);
        LookOrder.Plan plan = order.best(suspects);
        OptionalDouble plain = suspects.isEmpty() ? OptionalDouble.empty()
                : OptionalDouble.of(order.expectedCost(LookOrder.byRatio(suspects)));
        return new SearchOrder(places(plan, openings, items), plan.expectedCost(), plain, plan.exact());
    }

    private static List<Place> places(
            LookOrder.Plan plan, Map<String, Double> openings, Map<String, FailureItem> items) {
        Set<String> open = new HashSet<>();
        List<Place> places = new ArrayList<>();
        for (Suspect s : plan.order()) {
            double hours = s.cost();
            for (String step : s.behind()) {
                hours += open.add(step) ? openings.get(step) : 0;
            }
            places.add(new Place(s.id(), items.get(s.id()).name(), s.probability(), hours));
        }
        return places;
    }
}
