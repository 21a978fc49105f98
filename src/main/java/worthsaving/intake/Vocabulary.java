package worthsaving.intake;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.FindingKind;

/**
 * The ids and names a table may use.
 *
 * @param findings ids of the catalogue's findings
 * @param items ids of its failure items
 * @param findingsByCode findings that a trouble code amounts to, by code
 * @param makes makes the price data know, lower case; empty to leave makes unchecked
 * @param codes what further codes stand for
 */
public record Vocabulary(
        Set<String> findings,
        Set<String> items,
        Map<String, List<String>> findingsByCode,
        Set<String> makes,
        CodeTable codes) {

    public Vocabulary {
        findings = Set.copyOf(findings);
        items = Set.copyOf(items);
        findingsByCode = Map.copyOf(findingsByCode);
        makes = makes.stream().map(m -> m.toLowerCase(Locale.ROOT)).collect(Collectors.toUnmodifiableSet());
    }

    /** Only the codes that the findings of the catalogue name themselves. */
    public Vocabulary(
            Set<String> findings, Set<String> items, Map<String, List<String>> findingsByCode, Set<String> makes) {
        this(findings, items, findingsByCode, makes, CodeTable.EMPTY);
    }

    public static Vocabulary of(Catalogue catalogue, Collection<String> makes) {
        return of(catalogue, makes, CodeTable.EMPTY);
    }

    /** @param codes consulted for codes that no finding of the catalogue names */
    public static Vocabulary of(Catalogue catalogue, Collection<String> makes, CodeTable codes) {
        Map<String, List<String>> byCode = new HashMap<>();
        for (FindingKind finding : catalogue.findings()) {
            for (String code : finding.codes()) {
                byCode.computeIfAbsent(code, c -> new ArrayList<>()).add(finding.id());
            }
        }
        byCode.replaceAll((code, ids) -> List.copyOf(ids));
        return new Vocabulary(
                catalogue.findings().stream().map(FindingKind::id).collect(Collectors.toSet()),
                catalogue.items().stream().map(FailureItem::id).collect(Collectors.toSet()),
                byCode,
                Set.copyOf(makes),
                codes);
    }

    /** The findings that a code amounts to; none for a code of the maker's or one the catalogue does not ask about. */
    public List<String> findings(TroubleCode code) {
        List<String> own = findingsByCode.getOrDefault(code.text(), List.of());
        return own.isEmpty()
                ? codes.row(code).flatMap(CodeTable.Row::finding).filter(findings::contains).stream().toList()
                : own;
    }

    /** The id as the catalogue spells it, whatever the case it was typed in. */
    static Optional<String> spelled(String word, Set<String> ids) {
        if (ids.contains(word)) {
            return Optional.of(word);
        }
        return ids.stream().filter(id -> id.equalsIgnoreCase(word)).findFirst();
    }
}
