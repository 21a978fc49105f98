package worthsaving.deal;

import java.util.ArrayList;
import java.util.List;

/**
 * A decision tree solved by backward induction (Raiffa 1968, Decision Analysis): at a chance node the
 * expectation, at a choice node the best branch. Money is forward money: what has been spent before
 * the root is sunk and does not belong in the tree.
 */
public sealed interface DecisionTree {

    /** Nothing more to decide or to learn. */
    record End(String name, double money) implements DecisionTree {}

    /** The owner chooses; each option may cost something to take. */
    record Choice(String name, List<Option> options) implements DecisionTree {
        public Choice {
            options = List.copyOf(options);
            if (options.isEmpty()) {
                throw new IllegalArgumentException("the choice '" + name + "' has no options");
            }
        }

        /** The option taken: the first of the best. */
        public Option best() {
            Option best = options.get(0);
            for (Option option : options) {
                if (option.value() > best.value()) {
                    best = option;
                }
            }
            return best;
        }
    }

    /** Chance decides. */
    record Chance(String name, List<Branch> branches) implements DecisionTree {
        public Chance {
            branches = List.copyOf(branches);
            double sum = branches.stream().mapToDouble(Branch::probability).sum();
            if (Math.abs(sum - 1) > 1e-9) {
                throw new IllegalArgumentException("the chances of '" + name + "' must add up to 1, not " + sum);
            }
        }
    }

    /** One option of a choice. */
    record Option(String name, double cost, DecisionTree next) {

        public double value() {
            return next.value() - cost;
        }
    }

    /** One branch of a chance node. */
    record Branch(String name, double probability, DecisionTree next) {}

    static End end(String name, double money) {
        return new End(name, money);
    }

    static Option option(String name, double cost, DecisionTree next) {
        return new Option(name, cost, next);
    }

    static Branch branch(String name, double probability, DecisionTree next) {
        return new Branch(name, probability, next);
    }

    /** Expected money under the best choices from here on. */
    default double value() {
        if (this instanceof End end) {
            return end.money();
        }
        if (this instanceof Choice choice) {
            return choice.best().value();
        }
        double sum = 0;
        for (Branch b : ((Chance) this).branches()) {
            sum += b.probability() * b.next().value();
        }
        return sum;
    }

    /** Distribution of the money under the best choices from here on. */
    default Outcome outcome() {
        List<double[]> atoms = new ArrayList<>();
        collect(1, 0, atoms);
        return Outcome.of(
                atoms.stream().mapToDouble(a -> a[0]).toArray(), atoms.stream().mapToDouble(a -> a[1]).toArray());
    }

    private void collect(double probability, double spent, List<double[]> atoms) {
        if (this instanceof End end) {
            atoms.add(new double[] {end.money() - spent, probability});
        } else if (this instanceof Choice choice) {
            Option best = choice.best();
            best.next().collect(probability, spent + best.cost(), atoms);
        } else {
            for (Branch b : ((Chance) this).branches()) {
                b.next().collect(probability * b.probability(), spent, atoms);
            }
        }
    }
}
