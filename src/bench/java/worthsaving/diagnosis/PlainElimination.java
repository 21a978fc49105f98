package worthsaving.diagnosis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import worthsaving.diagnosis.inference.NoisyOr;
import worthsaving.diagnosis.inference.Table;

/**
 * The textbook way, to compare with: every item and every finding is one full conditional table, and
 * every posterior is a variable elimination of its own (Zhang and Poole 1994; Dechter 1996), smallest
 * product first. Only what is no ancestor of evidence or query is left out.
 */
final class PlainElimination {

    private final FailureModel model;
    private final List<Table> findings = new ArrayList<>();
    private final boolean[] aboveEvidence;

    /** @param evidence certain findings only, and none on items */
    PlainElimination(FailureModel model, Evidence evidence) {
        this.model = model;
        aboveEvidence = new boolean[model.itemCount()];
        evidence.findings().forEach((id, seen) -> {
            NoisyOr finding = model.finding(id);
            double[] values = new double[1 << finding.causes().length];
            for (int s = 0; s < values.length; s++) {
                values[s] = seen.ifTrue() * finding.chance(s) + seen.ifFalse() * finding.silence(s);
            }
            findings.add(new Table(finding.causes(), values));
            for (int cause : finding.causes()) {
                markAncestors(cause, aboveEvidence);
            }
        });
        for (int[] group : model.groups()) {
            for (int member : group) {
                markAncestors(member, aboveEvidence);
            }
        }
    }

    private void markAncestors(int item, boolean[] marked) {
        if (!marked[item]) {
            marked[item] = true;
            for (int cause : model.failures().get(item).causes()) {
                markAncestors(cause, marked);
            }
        }
    }

    double[] posteriors() {
        double[] posteriors = new double[model.itemCount()];
        for (int item = 0; item < posteriors.length; item++) {
            posteriors[item] = posterior(item);
        }
        return posteriors;
    }

    private double posterior(int query) {
        boolean[] needed = aboveEvidence.clone();
        markAncestors(query, needed);
        List<Table> tables = new ArrayList<>(findings);
        Set<Integer> left = new TreeSet<>();
        for (int item = 0; item < needed.length; item++) {
            if (needed[item]) {
                tables.add(model.failures().get(item).given(item));
                left.add(item);
            }
        }
        for (int[] group : model.groups()) {
            tables.add(Table.atMostOne(group));
        }
        left.remove(query);
        while (!left.isEmpty()) {
            int next = cheapest(left, tables);
            left.remove(next);
            sumOut(next, tables);
        }
        double[] both = product(new int[] {query}, tables).values();
        return both[1] / (both[0] + both[1]);
    }

    private static int cheapest(Set<Integer> left, List<Table> tables) {
        int best = -1;
        int fewest = Integer.MAX_VALUE;
        for (int item : left) {
            int size = scope(item, tables).length;
            if (size < fewest) {
                fewest = size;
                best = item;
            }
        }
        return best;
    }

    /** The item first, then everything that shares a table with it. */
    private static int[] scope(int item, List<Table> tables) {
        Set<Integer> others = new TreeSet<>();
        for (Table table : tables) {
            if (Arrays.stream(table.scope()).anyMatch(v -> v == item)) {
                Arrays.stream(table.scope()).filter(v -> v != item).forEach(others::add);
            }
        }
        int[] scope = new int[others.size() + 1];
        scope[0] = item;
        int at = 1;
        for (int other : others) {
            scope[at++] = other;
        }
        return scope;
    }

    private static void sumOut(int item, List<Table> tables) {
        int[] scope = scope(item, tables);
        List<Table> here = new ArrayList<>();
        for (Table table : tables) {
            if (Arrays.stream(table.scope()).anyMatch(v -> v == item)) {
                here.add(table);
            }
        }
        tables.removeAll(here);
        double[] joint = product(scope, here).values();
        double[] sum = new double[joint.length / 2];
        for (int s = 0; s < sum.length; s++) {
            sum[s] = joint[2 * s] + joint[2 * s + 1];
        }
        tables.add(new Table(Arrays.copyOfRange(scope, 1, scope.length), sum));
    }

    private static Table product(int[] scope, List<Table> tables) {
        double[] values = new double[1 << scope.length];
        Arrays.fill(values, 1);
        for (Table table : tables) {
            int[] places = new int[table.scope().length];
            for (int k = 0; k < places.length; k++) {
                for (int b = 0; b < scope.length; b++) {
                    if (scope[b] == table.scope()[k]) {
                        places[k] = b;
                    }
                }
            }
            for (int s = 0; s < values.length; s++) {
                int index = 0;
                for (int k = 0; k < places.length; k++) {
                    index |= (s >> places[k] & 1) << k;
                }
                values[s] *= table.values()[index];
            }
        }
        return new Table(scope, values);
    }
}
