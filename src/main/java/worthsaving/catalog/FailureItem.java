package worthsaving.catalog;

import java.util.Currency;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import worthsaving.quantity.HoursRange;
import worthsaving.quantity.MoneyRange;
import worthsaving.quantity.Range;
import worthsaving.quantity.Source;

/**
 * Something that can have failed.
 *
 * @param id stable, upper case with underscores
 * @param onset prior by age and mileage, before any finding
 * @param onsetDoubt factor range on the prior, such as 0.5, 1, 2: how far the guess may be off
 * @param exclusiveGroup items with the same non-blank group never fail together
 * @param parts price of the part by source; at least one unless the job needs no part
 * @param access access steps that must be paid to reach it
 * @param jobHours hours of the job itself once it is reached
 * @param consumables fluids, seals and one-time bolts
 * @param tools ids of special tools
 * @param rootCauses items that kill this one and must be mended with it when they have failed
 */
public record FailureItem(
        String id,
        String system,
        String name,
        Applicability applies,
        Onset onset,
        Range onsetDoubt,
        String exclusiveGroup,
        Map<PartSource, MoneyRange> parts,
        Set<String> access,
        HoursRange jobHours,
        MoneyRange consumables,
        List<String> tools,
        Set<String> rootCauses,
        Set<Flag> flags,
        String caution,
        Source source) {

    public FailureItem {
        parts = Map.copyOf(parts);
        access = Set.copyOf(access);
        tools = List.copyOf(tools);
        rootCauses = Set.copyOf(rootCauses);
        flags = Set.copyOf(flags);
    }

    FailureItem in(Currency other, double rate) {
        Map<PartSource, MoneyRange> prices = new EnumMap<>(PartSource.class);
        parts.forEach((from, price) -> prices.put(from, price.in(other, rate)));
        return new FailureItem(id, system, name, applies, onset, onsetDoubt, exclusiveGroup, prices, access,
                jobHours, consumables.in(other, rate), tools, rootCauses, flags, caution, source);
    }

    FailureItem withOdds(double factor) {
        return new FailureItem(id, system, name, applies, onset.withOdds(factor), onsetDoubt, exclusiveGroup, parts,
                access, jobHours, consumables, tools, rootCauses, flags, caution, source);
    }

    FailureItem withPartPrices(double factor) {
        Map<PartSource, MoneyRange> prices = new EnumMap<>(PartSource.class);
        parts.forEach((from, price) -> prices.put(from, price.times(factor)));
        return new FailureItem(id, system, name, applies, onset, onsetDoubt, exclusiveGroup, prices, access,
                jobHours, consumables, tools, rootCauses, flags, caution, source);
    }
}
