package worthsaving.teardown;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import worthsaving.deal.Outcome;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;

/**
 * Whether to go on, how, and what would change that. All money is forward money.
 *
 * @param spent for the record; it counts in nothing else here
 * @param best what to do now, with its continuation
 * @param options everything that could be done first, best first
 * @param exact whether every look was weighed with every other; otherwise the most promising ones were
 * @param costToFinish parts, consumables, tools and hours of the cheapest plans and of closing up; empty when
 *     nothing allowed mends it
 * @param closing hours that closing what is open takes, part of the cost of finishing
 * @param chanceOfUnit that the cheapest plan fits a whole unit
 * @param chanceStopIsBetter that finishing, in the end, brings less than stopping now
 * @param nextStage the opening or check that is worth most now
 * @param rules what, if found, changes the answer; likeliest first
 * @param openings how far it is open, and what opening further costs and shows
 * @param order in which to look if one item is behind the complaint
 * @param cautions the usual ones for what may be worked on
 */
public record Advice(
        Spent spent,
        Move best,
        List<Choice> options,
        boolean exact,
        Optional<Outcome> costToFinish,
        Hours closing,
        double chanceOfUnit,
        double chanceStopIsBetter,
        Optional<Choice> nextStage,
        List<Rule> rules,
        List<Opening> openings,
        SearchOrder order,
        List<String> cautions) {

    /**
     * @param total receipts, and hours at their worth
     */
    public record Spent(Money receipts, Hours hours, Money total) {}

    /** @param chanceOfChange that after this look alone the answer is another than now */
    public record Choice(Move move, double chanceOfChange) {}

    /**
     * @param finding whether it is a finding; otherwise a failure item
     * @param goOn best expected money of finishing then
     * @param stop best money of stopping
     */
    public record Rule(String id, String name, boolean finding, double chance, Move.Kind then, Money goOn, Money stop) {}

    /**
     * @param expectedHours opening and looking until it is found
     * @param plainHours the same by falling probability over the time of looking alone, openings forgotten
     */
    public record SearchOrder(List<Place> places, double expectedHours, OptionalDouble plainHours, boolean exact) {
        public SearchOrder {
            places = List.copyOf(places);
        }
    }

    /** @param hours opening what is then still closed, and looking */
    public record Place(String item, String name, double chance, double hours) {}

    public Advice {
        options = List.copyOf(options);
        rules = List.copyOf(rules);
        openings = List.copyOf(openings);
        cautions = List.copyOf(cautions);
    }

    /** Whether the best continuation is to stop now. */
    public boolean stops() {
        return best.kind() == Move.Kind.STOP;
    }
}
