package worthsaving.catalog;

import java.util.List;

/** Rows of tools.csv. */
final class ToolRows {

    static final String FILE = "tools.csv";
    static final List<String> COLUMNS = List.of("id", "name", "low", "mode", "high", "at_hand", "label", "source");

    private ToolRows() {}

    static Tool read(Row row) {
        return new Tool(row.text("id"), row.required("name"), row.money(""), row.yes("at_hand"), row.source());
    }
}
