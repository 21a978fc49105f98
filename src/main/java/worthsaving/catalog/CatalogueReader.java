package worthsaving.catalog;

import java.io.Reader;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import worthsaving.quantity.MoneyRange;

/** Reads the nine tables of the catalogue and checks that they hold together. */
public final class CatalogueReader {

    /** The files that are asked for. */
    public static final List<String> FILES = List.of(
            ItemRows.FILE,
            PartRows.FILE,
            DamageRows.FILE,
            FindingRows.FILE,
            LinkRows.FILE,
            AccessRows.FILE,
            RemedyRows.FILE,
            ToolRows.FILE,
            MoneyRows.FILE);

    private final Faults faults = new Faults();
    private final Function<String, ? extends Reader> open;

    private CatalogueReader(Function<String, ? extends Reader> open) {
        this.open = open;
    }

    /**
     * Reads everything, going on after a fault, so that one run shows them all.
     *
     * @param open gives a reader for each of {@link #FILES}; null, or an unchecked I/O exception, when
     *     there is none. Each is closed here.
     */
    public static CatalogueReading read(Function<String, ? extends Reader> open) {
        return new CatalogueReader(open).read();
    }

    private CatalogueReading read() {
        Table itemTable = table(ItemRows.FILE, ItemRows.COLUMNS);
        Table partTable = table(PartRows.FILE, PartRows.COLUMNS);
        Table damageTable = table(DamageRows.FILE, DamageRows.COLUMNS);
        Table findingTable = table(FindingRows.FILE, FindingRows.COLUMNS);
        Table linkTable = table(LinkRows.FILE, LinkRows.COLUMNS);
        Table accessTable = table(AccessRows.FILE, AccessRows.COLUMNS);
        Table remedyTable = table(RemedyRows.FILE, RemedyRows.COLUMNS);
        Table toolTable = table(ToolRows.FILE, ToolRows.COLUMNS);
        Table moneyTable = table(MoneyRows.FILE, MoneyRows.COLUMNS);

        Ids itemIds = Ids.of(itemTable);
        Ids findingIds = Ids.of(findingTable);
        Ids accessIds = Ids.of(accessTable);
        Ids toolIds = Ids.of(toolTable);
        Ids.of(remedyTable);
        Ids.ofLowerCase(moneyTable);

        Map<String, Map<PartSource, MoneyRange>> parts = PartRows.read(partTable, itemIds);
        List<FailureItem> items = itemTable.map(r -> ItemRows.read(r, itemIds, accessIds, toolIds, parts));
        List<DamageLink> damage = damageTable.map(r -> DamageRows.read(r, itemIds));
        List<FindingKind> findings = findingTable.map(r -> FindingRows.read(r, toolIds));
        List<FindingLink> links = linkTable.map(r -> LinkRows.read(r, findingIds, itemIds));
        List<AccessStep> access = accessTable.map(r -> AccessRows.read(r, accessIds));
        List<Remedy> remedies = remedyTable.map(r -> RemedyRows.read(r, itemIds, accessIds, toolIds));
        List<Tool> tools = toolTable.map(ToolRows::read);
        List<MoneyLine> money = moneyTable.map(MoneyRows::read);

        CatalogueChecks.pairsAreUnique(damageTable, "cause", "effect");
        CatalogueChecks.pairsAreUnique(linkTable, "finding", "item");
        CatalogueChecks.damageHasNoCircle(damageTable);
        CatalogueChecks.accessHasNoCircle(accessTable);
        if (partTable.whole() && remedyTable.whole()) {
            CatalogueChecks.itemsCanBeMended(itemTable, items, remedies);
        }
        if (linkTable.whole()) {
            CatalogueChecks.findingsHaveCauses(findingTable, links);
        }
        if (damageTable.whole()) {
            CatalogueChecks.rootCausesDoDamage(itemTable, damage);
        }
        if (!faults.isEmpty()) {
            return new CatalogueReading.Faulty(faults.list());
        }
        return new CatalogueReading.Valid(new Catalogue(
                itemTable.edition(), items, damage, findings, links, access, remedies, tools, money));
    }

    private Table table(String file, List<String> columns) {
        return Table.read(file, open, columns, faults);
    }
}
