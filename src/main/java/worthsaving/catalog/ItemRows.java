package worthsaving.catalog;

import java.util.List;
import java.util.Map;
import java.util.Set;
import worthsaving.quantity.MoneyRange;
import worthsaving.vehicle.Powertrain.Drive;
import worthsaving.vehicle.Powertrain.Engine;
import worthsaving.vehicle.Powertrain.Gearbox;
import worthsaving.vehicle.Powertrain.TimingDrive;

/** Rows of items.csv. */
final class ItemRows {

    static final String FILE = "items.csv";
    static final List<String> COLUMNS = List.of(("id,system,name,engines,timing,gearboxes,drives,shape,scale_years,"
                    + "mileage_share,event,doubt_low,doubt_mode,doubt_high,exclusive_group,access,hours_low,hours_mode,"
                    + "hours_high,consumables_low,consumables_mode,consumables_high,tools,root_causes,flags,caution,"
                    + "label,source")
            .split(","));

    /** Word for a scale that is never reached: only the event counts. */
    private static final String NEVER = "never";

    private ItemRows() {}

    static FailureItem read(
            Row row, Ids items, Ids access, Ids tools, Map<String, Map<PartSource, MoneyRange>> partsByItem) {
        String id = row.text("id");
        return new FailureItem(
                id,
                row.required("system"),
                row.required("name"),
                new Applicability(
                        row.choicesOrAny("engines", Engine.class),
                        row.choicesOrAny("timing", TimingDrive.class),
                        row.choicesOrAny("gearboxes", Gearbox.class),
                        row.choicesOrAny("drives", Drive.class)),
                onset(row),
                row.range("doubt_"),
                row.text("exclusive_group"),
                partsByItem.getOrDefault(id, Map.of()),
                Set.copyOf(access.many(row, "access")),
                row.hours("hours_"),
                row.money("consumables_"),
                tools.many(row, "tools"),
                Set.copyOf(items.many(row, "root_causes")),
                row.choices("flags", Flag.class),
                row.text("caution"),
                row.source());
    }

    private static Onset onset(Row row) {
        double scale = row.text("scale_years").equals(NEVER) ? Double.POSITIVE_INFINITY : above0(row, "scale_years");
        return new Onset(
                above0(row, "shape"), scale, row.probability("mileage_share").value(), row.probability("event"));
    }

    private static double above0(Row row, String column) {
        double value = row.number(column);
        if (value > 0) {
            return value;
        }
        row.fault(column, "must be above zero");
        return 1;
    }
}
