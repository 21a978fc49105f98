package worthsaving.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Puts a sheet on one column of {@link #WIDTH} points from the top down, as high as it needs to be. Whether that
 * fits a page is {@link PageFit}'s business.
 */
final class PageComposer {

    /** What both A4 (595 x 842 points) and Letter (612 x 792) hold between margins of half an inch. */
    static final double WIDTH = 523;
    static final double HEIGHT = 720;
    static final double SMALL = 7;
    static final double BODY = 8.2;
    static final double LEADING = 1.24;

    private static final double GAP = 7;
    private static final double LEFT_HALF = 0.53;
    private static final double PHOTO_HEIGHT = 64;
    private static final double PHOTO_GAP = 8;

    private final Typeface face = Typeface.get();
    private final Paragraph paragraph = new Paragraph(face);
    private final List<Mark> marks = new ArrayList<>();
    private double y;

    private PageComposer() {}

    /** @param height from the top of the page's content to its bottom */
    record Composed(List<Mark> marks, double height) {}

    static Composed compose(DecisionSheet sheet) {
        PageComposer page = new PageComposer();
        page.head(sheet);
        page.verdict(sheet);
        page.figures(sheet.figures());
        page.band(sheet);
        sheet.sections().forEach(s -> page.section(s, 0, WIDTH));
        page.photos(sheet);
        page.section(sheet.cautions(), 0, WIDTH);
        page.section(sheet.guesses(), 0, WIDTH);
        page.foot(sheet);
        return new Composed(List.copyOf(page.marks), page.y);
    }

    private void head(DecisionSheet sheet) {
        y = SMALL + 1;
        text(0, SMALL, false, Ink.SOFT, "Decision sheet, " + sheet.audience().label());
        right(WIDTH, SMALL, Ink.SOFT, "prepared " + sheet.provenance().prepared());
        y += 5;
        wrapped(sheet.title(), 0, WIDTH, 17, true, Ink.TEXT);
        wrapped(sheet.facts(), 0, WIDTH, BODY, false, Ink.SOFT);
        y += 5;
    }

    private void verdict(DecisionSheet sheet) {
        double top = y;
        int at = marks.size();
        y += 5;
        wrapped(sheet.verdict().toUpperCase(Locale.ROOT), 12, WIDTH - 20, BODY, true, Ink.of(sheet.tone()));
        wrapped(sheet.headline(), 12, WIDTH - 20, 12.5, true, Ink.TEXT);
        y += 6;
        marks.add(at, new Mark.Box(0, top, WIDTH, y - top, Ink.PANEL));
        marks.add(at + 1, new Mark.Box(0, top, 4, y - top, Ink.of(sheet.tone())));
        y += 6;
    }

    private void figures(List<DecisionSheet.Figure> figures) {
        double cell = WIDTH / Math.max(1, figures.size());
        double top = y;
        double bottom = y;
        for (int i = 0; i < figures.size(); i++) {
            y = top;
            wrapped(figures.get(i).value(), i * cell, cell - 6, 13, true, Ink.TEXT);
            wrapped(figures.get(i).label(), i * cell, cell - 6, SMALL, false, Ink.SOFT);
            bottom = Math.max(bottom, y);
        }
        y = bottom + GAP;
    }

    /** Reasons to the left, the chart to the right. */
    private void band(DecisionSheet sheet) {
        double top = y;
        section(sheet.because(), 0, WIDTH * LEFT_HALF - GAP);
        double left = y;
        double x = WIDTH * LEFT_HALF + GAP;
        ChartDrawing.of(sheet.chart(), face, WIDTH - x).forEach(m -> marks.add(m.moved(x, top)));
        y = Math.max(left, top + ChartDrawing.HEIGHT + GAP);
    }

    private void section(Section section, double x, double width) {
        if (section.isBlank()) {
            return;
        }
        wrapped(section.heading(), x, width, BODY, true, Ink.PLAIN);
        y += 1;
        if (section instanceof Section.Lines list) {
            list.lines().forEach(line -> bullet(line, x, width));
        } else if (section instanceof Section.Table table && table.size() > 0) {
            y = new TableComposer(table, face, paragraph).compose(marks, x, y, width);
        }
        if (section.omitted() > 0) {
            wrapped(section.rest(), x + 8, width - 8, BODY, false, Ink.SOFT);
        }
        if (section instanceof Section.Table table && !table.closing().isEmpty()) {
            wrapped(table.closing(), x, width, BODY, false, Ink.TEXT);
        }
        y += GAP;
    }

    private void bullet(String line, double x, double width) {
        double top = y;
        wrapped(line, x + 8, width - 8, BODY, false, Ink.TEXT);
        marks.add(new Mark.Box(x + 1, top + BODY * 0.62, 2.2, 2.2, Ink.SOFT));
    }

    private void photos(DecisionSheet sheet) {
        if (!sheet.photos().isEmpty()) {
            double cell = (WIDTH + PHOTO_GAP) / Math.max(3, sheet.photos().size()) - PHOTO_GAP;
            for (int i = 0; i < sheet.photos().size(); i++) {
                Photo photo = sheet.photos().get(i);
                double scale = Math.min(cell / photo.width(), PHOTO_HEIGHT / photo.height());
                marks.add(new Mark.Image(i * (cell + PHOTO_GAP), y, photo.width() * scale, photo.height() * scale,
                        photo));
            }
            y += PHOTO_HEIGHT + 2;
            double top = y;
            double bottom = y;
            for (int i = 0; i < sheet.photos().size(); i++) {
                y = top;
                wrapped(sheet.photos().get(i).name(), i * (cell + PHOTO_GAP), cell, SMALL, false, Ink.SOFT);
                bottom = Math.max(bottom, y);
            }
            y = bottom + 2;
        }
        if (!sheet.unshown().isEmpty()) {
            wrapped("Photos not shown: " + String.join("; ", sheet.unshown()) + ".", 0, WIDTH, SMALL, false, Ink.SOFT);
        }
        y += sheet.photos().isEmpty() && sheet.unshown().isEmpty() ? 0 : GAP;
    }

    private void foot(DecisionSheet sheet) {
        marks.add(new Mark.Rule(0, y, WIDTH, y, 0.6, Ink.LINE));
        y += 3;
        wrapped(DecisionSheet.ADVICE, 0, WIDTH, SMALL, true, Ink.SOFT);
        wrapped(sheet.provenance().words(), 0, WIDTH, SMALL, false, Ink.SOFT);
    }

    private void wrapped(String text, double x, double width, double size, boolean bold, Ink ink) {
        if (text.isEmpty()) {
            return;
        }
        for (String line : paragraph.lines(text, size, width)) {
            y += size;
            text(x, size, bold, ink, line);
            y += size * (LEADING - 1);
        }
    }

    private void text(double x, double size, boolean bold, Ink ink, String text) {
        marks.add(new Mark.Text(x, y, size, bold, ink, text));
    }

    private void right(double x, double size, Ink ink, String text) {
        String shown = face.showable(text);
        marks.add(new Mark.Text(x - face.width(shown, size), y, size, false, ink, shown));
    }
}
