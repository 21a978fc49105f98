package worthsaving.ranking;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.ShippedCatalogue;
import worthsaving.deal.DealCase;
import worthsaving.deal.DealEngine;
import worthsaving.deal.DealTerms;
import worthsaving.deal.Labour;
import worthsaving.deal.PreparedDeal;
import worthsaving.deal.Repairs;
import worthsaving.deal.Term;
import worthsaving.deal.WayOut;
import worthsaving.diagnosis.Diagnosis;
import worthsaving.diagnosis.Evidence;
import worthsaving.diagnosis.FailureNetwork;
import worthsaving.diagnosis.Outcome;
import worthsaving.diagnosis.Witnesses;
import worthsaving.quantity.Distribution;
import worthsaving.quantity.Money;
import worthsaving.quantity.Seed;
import worthsaving.repair.RepairPlanner;
import worthsaving.repair.Worker;
import worthsaving.sensitivity.DealTornado;
import worthsaving.valuation.ValueForecast;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Vehicle;

/**
 * Milliseconds of processor time, on one thread, per listing of the sample lot: the full judgement by a judge
 * that has seen none of it, the same again, and, once a car is drawn, one move of its price and one of its
 * money lines; then a tornado of some cars. Run by src/bench/run.sh.
 */
public final class JudgeBench {

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final int MOVES = 40;
    /** Worth what the sample lot says, as a table of quantiles: what a price model gives, and judgement.py is given. */
    private static final Map<Vehicle, ValueForecast> TABLES = new HashMap<>();
    private static final ValueSource VALUES = (car, on) -> TABLES.computeIfAbsent(car, c -> {
        ValueForecast made = SampleLot.byAge().forecast(c, on);
        return new ValueForecast(Table.of(made.saleValue()), made.currency(), List.of(), List.of(), List.of(), "table");
    });
    private static final int TORNADOS = 5;

    private JudgeBench() {}

    private record Table(double mean, double variance, double[] quantiles) implements Distribution {

        static Table of(Distribution from) {
            double[] quantiles = new double[257];
            Arrays.setAll(quantiles, k -> from.quantile((k + 0.5) / quantiles.length));
            return new Table(from.mean(), from.variance(), quantiles);
        }

        @Override
        public double quantile(double p) {
            double at = Math.max(0, Math.min(quantiles.length - 1.0, p * quantiles.length - 0.5));
            int k = Math.min(quantiles.length - 2, (int) at);
            return quantiles[k] + (at - k) * (quantiles[k + 1] - quantiles[k]);
        }

        @Override
        public double cumulative(double x) {
            throw new UnsupportedOperationException("a judgement asks for quantiles");
        }
    }

    /** @param args rounds, 6 when left out; only the last is worth quoting */
    public static void main(String[] args) {
        int rounds = args.length > 0 ? Integer.parseInt(args[0]) : 6;
        Catalogue catalogue = ShippedCatalogue.load();
        List<Listing> lot = SampleLot.read(catalogue);
        System.out.println("ms per listing of " + lot.size() + "; mean (median) over the listings");
        System.out.println("round  unseen lot         same lot again     price moved        terms moved");
        for (int round = 1; round <= rounds; round++) {
            JudgeSettings settings = JudgeSettings.usual(catalogue, Seed.DEFAULT);
            Judge judge = new Judge(catalogue, VALUES, settings);
            double[] unseen = lot.stream().mapToDouble(l -> millis(() -> judge.judge(l))).toArray();
            double[] again = lot.stream().mapToDouble(l -> millis(() -> judge.judge(l))).toArray();
            List<PreparedDeal> drawn = drawn(catalogue, settings, lot);
            double[] prices = drawn.stream().mapToDouble(d -> movingPrice(d, settings)).toArray();
            double[] terms = drawn.stream().mapToDouble(d -> movingTerms(d, settings)).toArray();
            System.out.printf("%5d  %s  %s  %s  %s%n", round, show(unseen), show(again), show(prices), show(terms));
            if (round == rounds) {
                List<PreparedDeal> some = drawn.subList(0, Math.min(TORNADOS, drawn.size()));
                double[] ours = some.stream().mapToDouble(d -> millis(() -> tornado(d, settings).tornado())).toArray();
                double[] anew = some.stream().mapToDouble(d -> judgingAnew(d, settings)).toArray();
                System.out.println("tornado of " + some.size() + " cars      " + show(ours) + "  drawn anew for each end "
                        + show(anew));
            }
        }
    }

    private static DealTornado tornado(PreparedDeal deal, JudgeSettings settings) {
        return new DealTornado(deal, settings.terms(), WayOut.REPAIR_AND_SELL, Money.usd(1_500));
    }

    /** As one would write it: the car drawn and judged again at both ends of every money line. */
    private static double judgingAnew(PreparedDeal deal, JudgeSettings settings) {
        int ends = 2 * tornado(deal, settings).figures().size();
        return millis(() -> {
            for (int end = 0; end < ends; end++) {
                DealEngine.prepare(deal.deal())
                        .expectedProfit(settings.terms(), WayOut.REPAIR_AND_SELL, Money.usd(1_500));
            }
        });
    }

    private static List<PreparedDeal> drawn(Catalogue catalogue, JudgeSettings settings, List<Listing> lot) {
        RepairPlanner planner = new RepairPlanner(catalogue, settings.workshop());
        return lot.stream().map(listing -> prepared(catalogue, settings, planner, listing)).toList();
    }

    /** The first of the moves works out what the others reuse. */
    private static double movingPrice(PreparedDeal deal, JudgeSettings settings) {
        return millis(() -> {
                    for (int move = 0; move < MOVES; move++) {
                        deal.assess(settings.terms(), settings.rule(), Optional.of(Money.usd(500 + 50 * move)));
                    }
                })
                / MOVES;
    }

    private static double movingTerms(PreparedDeal deal, JudgeSettings settings) {
        return millis(() -> {
                    for (int move = 0; move < MOVES; move++) {
                        DealTerms moved = settings.terms().with(Term.INCOME_TAX, move);
                        deal.assess(moved, settings.rule(), Optional.of(Money.usd(1_500)));
                    }
                })
                / MOVES;
    }

    private static PreparedDeal prepared(
            Catalogue catalogue, JudgeSettings settings, RepairPlanner planner, Listing listing) {
        Evidence evidence = new Witnesses(catalogue, settings.trust()).evidence(listing.observations());
        FailureNetwork network =
                FailureNetwork.of(catalogue, listing.vehicle(), listing.exposure(), listing.seen());
        Diagnosis diagnosis = ((Outcome.Explained) network.attempt(evidence)).diagnosis();
        Worker worker = settings.workshop().worker();
        return DealEngine.prepare(new DealCase(
                diagnosis.patterns(settings.patterns()),
                Repairs.cheapest(planner),
                new Labour(worker.hourly(), true, worker::factor),
                VALUES.forecast(listing.vehicle(), listing.seen()),
                30,
                listing.vehicle().title(),
                catalogue.itemsById(),
                settings.method()));
    }

    private static double millis(Runnable work) {
        long start = THREADS.getCurrentThreadCpuTime();
        work.run();
        return (THREADS.getCurrentThreadCpuTime() - start) / 1e6;
    }

    private static String show(double[] millis) {
        double[] sorted = millis.clone();
        Arrays.sort(sorted);
        return String.format("%7.2f (%7.2f)", Arrays.stream(millis).average().orElseThrow(), sorted[sorted.length / 2]);
    }
}
