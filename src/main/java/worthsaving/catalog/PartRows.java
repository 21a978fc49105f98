package worthsaving.catalog;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import worthsaving.quantity.MoneyRange;

/** Rows of parts.csv, gathered by item. */
final class PartRows {

    static final String FILE = "parts.csv";
    static final List<String> COLUMNS = List.of("item", "part_source", "low", "mode", "high", "label", "source");

    private PartRows() {}

    static Map<String, Map<PartSource, MoneyRange>> read(Table table, Ids items) {
        Map<String, Map<PartSource, MoneyRange>> byItem = new HashMap<>();
        for (Row row : table.rows()) {
            String item = items.one(row, "item");
            PartSource source = row.choice("part_source", PartSource.class);
            MoneyRange price = row.money("");
            row.source();
            if (byItem.computeIfAbsent(item, k -> new EnumMap<>(PartSource.class)).put(source, price) != null) {
                row.fault("part_source", "a second price of " + item + " from " + source + "; keep one");
            }
        }
        return byItem;
    }
}
