package worthsaving.desktop;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import worthsaving.catalog.Catalogue;
import worthsaving.intake.advert.AdvertReader;
import worthsaving.ranking.JudgeSettings;
import worthsaving.ranking.ValueSource;
import worthsaving.record.Learning;

/**
 * What every screen works with.
 *
 * @param values what a car is worth running
 * @param makes makes that the price data know; empty to leave makes unchecked
 * @param models models of a make that the price data know, to suggest
 * @param adverts reads pasted adverts
 * @param today the day of reading
 */
public record Ground(
        Catalogue catalogue, ValueSource values, JudgeSettings settings, Set<String> makes,
        Function<String, Set<String>> models, AdvertReader adverts, LocalDate today) {

    public Ground {
        Objects.requireNonNull(catalogue, "catalogue");
        Objects.requireNonNull(values, "values");
        Objects.requireNonNull(settings, "settings");
        Objects.requireNonNull(models, "models");
        Objects.requireNonNull(adverts, "adverts");
        Objects.requireNonNull(today, "today");
        makes = Set.copyOf(makes);
    }

    /** With what finished cars have taught. */
    public Ground taught(Learning learning) {
        return new Ground(learning.applyTo(catalogue), values, settings.withTerms(learning.applyTo(settings.terms())), makes,
                models, adverts, today);
    }

    /** With another catalogue, and the usual settings that it brings. */
    public Ground with(Catalogue other) {
        JudgeSettings usual = JudgeSettings.usual(other, settings.method().seed());
        return new Ground(other, values, usual, makes, models, adverts, today);
    }
}
