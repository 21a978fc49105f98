package worthsaving.valuation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Columns of the hedonic regression: broken lines in age and mileage, words, make, model within make, and how
 * fast each make and model loses value. Effects of make and of model within make are both penalised, which
 * pools a rare model towards its make and a rare make towards cars of its body (random effects; Gelman and
 * Hill 2007, ch. 12). A level never seen has no column and so gets the pooled value.
 */
final class HedonicDesign {

    private static final double[] AGE_KNOTS = {2, 5, 8, 12, 16, 22, 30, 100};
    private static final double[] MILE_KNOTS = {0.2, 0.5, 1, 1.5, 2, 3, 4};
    private static final double AGE_UNIT = 10;
    private static final double MILE_UNIT = 1e5;
    private static final double YOUNG = 1.2;
    private static final int USUAL_PER_ROW = 90;

    /** Rows from which on a make or model gets an effect, and slopes of its own; rarer ones only cost columns. */
    private static final int ROWS_FOR_EFFECT = 3;
    private static final int ROWS_FOR_SLOPES = 20;

    private final Map<String, Integer> columns;

    private HedonicDesign(Map<String, Integer> columns) {
        this.columns = columns;
    }

    /** The design whose columns are all that occur in these cars; column 0 is the intercept. */
    static HedonicDesign over(List<CarFacts> cars) {
        Map<String, Integer> columns = new HashMap<>();
        Map<String, Integer> rows = new HashMap<>();
        for (CarFacts car : cars) {
            rows.merge(car.make(), 1, Integer::sum);
            rows.merge(car.makeAndModel(), 1, Integer::sum);
            car.features().forEach((name, word) -> rows.merge(feature(name, word), 1, Integer::sum));
        }
        Row growing = new Row(columns, rows);
        cars.forEach(growing::fill);
        return new HedonicDesign(columns);
    }

    /** The design with these column names, in order. */
    static HedonicDesign named(List<String> names) {
        Map<String, Integer> columns = new HashMap<>();
        for (String name : names) {
            columns.put(name, columns.size());
        }
        return new HedonicDesign(columns);
    }

    private static String feature(String name, String word) {
        return "feature " + name + "=" + word;
    }

    int width() {
        return columns.size();
    }

    List<String> names() {
        List<String> names = new ArrayList<>(columns.keySet());
        names.sort((a, b) -> Integer.compare(columns.get(a), columns.get(b)));
        return names;
    }

    int indexOf(String name) {
        return columns.get(name);
    }

    /** The penalty of every column but the intercept, which has none. */
    double[] penalties(double penalty) {
        double[] all = new double[width()];
        Arrays.fill(all, 1, all.length, penalty);
        return all;
    }

    Row row() {
        return new Row(columns, null);
    }

    double predict(CarFacts car, double[] coefficients) {
        Row row = row();
        row.fill(car);
        double sum = 0;
        for (int i = 0; i < row.count; i++) {
            sum += coefficients[row.column[i]] * row.value[i];
        }
        return sum;
    }

    /** One car's non-zero columns; reused from car to car. */
    static final class Row {
        private final Map<String, Integer> columns;
        private final Map<String, Integer> rows;
        int[] column = new int[USUAL_PER_ROW];
        double[] value = new double[USUAL_PER_ROW];
        int count;

        /** @param rows of each make and model while columns are being gathered, else null */
        private Row(Map<String, Integer> columns, Map<String, Integer> rows) {
            this.columns = columns;
            this.rows = rows;
        }

        void fill(CarFacts car) {
            count = 0;
            put("1", 1);
            boolean aged = !Double.isNaN(car.age());
            boolean driven = !Double.isNaN(car.miles());
            double age = aged ? car.age() / AGE_UNIT : 0;
            double miles = driven ? Math.min(car.miles() / MILE_UNIT, 4) : 0;
            if (aged) {
                put("aged", 1);
                for (double knot : AGE_KNOTS) {
                    put("age<" + knot, Math.min(car.age(), knot) / AGE_UNIT);
                }
                put("year=" + (int) car.year(), 1);
            }
            if (driven) {
                put("driven", 1);
                for (double knot : MILE_KNOTS) {
                    put("miles<" + knot, Math.min(miles, knot));
                }
                put("age*miles", age * miles);
            }
            put("day", car.day() % 100 - 18);
            number("ln litres", Math.log(car.litres()), car);
            number("ln power", Math.log(car.power() / 100), car);
            if (!Double.isNaN(car.cylinders())) {
                put("cylinders=" + (int) car.cylinders(), 1);
            }
            if (car.damage() > 0) {
                put("damage", 1);
                put("damage*age", age);
            }
            for (WordField field : WordField.ALL) {
                String word = field.of(car);
                if (field == WordField.TITLE && word.isEmpty()) {
                    continue;
                }
                put(field + "=" + word, 1);
                put(field + "=" + word + "*age", age);
            }
            car.features().forEach((name, word) -> {
                if (enough(feature(name, word), ROWS_FOR_EFFECT)) {
                    put(feature(name, word), 1);
                }
            });
            level("make ", car.make(), age, miles);
            if (!car.model().isEmpty()) {
                level("model ", car.makeAndModel(), age, miles);
            }
        }

        private void level(String kind, String which, double age, double miles) {
            String name = kind + which;
            if (enough(which, ROWS_FOR_EFFECT)) {
                put(name, 1);
            }
            if (!enough(which, ROWS_FOR_SLOPES)) {
                return;
            }
            put(name + "*age", age);
            put(name + "*young", Math.min(age, YOUNG));
            put(name + "*miles", miles);
        }

        private void number(String name, double v, CarFacts car) {
            if (Double.isFinite(v)) {
                put("has " + name, 1);
                put(name, v);
                if (enough(car.make(), ROWS_FOR_SLOPES)) {
                    put(name + " of make " + car.make(), v);
                }
                if (enough(car.makeAndModel(), ROWS_FOR_SLOPES)) {
                    put(name + " of model " + car.makeAndModel(), v);
                }
            }
        }

        /** Always true once the columns are settled: what has none is skipped there. */
        private boolean enough(String which, int least) {
            return rows == null || rows.get(which) >= least;
        }

        private void put(String name, double v) {
            Integer index = rows != null ? columns.computeIfAbsent(name, n -> columns.size()) : columns.get(name);
            if (index != null && v != 0) {
                if (count == column.length) {
                    column = Arrays.copyOf(column, 2 * count);
                    value = Arrays.copyOf(value, 2 * count);
                }
                column[count] = index;
                value[count++] = v;
            }
        }
    }
}
