package worthsaving.diagnosis.inference;

import java.util.BitSet;
import java.util.List;

/**
 * An unnormalised joint over yes/no variables as a product of tables.
 *
 * <p>Some variables may be ORs. A table over an OR and causes says with what probability the causes
 * contribute to it; contributions of several tables combine by OR, not by product, and the table over
 * the OR alone weighs the final outcome. That keeps a noisy-OR of many causes small without negative
 * numbers. Source: Zhang and Poole (1996), Journal of Artificial Intelligence Research 5:301.
 *
 * @param variables how many there are
 * @param tables each over one variable at least
 * @param ors the variables that are ORs
 */
public record Factors(int variables, List<Table> tables, BitSet ors) {

    public Factors {
        tables = List.copyOf(tables);
        ors = (BitSet) ors.clone();
    }

    /** A plain product of tables. */
    public static Factors of(int variables, List<Table> tables) {
        return new Factors(variables, tables, new BitSet());
    }

    public Factors with(List<Table> others) {
        return new Factors(variables, others, ors);
    }
}
