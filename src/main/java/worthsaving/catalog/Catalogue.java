package worthsaving.catalog;

import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import worthsaving.quantity.Money;

/**
 * The whole trade knowledge, already validated: every id resolves, no circle in access or damage,
 * every probability in range. Built by {@code CatalogueReader}.
 *
 * @param version version text of the files it was read from
 */
public record Catalogue(
        String version,
        List<FailureItem> items,
        List<DamageLink> damage,
        List<FindingKind> findings,
        List<FindingLink> findingLinks,
        List<AccessStep> accessSteps,
        List<Remedy> remedies,
        List<Tool> tools,
        List<MoneyLine> moneyLines) {

    public Catalogue {
        items = List.copyOf(items);
        damage = List.copyOf(damage);
        findings = List.copyOf(findings);
        findingLinks = List.copyOf(findingLinks);
        accessSteps = List.copyOf(accessSteps);
        remedies = List.copyOf(remedies);
        tools = List.copyOf(tools);
        moneyLines = List.copyOf(moneyLines);
    }

    public Map<String, FailureItem> itemsById() {
        return byId(items, FailureItem::id);
    }

    public Map<String, FindingKind> findingsById() {
        return byId(findings, FindingKind::id);
    }

    public Map<String, AccessStep> accessById() {
        return byId(accessSteps, AccessStep::id);
    }

    public Map<String, Tool> toolsById() {
        return byId(tools, Tool::id);
    }

    public Map<String, MoneyLine> moneyById() {
        return byId(moneyLines, MoneyLine::id);
    }

    private static <T> Map<String, T> byId(List<T> list, Function<T, String> id) {
        return list.stream().collect(Collectors.toUnmodifiableMap(id, Function.identity()));
    }

    /** Currency of all its figures; money lines, which name none, are in the same one. */
    public Currency currency() {
        return Stream.concat(
                        findings.stream().map(f -> f.cost().currency()), tools.stream().map(t -> t.price().currency()))
                .findFirst()
                .orElse(Money.USD);
    }

    /**
     * The same catalogue with all its money in another currency.
     *
     * @param rate units of {@code other} for each unit of {@link #currency()}
     */
    public Catalogue in(Currency other, double rate) {
        return new Catalogue(
                version,
                items.stream().map(item -> item.in(other, rate)).toList(),
                damage,
                findings.stream().map(finding -> finding.in(other, rate)).toList(),
                findingLinks, accessSteps,
                remedies.stream().map(remedy -> remedy.in(other, rate)).toList(),
                tools.stream().map(tool -> tool.in(other, rate)).toList(),
                moneyLines.stream().map(line -> line.times(rate)).toList());
    }

    /** The same catalogue with every part, remedies included, dearer or cheaper by a factor. */
    public Catalogue withPartPrices(double factor) {
        return new Catalogue(
                version,
                items.stream().map(item -> item.withPartPrices(factor)).toList(),
                damage, findings, findingLinks, accessSteps,
                remedies.stream().map(remedy -> remedy.withPartPrices(factor)).toList(),
                tools, moneyLines);
    }

    /**
     * The same catalogue with the prior odds of some items multiplied.
     *
     * @param factors by item id, above 0
     */
    public Catalogue withOdds(Map<String, Double> factors) {
        return factors.isEmpty() ? this : new Catalogue(
                version,
                items.stream().map(item -> factors.containsKey(item.id()) ? item.withOdds(factors.get(item.id())) : item)
                        .toList(),
                damage, findings, findingLinks, accessSteps, remedies, tools, moneyLines);
    }
}
