package worthsaving.valuation;

import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Money;

/**
 * Why a car is worth more or less than a typical one. The facts in which it differs are the players; a
 * coalition is worth the model's ln price of the typical car with those facts replaced; each fact gets its exact
 * Shapley value (Shapley 1953; Lundberg and Lee 2017 in the form with one reference). Facts, not columns, are
 * the players, since one fact feeds several columns. Money is shared in proportion by the logarithmic mean
 * (Ang 2004, Energy Policy 32:1131), so that the sum is exact.
 */
final class Explanation {

    private static final String FEATURES = "other features";

    private record Player(String name, String value) {}

    private Explanation() {}

    static List<ValueForecast.Contribution> of(
            CarFacts car, CarFacts typical, ToDoubleFunction<CarFacts> logPrice, Currency currency,
            Distance.Unit unit, double scale) {
        List<Player> players = players(car, typical, unit);
        double[] worth = new double[1 << players.size()];
        for (int coalition = 0; coalition < worth.length; coalition++) {
            worth[coalition] = logPrice.applyAsDouble(mixed(car, typical, players, coalition));
        }
        int all = worth.length - 1;
        double from = Math.exp(worth[0]) * scale;
        double to = Math.exp(worth[all]) * scale;
        double perLog = worth[all] == worth[0] ? to : (to - from) / (worth[all] - worth[0]);
        List<ValueForecast.Contribution> list = new ArrayList<>();
        for (int p = 0; p < players.size(); p++) {
            double share = shapley(worth, players.size(), p);
            list.add(new ValueForecast.Contribution(
                    players.get(p).name(), players.get(p).value(), new Money(share * perLog, currency)));
        }
        return list;
    }

    private static double shapley(double[] worth, int players, int player) {
        double sum = 0;
        int bit = 1 << player;
        for (int coalition = 0; coalition < worth.length; coalition++) {
            if ((coalition & bit) == 0) {
                sum += weight(Integer.bitCount(coalition), players) * (worth[coalition | bit] - worth[coalition]);
            }
        }
        return sum;
    }

    /** size! (players - size - 1)! / players! */
    private static double weight(int size, int players) {
        double weight = 1.0 / players;
        for (int i = 1; i <= size; i++) {
            weight *= (double) i / (players - i);
        }
        return weight;
    }

    /** The facts in which the cars differ. */
    private static List<Player> players(CarFacts car, CarFacts typical, Distance.Unit unit) {
        List<Player> players = new ArrayList<>();
        add(players, "make and model", car.make() + " " + car.model(), typical.make() + " " + typical.model());
        add(players, "age", number(car.age(), "%.1f years"), number(typical.age(), "%.1f years"));
        add(players, "mileage", distance(car.miles(), unit), distance(typical.miles(), unit));
        add(players, "condition", car.condition(), typical.condition());
        add(players, "engine", engine(car), engine(typical));
        add(players, "fuel", car.fuel(), typical.fuel());
        add(players, "gearbox", car.gearbox(), typical.gearbox());
        add(players, "body", car.body(), typical.body());
        add(players, "driven wheels", car.drive(), typical.drive());
        add(players, FEATURES, String.join(" ", car.features().values()), String.join(" ", typical.features().values()));
        return players;
    }

    private static void add(List<Player> players, String name, String own, String usual) {
        if (!own.equals(usual)) {
            players.add(new Player(name, own.isBlank() ? "not stated" : own));
        }
    }

    /** A distance in the unit of the market, "" when not known. */
    static String distance(double miles, Distance.Unit unit) {
        return Double.isNaN(miles) ? "" : unit == Distance.Unit.MILES
                ? number(miles, "%,.0f miles")
                : number(Distance.ofMiles(miles).kilometres(), "%,.0f km");
    }

    static String engine(CarFacts car) {
        String litres = number(car.litres(), "%.1f litres");
        String cylinders = number(car.cylinders(), "%.0f cylinders");
        String power = number(car.power(), "%.0f hp");
        return String.join(" ", litres, cylinders, power).strip();
    }

    private static String number(double v, String format) {
        return Double.isNaN(v) ? "" : String.format(Locale.ROOT, format, v);
    }

    /** The typical car with the coalition's facts taken from {@code car}. */
    private static CarFacts mixed(CarFacts car, CarFacts typical, List<Player> players, int coalition) {
        CarFacts m = named("make and model", players, coalition) ? car : typical;
        CarFacts age = named("age", players, coalition) ? car : typical;
        CarFacts engine = named("engine", players, coalition) ? car : typical;
        return new CarFacts(
                m.make(),
                m.model(),
                age.year(),
                age.age(),
                (named("mileage", players, coalition) ? car : typical).miles(),
                (named("condition", players, coalition) ? car : typical).condition(),
                engine.cylinders(),
                engine.litres(),
                engine.power(),
                (named("fuel", players, coalition) ? car : typical).fuel(),
                (named("gearbox", players, coalition) ? car : typical).gearbox(),
                (named("body", players, coalition) ? car : typical).body(),
                (named("driven wheels", players, coalition) ? car : typical).drive(),
                car.damage(),
                car.day(),
                car.title(),
                (named(FEATURES, players, coalition) ? car : typical).features());
    }

    private static boolean named(String name, List<Player> players, int coalition) {
        for (int p = 0; p < players.size(); p++) {
            if (players.get(p).name().equals(name)) {
                return (coalition >> p & 1) == 1;
            }
        }
        return true;
    }
}
