package worthsaving.valuation;

import java.util.List;
import java.util.Locale;

/** The boosted ensembles that may enter the blend. */
public enum Ensemble {
    ROBUST("boosted trees on it, robust loss (XGBoost)", true),
    SQUARE("boosted trees, square loss (XGBoost)", false),
    ABSOLUTE("boosted trees on it, least absolute deviation (XGBoost)", true),
    ABSOLUTE_BY_SMILE("boosted trees on it, least absolute deviation (Smile)", true);

    static final List<Ensemble> ALL = List.of(values());

    /** For the model card. */
    final String title;

    /** Whether the trees learn what the hedonic regression leaves, rather than ln price about its mean. */
    final boolean onHedonic;

    Ensemble(String title, boolean onHedonic) {
        this.title = title;
        this.onHedonic = onHedonic;
    }

    /** Name in a saved model. */
    String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
