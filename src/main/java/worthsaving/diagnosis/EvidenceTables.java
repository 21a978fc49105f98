package worthsaving.diagnosis;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import worthsaving.diagnosis.PowertrainBits.Gate;
import worthsaving.diagnosis.inference.NoisyOr;
import worthsaving.diagnosis.inference.Table;
import worthsaving.diagnosis.inference.TableList;

/**
 * Writes model and evidence as a product of small tables. Settled items are taken out of the tables of
 * their neighbours, absent findings become weights on single items, and what was not looked at leaves
 * no trace.
 */
final class EvidenceTables {

    private final FailureModel model;
    private final int[] known;
    private final TableList tables;

    private EvidenceTables(FailureModel model, int fanIn) {
        this.model = model;
        known = new int[model.itemCount() + model.bits()];
        Arrays.fill(known, -1);
        tables = new TableList(known.length, fanIn);
    }

    /**
     * @param fanIn causes a table may have before its noisy-OR is split
     * @throws IllegalArgumentException for a finding that the catalogue does not know
     */
    static TableList of(FailureModel model, Evidence evidence, int fanIn) {
        EvidenceTables writer = new EvidenceTables(model, fanIn);
        writer.settle(evidence.items());
        writer.writeItems();
        model.groups().forEach(writer::writeGroup);
        model.silences().forEach(writer::writeSilence);
        new TreeMap<>(evidence.findings()).forEach(writer::writeFinding);
        model.bitTables().forEach(writer.tables::add);
        return writer.tables;
    }

    private void writeFinding(String id, Likelihood seen) {
        tables.owner(id);
        tables.seen(model.finding(id).given(known), seen.ifTrue(), seen.ifFalse());
    }

    private void writeSilence(NoisyOr told) {
        tables.owner("what the seller left out");
        tables.seen(told.given(known), 0, 1);
    }

    /** An item that this car cannot have is known to be sound. */
    private void settle(Map<String, Likelihood> items) {
        new TreeMap<>(items).forEach((id, seen) -> {
            Integer item = model.indexOf().get(id);
            if (item == null) {
                tables.scale(seen.ifFalse());
            } else {
                tables.weigh(item, seen.ifTrue(), seen.ifFalse());
                if (seen.ifTrue() == 0 || seen.ifFalse() == 0) {
                    known[item] = seen.ifFalse() == 0 ? 1 : 0;
                }
            }
        });
    }

    private void writeItems() {
        for (int i = 0; i < model.itemCount(); i++) {
            tables.owner(model.items().get(i));
            NoisyOr failure = model.failures().get(i).given(known);
            Gate gate = model.gates().get(i);
            if (!gate.always()) {
                writeGated(i, failure, gate);
            } else if (known[i] < 0) {
                tables.given(i, failure);
            } else {
                tables.seen(failure, known[i], 1 - known[i]);
            }
        }
    }

    private void writeGated(int item, NoisyOr failure, Gate gate) {
        NoisyOr single = failure.causes().length < 2
                ? failure
                : new NoisyOr(0, new int[] {tables.intermediate(tables.narrowed(failure))}, new double[] {1});
        int causes = single.causes().length;
        int[] parents = Arrays.copyOf(single.causes(), causes + gate.bits().length);
        System.arraycopy(gate.bits(), 0, parents, causes, gate.bits().length);
        double[] yes = new double[1 << parents.length];
        for (int s = 0; s < yes.length; s++) {
            yes[s] = gate.open()[s >> causes] ? single.chance(s & ((1 << causes) - 1)) : 0;
        }
        tables.add(Table.conditional(item, parents, yes));
    }

    private void writeGroup(int[] group) {
        int[] open = Arrays.stream(group).filter(i -> known[i] < 0).toArray();
        long failed = Arrays.stream(group).filter(i -> known[i] == 1).count();
        if (failed > 1) {
            tables.scale(0);
        } else if (failed == 1) {
            Arrays.stream(open).forEach(i -> tables.weigh(i, 0, 1));
        } else if (open.length > 1) {
            tables.owner(model.items().get(open[0]) + " and others");
            tables.atMostOne(open);
        }
    }

    /** The tables with a finding seen absent in addition, over the same scopes. */
    static List<Table> withAbsent(List<Table> tables, NoisyOr finding) {
        Table[] more = tables.toArray(Table[]::new);
        for (int k = 0; k < finding.causes().length; k++) {
            int item = finding.causes()[k];
            double[] weight = more[item].values().clone();
            weight[1] *= 1 - finding.chances()[k];
            more[item] = new Table(more[item].scope(), weight);
        }
        return List.of(more);
    }
}
