package worthsaving.repair;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import worthsaving.catalog.AccessStep;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.PartSource;
import worthsaving.catalog.Remedy;
import worthsaving.catalog.Tool;

/**
 * The least expected cost by trying every set of jobs with every set of extra steps, read straight from the
 * catalogue and sharing no code with the planner. Small instances only.
 */
final class BruteForce {

    private record Option(int closes, long steps, long tools, double direct) {}

    private final Catalogue catalogue;
    private final Workshop shop;
    private final List<AccessStep> steps;
    private final List<String> failed;
    private final double rate;

    BruteForce(Catalogue catalogue, Workshop shop, Set<String> failed) {
        this.catalogue = catalogue;
        this.shop = shop;
        this.failed = List.copyOf(failed);
        steps = catalogue.accessSteps();
        rate = shop.worker().hourly().amount();
    }

    /** Empty when no set of allowed jobs closes every failed item. */
    OptionalDouble leastExpectedCost() {
        List<Option> options = options();
        int all = (1 << failed.size()) - 1;
        double best = Double.POSITIVE_INFINITY;
        for (int set = 0; set < 1 << options.size(); set++) {
            int closed = 0;
            long needed = 0;
            long tools = 0;
            double direct = 0;
            for (int o = 0; o < options.size(); o++) {
                if ((set >> o & 1) != 0) {
                    closed |= options.get(o).closes;
                    needed |= options.get(o).steps;
                    tools |= options.get(o).tools;
                    direct += options.get(o).direct;
                }
            }
            if (closed == all) {
                best = Math.min(best, direct + priceOf(tools) + leastAccess(needed) * rate);
            }
        }
        return best < Double.POSITIVE_INFINITY ? OptionalDouble.of(best) : OptionalDouble.empty();
    }

    private double leastAccess(long needed) {
        double least = Double.POSITIVE_INFINITY;
        for (long extra = 0; extra < 1L << steps.size(); extra++) {
            if ((extra & needed) == 0) {
                least = Math.min(least, accessHours(close(needed | extra)));
            }
        }
        return least;
    }

    private List<Option> options() {
        List<Option> options = new ArrayList<>();
        for (FailureItem item : catalogue.items()) {
            if (failed.contains(item.id())) {
                addOwnJobs(item, options);
            }
        }
        for (Remedy remedy : catalogue.remedies()) {
            boolean usedUnit = remedy.wholeUnit() && remedy.partSource() == PartSource.USED;
            if (closes(remedy.closes()) != 0 && shop.allowedSources().contains(remedy.partSource())
                    && !(usedUnit && !shop.usedUnits())
                    && remedy.success().value() >= shop.leastSuccess().value()) {
                double parts = remedy.parts().mean().amount();
                double hours = remedy.jobHours().mean().value() * shop.worker().factor(remedy.id());
                long access = mask(remedy.access());
                double works = remedy.success().value();
                double again = (1 - works) + works * remedy.comeback().value();
                double alone = parts + (hours + accessHours(access)) * rate;
                options.add(new Option(closes(remedy.closes()), access, tools(remedy.tools()),
                        parts + hours * rate + again * alone));
            }
        }
        return options;
    }

    private void addOwnJobs(FailureItem item, List<Option> options) {
        double hours = item.jobHours().mean().value() * shop.worker().factor(item.id());
        long access = mask(item.access());
        double work = item.consumables().mean().amount() + (hours + accessHours(access)) * rate;
        double cheapest = Double.POSITIVE_INFINITY;
        boolean unit = false;
        for (Remedy r : catalogue.remedies()) {
            Set<String> beyond = new HashSet<>(r.access());
            beyond.removeAll(item.access());
            unit |= r.wholeUnit() && r.closes().contains(item.id()) && beyond.isEmpty();
        }
        boolean usedOut = unit && !shop.usedUnits();
        Set<PartSource> sources = new HashSet<>(item.parts().keySet());
        if (shop.shelf().contains(item.id()) || sources.isEmpty()) {
            sources.add(PartSource.ON_THE_SHELF);
        }
        for (PartSource source : item.parts().keySet()) {
            cheapest = Math.min(cheapest, item.parts().get(source).mean().amount());
        }
        PartSource settled = shop.choice().get(item.id());
        for (PartSource source : sources) {
            boolean free = shop.allowedSources().contains(source) && !(source == PartSource.USED && usedOut);
            if (settled == null ? free : settled == source) {
                boolean shelf = source == PartSource.ON_THE_SHELF;
                double price = shelf ? 0 : item.parts().get(source).mean().amount();
                double again = item.parts().isEmpty() ? 0 : shop.terms().get(source).comeback().mean();
                double direct = price + item.consumables().mean().amount() + hours * rate
                        + again * ((shelf ? cheapest : price) + work);
                options.add(new Option(closes(Set.of(item.id())), access, tools(item.tools()),
                        item.parts().isEmpty() ? item.consumables().mean().amount() + hours * rate : direct));
            }
        }
    }

    private double accessHours(long paid) {
        double sum = 0;
        for (int s = 0; s < steps.size(); s++) {
            if ((paid >> s & 1) != 0) {
                double factor = 1;
                for (Map.Entry<String, Double> easing : steps.get(s).easedBy().entrySet()) {
                    if ((paid >> position(easing.getKey()) & 1) != 0) {
                        factor = Math.min(factor, easing.getValue());
                    }
                }
                sum += steps.get(s).hours().mean().value() * factor * shop.worker().factor(steps.get(s).id());
            }
        }
        return sum;
    }

    private long mask(Set<String> access) {
        long mask = 0;
        for (String id : access) {
            mask |= 1L << position(id);
        }
        return close(mask);
    }

    private long close(long steps) {
        long closed = steps;
        for (int s = this.steps.size() - 1; s >= 0; s--) {
            if ((closed >> s & 1) != 0) {
                for (String required : this.steps.get(s).requires()) {
                    closed |= 1L << position(required);
                }
            }
        }
        return closed;
    }

    private int position(String step) {
        for (int s = 0; s < steps.size(); s++) {
            if (steps.get(s).id().equals(step)) {
                return s;
            }
        }
        throw new AssertionError(step);
    }

    private int closes(Set<String> items) {
        int mask = 0;
        for (int i = 0; i < failed.size(); i++) {
            mask |= items.contains(failed.get(i)) ? 1 << i : 0;
        }
        return mask;
    }

    private long tools(List<String> needed) {
        long mask = 0;
        for (int t = 0; t < catalogue.tools().size(); t++) {
            String id = catalogue.tools().get(t).id();
            mask |= needed.contains(id) && !shop.owns(id) ? 1L << t : 0;
        }
        return mask;
    }

    private double priceOf(long tools) {
        double sum = 0;
        for (int t = 0; t < catalogue.tools().size(); t++) {
            Tool tool = catalogue.tools().get(t);
            sum += (tools >> t & 1) != 0 ? tool.price().mean().amount() : 0;
        }
        return sum;
    }
}
