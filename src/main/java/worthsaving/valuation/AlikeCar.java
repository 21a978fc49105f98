package worthsaving.valuation;

import java.time.LocalDate;
import java.util.List;
import worthsaving.market.MarketWords;
import worthsaving.market.PriceKind;
import worthsaving.quantity.Money;

/**
 * A priced car beside the one being valued.
 *
 * @param what year, make and model
 * @param price as it was asked or paid
 * @param origin where the row stands
 * @param likeness 1 for a car just like it, falling towards 0 with age, mileage and another model
 * @param differs in words what sets it apart, empty when nothing known does
 * @param adjusted what its price says this car would sell for: turned by the model's ratio of the two cars, brought
 *     to the day by the price index, title and haggling allowed for
 */
public record AlikeCar(
        String what,
        LocalDate seen,
        Money price,
        PriceKind kind,
        String origin,
        double likeness,
        List<String> differs,
        Money adjusted) {

    public AlikeCar {
        differs = List.copyOf(differs);
    }

    /** The same in the words of its market. */
    AlikeCar said(MarketWords words) {
        return new AlikeCar(what, seen, price, kind, origin, likeness, differs.stream().map(words::of).toList(), adjusted);
    }
}
