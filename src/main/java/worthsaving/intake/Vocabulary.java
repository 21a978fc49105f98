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
 */
public record Vocabulary(
        Set<String> findings, Set<String> items, Map<String, List<String>> findingsByCode, Set<String> makes) {

    public Vocabulary {
        findings = Set.copyOf(findings);
        items = Set.copyOf(items);
        findingsByCode = Map.copyOf(findingsByCode);
        makes = makes.stream().map(m -> m.toLowerCase(Locale.ROOT)).collect(Collectors.toUnmodifiableSet());
    }

    public static Vocabulary of(Catalogue catalogue, Collection<String> makes) {
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
                Set.copyOf(makes));
    }

    /** The findings that a code amounts to; none for a code the catalogue does not know. */
    public List<String> findings(TroubleCode code) {
        return findingsByCode.getOrDefault(code.text(), List.of());
    }

    /** The id as the catalogue spells it, whatever the case it was typed in. */
    static Optional<String> spelled(String word, Set<String> ids) {
        if (ids.contains(word)) {
            return Optional.of(word);
        }
        return ids.stream().filter(id -> id.equalsIgnoreCase(word)).findFirst();
    }
}
