package worthsaving.desktop.teardown;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import worthsaving.catalog.Catalogue;

/**
 * Something of the catalogue that a line of the journal is about, found by its name.
 *
 * @param item whether it is a failure item, which has failed or is sound; otherwise a finding or an access step
 */
record Subject(String id, String name, boolean item) {

    /** What a line of a kind may be about, by name. */
    static List<Subject> of(Catalogue catalogue, Kind kind) {
        Stream<Subject> items = catalogue.items().stream().map(i -> new Subject(i.id(), i.name(), true));
        Stream<Subject> all = switch (kind) {
            case OPENED -> catalogue.accessSteps().stream().map(s -> new Subject(s.id(), s.name(), false));
            case FINDING -> Stream.concat(
                    catalogue.findings().stream().map(f -> new Subject(f.id(), f.name(), false)), items);
            case PART, MENDED -> items;
            default -> Stream.empty();
        };
        return all.sorted(Comparator.comparing(s -> s.name().toLowerCase(Locale.ROOT))).toList();
    }

    /** Those whose name holds every word that was typed; names that begin so come first. */
    static List<Subject> search(List<Subject> all, String typed) {
        String text = typed.strip().toLowerCase(Locale.ROOT);
        List<String> words = List.of(text.split("\\s+"));
        return all.stream()
                .filter(s -> words.stream().allMatch(s.name().toLowerCase(Locale.ROOT)::contains))
                .sorted(Comparator.comparing(s -> !s.name().toLowerCase(Locale.ROOT).startsWith(text)))
                .toList();
    }
}
