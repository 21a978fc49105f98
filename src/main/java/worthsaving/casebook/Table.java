package worthsaving.casebook;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Tables that edits may change, with the columns that tell their rows apart. */
enum Table {
    CASES("id"),
    OBSERVATION("case_id", "seq"),
    ENTRY("id"),
    FORECAST("id"),
    ACTUAL("case_id"),
    SETTING("name"),
    PHOTO("id");

    /** Tables whose rows belong to a case, and go when it goes. */
    static final List<Table> OF_A_CASE = List.of(OBSERVATION, ENTRY, FORECAST, ACTUAL, PHOTO);

    private final List<String> key;

    Table(String... key) {
        this.key = List.of(key);
    }

    String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    List<Object> keyOf(Row row) {
        return key.stream().map(row.values()::get).toList();
    }

    String whereKey() {
        return " WHERE " + String.join(" AND ", key.stream().map(k -> k + " = ?").toList());
    }

    static Optional<Table> ofId(String id) {
        for (Table table : values()) {
            if (table.id().equals(id)) {
                return Optional.of(table);
            }
        }
        return Optional.empty();
    }
}
