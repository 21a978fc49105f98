package worthsaving.market;

import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import worthsaving.quantity.Distance;

/** Finds currency and units in a column's name and in its cells. */
final class ColumnUnits {

    /** What was found, and where. */
    record Found<T>(T unit, String why) {}

    private static final double MOST = 0.5;
    private static final double HP_PER_KW = 1.35962;
    private static final Map<String, Currency> CURRENCIES = Map.of(
            "usd", Currency.getInstance("USD"), "$", Currency.getInstance("USD"),
            "eur", Currency.getInstance("EUR"), "\u20ac", Currency.getInstance("EUR"),
            "euro", Currency.getInstance("EUR"), "gbp", Currency.getInstance("GBP"),
            "\u00a3", Currency.getInstance("GBP"));
    private static final Map<String, Distance.Unit> DISTANCES = Map.of(
            "mi", Distance.Unit.MILES, "mile", Distance.Unit.MILES, "miles", Distance.Unit.MILES,
            "km", Distance.Unit.KILOMETRES, "kms", Distance.Unit.KILOMETRES,
            "kilometres", Distance.Unit.KILOMETRES, "kilometers", Distance.Unit.KILOMETRES,
            "kilometerstand", Distance.Unit.KILOMETRES);
    private static final Pattern BETWEEN = Pattern.compile(
            "[^a-z0-9$\u20ac\u00a3]+|(?<=\\d)(?=[a-z])|(?<=[$\u20ac\u00a3])|(?=[$\u20ac\u00a3])");

    private ColumnUnits() {}

    static Optional<Found<Currency>> currency(String header, TableSample sample) {
        return find(header, sample, CURRENCIES, c -> c.getCurrencyCode());
    }

    static Optional<Found<Distance.Unit>> distance(String header, TableSample sample) {
        return find(header, sample, DISTANCES, u -> u == Distance.Unit.MILES ? "miles" : "km");
    }

    /** Factor to metric horsepower. */
    static double power(String header, TableSample sample) {
        return words(header).contains("kw") || sample.share(header, c -> words(c).contains("kw")) > MOST ? HP_PER_KW : 1;
    }

    private static <T> Optional<Found<T>> find(
            String header, TableSample sample, Map<String, T> known, Function<T, String> name) {
        Optional<T> named = one(words(header), known);
        if (named.isPresent()) {
            return Optional.of(new Found<>(named.get(), "its name says " + name.apply(named.get())));
        }
        for (T unit : Set.copyOf(known.values())) {
            Predicate<String> says = cell -> one(words(cell), known).filter(unit::equals).isPresent();
            if (sample.share(header, says) > MOST) {
                return Optional.of(new Found<>(unit, sample.told(header, says) + " say " + name.apply(unit)));
            }
        }
        return Optional.empty();
    }

    private static <T> Optional<T> one(Set<String> words, Map<String, T> known) {
        List<T> found = words.stream().filter(known::containsKey).map(known::get).distinct().toList();
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    private static Set<String> words(String text) {
        return BETWEEN.splitAsStream(text.toLowerCase(Locale.ROOT)).filter(w -> !w.isEmpty()).collect(Collectors.toSet());
    }
}
