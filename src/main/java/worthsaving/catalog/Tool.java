package worthsaving.catalog;

import java.util.Currency;
import worthsaving.quantity.MoneyRange;
import worthsaving.quantity.Source;

/**
 * A special tool with its price; bought once, used on many cars.
 *
 * @param atHand whether the workshop has it already
 */
public record Tool(String id, String name, MoneyRange price, boolean atHand, Source source) {

    Tool in(Currency other, double rate) {
        return new Tool(id, name, price.in(other, rate), atHand, source);
    }
}
