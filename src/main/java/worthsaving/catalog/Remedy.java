package worthsaving.catalog;

import java.util.Currency;
import java.util.List;
import java.util.Set;
import worthsaving.quantity.HoursRange;
import worthsaving.quantity.MoneyRange;
import worthsaving.quantity.Probability;
import worthsaving.quantity.Source;

/**
 * One way to mend one or several items at once: a used engine closes many.
 *
 * @param closes ids of the items it mends
 * @param success chance that the car then works
 * @param comeback chance of a repeat within twelve months
 * @param wholeUnit a complete engine or gearbox
 */
public record Remedy(
        String id,
        String name,
        Set<String> closes,
        PartSource partSource,
        MoneyRange parts,
        HoursRange jobHours,
        Set<String> access,
        List<String> tools,
        Probability success,
        Probability comeback,
        boolean wholeUnit,
        String note,
        Source source) {

    public Remedy {
        closes = Set.copyOf(closes);
        access = Set.copyOf(access);
        tools = List.copyOf(tools);
    }

    Remedy in(Currency other, double rate) {
        return new Remedy(id, name, closes, partSource, parts.in(other, rate), jobHours, access, tools, success,
                comeback, wholeUnit, note, source);
    }

    Remedy withPartPrices(double factor) {
        return new Remedy(id, name, closes, partSource, parts.times(factor), jobHours, access, tools, success,
                comeback, wholeUnit, note, source);
    }
}
