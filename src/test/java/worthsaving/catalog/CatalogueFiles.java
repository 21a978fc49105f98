package worthsaving.catalog;

import java.io.Reader;
import java.io.StringReader;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A small sound catalogue of texts, of which a test spoils one place. All figures are invented. */
final class CatalogueFiles {

    private static final String FIRST = "# format 1, edition test\n";
    private static final String GUESS = ",guess,invented\n";

    private final Map<String, String> texts = new TreeMap<>();

    private CatalogueFiles() {
        put(
                "items.csv",
                ItemRows.COLUMNS,
                "PUMP,oil,Oil pump,any,any,any,any,2,40,0.6,0,0.5,1,2,,PAN,1,2,3,10,20,30,GAUGE,,DO_NOT_RUN,",
                "BEARING,oil,Rod bearing,PETROL DIESEL,any,any,any,2,50,0.6,0,0.5,1,2,,PAN,2,3,5,10,20,30,,PUMP,"
                        + "REVIEW,",
                "FLOOD,flood,Flood,any,any,any,any,1,never,0,0.01,0.5,1,2,water,,1,2,3,0,0,0,,,HARD_STOP,");
        put("parts.csv", PartRows.COLUMNS, "PUMP,MAKER,100,200,300", "FLOOD,ON_THE_SHELF,0,0,0");
        put(
                "damage.csv",
                DamageRows.COLUMNS,
                "PUMP,BEARING,0.2,0.4,0.6,LOW_OIL_PRESSURE,0.1,0.8",
                "FLOOD,BEARING,0.1,0.1,0.2,,,");
        put(
                "findings.csv",
                FindingRows.COLUMNS,
                "LAMP,ADVERT,Oil lamp,Is it on?,0.01,0.02,0.04,0,1,,YES,no,,P0520 P0524",
                "WATER_LINE,DRIVEWAY,Water line,,0.01,0.02,0.04,5,10,GAUGE,MAYBE,yes,mould,");
        put(
                "finding_links.csv",
                LinkRows.COLUMNS,
                "LAMP,PUMP,0.5,0.7,0.9",
                "LAMP,BEARING,0.3,0.4,0.5",
                "WATER_LINE,FLOOD,0.8,0.9,1");
        put(
                "access.csv",
                AccessRows.COLUMNS,
                "TRAY,Tray off,,0.3,0.4,0.6,PAN:0.5,",
                "PAN,Pan off,TRAY,1,1.5,2.5,,a remark");
        put("remedies.csv", RemedyRows.COLUMNS, "SHELLS,Shells,BEARING,USED,60,150,250,2,3,5,PAN,GAUGE,0.7,0.2,no,");
        put("tools.csv", ToolRows.COLUMNS, "GAUGE,Gauge,30,40,60,no");
        put("money.csv", MoneyRows.COLUMNS, "tow_hook_up,buy,Tow,75,110,150,MONEY,");
    }

    static CatalogueFiles sound() {
        return new CatalogueFiles();
    }

    /** The same with one text replaced, which must be there. */
    CatalogueFiles with(String file, String text, String replacement) {
        if (!texts.get(file).contains(text)) {
            throw new AssertionError(file + " holds no '" + text + "'");
        }
        texts.put(file, texts.get(file).replace(text, replacement));
        return this;
    }

    CatalogueFiles without(String file) {
        texts.remove(file);
        return this;
    }

    CatalogueReading read() {
        return CatalogueReader.read(this::open);
    }

    private Reader open(String file) {
        return texts.containsKey(file) ? new StringReader(texts.get(file)) : null;
    }

    private void put(String file, List<String> columns, String... rows) {
        texts.put(file, FIRST + String.join(",", columns) + "\n" + String.join(GUESS, rows) + GUESS);
    }
}
