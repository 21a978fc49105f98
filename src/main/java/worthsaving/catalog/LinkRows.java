package worthsaving.catalog;

import java.util.List;

/** Rows of finding_links.csv. */
final class LinkRows {

    static final String FILE = "finding_links.csv";
    static final List<String> COLUMNS = List.of("finding", "item", "low", "mode", "high", "label", "source");

    private LinkRows() {}

    static FindingLink read(Row row, Ids findings, Ids items) {
        return new FindingLink(
                findings.one(row, "finding"), items.one(row, "item"), row.probabilityRange(""), row.source());
    }
}
