package worthsaving.catalog;

import java.util.List;
import java.util.Set;

/** Rows of remedies.csv. */
final class RemedyRows {

    static final String FILE = "remedies.csv";
    static final List<String> COLUMNS = List.of(("id,name,closes,part_source,parts_low,parts_mode,parts_high,hours_low,"
                    + "hours_mode,hours_high,access,tools,success,comeback,whole_unit,note,label,source")
            .split(","));

    private RemedyRows() {}

    static Remedy read(Row row, Ids items, Ids access, Ids tools) {
        row.required("closes");
        return new Remedy(
                row.text("id"),
                row.required("name"),
                Set.copyOf(items.many(row, "closes")),
                row.choice("part_source", PartSource.class),
                row.money("parts_"),
                row.hours("hours_"),
                Set.copyOf(access.many(row, "access")),
                tools.many(row, "tools"),
                row.probability("success"),
                row.probability("comeback"),
                row.yes("whole_unit"),
                row.text("note"),
                row.source());
    }
}
