package worthsaving.diagnosis;

/**
 * Virtual evidence on a yes/no variable (Pearl 1988): how probable the report is if the variable is
 * true and if it is false. (1, 0) is certainty that it is true, (0, 1) that it is not, equal values
 * say nothing.
 */
public record Likelihood(double ifTrue, double ifFalse) {

    public static final Likelihood TRUE = new Likelihood(1, 0);
    public static final Likelihood FALSE = new Likelihood(0, 1);
    public static final Likelihood NOTHING = new Likelihood(1, 1);

    public Likelihood {
        if (!(ifTrue >= 0 && ifTrue <= 1 && ifFalse >= 0 && ifFalse <= 1) || ifTrue + ifFalse == 0) {
            throw new IllegalArgumentException(
                    "a likelihood needs two probabilities, not both zero: " + ifTrue + ", " + ifFalse);
        }
    }
}
