package worthsaving.report.sheet;

import java.util.Locale;

/** The style of a sheet on screen; lengths in points, as on paper, so that a print of it is the same page. */
final class SheetStyle {

    private SheetStyle() {}

    static String name(Tone tone) {
        return tone.name().toLowerCase(Locale.ROOT);
    }

    /** With at most two decimals and no exponent. */
    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.replaceAll("\\.?0+$", "").replaceAll("^-0$", "0");
    }

    static String css() {
        String css = """
                @page { margin: 0.5in; }
                * { box-sizing: border-box; margin: 0; padding: 0; }
                html { background: PAPER; color: TEXT; -webkit-print-color-adjust: exact; print-color-adjust: exact; }
                body { font: BODYpt/LEADING "Liberation Sans", Arial, Helvetica, sans-serif; }
                main { width: WIDTHpt; max-width: 100%; margin: 12pt auto; overflow-wrap: anywhere; }
                .over { display: flex; justify-content: space-between; font-size: SMALLpt; color: SOFT; }
                h1 { font-size: 17pt; line-height: LEADING; }
                .soft, .rest { color: SOFT; }
                .verdict { margin: 5pt 0 6pt; padding: 5pt 8pt 6pt 8pt; background: PANEL; border-left: 4pt solid; }
                .verdict .kind { font-weight: bold; }
                .verdict .headline { font-size: 12.5pt; font-weight: bold; color: TEXT; }
                .verdict.go { border-color: GO; color: GO; }
                .verdict.care { border-color: CARE; color: CARE; }
                .verdict.stop { border-color: STOP; color: STOP; }
                .verdict.plain { border-color: PLAIN; color: PLAIN; }
                .figures { display: flex; gap: 6pt; margin-bottom: 8pt; }
                .figures div { flex: 1 1 0; display: flex; flex-direction: column-reverse; justify-content: flex-end; }
                .figures dt { font-size: SMALLpt; color: SOFT; }
                .figures dd { font-size: 13pt; font-weight: bold; }
                .band { display: grid; grid-template-columns: 51.5% 46%; gap: 2.5%; }
                .chart { width: 100%; height: auto; font-family: "Liberation Sans", Arial, Helvetica, sans-serif; }
                section { margin-bottom: 8pt; break-inside: avoid; }
                h2 { font-size: BODYpt; color: PLAIN; margin-bottom: 1pt; }
                ul { list-style: none; }
                li { padding-left: 8pt; position: relative; }
                li::before { content: ""; position: absolute; left: 1pt; top: 0.5em; width: 2.2pt; height: 2.2pt;
                  background: SOFT; }
                table { width: 100%; border-collapse: collapse; }
                th { font-size: SMALLpt; font-weight: normal; color: SOFT; text-align: left; vertical-align: top;
                  border-bottom: 0.5pt solid LINE; }
                td { vertical-align: top; }
                th, td { padding-right: 9pt; }
                th:last-child, td:last-child { padding-right: 0; }
                .n { text-align: right; white-space: nowrap; font-variant-numeric: tabular-nums; }
                th.n { white-space: normal; overflow-wrap: normal; }
                .rest { padding-left: 8pt; }
                .photos { display: flex; gap: 8pt; margin-bottom: 4pt; }
                .photos figure { flex: 1 1 0; max-width: 33%; }
                .photos svg { display: block; max-width: 100%; height: 64pt; }
                figcaption { font-size: SMALLpt; color: SOFT; }
                footer { border-top: 0.6pt solid LINE; padding-top: 3pt; font-size: SMALLpt; color: SOFT; }
                .advice { font-weight: bold; }
                @media print { main { margin: 0 auto; } }
                """;
        String style = css.replace("WIDTH", number(PageComposer.WIDTH))
                .replace("BODY", number(PageComposer.BODY)).replace("SMALL", number(PageComposer.SMALL))
                .replace("LEADING", number(PageComposer.LEADING));
        for (Ink ink : Ink.values()) {
            style = style.replaceAll("\\b" + ink.name() + "\\b", ink.css());
        }
        return style;
    }
}
