package worthsaving.diagnosis.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * Collects the tables whose product is the unnormalised joint. A wide noisy-OR that was seen becomes an
 * OR variable with one small table per cause. One that is a variable of the model is split by parent
 * divorcing: a few causes at a time feed an intermediate variable. Source: Olesen et al. (1989), Applied
 * Artificial Intelligence 3:385; Heckerman and Breese (1996), IEEE Transactions on Systems, Man and
 * Cybernetics 26:826.
 */
public final class TableList {

    /** Causes per table: the smallest trees on the shipped catalogue of 3, 5 and 12; no result depends on it. */
    public static final int DEFAULT_FAN_IN = 5;

    private final int named;
    private final int fanIn;
    private final List<Table> tables = new ArrayList<>();
    private final double[][] weights;
    private final List<Long> hiddenLabels = new ArrayList<>();
    private final BitSet ors = new BitSet();
    private int variables;
    private double logConstant;
    private long owner;
    private int parts;

    /** @param variables variables 0 to variables - 1 are the caller's; intermediate ones follow */
    public TableList(int variables, int fanIn) {
        if (fanIn < 2) {
            throw new IllegalArgumentException("a split noisy-OR needs two causes a table at least, not " + fanIn);
        }
        this.named = variables;
        this.variables = variables;
        this.fanIn = fanIn;
        weights = new double[variables][];
        for (int v = 0; v < variables; v++) {
            weights[v] = new double[] {1, 1};
        }
    }

    public void add(Table table) {
        switch (table.scope().length) {
            case 0 -> scale(table.values()[0]);
            case 1 -> weigh(table.scope()[0], table.values()[1], table.values()[0]);
            default -> tables.add(table);
        }
    }

    /** A prior, or virtual evidence, on one of the caller's variables. */
    public void weigh(int variable, double ifYes, double ifNo) {
        weights[variable][0] *= ifNo;
        weights[variable][1] *= ifYes;
    }

    /** Multiplies the whole joint by a constant. */
    public void scale(double factor) {
        logConstant += Math.log(factor);
    }

    /** A variable that is the noisy-OR of others. */
    public void given(int child, NoisyOr or) {
        add(narrowed(or).given(child));
    }

    /** A noisy-OR whose outcome was seen, with the likelihood of the report for yes and for no. */
    public void seen(NoisyOr or, double ifYes, double ifNo) {
        if (ifYes == ifNo) {
            scale(ifYes);
        } else if (ifYes == 0) {
            scale(ifNo * (1 - or.leak()));
            for (int k = 0; k < or.causes().length; k++) {
                weigh(or.causes()[k], 1 - or.chances()[k], 1);
            }
        } else if (or.causes().length <= fanIn) {
            add(or.seen(ifYes, ifNo));
        } else {
            seenWide(or, ifYes, ifNo);
        }
    }

    private void seenWide(NoisyOr or, double ifYes, double ifNo) {
        int outcome = hidden();
        ors.set(outcome);
        tables.add(Table.of(outcome, ifYes, ifNo * (1 - or.leak()) + ifYes * or.leak()));
        for (int k = 0; k < or.causes().length; k++) {
            double chance = or.chances()[k];
            tables.add(new Table(new int[] {or.causes()[k], outcome}, new double[] {1, 1 - chance, 0, chance}));
        }
    }

    /** At most one of the variables is yes, by a running OR when there are many. */
    public void atMostOne(int... members) {
        int[] rest = members;
        while (rest.length > fanIn) {
            NoisyOr or = new NoisyOr(0, rest, certain(rest.length));
            NoisyOr first = or.part(0, fanIn);
            add(Table.atMostOne(first.causes()));
            int any = intermediate(first);
            rest = or.restWith(any, fanIn).causes();
        }
        add(Table.atMostOne(rest));
    }

    /** The same noisy-OR with fewer causes, some of them intermediate. */
    public NoisyOr narrowed(NoisyOr or) {
        NoisyOr wide = or;
        while (wide.causes().length > fanIn) {
            wide = wide.restWith(intermediate(wide.part(0, fanIn)), fanIn);
        }
        return wide;
    }

    /** A new variable that is the noisy-OR of others. */
    public int intermediate(NoisyOr or) {
        int variable = hidden();
        tables.add(or.given(variable));
        return variable;
    }

    private int hidden() {
        hiddenLabels.add(31 * owner + ++parts);
        return variables++;
    }

    /** Says whose hidden variables come next, so that their labels do not depend on what came before. */
    public void owner(String name) {
        owner = (long) name.hashCode() << Integer.SIZE;
        parts = 0;
    }

    /** Label of a hidden variable. */
    public long hiddenLabel(int variable) {
        return hiddenLabels.get(variable - named);
    }

    private static double[] certain(int count) {
        double[] ones = new double[count];
        Arrays.fill(ones, 1);
        return ones;
    }

    /** The tables: first one per variable of the caller, in order, then the others. */
    public Factors factors() {
        List<Table> all = new ArrayList<>(named + tables.size());
        for (int v = 0; v < named; v++) {
            all.add(new Table(new int[] {v}, weights[v].clone()));
        }
        all.addAll(tables);
        return new Factors(variables, all, ors);
    }

    /** Natural logarithm of the constant factor beside the tables. */
    public double logConstant() {
        return logConstant;
    }
}
