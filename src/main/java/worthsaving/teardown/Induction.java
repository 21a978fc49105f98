package worthsaving.teardown;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import worthsaving.quantity.Money;
import worthsaving.teardown.Move.Kind;
import worthsaving.teardown.Prospect.End;
import worthsaving.teardown.Prospect.Look;

/**
 * Backward induction over what can still be looked at (Raiffa 1968, Decision Analysis): at every state either
 * the job is ended, or one more thing is looked at and each result continued in its best way. Exact: a state is
 * the set of results seen so far, whatever their order, since looks are independent given the failure pattern.
 * Where no end depends on what is still unknown, nothing more is looked at.
 */
final class Induction {

    private static final double NOTHING = 1e-9;

    private final Prospect prospect;
    private final Currency currency;
    /** By results seen: {@code key}. */
    private final Map<Long, Node> known = new HashMap<>();

    /** Money summed over the state's share of the probability. */
    private record Node(double sum, End end, int look) {}

    /** What has been seen: shares of the patterns still possible. */
    private record State(long key, long opened, int[] patterns, double[] weights, double weight) {}

    /** @param chanceOfChange that after this one look alone another kind of end would be best than now */
    record Option(Move move, double chanceOfChange) {}

    Induction(Prospect prospect, Currency currency) {
        this.prospect = prospect;
        this.currency = currency;
    }

    /** States that this prospect can have at most: one more than the results of each look, multiplied. */
    static double states(List<Look> looks) {
        return looks.stream().mapToDouble(l -> 1 + l.results().size()).reduce(1, (a, b) -> a * b);
    }

    Move best() {
        return move(start());
    }

    /** The end that is best without looking any more. */
    End bestEnd() {
        return bestEnd(start());
    }

    /** Every end and every look as the first thing to do, best first. */
    List<Option> options() {
        State start = start();
        End now = bestEnd(start);
        List<Option> all = new ArrayList<>();
        for (End end : prospect.ends()) {
            all.add(new Option(end(end, value(end, start) / start.weight()), 0));
        }
        for (int l = 0; l < prospect.looks().size(); l++) {
            double change = 0;
            for (State after : after(start, l)) {
                change += bestEnd(after).kind() == now.kind() ? 0 : after.weight() / start.weight();
            }
            all.add(new Option(look(start, l), change));
        }
        all.sort(Comparator.comparing((Option o) -> o.move().worth()).reversed());
        return all;
    }

    private State start() {
        int[] all = new int[prospect.weights().length];
        double weight = 0;
        for (int p = 0; p < all.length; p++) {
            all[p] = p;
            weight += prospect.weights()[p];
        }
        return new State(0, 0, all, prospect.weights(), weight);
    }

    private Move move(State state) {
        Node node = solve(state);
        return node.look() < 0 ? end(node.end(), node.sum() / state.weight()) : look(state, node.look());
    }

    private Move end(End end, double worth) {
        return new Move(end.kind(), end.id(), end.name(), money(worth), Money.zero(currency), List.of());
    }

    private Move look(State state, int number) {
        Look look = prospect.looks().get(number);
        double cost = cost(look, state);
        double worth = -cost;
        List<Move.Result> results = new ArrayList<>();
        for (State after : after(state, number)) {
            double chance = after.weight() / state.weight();
            int result = (int) (after.key() >> 5 * number & 31) - 1;
            worth += chance * solve(after).sum() / after.weight();
            results.add(new Move.Result(look.results().get(result), chance, move(after)));
        }
        results.sort(Comparator.comparing((Move.Result r) -> -r.chance()).thenComparing(Move.Result::name));
        return new Move(Kind.LOOK, look.id(), look.name(), money(worth), money(cost), results);
    }

    private Node solve(State state) {
        Node node = known.get(state.key());
        if (node == null) {
            node = search(state);
            known.put(state.key(), node);
        }
        return node;
    }

    private Node search(State state) {
        End end = bestEnd(state);
        Node best = new Node(value(end, state), end, -1);
        double least = NOTHING * Math.max(1, Math.abs(best.sum()));
        if (knowingAll(state) - best.sum() <= least) {
            return best;
        }
        for (int l = 0; l < prospect.looks().size(); l++) {
            if ((state.key() >> 5 * l & 31) == 0) {
                double sum = -cost(prospect.looks().get(l), state) * state.weight();
                for (State after : after(state, l)) {
                    sum += solve(after).sum();
                }
                if (sum > best.sum() + least) {
                    best = new Node(sum, null, l);
                }
            }
        }
        return best;
    }

    /** Money if the pattern were known, opening it all at no price: no plan can bring more. */
    private double knowingAll(State state) {
        double sum = 0;
        for (int i = 0; i < state.patterns().length; i++) {
            double most = Double.NEGATIVE_INFINITY;
            for (End end : prospect.ends()) {
                most = Math.max(most, end.at(state.patterns()[i], state.opened()));
            }
            sum += state.weights()[i] * most;
        }
        return sum;
    }

    private End bestEnd(State state) {
        End best = null;
        double most = Double.NEGATIVE_INFINITY;
        for (End end : prospect.ends()) {
            double value = value(end, state);
            if (value > most) {
                best = end;
                most = value;
            }
        }
        return best;
    }

    private static double value(End end, State state) {
        double sum = 0;
        for (int i = 0; i < state.patterns().length; i++) {
            sum += state.weights()[i] * end.at(state.patterns()[i], state.opened());
        }
        return sum;
    }

    private double cost(Look look, State state) {
        return look.cost() + prospect.price(look.opens() & ~state.opened());
    }

    /** The states that a look may lead to, impossible results left out. */
    private List<State> after(State state, int number) {
        Look look = prospect.looks().get(number);
        List<State> states = new ArrayList<>();
        for (int r = 0; r < look.results().size(); r++) {
            int[] patterns = new int[state.patterns().length];
            double[] weights = new double[patterns.length];
            int count = 0;
            double weight = 0;
            for (int i = 0; i < patterns.length; i++) {
                double share = state.weights()[i] * look.likelihood()[r][state.patterns()[i]];
                if (share > 0) {
                    patterns[count] = state.patterns()[i];
                    weights[count++] = share;
                    weight += share;
                }
            }
            if (count > 0) {
                states.add(new State(state.key() | (long) (r + 1) << 5 * number, state.opened() | look.opens(),
                        Arrays.copyOf(patterns, count), Arrays.copyOf(weights, count), weight));
            }
        }
        return states;
    }

    private Money money(double amount) {
        return new Money(amount, currency);
    }
}
