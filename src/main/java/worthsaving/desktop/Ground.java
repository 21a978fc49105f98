package worthsaving.desktop;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import worthsaving.catalog.Catalogue;
import worthsaving.intake.IntakeSettings;
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
 * @param catalogue with its money in the market's currency
 * @param today the day of reading
 * @param home the market that cars are bought and sold on
 */
public record Ground(
        Catalogue catalogue, ValueSource values, JudgeSettings settings, Set<String> makes,
        Function<String, Set<String>> models, AdvertReader adverts, LocalDate today, HomeMarket home) {

    public Ground {
        Objects.requireNonNull(catalogue, "catalogue");
        Objects.requireNonNull(values, "values");
        Objects.requireNonNull(settings, "settings");
        Objects.requireNonNull(models, "models");
        Objects.requireNonNull(adverts, "adverts");
        Objects.requireNonNull(today, "today");
        Objects.requireNonNull(home, "home");
        makes = Set.copyOf(makes);
    }

    /** On the catalogue's own market. */
    public Ground(
            Catalogue catalogue, ValueSource values, JudgeSettings settings, Set<String> makes,
            Function<String, Set<String>> models, AdvertReader adverts, LocalDate today) {
        this(catalogue, values, settings, makes, models, adverts, today, HomeMarket.of(catalogue));
    }

    /** With what finished cars have taught. */
    public Ground taught(Learning learning) {
        return new Ground(learning.applyTo(catalogue), values, settings.withTerms(learning.applyTo(settings.terms())), makes,
                models, adverts, today, home);
    }

    /** With another catalogue, its money as its files have it, and the usual settings that it brings. */
    public Ground with(Catalogue other) {
        return on(home.with(other), values, makes, models);
    }

    /** The same day, words and seed on another market, or on the same with other figures. */
    public Ground on(
            HomeMarket other, ValueSource prices, Set<String> knownMakes, Function<String, Set<String>> knownModels) {
        Catalogue priced = other.catalogue();
        return new Ground(priced, prices, JudgeSettings.usual(priced, settings.method().seed()), knownMakes, knownModels,
                adverts.takingFor(other.market().currency()), today, other);
    }

    /** What is taken for granted in tables that do not say it. */
    public IntakeSettings tables() {
        return new IntakeSettings(today, home.market().currency(), home.market().odometer());
    }
}
