package worthsaving.teardown;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.FindingKind;
import worthsaving.deal.Outcome;
import worthsaving.diagnosis.Diagnosis;
import worthsaving.diagnosis.FindingChances;
import worthsaving.inspection.CheckCosts;
import worthsaving.inspection.CheckSettings;
import worthsaving.quantity.Money;
import worthsaving.ranking.JudgeSettings;
import worthsaving.ranking.PreparedListing;
import worthsaving.teardown.Move.Kind;
import worthsaving.teardown.Prospect.End;
import worthsaving.teardown.Prospect.Look;

/**
 * Go on or stop, at any stage of a teardown: the best continuation by backward induction over what can still be
 * opened and looked at. What was spent is listed and never counted.
 *
 * <p>Exact while the looks that can matter, together, have no more than {@value #MOST_WORK} states times failure
 * patterns; beyond that the looks that are worth most by themselves are combined and {@link Advice#exact()} says
 * so. Two simplifications hold always: the plan of a failure pattern is the cheapest with what is open today, and
 * at one look the three items that matter most are told apart.
 */
public final class GoStop {

    private static final double MOST_WORK = 3e6;
    /** What one key of the induction holds. */
    private static final int MOST_LOOKS = 12;
    private static final int RULES = 8;
    private static final double OFTEN_ENOUGH = 0.005;
    private static final double WORTH_A_CAUTION = 0.1;

    private final Catalogue catalogue;
    private final JudgeSettings settings;
    private final TeardownTerms terms;
    private final CheckCosts costs;

    public GoStop(Catalogue catalogue, JudgeSettings settings, TeardownTerms terms) {
        this.catalogue = Objects.requireNonNull(catalogue, "catalogue");
        this.settings = Objects.requireNonNull(settings, "settings");
        this.terms = Objects.requireNonNull(terms, "terms");
        this.costs = new CheckCosts(catalogue, CheckSettings.beforeBuying(settings.workshop().ownedTools(),
                settings.workshop().worker().hourly()));
    }

    /** @param listing prepared with all that the journal saw, see {@link Journal#addedTo} */
    public Advice advise(PreparedListing listing, Journal journal) {
        OpenCar car = new OpenCar(catalogue, settings, terms, listing, journal);
        Diagnosis diagnosis = listing.diagnosis();
        Looks looks = new Looks(catalogue, car, terms);
        Prospect ends = new Prospect(car.weights, looks.steps().stream().mapToDouble(car::openingPrice).toArray(),
                car.ends(looks.steps()), List.of());
        Conditional given = new Conditional(ends);
        List<Look> all = Stream.concat(looks.opening(gains(car, given)).stream(),
                looks.testing(diagnosis, costs, settings.checks().damaging()).stream()
                .filter(l -> given.gain(l.likelihood()) > l.cost())).toList();
        Prospect whole = ends.with(combined(ends, all));
        Induction induction = new Induction(whole, currency());
        List<Advice.Choice> options = options(induction);
        End now = induction.bestEnd();
        return new Advice(spent(journal), induction.best(), options, whole.looks().size() == all.size(),
                car.costToFinish().map(cost -> shifted(cost, car.closingCost())), car.closing(),
                car.chanceOfUnit(), chanceStopIsBetter(car, whole, now),
                options.stream().filter(o -> o.move().kind() == Kind.LOOK).findFirst(),
                rules(car, diagnosis, given, now.kind()), Openings.of(catalogue, car),
                Searching.order(catalogue, car, diagnosis, terms), cautions(car));
    }

    private Currency currency() {
        return settings.terms().currency();
    }

    private Advice.Spent spent(Journal journal) {
        Money receipts = journal.paid(Money.zero(currency()));
        Money hours = journal.hours().at(settings.workshop().worker().hourly());
        return new Advice.Spent(receipts, journal.hours(), receipts.plus(hours));
    }

    private Map<String, Double> gains(OpenCar car, Conditional given) {
        Map<String, Double> gains = new TreeMap<>();
        for (int i = 0; i < car.items.size(); i++) {
            double[] failed = failed(car, i);
            double[] sound = IntStream.range(0, failed.length).mapToDouble(p -> 1 - failed[p]).toArray();
            gains.put(car.items.get(i), given.gain(new double[][] {failed, sound}));
        }
        return gains;
    }

    private static double[] failed(OpenCar car, int item) {
        return car.patterns.stream().mapToDouble(p -> p.get(item) ? 1 : 0).toArray();
    }

    /** The looks that are combined: all of them where that is not too much. */
    private List<Look> combined(Prospect ends, List<Look> all) {
        List<Look> byWorth = all.stream()
                .sorted(Comparator.comparingDouble((Look l) -> -new Induction(ends.with(List.of(l)), currency())
                        .options().stream().filter(o -> o.move().kind() == Kind.LOOK)
                        .mapToDouble(o -> o.move().worth().amount()).max().orElseThrow()).thenComparing(Look::id))
                .toList();
        List<Look> chosen = new ArrayList<>();
        for (Look look : byWorth) {
            List<Look> more = new ArrayList<>(chosen);
            more.add(look);
            if (more.size() <= MOST_LOOKS && Induction.states(more) * ends.weights().length <= MOST_WORK) {
                chosen = more;
            }
        }
        return chosen;
    }

    private static List<Advice.Choice> options(Induction induction) {
        return induction.options().stream().map(o -> new Advice.Choice(o.move(), o.chanceOfChange())).toList();
    }

    private static Outcome shifted(Outcome cost, Money by) {
        double[] quantiles = new double[200];
        double[] weights = new double[quantiles.length];
        for (int i = 0; i < quantiles.length; i++) {
            quantiles[i] = cost.quantile((i + .5) / quantiles.length) + by.amount();
            weights[i] = 1;
        }
        return Outcome.of(quantiles, weights);
    }

    private static double chanceStopIsBetter(OpenCar car, Prospect whole, End now) {
        End finish = now.kind() == Kind.FINISH ? now : whole.ends().stream()
                .filter(e -> e.id().equals("FINISH")).findFirst().orElseThrow();
        double stop = car.stops.stream().mapToDouble(e -> e.money()[0]).max().orElseThrow();
        return IntStream.range(0, car.weights.length).filter(p -> finish.money()[p] < stop)
                .mapToDouble(p -> car.weights[p]).sum();
    }

    private List<Advice.Rule> rules(OpenCar car, Diagnosis diagnosis, Conditional given, Kind now) {
        List<Advice.Rule> rules = new ArrayList<>();
        Map<String, FailureItem> items = catalogue.itemsById();
        for (int i = 0; i < car.items.size(); i++) {
            FailureItem item = items.get(car.items.get(i));
            rule(given, item.id(), item.name(), false, failed(car, i), now).ifPresent(rules::add);
        }
        FindingChances chances = diagnosis.network().findingChances(car.patterns);
        for (FindingKind f : catalogue.findings()) {
            boolean seen = diagnosis.evidence().findings().containsKey(f.id());
            boolean here = f.stage() == FindingKind.Stage.OPENED_UP
                    || car.open.isEmpty() && f.stage() == FindingKind.Stage.INSPECTION;
            if (!seen && here) {
                rule(given, f.id(), f.name(), true, chances.of(f.id()), now).ifPresent(rules::add);
            }
        }
        return rules.stream()
                .sorted(Comparator.comparingDouble((Advice.Rule r) -> -r.chance()).thenComparing(Advice.Rule::id))
                .limit(RULES)
                .toList();
    }

    private Optional<Advice.Rule> rule(
            Conditional given, String id, String name, boolean finding, double[] likelihood, Kind now) {
        Conditional.Values then = given.values(likelihood);
        boolean changes = then.weight() >= OFTEN_ENOUGH && then.weight() < 1 - OFTEN_ENOUGH && then.kind() != now;
        return changes ? Optional.of(new Advice.Rule(id, name, finding, then.weight(), then.kind(),
                new Money(then.finish(), currency()), new Money(then.stop(), currency()))) : Optional.empty();
    }

    private List<String> cautions(OpenCar car) {
        return catalogue.items().stream()
                .filter(i -> car.failed.getOrDefault(i.id(), 0.0) > WORTH_A_CAUTION && !i.caution().isBlank())
                .sorted(Comparator.comparingDouble((FailureItem i) -> -car.failed.get(i.id())))
                .map(i -> i.name() + ": " + i.caution())
                .toList();
    }
}
