package worthsaving.intake.advert;

import java.io.Reader;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * What makes and models are called, with the aliases people write, in lower case.
 *
 * @param makes all makes
 * @param models all models, of whatever make
 */
public record CarNames(Set<String> makes, Set<String> models) {

    public CarNames {
        makes = Set.copyOf(makes);
        models = Set.copyOf(models);
    }

    /**
     * @param files gives a reader for makes.csv and models.csv; each is closed
     * @throws VocabularyException listing every fault with file and line
     */
    public static CarNames read(Function<String, Reader> files) {
        CsvRows rows = new CsvRows(files);
        Set<String> makes = new TreeSet<>();
        Set<String> models = new TreeSet<>();
        rows.read("makes.csv", List.of("make", "aliases"), r -> add(makes, r.get("make"), r.list("aliases")));
        rows.read("models.csv", List.of("model", "aliases"), r -> add(models, r.get("model"), r.list("aliases")));
        if (!rows.faults().isEmpty()) {
            throw new VocabularyException(rows.faults());
        }
        return new CarNames(makes, models);
    }

    private static void add(Set<String> names, String name, List<String> aliases) {
        names.add(name.toLowerCase(Locale.ROOT));
        aliases.forEach(alias -> names.add(alias.toLowerCase(Locale.ROOT)));
    }
}
