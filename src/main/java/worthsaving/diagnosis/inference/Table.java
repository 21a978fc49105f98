package worthsaving.diagnosis.inference;

/**
 * A non-negative function of a few yes/no variables.
 *
 * @param scope distinct variables
 * @param values one per joint state; bit k of the index is the state of {@code scope[k]}, 1 for yes
 */
public record Table(int[] scope, double[] values) {

    public Table {
        if (values.length != 1 << scope.length) {
            throw new IllegalArgumentException(
                    "a table over " + scope.length + " variables needs " + (1 << scope.length) + " values, not "
                            + values.length);
        }
        for (double v : values) {
            if (!(v >= 0) || Double.isInfinite(v)) {
                throw new IllegalArgumentException("a table holds finite values of zero or more, not " + v);
            }
        }
    }

    /** A prior, or virtual evidence, on one variable. */
    public static Table of(int variable, double ifYes, double ifNo) {
        return new Table(new int[] {variable}, new double[] {ifNo, ifYes});
    }

    /**
     * P(child | parents).
     *
     * @param yes P(child = yes) by joint state of the parents; bit k of the index is the state of
     *     {@code parents[k]}
     */
    public static Table conditional(int child, int[] parents, double... yes) {
        int[] scope = new int[parents.length + 1];
        scope[0] = child;
        System.arraycopy(parents, 0, scope, 1, parents.length);
        double[] values = new double[2 * yes.length];
        for (int i = 0; i < yes.length; i++) {
            values[2 * i] = 1 - yes[i];
            values[2 * i + 1] = yes[i];
        }
        return new Table(scope, values);
    }

    /** At most one of the variables is yes. */
    public static Table atMostOne(int... variables) {
        double[] values = new double[1 << variables.length];
        values[0] = 1;
        for (int k = 0; k < variables.length; k++) {
            values[1 << k] = 1;
        }
        return new Table(variables, values);
    }
}
