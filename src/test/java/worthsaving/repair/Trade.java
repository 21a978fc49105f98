package worthsaving.repair;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import worthsaving.catalog.AccessStep;
import worthsaving.catalog.Applicability;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.DamageLink;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.Onset;
import worthsaving.catalog.PartSource;
import worthsaving.catalog.Remedy;
import worthsaving.catalog.Tool;
import worthsaving.quantity.HoursRange;
import worthsaving.quantity.Money;
import worthsaving.quantity.MoneyRange;
import worthsaving.quantity.Probability;
import worthsaving.quantity.Range;
import worthsaving.quantity.Source;

/** Builds small catalogues in code. Figures are exact (no spread) unless said otherwise. */
final class Trade {

    private static final Source INVENTED = Source.guess("invented for this test");

    private final List<FailureItem> items = new ArrayList<>();
    private final List<AccessStep> steps = new ArrayList<>();
    private final List<Remedy> remedies = new ArrayList<>();
    private final List<Tool> tools = new ArrayList<>();
    private final List<DamageLink> damage = new ArrayList<>();

    static MoneyRange usd(double amount) {
        return MoneyRange.exactly(Money.usd(amount));
    }

    static HoursRange hours(double hours) {
        return HoursRange.of(hours, hours, hours);
    }

    Trade step(String id, double hours, String... requires) {
        return step(id, hours, Map.of(), requires);
    }

    Trade step(String id, double hours, Map<String, Double> easedBy, String... requires) {
        steps.add(new AccessStep(id, id + " off", Set.of(requires), hours(hours), easedBy, "", INVENTED));
        return this;
    }

    Trade tool(String id, double price) {
        tools.add(new Tool(id, id, usd(price), false, INVENTED));
        return this;
    }

    Trade damage(String cause, String effect, double chance) {
        Probability p = Probability.of(chance);
        damage.add(new DamageLink(cause, effect, Range.exactly(chance), Optional.empty(), p, p, INVENTED));
        return this;
    }

    /** An item whose part comes from the aftermarket. */
    Trade item(String id, double hours, double part, String... access) {
        return item(id, hours, Map.of(PartSource.AFTERMARKET, part), 0, List.of(), Set.of(), access);
    }

    Trade item(
            String id, double hours, Map<PartSource, Double> parts, double consumables, List<String> needs,
            Set<String> roots, String... access) {
        Map<PartSource, MoneyRange> prices = new EnumMap<>(PartSource.class);
        parts.forEach((source, price) -> prices.put(source, usd(price)));
        return item(id, hours(hours), prices, usd(consumables), needs, roots, access);
    }

    Trade item(
            String id, HoursRange hours, Map<PartSource, MoneyRange> parts, MoneyRange consumables,
            List<String> needs, Set<String> roots, String... access) {
        items.add(new FailureItem(id, "engine", "worn " + id, Applicability.ALL,
                new Onset(2, 20, 0.5, Probability.NEVER), new Range(0.5, 1, 2), "", parts, Set.of(access), hours,
                consumables, needs, roots, Set.of(), "", INVENTED));
        return this;
    }

    Trade remedy(String id, Set<String> closes, double hours, double part, String... access) {
        return remedy(id, closes, PartSource.AFTERMARKET, hours, part, List.of(), 1, 0, false, access);
    }

    Trade remedy(
            String id, Set<String> closes, PartSource source, double hours, double part, List<String> needs,
            double success, double comeback, boolean wholeUnit, String... access) {
        remedies.add(new Remedy(id, "remedy " + id, closes, source, usd(part), hours(hours), Set.of(access), needs,
                Probability.of(success), Probability.of(comeback), wholeUnit, "", INVENTED));
        return this;
    }

    Catalogue catalogue() {
        return new Catalogue("test", items, damage, List.of(), List.of(), steps, remedies, tools, List.of());
    }

    /** Own hands or a shop for which no part ever comes back. */
    static Workshop withoutComebacks(Workshop shop) {
        Workshop changed = shop;
        for (PartSource source : PartSource.values()) {
            changed = changed.withTerms(source, SourceTerms.certain());
        }
        return changed;
    }
}
