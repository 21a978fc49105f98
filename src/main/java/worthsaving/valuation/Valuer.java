package worthsaving.valuation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import worthsaving.market.MarketFactor;
import worthsaving.market.MarketSettings;
import worthsaving.market.MarketWords;
import worthsaving.market.PriceTable;
import worthsaving.quantity.Distance;
import worthsaving.vehicle.Vehicle;

/**
 * Values a car as it will be once repaired: the model's distribution of asking prices, then in this order the
 * price index, the user's own comparables, title brand, local factor and haircut. Immutable and safe to share.
 */
public final class Valuer {

    private static final String GOOD = "good";
    private static final Set<String> BROKEN = Set.of("salvage", "fair", "poor");
    private static final String CONDITION = "condition.";
    private static final double LONG_AFTER = 0.5;

    private final PriceModel model;
    private final MarketSettings settings;
    private final Distance.Unit odometer;
    private final MarketWords words;
    private final double dataDay;

    /** As {@link #Valuer(PriceModel, MarketSettings, Distance.Unit)}, told in miles. */
    public Valuer(PriceModel model, MarketSettings settings) {
        this(model, settings, Distance.Unit.MILES);
    }

    /**
     * @param odometer unit of distances in reasons and warnings
     * @throws IllegalArgumentException when model and settings are of different markets
     */
    public Valuer(PriceModel model, MarketSettings settings, Distance.Unit odometer) {
        this(model, settings, odometer, MarketWords.OF_THE_DATA);
    }

    /**
     * @param odometer unit of distances in reasons and warnings
     * @param words for fuels and bodies in reasons
     * @throws IllegalArgumentException when model and settings are of different markets
     */
    public Valuer(PriceModel model, MarketSettings settings, Distance.Unit odometer, MarketWords words) {
        if (!model.market().equals(settings.index().market())) {
            throw new IllegalArgumentException("the price model is of market " + model.market()
                    + ", the market settings of " + settings.index().market());
        }
        this.model = model;
        this.settings = settings;
        this.odometer = odometer;
        this.words = words;
        this.dataDay = CarFacts.decimalYear(model.dataDay());
    }

    public PriceModel model() {
        return model;
    }

    public MarketSettings settings() {
        return settings;
    }

    /** The same valuer with other market settings. */
    public Valuer with(MarketSettings others) {
        return new Valuer(model, others, odometer, words);
    }

    /**
     * Forecast of what the car fetches once repaired.
     *
     * @param on day of the sale; ages are counted to it
     */
    public ValueForecast forecast(Vehicle vehicle, LocalDate on) {
        return forecast(vehicle, on, true);
    }

    /** The forecast without contributions, some ten times as fast: for long lists and sliders. */
    public ValueForecast forecastWithoutReasons(Vehicle vehicle, LocalDate on) {
        return forecast(vehicle, on, false);
    }

    private ValueForecast forecast(Vehicle vehicle, LocalDate on, boolean reasons) {
        CarFacts advertised = CarFacts.of(vehicle, on, dataDay);
        CarFacts stated = named(advertised);
        CarFacts car = asRepaired(stated, model);
        PriceModel.Prediction predicted = model.predict(car, odometer);
        List<ValueForecast.Step> steps = new ArrayList<>();
        List<String> warnings = new ArrayList<>(predicted.warnings());
        steps.add(new ValueForecast.Step((model.tellsSales() ? "sale" : "asking") + " price by the model", 1,
                String.format(Locale.ROOT, "%s, %,d adverts of %s to %s", model.card().name(), model.card().rows(),
                        model.card().firstDay(), model.dataDay())));
        if (!stated.model().equals(advertised.model())) {
            steps.add(new ValueForecast.Step("model: " + stated.model(), 1,
                    "the name in the price data that '" + advertised.model() + "' begins with"));
        }
        steps.add(condition(stated, car));
        filledIn(stated, car).ifPresent(steps::add);
        double index = settings.index().factor(model.dataDay(), on);
        steps.add(new ValueForecast.Step("price index", index, settings.index().source().text()));
        if (CarFacts.decimalYear(on) - CarFacts.decimalYear(settings.index().lastDay()) > LONG_AFTER) {
            warnings.add("The price index ends at " + settings.index().lastDay()
                    + "; the market may have moved since. Enter a newer figure or comparables of your own.");
        }
        MarketLevel level = MarketLevel.of(model, settings, car, on, dataDay);
        steps.add(new ValueForecast.Step("your own comparables", level.factor(), level.why()));
        MarketFactor title = settings.title(vehicle.title());
        steps.add(step("title: " + vehicle.title().name().toLowerCase(Locale.ROOT).replace('_', ' '), title));
        MarketFactor local = settings.factor(MarketSettings.LOCAL);
        steps.add(step("local factor", local));
        steps.add(haircut());
        double factor = ValueForecast.product(steps);
        double added = square(level.spread()) + square(logSpread(title)) + square(logSpread(local));
        double scale = Math.exp(predicted.median() - predicted.middle()) * factor;
        List<ValueForecast.Contribution> contributions = reasons
                ? said(Explanation.of(car, model.typical, model::middle, model.currency(), odometer, scale))
                : List.of();
        return new ValueForecast(
                predicted.inMoney(factor, added), model.currency(), steps, contributions, warnings, model.card().name(),
                model.rows(car.make(), car.model()) == 0);
    }

    private List<ValueForecast.Contribution> said(List<ValueForecast.Contribution> contributions) {
        return contributions.stream()
                .map(c -> new ValueForecast.Contribution(c.feature(), words.of(c.value()), c.money()))
                .toList();
    }

    private ValueForecast.Step haircut() {
        if (model.tellsSales()) {
            return new ValueForecast.Step("from asking to sale price", 1, "the model is fitted on prices paid");
        }
        MarketFactor haircut = settings.factor(MarketSettings.HAIRCUT);
        return new ValueForecast.Step("from asking to sale price", 1 - haircut.value(), haircut.why());
    }

    /** What each of the user's comparables tells about the level for this car; empty when there are none. */
    public List<LevelRow> level(Vehicle vehicle, LocalDate on) {
        return marketLevel(vehicle, on).rows();
    }

    /** Where the market stands for this car against the indexed model, by the user's comparables. */
    public MarketLevel marketLevel(Vehicle vehicle, LocalDate on) {
        return MarketLevel.of(model, settings, facts(vehicle, on), on, dataDay);
    }

    /**
     * Priced cars most like this one: the user's comparables and rows of price tables.
     *
     * @param tables of the model's market
     * @param most of them at most
     */
    public List<AlikeCar> alike(Vehicle vehicle, LocalDate on, List<PriceTable> tables, int most) {
        return new AlikeCars(model, settings, odometer, facts(vehicle, on), settings.title(vehicle.title()).value(), on)
                .nearest(tables, most).stream().map(c -> c.said(words)).toList();
    }

    /** The car that contributions are counted from, in words. */
    public String typical() {
        CarFacts car = model.typical;
        return Stream.of(car.make() + " " + car.model(), String.format(Locale.ROOT, "%.1f years", car.age()),
                        Explanation.distance(car.miles(), odometer), car.condition(), Explanation.engine(car),
                        words.of(car.fuel()), car.gearbox(), words.of(car.body()))
                .filter(w -> !w.isBlank())
                .collect(Collectors.joining(", "));
    }

    private CarFacts facts(Vehicle vehicle, LocalDate on) {
        return asRepaired(named(CarFacts.of(vehicle, on, dataDay)), model);
    }

    /** The car under the name that the price data know its model by, where its own is not one of them. */
    private CarFacts named(CarFacts car) {
        Set<String> known = model.models(car.make());
        return known.contains(car.model())
                ? car
                : ModelNames.behind(car.model(), known, name -> model.rows(car.make(), name))
                        .map(car::withModel)
                        .orElse(car);
    }

    /** The car's facts with gaps filled by what is usual, and the condition a repaired car is sold in. */
    static CarFacts asRepaired(CarFacts car, PriceModel model) {
        Set<String> known = model.words(WordField.CONDITION);
        boolean asStated = known.contains(car.condition()) && !car.condition().isEmpty()
                && !BROKEN.contains(car.condition());
        boolean knownBody = model.words(WordField.BODY).contains(car.body());
        CarFacts filled = model.usual.fill(knownBody ? car : car.withoutBody())
                .withCleanTitle(model)
                .withFeaturesOf(model.typical);
        if (asStated) {
            return filled;
        }
        return filled.withCondition(known.contains(GOOD) ? GOOD : "");
    }

    private ValueForecast.Step condition(CarFacts stated, CarFacts car) {
        String why;
        if (car.condition().isEmpty()) {
            why = "the price data of this market state no condition: an average running car is assumed";
        } else if (car.condition().equals(stated.condition())) {
            why = "as stated; the model counts it";
        } else {
            String instead = stated.condition().isEmpty() ? "" : ", instead of the advert's '" + stated.condition() + "'";
            why = "assumed once repaired" + instead + "; the model counts it" + leftAsIs(stated.condition());
        }
        return new ValueForecast.Step(
                "condition: " + (car.condition().isEmpty() ? "average" : car.condition()), 1, why);
    }

    /** What adverts in the stated condition ask of one in good condition, where that has been measured. */
    private String leftAsIs(String condition) {
        MarketFactor factor = settings.factors().get(CONDITION + condition.replace(' ', '-'));
        return factor == null
                ? ""
                : String.format(Locale.ROOT, "; left in that condition adverts ask x%.2f of it (%s)", factor.value(),
                        factor.why());
    }

    private Optional<ValueForecast.Step> filledIn(CarFacts stated, CarFacts car) {
        List<String> filled = new ArrayList<>();
        if (stated.fuel().isEmpty() && !car.fuel().isEmpty()) {
            filled.add("fuel " + words.of(car.fuel()));
        }
        if (stated.gearbox().isEmpty() && !car.gearbox().isEmpty()) {
            filled.add("gearbox " + car.gearbox());
        }
        if (!stated.body().equals(car.body()) && !car.body().isEmpty()) {
            filled.add("body " + words.of(car.body()));
        }
        if (!Explanation.engine(stated).equals(Explanation.engine(car))) {
            filled.add("engine " + Explanation.engine(car));
        }
        return filled.isEmpty()
                ? Optional.empty()
                : Optional.of(new ValueForecast.Step(
                        "not stated", 1, "taken as usual for such cars: " + String.join(", ", filled)));
    }

    private static ValueForecast.Step step(String name, MarketFactor factor) {
        return new ValueForecast.Step(name, factor.value(), factor.why());
    }

    /** Spread of the logarithm of a factor whose low and high are taken as its 5 % and 95 % points. */
    private static double logSpread(MarketFactor factor) {
        return Math.log(factor.range().high() / factor.range().low()) / (2 * 1.6448536269514722);
    }

    private static double square(double v) {
        return v * v;
    }
}
