package worthsaving.ranking;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FindingKind;
import worthsaving.catalog.FindingKind.Stage;
import worthsaving.deal.BuyerRule;
import worthsaving.deal.DealCase;
import worthsaving.deal.PatternProfit;
import worthsaving.deal.WayOut;
import worthsaving.diagnosis.Evidence;
import worthsaving.diagnosis.FailureNetwork;
import worthsaving.diagnosis.FailurePatterns;
import worthsaving.diagnosis.FindingChances;
import worthsaving.diagnosis.PatternSettings;
import worthsaving.inspection.CheckCosts;
import worthsaving.inspection.DecisionProblem;
import worthsaving.inspection.TwoStep;
import worthsaving.quantity.Money;
import worthsaving.quantity.Seed;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Fact;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Observation;

/**
 * Cars with a known truth, drawn from the failure network: a vehicle of the sample lot, what has failed from its
 * prior, what an advert would name from that, kept when it names something. The truth is drawn anew from the
 * posterior, which has the same joint distribution. Every way of inspecting meets the same truth and the same
 * luck in every check (common random numbers); what a car then earns is what the deal expects in that failure
 * pattern, less what was paid for looking.
 */
final class CheckSimulation {

    private static final int POINTS = 1_024;
    private static final int MOST_CHECKS = 30;
    private static final double LEAST_ASK = 0.05;
    private static final double MOST_ASK = 0.45;
    private static final int COMBINED = 16;

    private final Catalogue catalogue;
    private final List<Listing> vehicles;
    private final Judge judge;
    private final JudgeSettings settings;
    private final Seed seed;
    private final List<FindingKind> advert;
    private final List<FindingKind> checks;
    private final double[] costs;
    private final Map<Listing, Prior> priors = new HashMap<>();

    private record Prior(FailurePatterns patterns, double[][] advertChances) {}

    /** One car. @param payoffs by way, walking away last; @param present what each check would show */
    record Car(double[] weights, double[][] payoffs, double[][] chances, int truth, boolean[] present) {}

    /** @param profit money made, looking paid for */
    record Result(double profit, int checks, double paid, boolean bought) {}

    /** How to look. */
    interface Inspector {
        Result inspect(Car car, SplittableRandom luck);
    }

    CheckSimulation(Catalogue catalogue, Seed seed) {
        this.catalogue = catalogue;
        this.seed = seed;
        this.vehicles = SampleLot.read(catalogue);
        JudgeSettings usual = JudgeSettings.usual(catalogue, seed);
        this.settings = new JudgeSettings(usual.workshop(), usual.terms(), BuyerRule.of(Money.usd(0), 1),
                usual.trust(), usual.checks(), new DealCase.Method(POINTS, seed, true),
                new PatternSettings(POINTS, 0.999, POINTS, seed), usual.towMilesAssumed());
        this.judge = new Judge(catalogue, SampleLot.byAge(), settings);
        this.advert = catalogue.findings().stream().filter(f -> f.stage() == Stage.ADVERT).toList();
        this.checks = catalogue.findings().stream()
                .filter(f -> f.stage() != Stage.ADVERT && settings.checks().stages().contains(f.stage())
                        && settings.checks().leaves().contains(f.sellerAllows()) && !f.canDoDamage())
                .toList();
        CheckCosts price = new CheckCosts(catalogue, settings.checks());
        this.costs = checks.stream().mapToDouble(f -> price.of(f).amount()).toArray();
    }

    List<FindingKind> checks() {
        return checks;
    }

    /** Car of a number; the same for the same seed. */
    Car car(int number) {
        SplittableRandom random = new SplittableRandom(seed.derive("car " + number).value());
        while (true) {
            Listing vehicle = vehicles.get(random.nextInt(vehicles.size()));
            Prior prior = priors.computeIfAbsent(vehicle, this::prior);
            int truth = pick(prior.patterns().weights(), random.nextDouble());
            List<Observation> named = new ArrayList<>();
            boolean complaint = false;
            for (int f = 0; f < advert.size(); f++) {
                boolean present = random.nextDouble() < prior.advertChances()[f][truth];
                complaint |= present;
                String id = advert.get(f).id();
                named.add(present ? Observation.present(id) : Observation.absent(id));
            }
            double share = LEAST_ASK + (MOST_ASK - LEAST_ASK) * random.nextDouble();
            if (complaint) {
                Optional<Car> car = car(vehicle, named, share, random);
                if (car.isPresent()) {
                    return car.get();
                }
            }
        }
    }

    private Prior prior(Listing vehicle) {
        FailureNetwork network =
                FailureNetwork.of(catalogue, vehicle.vehicle(), Exposure.UNKNOWN, vehicle.seen());
        FailurePatterns patterns = network.diagnose(Evidence.NONE)
                .patterns(new PatternSettings(0, 0.999, 16_384, seed));
        FindingChances chances = network.findingChances(patterns.patterns());
        return new Prior(patterns, advert.stream().map(f -> chances.of(f.id())).toArray(double[][]::new));
    }

    private Optional<Car> car(Listing vehicle, List<Observation> named, double share, SplittableRandom random) {
        double value = SampleLot.byAge().forecast(vehicle.vehicle(), vehicle.seen()).mean().amount();
        Money ask = Money.usd(share * value);
        Listing listing = new Listing("simulated", vehicle.vehicle(), Fact.known(ask), vehicle.seen(),
                Fact.unknown(), Exposure.UNKNOWN, named, "", "simulated");
        if (!(judge.prepare(listing) instanceof Preparation.Ready ready)) {
            return Optional.empty();
        }
        PreparedListing prepared = ready.listing();
        List<PatternProfit> profits = prepared.appraise(settings.terms(), settings.rule(), Optional.of(ask))
                .assessment().patternProfits();
        double[] weights = profits.stream().mapToDouble(PatternProfit::weight).toArray();
        double[][] payoffs = Arrays.stream(WayOut.values())
                .map(way -> profits.stream().mapToDouble(
                        p -> way == WayOut.WALK_AWAY ? 0 : p.profit()[way.ordinal()]).toArray())
                .toArray(double[][]::new);
        FindingChances chances = prepared.diagnosis().network()
                .findingChances(profits.stream().map(PatternProfit::pattern).toList());
        double[][] byCheck = checks.stream().map(f -> chances.of(f.id())).toArray(double[][]::new);
        int truth = pick(weights, random.nextDouble());
        boolean[] present = new boolean[byCheck.length];
        for (int c = 0; c < present.length; c++) {
            present[c] = random.nextDouble() < byCheck[c][truth];
        }
        return Optional.of(new Car(weights, payoffs, byCheck, truth, present));
    }

    private static int pick(double[] weights, double share) {
        double left = share * Arrays.stream(weights).sum();
        int last = 0;
        for (int i = 0; i < weights.length; i++) {
            last = weights[i] > 0 ? i : last;
            left -= weights[i];
            if (left < 0) {
                return i;
            }
        }
        return last;
    }

    /** Buys or walks on what the advert says. */
    Inspector withoutLooking() {
        return (car, luck) -> new Visit(car).end();
    }

    /** Follows the next check; a second step ahead where one sees nothing. */
    Inspector nextCheck(boolean twoSteps) {
        return (car, luck) -> {
            Visit visit = new Visit(car);
            for (int n = 0; n < MOST_CHECKS; n++) {
                int next = visit.best();
                if (next < 0 && twoSteps) {
                    next = visit.firstOfTwo();
                }
                if (next < 0) {
                    break;
                }
                visit.make(next);
            }
            return visit.end();
        };
    }

    /** Makes the same checks in every car. @param list numbers of checks */
    Inspector checklist(List<Integer> list) {
        return (car, luck) -> {
            Visit visit = new Visit(car);
            list.forEach(visit::make);
            return visit.end();
        };
    }

    /** As many checks as another makes in this car, drawn at random. */
    Inspector atRandom(Inspector asManyAs) {
        return (car, luck) -> {
            int count = asManyAs.inspect(car, luck).checks();
            List<Integer> all = new ArrayList<>();
            for (int c = 0; c < costs.length; c++) {
                all.add(c, c);
            }
            Visit visit = new Visit(car);
            for (int n = 0; n < count; n++) {
                visit.make(all.remove(luck.nextInt(all.size())));
            }
            return visit.end();
        };
    }

    /** Knows what has failed, at no cost: what no inspection can better. */
    Inspector clairvoyant() {
        return (car, luck) -> {
            double most = Arrays.stream(car.payoffs()).mapToDouble(p -> p[car.truth()]).max().orElseThrow();
            return new Result(most, 0, 0, most > 0);
        };
    }

    /** Numbers of the checks, best first, by mean net worth as the only check over some cars. */
    List<Integer> byMeanWorth(List<Car> cars) {
        double[] sum = new double[costs.length];
        for (Car car : cars) {
            DecisionProblem problem = new Visit(car).problem();
            for (int c = 0; c < sum.length; c++) {
                sum[c] += problem.expectedValueOfFinding(car.chances()[c]) - costs[c];
            }
        }
        List<Integer> order = new ArrayList<>();
        for (int c = 0; c < sum.length; c++) {
            order.add(c);
        }
        order.sort(Comparator.comparingDouble(c -> -sum[c]));
        return order;
    }

    /** One car being looked at. */
    private final class Visit {
        private final Car car;
        private final boolean[] made = new boolean[costs.length];
        private double[] weights;
        private double paid;
        private int count;

        Visit(Car car) {
            this.car = car;
            this.weights = car.weights();
        }

        DecisionProblem problem() {
            double sum = Arrays.stream(weights).sum();
            return new DecisionProblem(Arrays.stream(weights).map(w -> w / sum).toArray(), car.payoffs());
        }

        int best() {
            DecisionProblem problem = problem();
            int best = -1;
            double most = 0;
            for (int c = 0; c < costs.length; c++) {
                double net = made[c] ? 0 : problem.expectedValueOfFinding(car.chances()[c]) - costs[c];
                if (net > most) {
                    best = c;
                    most = net;
                }
            }
            return best;
        }

        int firstOfTwo() {
            List<TwoStep.Check> open = new ArrayList<>();
            for (int c = 0; c < costs.length; c++) {
                if (!made[c]) {
                    open.add(new TwoStep.Check(String.valueOf(c), car.chances()[c], costs[c]));
                }
            }
            return new TwoStep(problem(), open, COMBINED).best().map(p -> Integer.valueOf(p.first())).orElse(-1);
        }

        void make(int check) {
            made[check] = true;
            paid += costs[check];
            count++;
            double[] left = weights.clone();
            for (int p = 0; p < left.length; p++) {
                double chance = car.chances()[check][p];
                left[p] *= car.present()[check] ? chance : 1 - chance;
            }
            weights = left;
        }

        Result end() {
            int action = problem().bestAction();
            boolean bought = action != WayOut.WALK_AWAY.ordinal();
            return new Result(car.payoffs()[action][car.truth()] - paid, count, paid, bought);
        }
    }
}
