package worthsaving.report.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Makes a sheet fit one page by leaving out lines from the end of its parts, the least important parts first; each
 * part says how many it left out. First every part keeps a few lines; where that is still too much, photos are
 * named instead of shown, then the parts give up the rest.
 */
final class PageFit {

    private static final int[] KEPT = {6, 4, 2};
    private static final int MOST_PHOTOS = 4;

    private PageFit() {}

    /** @param height in points */
    static DecisionSheet to(DecisionSheet sheet, double height) {
        DecisionSheet fitted = fewerPhotos(sheet, MOST_PHOTOS);
        for (int kept : KEPT) {
            fitted = shorten(fitted, kept, height);
        }
        while (tooHigh(fitted, height) && !fitted.photos().isEmpty()) {
            fitted = fewerPhotos(fitted, fitted.photos().size() - 1);
        }
        fitted = shorten(fitted, 0, height);
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

    private static DecisionSheet shorten(DecisionSheet sheet, int kept, double height) {
        DecisionSheet fitted = sheet;
        while (tooHigh(fitted, height)) {
            Optional<Section> victim = parts(fitted).stream()
                    .filter(p -> p.size() > kept)
                    .max(Comparator.comparing(Section::importance).thenComparing(Section::size));
            if (victim.isEmpty()) {
                return fitted;
            }
            fitted = without(fitted, victim.get());
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
        List<Section> sections = s.sections().stream().map(x -> x == part ? x.first(x.size() - 1) : x).toList();
        return s.with(lines(s.because(), part), sections, lines(s.cautions(), part), lines(s.guesses(), part),
                s.photos(), s.unshown());
    }

    private static Section.Lines lines(Section.Lines own, Section part) {
        return own == part ? own.first(own.size() - 1) : own;
    }

    private static boolean tooHigh(DecisionSheet sheet, double height) {
        return PageComposer.compose(sheet).height() > height;
    }
}
