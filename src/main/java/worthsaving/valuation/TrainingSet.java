package worthsaving.valuation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import worthsaving.market.PriceRow;
import worthsaving.quantity.Seed;

/** Rows ready for fitting, parted into folds as the settings say. */
final class TrainingSet {

    /**
     * Parts in which the interval is fitted and calibrated. They cut across the folds: a reach fitted on whole folds meets
     * columns of another encoder on the fold left out, and errs there more than it does on a car to be judged.
     */
    static final int PARTS = 5;

    final List<CarFacts> cars;
    final double[] y;
    final int[] fold;
    final int[] part;
    final int folds;

    /** Folds from 0 to before this one are held out in turn. */
    final int held;
    final HedonicDesign design;
    private final FactSpace space;
    private final List<FactSpace.Point> points;
    private final Likeness likeness;
    private final LinearSystem[] systems;
    private final double penalty;
    private final Map<List<Integer>, Hedonic> hedonics = new ConcurrentHashMap<>();
    private final Map<List<Integer>, Encoder> encoders = new ConcurrentHashMap<>();

    TrainingSet(List<PriceRow> rows, FitSettings settings, Seed seed) {
        cars = rows.stream().map(CarFacts::of).toList();
        y = rows.stream().mapToDouble(r -> Math.log(r.price())).toArray();
        folds = settings.folds();
        held = settings.foldsHeld(rows.size());
        fold = parted(rows, folds, settings.apart(), seed.derive("folds").generator());
        part = parted(rows, PARTS, settings.apart(), seed.derive("parts").generator());
        boolean few = y.length <= settings.mostForProcess();
        space = few ? FactSpace.over(cars) : null;
        points = few ? cars.stream().map(space::point).toList() : List.of();
        likeness = few ? Likeness.choose(space, points, y, seed.derive("likeness")) : null;
        design = HedonicDesign.over(cars);
        penalty = settings.penalty();
        systems = new LinearSystem[folds];
        for (int k = 0; k < folds; k++) {
            systems[k] = new LinearSystem(design.width());
        }
        HedonicDesign.Row row = design.row();
        for (int i = 0; i < y.length; i++) {
            row.fill(cars.get(i));
            systems[fold[i]].add(row.column, row.value, row.count, y[i]);
        }
    }

    private static int[] parted(List<PriceRow> rows, int parts, FitSettings.Apart apart, SplittableRandom random) {
        Map<String, Integer> ofCar = new HashMap<>();
        int[] part = new int[rows.size()];
        for (int i = 0; i < part.length; i++) {
            part[i] = apart == FitSettings.Apart.ADVERTS
                    ? random.nextInt(parts)
                    : ofCar.computeIfAbsent(rows.get(i).carIdentity(), c -> random.nextInt(parts));
        }
        return part;
    }

    int size() {
        return y.length;
    }

    /**
     * A Gaussian process of ln price about {@code center} on these rows; none when the table has too many. How much each
     * fact weighs is chosen once for all of them, on some of the rows, held out or not: a score of figures for the whole
     * table, like the other settings.
     */
    GaussianProcess processOn(int[] rows, double center) {
        if (likeness == null) {
            return GaussianProcess.NONE;
        }
        double[] left = Arrays.stream(rows).mapToDouble(i -> y[i] - center).toArray();
        return GaussianProcess.fit(space, likeness, Arrays.stream(rows).mapToObj(points::get).toList(), left);
    }

    /** Rows outside fold {@code out}; all of them for -1. */
    int[] rowsWithout(int out) {
        return IntStream.range(0, y.length).filter(i -> fold[i] != out).toArray();
    }

    /** Rows of the folds that are held out in turn. */
    int[] rowsHeld() {
        return IntStream.range(0, y.length).filter(i -> fold[i] < held).toArray();
    }

    int[] rowsOf(int one) {
        return IntStream.range(0, y.length).filter(i -> fold[i] == one).toArray();
    }

    /** The regression on all folds but two, which may be the same or -1; each pair is fitted once. */
    Hedonic hedonicWithout(int out, int also) {
        return hedonics.computeIfAbsent(pair(out, also), p -> {
            LinearSystem sum = new LinearSystem(design.width());
            for (int k = 0; k < folds; k++) {
                if (k != out && k != also) {
                    sum.addAll(systems[k]);
                }
            }
            return new Hedonic(design, sum.solve(design.penalties(penalty)));
        });
    }

    /** The encoder of the same rows. */
    Encoder encoderWithout(int out, int also) {
        return encoders.computeIfAbsent(pair(out, also), p -> {
            List<CarFacts> some = new ArrayList<>();
            List<Double> prices = new ArrayList<>();
            for (int i = 0; i < y.length; i++) {
                if (fold[i] != out && fold[i] != also) {
                    some.add(cars.get(i));
                    prices.add(y[i]);
                }
            }
            return Encoder.fit(some, prices.stream().mapToDouble(v -> v).toArray());
        });
    }

    /** The same for both orders, and for one fold alone whichever way it is written. */
    private static List<Integer> pair(int out, int also) {
        int first = out < 0 ? also : out;
        int second = also < 0 ? out : also;
        return List.of(Math.min(first, second), Math.max(first, second));
    }
}
