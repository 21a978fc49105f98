package worthsaving.report.sheet;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import worthsaving.quantity.Seed;

/**
 * What stands on one sheet, whatever it is drawn on. Pure: nothing here knows of pages, fonts or files.
 *
 * @param title the car
 * @param facts what is known of it, on one line
 * @param verdict the decision in one or two words
 * @param headline the decision in one sentence
 * @param figures the few that decide
 * @param because why
 * @param chart the outcome at a glance
 * @param sections in the order they stand on the page
 * @param cautions where work can hurt someone
 * @param guesses what was assumed
 * @param photos shown
 * @param unshown photos that are not shown, with the reason
 */
public record DecisionSheet(
        Audience audience,
        String title,
        String facts,
        Tone tone,
        String verdict,
        String headline,
        List<Figure> figures,
        Section.Lines because,
        SheetChart chart,
        List<Section> sections,
        Section.Lines cautions,
        Section.Lines guesses,
        List<Photo> photos,
        List<String> unshown,
        Provenance provenance) {

    /** Stands at the foot of every sheet. */
    public static final String ADVICE = "Estimates; not appraisal, legal or safety advice."
            + " Local codes, title law and licensed practice come first.";

    /** One figure with what it is. */
    public record Figure(String label, String value) {

        public Figure {
            label = SheetText.clean(label);
            value = SheetText.clean(value);
        }
    }

    /**
     * What the figures were reckoned with, so that they can be had again.
     *
     * @param catalogue version of the catalogue
     * @param priceModel name and version of the price model
     * @param prepared the day the sheet was made
     */
    public record Provenance(String catalogue, String priceModel, Seed seed, LocalDate prepared) {

        public Provenance {
            catalogue = SheetText.clean(catalogue);
            priceModel = SheetText.clean(priceModel);
            Objects.requireNonNull(seed, "seed");
            Objects.requireNonNull(prepared, "prepared");
        }

        /** On one line. */
        public String words() {
            return "Catalogue " + catalogue + " \u00b7 price model " + priceModel + " \u00b7 seed " + seed.value();
        }
    }

    public DecisionSheet {
        Objects.requireNonNull(audience, "audience");
        Objects.requireNonNull(tone, "tone");
        Objects.requireNonNull(chart, "chart");
        Objects.requireNonNull(provenance, "provenance");
        title = SheetText.clean(title);
        facts = SheetText.clean(facts);
        verdict = SheetText.clean(verdict);
        headline = SheetText.clean(headline);
        figures = List.copyOf(figures);
        sections = List.copyOf(sections);
        photos = List.copyOf(photos);
        unshown = unshown.stream().map(SheetText::clean).toList();
    }

    DecisionSheet with(Section.Lines newBecause, List<Section> newSections, Section.Lines newCautions,
            Section.Lines newGuesses, List<Photo> newPhotos, List<String> newUnshown) {
        return new DecisionSheet(audience, title, facts, tone, verdict, headline, figures, newBecause, chart,
                newSections, newCautions, newGuesses, newPhotos, newUnshown, provenance);
    }

    /** The same with photos, in their order; what cannot be shown is named. */
    public DecisionSheet withPhotos(List<PhotoReading> readings) {
        List<Photo> shown = readings.stream().filter(PhotoReading.Shown.class::isInstance)
                .map(r -> ((PhotoReading.Shown) r).photo()).toList();
        List<String> named = readings.stream().filter(PhotoReading.Named.class::isInstance)
                .map(r -> ((PhotoReading.Named) r).words()).toList();
        return with(because, sections, cautions, guesses, shown, named);
    }
}
