package worthsaving.inspection;

import java.util.Map;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FindingKind;
import worthsaving.catalog.Tool;
import worthsaving.quantity.Money;

/** What it costs to look: money laid out, the minutes at their worth, and tools that would have to be bought. */
public final class CheckCosts {

    private final Map<String, Tool> tools;
    private final CheckSettings settings;

    public CheckCosts(Catalogue catalogue, CheckSettings settings) {
        this.tools = catalogue.toolsById();
        this.settings = settings;
    }

    public Money of(FindingKind finding) {
        Money cost = finding.cost().plus(finding.time().at(settings.hourly()));
        for (String tool : finding.tools()) {
            if (!settings.ownedTools().contains(tool) && tools.containsKey(tool)) {
                cost = cost.plus(tools.get(tool).price().mean());
            }
        }
        return cost;
    }
}
