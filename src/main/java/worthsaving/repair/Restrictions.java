package worthsaving.repair;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.PartSource;
import worthsaving.repair.PlanResult.Unmendable;

/** Explains why the workshop's restrictions leave an item without a job. */
final class Restrictions {

    private final JobTable table;

    Restrictions(JobTable table) {
        this.table = table;
    }

    /** @param failed numbers of items, ascending */
    List<Unmendable> unmendable(int[] failed) {
        List<Unmendable> stuck = new ArrayList<>();
        for (int i : failed) {
            if (table.closedBy[i].length == 0) {
                stuck.add(explain(table.items[i]));
            }
        }
        return stuck;
    }

    private Unmendable explain(FailureItem item) {
        Workshop shop = table.shop;
        String offered = names(item.parts().keySet());
        PartSource settled = shop.choice().get(item.id());
        String reason = settled != null
                ? "the part is to come from " + settled + ", but it is offered from " + offered
                : "its part is offered from " + offered + ", the workshop takes " + names(shop.allowedSources())
                        + (shop.usedUnits() ? "" : " and no used units");
        String mend = "allow one of " + offered + ", put the part on the shelf" + remediesLeftOut(item.id());
        return new Unmendable(item.id(), item.name(), reason + ", and no allowed remedy closes it", mend);
    }

    private String remediesLeftOut(String item) {
        String ids = table.remedies.stream()
                .filter(r -> r.closes().contains(item))
                .map(r -> r.id() + " (" + r.partSource() + ", success " + r.success().value() + ")")
                .sorted()
                .collect(Collectors.joining(", "));
        return ids.isEmpty() ? "" : ", or allow one of the remedies " + ids;
    }

    private static String names(Iterable<PartSource> sources) {
        List<String> names = new ArrayList<>();
        sources.forEach(source -> names.add(source.name()));
        names.sort(null);
        return String.join(", ", names);
    }
}
