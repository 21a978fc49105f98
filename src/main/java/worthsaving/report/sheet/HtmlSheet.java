package worthsaving.report.sheet;

import java.io.IOException;
import java.util.Base64;
import java.util.List;
import java.util.Locale;

/**
 * A sheet as one HTML file that needs nothing else: no script, no link, no font or picture from elsewhere, and a
 * policy in its head that forbids a browser to fetch any. Printed, it takes one page of A4 or Letter: lines are left
 * out as on paper, by the widths of the typefaces named first in its style.
 */
public final class HtmlSheet {

    /** Part of a page's height that browsers are given to differ in. */
    private static final double SLACK = 0.06;

    private final Appendable out;

    private HtmlSheet(Appendable out) {
        this.out = out;
    }

    /** Writes the whole file. */
    public static void write(DecisionSheet sheet, Appendable out) throws IOException {
        new HtmlSheet(out).page(PageFit.to(sheet, PageComposer.HEIGHT * (1 - SLACK)));
    }

    private void page(DecisionSheet s) throws IOException {
        put("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
        put("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline';"
                + " img-src data:\">\n");
        put("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        element("title", "", s.title() + ": " + s.headline());
        put("<style>\n" + SheetStyle.css() + "</style>\n</head>\n<body>\n<main>\n<header>\n<p class=\"over\">");
        element("span", "", "Decision sheet, " + s.audience().label());
        element("span", "", "prepared " + s.provenance().prepared());
        put("</p>\n");
        element("h1", "", s.title());
        element("p", "soft", s.facts());
        put("</header>\n<section class=\"verdict " + SheetStyle.name(s.tone()) + "\">\n");
        element("p", "kind", s.verdict().toUpperCase(Locale.ROOT));
        element("p", "headline", s.headline());
        put("</section>\n");
        figures(s.figures());
        put("<div class=\"band\">\n");
        section(s.because());
        chart(s.chart());
        put("</div>\n");
        for (Section section : s.sections()) {
            section(section);
        }
        photos(s);
        section(s.cautions());
        section(s.guesses());
        put("<footer>\n");
        element("p", "advice", DecisionSheet.ADVICE);
        element("p", "", s.provenance().words());
        put("</footer>\n</main>\n</body>\n</html>\n");
    }

    private void figures(List<DecisionSheet.Figure> figures) throws IOException {
        put("<dl class=\"figures\">\n");
        for (DecisionSheet.Figure f : figures) {
            put("<div>");
            element("dt", "", f.label());
            element("dd", "", f.value());
            put("</div>\n");
        }
        put("</dl>\n");
    }

    private void section(Section section) throws IOException {
        if (section.isBlank()) {
            put("<div></div>\n");
            return;
        }
        put("<section>\n");
        element("h2", "", section.heading());
        if (section instanceof Section.Lines list && list.size() > 0) {
            put("<ul>\n");
            for (String line : list.lines()) {
                element("li", "", line);
            }
            put("</ul>\n");
        } else if (section instanceof Section.Table table && table.size() > 0) {
            table(table);
        }
        if (section.omitted() > 0) {
            element("p", "rest", section.rest());
        }
        if (section instanceof Section.Table table && !table.closing().isEmpty()) {
            element("p", "", table.closing());
        }
        put("</section>\n");
    }

    private void table(Section.Table table) throws IOException {
        put("<table>\n<thead><tr>");
        for (Section.Column column : table.columns()) {
            put("<th scope=\"col\"" + (column.number() ? " class=\"n\">" : ">"));
            text(column.title());
            put("</th>");
        }
        put("</tr></thead>\n<tbody>\n");
        for (List<String> row : table.cells()) {
            put("<tr>");
            for (int i = 0; i < row.size(); i++) {
                element("td", table.columns().get(i).number() ? "n" : "", row.get(i));
            }
            put("</tr>\n");
        }
        put("</tbody>\n</table>\n");
    }

    private void chart(SheetChart chart) throws IOException {
        double width = PageComposer.WIDTH * 0.46;
        put("<svg class=\"chart\" role=\"img\" viewBox=\"0 0 " + SheetStyle.number(width) + " "
                + SheetStyle.number(ChartDrawing.HEIGHT) + "\">\n");
        element("title", "", chart.title());
        for (Mark mark : ChartDrawing.of(chart, Typeface.get(), width)) {
            if (mark instanceof Mark.Text t) {
                put("<text x=\"" + SheetStyle.number(t.x()) + "\" y=\"" + SheetStyle.number(t.y()) + "\" font-size=\""
                        + SheetStyle.number(t.size()) + "\" fill=\"" + t.ink().css() + "\""
                        + (t.bold() ? " font-weight=\"bold\">" : ">"));
                text(t.text());
                put("</text>\n");
            } else if (mark instanceof Mark.Box b) {
                put("<rect x=\"" + SheetStyle.number(b.x()) + "\" y=\"" + SheetStyle.number(b.y()) + "\" width=\""
                        + SheetStyle.number(b.width()) + "\" height=\"" + SheetStyle.number(b.height())
                        + "\" fill=\"" + b.ink().css() + "\"/>\n");
            } else if (mark instanceof Mark.Rule r) {
                put("<line x1=\"" + SheetStyle.number(r.x1()) + "\" y1=\"" + SheetStyle.number(r.y1()) + "\" x2=\""
                        + SheetStyle.number(r.x2()) + "\" y2=\"" + SheetStyle.number(r.y2()) + "\" stroke=\""
                        + r.ink().css() + "\" stroke-width=\"" + SheetStyle.number(r.thickness()) + "\"/>\n");
            }
        }
        put("</svg>\n");
    }

    private void photos(DecisionSheet s) throws IOException {
        if (!s.photos().isEmpty()) {
            put("<div class=\"photos\">\n");
            for (Photo photo : s.photos()) {
                put("<figure>");
                photo(photo);
                element("figcaption", "", photo.name());
                put("</figure>\n");
            }
            put("</div>\n");
        }
        if (!s.unshown().isEmpty()) {
            element("p", "rest", "Photos not shown: " + String.join("; ", s.unshown()) + ".");
        }
    }

    /** As an image within an SVG, so that it can be turned by the same matrix as on paper. */
    private void photo(Photo p) throws IOException {
        float[] m = p.turn().matrix();
        double w = p.width();
        double h = p.height();
        put("<svg role=\"img\" viewBox=\"0 0 " + p.width() + " " + p.height() + "\"><title>");
        text(p.name());
        put("</title><image width=\"1\" height=\"1\" preserveAspectRatio=\"none\" transform=\"matrix("
                + SheetStyle.number(m[0] * w) + " " + SheetStyle.number(-m[1] * h) + " " + SheetStyle.number(-m[2] * w)
                + " " + SheetStyle.number(m[3] * h) + " " + SheetStyle.number((m[2] + m[4]) * w) + " "
                + SheetStyle.number((1 - m[3] - m[5]) * h) + ")\" href=\"data:" + p.format().mediaType() + ";base64,"
                + Base64.getEncoder().encodeToString(p.bytes()) + "\"/></svg>");
    }

    private void element(String name, String style, String text) throws IOException {
        put("<" + name + (style.isEmpty() ? ">" : " class=\"" + style + "\">"));
        text(text);
        put("</" + name + ">" + (name.equals("span") ? "" : "\n"));
    }

    private void put(String markup) throws IOException {
        out.append(markup);
    }

    /** Text with every character that markup is made of written out. */
    private void text(String text) throws IOException {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.append(c);
            }
        }
    }
}
