package worthsaving.casebook;

import java.time.Instant;
import java.util.Currency;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import worthsaving.deal.WayOut;
import worthsaving.deal.WayResult;
import worthsaving.diagnosis.Belief;
import worthsaving.quantity.Probability;
import worthsaving.quantity.Seed;
import worthsaving.ranking.Appraisal;
import worthsaving.record.Ensemble;
import worthsaving.record.Quantity;

/**
 * What was forecast of a case, and by what, so that the same inputs give the same forecast again.
 *
 * @param spreads distribution of each quantity if the car is repaired and sold
 * @param items probability of having failed, by failure item
 */
public record Forecast(
        Instant made,
        String catalogueVersion,
        String modelVersion,
        String programVersion,
        Seed seed,
        Currency currency,
        Map<Quantity, Ensemble> spreads,
        Map<String, Probability> items) {

    public Forecast {
        Objects.requireNonNull(made, "made");
        Objects.requireNonNull(catalogueVersion, "catalogueVersion");
        Objects.requireNonNull(modelVersion, "modelVersion");
        Objects.requireNonNull(programVersion, "programVersion");
        Objects.requireNonNull(seed, "seed");
        Objects.requireNonNull(currency, "currency");
        spreads = Map.copyOf(spreads);
        items = Map.copyOf(items);
    }

    /** The forecast that an appraisal amounts to. */
    public static Forecast of(Appraisal appraisal, String catalogueVersion, String programVersion, Instant made) {
        WayResult repair = appraisal.assessment().way(WayOut.REPAIR_AND_SELL);
        Map<Quantity, Ensemble> spreads = new EnumMap<>(Quantity.class);
        spread(spreads, Quantity.VALUE, appraisal.value().saleValue()::quantile);
        spread(spreads, Quantity.COST, repair.cashOut()::quantile);
        spread(spreads, Quantity.HOURS, repair.hours()::quantile);
        spread(spreads, Quantity.DAYS, repair.days()::quantile);
        Map<String, Probability> items = new TreeMap<>();
        for (Belief belief : appraisal.diagnosis().beliefs()) {
            items.put(belief.item(), belief.posterior());
        }
        return new Forecast(made, catalogueVersion, appraisal.value().modelName(), programVersion,
                appraisal.assessment().method().seed(), appraisal.value().currency(), spreads, items);
    }

    private static void spread(Map<Quantity, Ensemble> into, Quantity quantity, DoubleUnaryOperator quantile) {
        into.put(quantity, Ensemble.ofQuantiles(quantile));
    }
}
