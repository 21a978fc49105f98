package worthsaving.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import worthsaving.catalog.CatalogueDiff.Change;
import worthsaving.catalog.CatalogueDiff.Kind;

class CatalogueDiffTest {

    private static final Catalogue BEFORE = CatalogueFiles.sound().read().orElseThrow();

    @Test
    void a_catalogue_does_not_differ_from_itself() {
        assertThat(CatalogueDiff.between(BEFORE, CatalogueFiles.sound().read().orElseThrow()))
                .isEmpty();
        assertThat(CatalogueDiff.between(ShippedCatalogue.load(), ShippedCatalogue.load()))
                .isEmpty();
    }

    @Test
    void names_each_figure_that_changed() {
        Catalogue after = CatalogueFiles.sound()
                .with("items.csv", "any,2,40", "any,3,40")
                .with("items.csv", "PAN,1,2,3", "PAN,1,2,4")
                .with("parts.csv", "100,200,300", "100,250,300")
                .with("damage.csv", "0.1,0.8", "0.1,0.9")
                .with("finding_links.csv", "0.3,0.4,0.5", "0.3,0.45,0.5")
                .with("findings.csv", "P0520 P0524", "P0524")
                .with("access.csv", "PAN:0.5", "PAN:0.6")
                .with("remedies.csv", "0.7,0.2,no", "0.7,0.2,yes")
                .with("tools.csv", "30,40,60,no,guess", "30,40,60,no,user")
                .with("money.csv", "MONEY", "PERCENT")
                .read()
                .orElseThrow();

        assertThat(CatalogueDiff.between(BEFORE, after))
                .extracting(Change::toString)
                .containsExactly(
                        "items.csv PUMP: onset.shape 2.0 -> 3.0",
                        "items.csv PUMP: parts.MAKER USD 100.0 / 200.0 / 300.0 -> USD 100.0 / 250.0 / 300.0",
                        "items.csv PUMP: jobHours 1.0 / 2.0 / 3.0 h -> 1.0 / 2.0 / 4.0 h",
                        "damage.csv PUMP > BEARING: ifDrivenOn 0.8 -> 0.9",
                        "findings.csv LAMP: codes P0520 P0524 -> P0524",
                        "finding_links.csv LAMP > BEARING: chance 0.3 / 0.4 / 0.5 -> 0.3 / 0.45 / 0.5",
                        "access.csv TRAY: easedBy.PAN 0.5 -> 0.6",
                        "remedies.csv SHELLS: wholeUnit false -> true",
                        "tools.csv GAUGE: source GUESS, invented -> USER, invented",
                        "money.csv tow_hook_up: unit MONEY -> PERCENT");
    }

    @Test
    void a_renamed_line_is_one_removed_and_one_added() {
        Catalogue after = CatalogueFiles.sound()
                .with("money.csv", "tow_hook_up", "tow")
                .with("parts.csv", "FLOOD,ON_THE_SHELF", "FLOOD,USED")
                .read()
                .orElseThrow();

        assertThat(CatalogueDiff.between(BEFORE, after))
                .isEqualTo(List.of(
                        new Change(
                                Kind.CHANGED, "items.csv", "FLOOD", "parts.ON_THE_SHELF", "USD 0.0 / 0.0 / 0.0", ""),
                        new Change(Kind.CHANGED, "items.csv", "FLOOD", "parts.USED", "", "USD 0.0 / 0.0 / 0.0"),
                        new Change(Kind.REMOVED, "money.csv", "tow_hook_up", "", "", ""),
                        new Change(Kind.ADDED, "money.csv", "tow", "", "", "")));
        assertThat(CatalogueDiff.between(BEFORE, after))
                .extracting(Change::toString)
                .contains("money.csv tow: added", "money.csv tow_hook_up: removed");
    }
}
