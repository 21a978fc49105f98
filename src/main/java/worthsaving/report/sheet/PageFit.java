package worthsaving.report.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import worthsaving.report.sheet.Section.Importance;

/**
 * Makes a sheet fit one page by leaving out lines from the end of its parts, the least important parts first; each
 * part says how many it left out. Parts first give up what they can well do without, the background all of it, and more
 * where photos are to be shown; where that is still too much, photos are named instead of shown, then the parts give up
 * the rest.
 */
final class PageFit {

    /** One after another until the page fits: parts of this importance keep so many lines. */
    private record Step(Importance importance, int kept) {}

    private static final List<Step> STEPS = List.of(
            new Step(Importance.BACKGROUND, 4), new Step(Importance.SUPPORTS, 5), new Step(Importance.BACKGROUND, 2),
            new Step(Importance.DECIDES, 6), new Step(Importance.SAFETY, 6), new Step(Importance.SUPPORTS, 3),
            new Step(Importance.DECIDES, 5), new Step(Importance.SAFETY, 4), new Step(Importance.DECIDES, 4),
            new Step(Importance.SAFETY, 3), new Step(Importance.DECIDES, 3), new Step(Importance.SUPPORTS, 2),
            new Step(Importance.BACKGROUND, 0));
    /** Photos were chosen by the reader and go before these; without any these are kept. */
    private static final List<Step> FOR_PHOTOS = List.of(
            new Step(Importance.SUPPORTS, 1), new Step(Importance.DECIDES, 2), new Step(Importance.SAFETY, 2),
            new Step(Importance.SUPPORTS, 0));
    private static final List<Step> LAST_STEPS = List.of(
            new Step(Importance.SUPPORTS, 0), new Step(Importance.DECIDES, 1), new Step(Importance.SAFETY, 1),
            new Step(Importance.DECIDES, 0), new Step(Importance.SAFETY, 0));

    private PageFit() {}

    /** @param height in points */
    static DecisionSheet to(DecisionSheet sheet, double height) {
        DecisionSheet fitted = fewerPhotos(sheet, PdfSheet.MOST_PHOTOS);
        for (Step step : STEPS) {
            fitted = shorten(fitted, step, height);
        }
        if (!fitted.photos().isEmpty()) {
            DecisionSheet shown = fitted;
            for (Step step : FOR_PHOTOS) {
                shown = shorten(shown, step, height);
            }
            // They stand in one row: leaving out some of them makes no room.
            fitted = tooHigh(shown, height) ? fewerPhotos(fitted, 0) : shown;
        }
        for (Step step : LAST_STEPS) {
            fitted = shorten(fitted, step, height);
        }
        if (tooHigh(fitted, height) && fitted.unshown().size() > 1) {
            fitted = fitted.with(fitted.because(), fitted.sections(), fitted.cautions(), fitted.guesses(),
                    fitted.photos(), List.of(fitted.unshown().size() + " files"));
        }
        return fitted;
    }

    private static DecisionSheet fewerPhotos(DecisionSheet s, int most) {
        if (s.photos().size() <= most) {
            return s;
        }
        List<String> unshown = new ArrayList<>(s.unshown());
        s.photos().subList(most, s.photos().size()).forEach(p -> unshown.add(p.name() + ": no room"));
        return s.with(s.because(), s.sections(), s.cautions(), s.guesses(), s.photos().subList(0, most), unshown);
    }

    private static DecisionSheet shorten(DecisionSheet sheet, Step step, double height) {
        DecisionSheet fitted = sheet;
        while (tooHigh(fitted, height)) {
            Optional<Section> longest = parts(fitted).stream()
                    .filter(p -> p.importance() == step.importance() && p.size() > step.kept())
                    .max(Comparator.comparingInt(Section::size));
            if (longest.isEmpty()) {
                return fitted;
            }
            fitted = without(fitted, longest.get());
        }
        return fitted;
    }

    private static List<Section> parts(DecisionSheet s) {
        List<Section> parts = new ArrayList<>(s.sections());
        parts.add(s.because());
        parts.add(s.cautions());
        parts.add(s.guesses());
        return parts;
    }

    private static DecisionSheet without(DecisionSheet s, Section part) {
        List<Section> sections = s.sections().stream().map(x -> x == part ? shorter(x) : x).toList();
        return s.with(lines(s.because(), part), sections, lines(s.cautions(), part), lines(s.guesses(), part),
                s.photos(), s.unshown());
    }

    private static Section.Lines lines(Section.Lines own, Section part) {
        return own == part ? own.first(shorter(own).size()) : own;
    }

    /** One line less; two at first, because the line that says so takes the place of one. */
    private static Section shorter(Section part) {
        return part.first(Math.max(0, part.size() - (part.omitted() == 0 ? 2 : 1)));
    }

    private static boolean tooHigh(DecisionSheet sheet, double height) {
        return PageComposer.compose(sheet).height() > height;
    }
}
