package worthsaving.repair;

import worthsaving.catalog.PartSource;
import worthsaving.quantity.Money;
import worthsaving.quantity.MoneyRange;
import worthsaving.quantity.Range;

/**
 * One place to get the part of an item from.
 *
 * @param price what it costs; zero from the shelf
 * @param comeback chance of doing the job again within twelve months
 * @param days days until it is there
 * @param expectedCost mean price plus mean comeback times the cost of doing the whole job again alone
 * @param allowed whether the workshop may choose it
 * @param chosen whether plans use it for this item's own job
 */
public record SourceOffer(
        PartSource source, MoneyRange price, Range comeback, Range days, Money expectedCost, boolean allowed,
        boolean chosen) {}
