package worthsaving.catalog;

import java.util.Currency;
import java.util.List;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.quantity.Range;
import worthsaving.quantity.Source;

/**
 * Something one can see, hear, read out or measure; present, absent or not looked at.
 *
 * @param falseRate chance of meeting it when none of its causes has failed (the leak of the noisy-OR)
 * @param question what to ask the seller, blank when asking does not help
 * @param sellerAllows how readily a seller lets a buyer do it
 * @param canDoDamage the check itself can hurt the car; off unless the user allows it
 * @param codes trouble codes that amount to this finding, in the form {@code P0016}
 */
public record FindingKind(
        String id,
        Stage stage,
        String name,
        String question,
        Range falseRate,
        Money cost,
        Hours time,
        List<String> tools,
        Leave sellerAllows,
        boolean canDoDamage,
        String caution,
        List<String> codes,
        Source source) {

    /** How one meets a finding, cheapest first. */
    public enum Stage { ADVERT, PHONE, DRIVEWAY, TOOLS, INSPECTION, OPENED_UP }

    /** How readily a seller agrees. */
    public enum Leave { YES, LIKELY, MAYBE, RARELY, AFTER_PURCHASE }

    public FindingKind {
        tools = List.copyOf(tools);
        codes = List.copyOf(codes);
    }

    FindingKind in(Currency other, double rate) {
        return new FindingKind(id, stage, name, question, falseRate, new Money(cost.amount() * rate, other), time, tools,
                sellerAllows, canDoDamage, caution, codes, source);
    }
}
