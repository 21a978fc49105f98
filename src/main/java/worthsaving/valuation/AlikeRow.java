package worthsaving.valuation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import worthsaving.market.PriceRow;
import worthsaving.vehicle.Vehicle;

/**
 * An advert of the price data beside the car being valued.
 *
 * @param likeness 1 for a car just like it, falling towards 0 with age, mileage and another model
 * @param expected median asking price by the model, so that a bargain or a dear one shows
 */
public record AlikeRow(PriceRow row, double likeness, double expected) {

    /** The adverts most like a car, most alike first. */
    public static List<AlikeRow> nearest(
            PriceModel model, List<PriceRow> rows, Vehicle vehicle, LocalDate on, int count) {
        double dataDay = CarFacts.decimalYear(model.dataDay());
        CarFacts car = Valuer.asRepaired(CarFacts.of(vehicle, on, dataDay), model);
        List<AlikeRow> alike = new ArrayList<>();
        for (PriceRow row : rows) {
            alike.add(new AlikeRow(row, MarketLevel.likeness(car, CarFacts.of(row)), Double.NaN));
        }
        alike.sort(Comparator.comparingDouble(AlikeRow::likeness).reversed().thenComparing(a -> a.row().line()));
        return alike.stream()
                .limit(count)
                .map(a -> new AlikeRow(a.row(), a.likeness(), model.askingPrice(a.row()).quantile(0.5)))
                .toList();
    }
}
