package worthsaving.valuation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import worthsaving.market.Comparable;
import worthsaving.market.MarketSettings;
import worthsaving.market.PriceKind;

/**
 * How far the user's market lies from the indexed model, learnt from his own comparables. Prior: ln level is
 * normal about 0 with the spread of the settings. A comparable tells ln price - ln of the indexed middle with the
 * model's own spread, counted with a weight of likeness. Posterior: normal with precisions added (conjugate
 * update; Gelman et al. 2013, section 2.5).
 *
 * @param prior standard deviation of the ln level before any comparable is seen
 * @param shift posterior mean of the ln level
 * @param spread posterior standard deviation
 * @param evidence weight of all comparables together, in whole cars
 * @param rows what each comparable tells and how much of the shift it makes
 */
public record MarketLevel(double prior, double shift, double spread, double evidence, List<LevelRow> rows) {

    public MarketLevel {
        rows = List.copyOf(rows);
    }

    /** Likeness halves for about every 3 years of age and 40,000 miles apart (guess). */
    private static final double AGE_SCALE = 3.6;
    private static final double MILE_SCALE = 48_000;
    private static final double SAME_MAKE = 0.5;
    private static final double OTHER_MAKE = 0.25;

    static MarketLevel of(PriceModel model, MarketSettings settings, CarFacts car, LocalDate on, double dataDay) {
        double prior = settings.factor(MarketSettings.LEVEL_SPREAD).value();
        double precision = prior > 0 ? 1 / (prior * prior) : Double.POSITIVE_INFINITY;
        double weighted = 0;
        double evidence = 0;
        List<LevelRow> rows = new ArrayList<>();
        List<Comparable> comparables = settings.comparables();
        for (Comparable c : comparables) {
            if (!c.price().currency().equals(model.currency())) {
                throw new IllegalArgumentException(
                        "a comparable is priced in " + c.price().currency() + ", the model in " + model.currency());
            }
            CarFacts facts = Valuer.asRepaired(CarFacts.of(c.car(), c.seen(), dataDay), model);
            PriceModel.Prediction predicted = model.predict(facts);
            double weight = likeness(car, facts);
            double sigma = predicted.sigma();
            double asked = c.price().amount() * toAsked(model, settings, c.kind());
            double local = settings.factor(MarketSettings.LOCAL).value()
                    * settings.title(c.car().title()).value();
            double index = settings.index().factor(model.dataDay(), c.seen());
            double told = Math.log(asked / (index * local)) - predicted.median();
            precision += weight / (sigma * sigma);
            weighted += weight * told / (sigma * sigma);
            evidence += weight;
            rows.add(new LevelRow(c, weight, Math.expm1(told), weight * told / (sigma * sigma)));
        }
        double variance = 1 / precision;
        return new MarketLevel(prior, weighted * variance, Math.sqrt(variance), evidence,
                rows.stream().map(r -> r.times(variance)).toList());
    }

    /** What turns a price of one kind into the kind that the model tells. */
    static double toAsked(PriceModel model, MarketSettings settings, PriceKind kind) {
        double left = 1 - settings.factor(MarketSettings.HAIRCUT).value();
        boolean ofSales = model.tellsSales();
        boolean sold = kind == PriceKind.SALE;
        return sold == ofSales ? 1 : sold ? 1 / left : left;
    }

    /** 1 for a car just like it, falling towards 0. */
    static double likeness(CarFacts a, CarFacts b) {
        double kind = a.makeAndModel().equals(b.makeAndModel()) ? 1 : a.make().equals(b.make()) ? SAME_MAKE : OTHER_MAKE;
        return kind * kernel(a.age() - b.age(), AGE_SCALE) * kernel(a.miles() - b.miles(), MILE_SCALE);
    }

    /** One for a distance of 0 or not known, falling as a normal density. */
    private static double kernel(double distance, double scale) {
        double z = distance / scale;
        return Double.isNaN(z) ? 1 : Math.exp(-z * z);
    }

    /** What the comparables alone say: mean of the ln level; empty when they say nothing. */
    public OptionalDouble dataShift() {
        OptionalDouble told = dataSpread();
        return told.isEmpty() ? told
                : OptionalDouble.of(shift * told.getAsDouble() * told.getAsDouble() / (spread * spread));
    }

    /** Standard deviation of what the comparables alone say. */
    public OptionalDouble dataSpread() {
        double precision = 1 / (spread * spread) - 1 / (prior * prior);
        return rows.isEmpty() || !(precision > 0) || Double.isInfinite(precision)
                ? OptionalDouble.empty() : OptionalDouble.of(1 / Math.sqrt(precision));
    }

    /** What prices are multiplied by. */
    public double factor() {
        return Math.exp(shift);
    }

    String why() {
        return rows.isEmpty()
                ? "no comparables of your own entered"
                : String.format(
                        Locale.ROOT,
                        "%d of your own comparables, together worth %.1f cars just like it, move the level by %+.1f %% "
                                + "(give or take %.1f %%)",
                        rows.size(), evidence, 100 * Math.expm1(shift), 100 * spread);
    }
}
