package worthsaving.valuation;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import worthsaving.market.PriceKind;
import worthsaving.market.PriceRow;
import worthsaving.quantity.Distance;
import worthsaving.quantity.Distribution;

/**
 * A fitted price model of one market: the distribution of ln asking price given a car's facts. Immutable;
 * needs no native library. Kept as JSON, see {@link #write}.
 */
public final class PriceModel {

    final PointModel point;
    final Spread spread;
    final Guard guard;
    final CarFacts typical;
    final UsualFacts usual;
    private final ModelCard card;

    PriceModel(
            PointModel point, Spread spread, Guard guard, CarFacts typical, UsualFacts usual, ModelCard card) {
        this.point = point;
        this.spread = spread;
        this.guard = guard;
        this.typical = typical;
        this.usual = usual;
        this.card = card;
    }

    /**
     * Reads a saved model.
     *
     * @param name shown in messages, such as the file's name
     * @throws ModelFormatException when the text is no price model, is damaged or was written by a newer version
     */
    public static PriceModel read(Reader reader, String name) throws IOException {
        return PriceModelJson.read(reader, name);
    }

    /** Writes the model as JSON; the same model always gives the same characters. */
    public void write(Writer writer) throws IOException {
        PriceModelJson.write(this, writer);
    }

    public ModelCard card() {
        return card;
    }

    public String market() {
        return card.market();
    }

    public Currency currency() {
        return Currency.getInstance(card.currency());
    }

    /** Whether it was fitted on prices paid, not asked. */
    public boolean tellsSales() {
        return card.priceKind().equals(PriceKind.SALE.name());
    }

    /** Day of the latest advert the model has seen. */
    public LocalDate dataDay() {
        return card.lastDay();
    }

    /** Makes in the data, in lower case. */
    public Set<String> makes() {
        return new TreeSet<>(point.encoder().makes().keySet());
    }

    /** Models of a make in the data, in lower case; empty for a make never seen. */
    public Set<String> models(String make) {
        String prefix = make + "|";
        Set<String> models = new TreeSet<>();
        for (String key : point.encoder().models().keySet()) {
            if (key.startsWith(prefix)) {
                models.add(key.substring(prefix.length()));
            }
        }
        return models;
    }

    /** Rows of the data that hold this make and model. */
    public long rows(String make, String model) {
        Encoder.Level level = point.encoder().models().get(make + "|" + model);
        return level == null ? 0 : (long) level.rows();
    }

    /** Greatest age in years that the data reach; beyond it a value is an extrapolation. */
    public double oldest() {
        return guard.oldest();
    }

    /** Greatest mileage that the data reach. */
    public Distance farthest() {
        return Distance.ofMiles(guard.farthest());
    }

    /** How far prices scatter by age, by mileage and by make; mileages are whole ones of {@code unit}. */
    public List<ErrorBand> errors(Distance.Unit unit) {
        return new ErrorBands(this).all(unit);
    }

    /** Words that occur in the data for a field such as body or fuel, in lower case. */
    Set<String> words(WordField field) {
        return new TreeSet<>(point.encoder().words().get(field.ordinal()).keySet());
    }

    /**
     * Distribution of the asking price of a car of the data's own market and time, taken as its row states it;
     * for measuring the model and for estimating factors the model does not hold.
     */
    public Distribution askingPrice(PriceRow row) {
        return predict(CarFacts.of(row)).inMoney(1, 0);
    }

    /** ln of the median asking price on the market of the data. */
    double middle(CarFacts car) {
        return point.blend(point.candidates(car, new float[point.encoder().width()]));
    }

    /**
     * The whole distribution of ln asking price on the market of the data.
     *
     * @param middle its median but for the small shift of the residuals
     * @param residuals distances from the middle at each of {@link Spread#LEVELS}
     * @param warnings why they are wider than usual, in plain words
     */
    record Prediction(double middle, double[] residuals, List<String> warnings) {

        private static final int MEDIAN = 50;

        /** Standard deviation of a normal with the same 80 % interval. */
        double sigma() {
            return (residuals[Spread.LEVELS.length - 11] - residuals[10]) / (2 * Spread.NORMAL_90);
        }

        /** ln of the median. */
        double median() {
            return middle + residuals[MEDIAN];
        }

        /**
         * Distribution in money, stretched about its median so that the variance of ln price grows.
         *
         * @param factor applied to every price
         * @param added to the variance of ln price
         */
        Distribution inMoney(double factor, double added) {
            double stretch = Math.sqrt(1 + added / (sigma() * sigma()));
            double[] money = new double[residuals.length];
            for (int i = 0; i < money.length; i++) {
                money[i] = factor * Math.exp(median() + stretch * (residuals[i] - residuals[MEDIAN]));
            }
            return new QuantileDistribution(Spread.LEVELS, money);
        }
    }

    Prediction predict(CarFacts car) {
        return predict(car, Distance.Unit.MILES);
    }

    /** @param unit of distances in warnings */
    Prediction predict(CarFacts car, Distance.Unit unit) {
        int width = point.encoder().width();
        float[] x = new float[width + 1];
        double middle = point.blend(point.candidates(car, x));
        x[width] = (float) middle;
        double[] reach = Spread.widened(spread.reach(x), guard.spread(car, point.encoder()));
        return new Prediction(middle, spread.residuals(middle, reach), guard.warnings(car, point.encoder(), unit));
    }
}
