package worthsaving.valuation;

import java.util.Currency;
import java.util.List;
import worthsaving.quantity.Distribution;
import worthsaving.quantity.Money;

/**
 * What a car will fetch once it runs, as a whole distribution in {@code currency}.
 *
 * @param saleValue distribution of the sale value in money, all adjustments done
 * @param steps the adjustments in order, from the model's asking price to the sale value
 * @param warnings where the forecast reaches beyond its data, in plain words
 * @param modelName name and version of the price model
 * @param unknownModel true when the price data hold no car of this make and model
 */
public record ValueForecast(
        Distribution saleValue,
        Currency currency,
        List<Step> steps,
        List<Contribution> contributions,
        List<String> warnings,
        String modelName,
        boolean unknownModel) {

    /** One factor applied on the way to the sale value; {@code why} names the source and its label. */
    public record Step(String name, double factor, String why) {}

    /** Money that one feature adds against a typical car of the training data. */
    public record Contribution(String feature, String value, Money money) {}

    /** The forecast for a car that the price data know. */
    public ValueForecast(
            Distribution saleValue,
            Currency currency,
            List<Step> steps,
            List<Contribution> contributions,
            List<String> warnings,
            String modelName) {
        this(saleValue, currency, steps, contributions, warnings, modelName, false);
    }

    public ValueForecast {
        steps = List.copyOf(steps);
        contributions = List.copyOf(contributions);
        warnings = List.copyOf(warnings);
    }

    public Money mean() {
        return new Money(saleValue.mean(), currency);
    }

    /** The mean before the steps: what the model says of the car in the days of its data. */
    public Money base() {
        return new Money(saleValue.mean() / product(steps), currency);
    }

    /** All factors of the steps together. */
    static double product(List<Step> steps) {
        return steps.stream().mapToDouble(Step::factor).reduce(1, (a, b) -> a * b);
    }

    public Money quantile(double p) {
        return new Money(saleValue.quantile(p), currency);
    }
}
