package worthsaving.catalog;

import java.util.List;
import java.util.regex.Pattern;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;

/** Rows of findings.csv. */
final class FindingRows {

    static final String FILE = "findings.csv";
    static final List<String> COLUMNS = List.of(("id,stage,name,question,false_low,false_mode,false_high,cost,minutes,"
                    + "tools,seller_allows,can_do_damage,caution,codes,label,source")
            .split(","));

    private static final Pattern CODE = Pattern.compile("[PBCU][0-9A-F]{4}");

    private FindingRows() {}

    static FindingKind read(Row row, Ids tools) {
        return new FindingKind(
                row.text("id"),
                row.choice("stage", FindingKind.Stage.class),
                row.required("name"),
                row.text("question"),
                row.probabilityRange("false_"),
                Money.usd(row.notNegative("cost")),
                Hours.ofMinutes(row.notNegative("minutes")),
                tools.many(row, "tools"),
                row.choice("seller_allows", FindingKind.Leave.class),
                row.yes("can_do_damage"),
                row.text("caution"),
                codes(row),
                row.source());
    }

    private static List<String> codes(Row row) {
        List<String> codes = row.words("codes");
        for (String code : codes) {
            if (!CODE.matcher(code).matches()) {
                row.fault("codes", "'" + code + "' is not a trouble code; write it like P0016");
            }
        }
        return codes;
    }
}
