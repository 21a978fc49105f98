package worthsaving.repair;

import java.util.List;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.quantity.MoneyRange;
import worthsaving.quantity.Range;

/**
 * A plan written out line by line, as one would print it for the owner.
 *
 * @param lines in the order of the work: access, jobs, then what is bought
 * @param hourly the worker's rate or worth
 * @param hours all hours at the worker's speed, at the mean
 * @param hoursSaved hours that separate jobs would have charged twice
 */
public record Quote(List<Line> lines, Money hourly, Hours hours, Hours hoursSaved) {

    /** What a line pays for. */
    public enum Stage {
        /** Taking apart and putting back, once for all jobs that need it. */
        ACCESS,
        JOB,
        PART,
        CONSUMABLES,
        TOOL
    }

    /**
     * One line.
     *
     * @param id of the access step, job or tool
     * @param hours at the worker's speed; zero for what is bought
     * @param amount hours at the rate, or the price
     * @param neededBy ids of the jobs that share it; empty for an access step paid only because it
     *     makes others quicker
     */
    public record Line(Stage stage, String id, String name, Range hours, MoneyRange amount, List<String> neededBy) {

        public Line {
            neededBy = List.copyOf(neededBy);
        }
    }

    public Quote {
        lines = List.copyOf(lines);
    }

    /** Mean of the whole quote: the plan's mean cost. */
    public Money mean() {
        return total().mean();
    }

    /** All lines at their low, mode and high together, as if they rose and fell as one: the widest range. */
    public MoneyRange total() {
        return sum(lines);
    }

    /** The same for the lines of one stage. */
    public MoneyRange total(Stage stage) {
        return sum(lines.stream().filter(line -> line.stage() == stage).toList());
    }

    private MoneyRange sum(List<Line> some) {
        Range sum = some.stream().map(line -> line.amount().amount()).reduce(Range.exactly(0), Range::plus);
        return new MoneyRange(sum, hourly.currency());
    }
}
