package worthsaving.catalog;

import java.util.List;

/** Rows of money.csv. */
final class MoneyRows {

    static final String FILE = "money.csv";
    static final List<String> COLUMNS =
            List.of("id", "stage", "name", "low", "mode", "high", "unit", "note", "label", "source");

    private MoneyRows() {}

    static MoneyLine read(Row row) {
        return new MoneyLine(
                row.text("id"),
                row.required("stage"),
                row.required("name"),
                row.range(""),
                row.choice("unit", MoneyLine.Unit.class),
                row.text("note"),
                row.source());
    }
}
