package worthsaving.desktop.catalogue;

import java.util.List;

/** The tables that the screen lists; rows of the others are shown with the entry that they belong to. */
public enum Shown {
    ITEMS("items.csv", "system",
            new Related("parts.csv", "item", "part_source"),
            new Related("damage.csv", "effect", "cause"),
            new Related("damage.csv", "cause", "effect"),
            new Related("finding_links.csv", "item", "finding")),
    FINDINGS("findings.csv", "stage", new Related("finding_links.csv", "finding", "item")),
    ACCESS("access.csv", ""),
    REMEDIES("remedies.csv", ""),
    TOOLS("tools.csv", ""),
    MONEY("money.csv", "stage");

    /**
     * Rows of another table that name the entry.
     *
     * @param mine column that names the entry
     * @param other column that tells the rows apart
     */
    record Related(String file, String mine, String other) {

        /** Key of the heading, such as {@code damage.effect}. */
        String key() {
            return file.replace(".csv", "") + '.' + mine;
        }
    }

    private final String file;
    private final String group;
    private final List<Related> related;

    Shown(String file, String group, Related... related) {
        this.file = file;
        this.group = group;
        this.related = List.of(related);
    }

    String file() {
        return file;
    }

    /** Columns asked for most, shown first; none where the order of the file will do. */
    List<String> first() {
        return this == ITEMS
                ? List.of("hours_low", "consumables_low", "tools", "access", "root_causes", "caution", "label", "source")
                : List.of();
    }

    /** Column by which the list is grouped; blank for none. */
    String group() {
        return group;
    }

    List<Related> related() {
        return related;
    }
}
