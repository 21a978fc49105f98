package worthsaving.desktop.lot;

import java.util.List;
import java.util.stream.Collectors;
import worthsaving.report.SpreadsheetText;

/** Rows for the clipboard: tab-separated with a header, as spreadsheets take them. */
final class RowsAsText {

    private RowsAsText() {}

    static String of(List<LotRow> rows, List<LotColumn> columns) {
        StringBuilder text = new StringBuilder("id\t")
                .append(columns.stream().map(c -> cell(c.title())).collect(Collectors.joining("\t")))
                .append('\n');
        for (LotRow row : rows) {
            text.append(cell(row.listing().id())).append('\t')
                    .append(columns.stream().map(c -> cell(c.text(row))).collect(Collectors.joining("\t")))
                    .append('\n');
        }
        return text.toString();
    }

    /** One line, a plain minus, and nothing that a spreadsheet would take for a formula. */
    static String cell(String text) {
        String line = text.replace('\u2212', '-').replaceAll("\\s+", " ").strip();
        return line.matches("-[\\d,.]+( %)?") ? line : SpreadsheetText.neutral(line);
    }
}
