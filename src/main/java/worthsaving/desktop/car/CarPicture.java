package worthsaving.desktop.car;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import worthsaving.deal.WayOut;
import worthsaving.ranking.Appraisal;
import worthsaving.ranking.Judged;
import worthsaving.repair.Quote;
import worthsaving.vehicle.Observation.Sight;

/**
 * Everything the screen shows of one scenario, reckoned in the background.
 *
 * @param rough whether it is a quick one, made while a lever is dragged; the exact one follows
 * @param refused why it could not be judged; then the rest is empty
 */
public record CarPicture(
        Scenario scenario, boolean rough, Optional<Seen> seen, Optional<Judged.Refused> refused) {

    /**
     * A car judged.
     *
     * @param items what may have failed: first what the findings have made likelier, then the rest, most probable first
     * @param stories what may have failed together, most probable first
     * @param quote the repair plan line by line, when there is one
     * @param main items that the deal hangs on most, with the chance in percent that the findings give them
     * @param nearby for reckoning with the levers moved
     * @param shown way out whose outcomes the chart shows: the best, or repairing when that is not to buy
     */
    public record Seen(
            Scenario scenario,
            Appraisal appraisal,
            List<Item> items,
            List<Together> stories,
            Optional<Quote> quote,
            Map<ItemDial, Double> main,
            WayOut shown,
            Histogram outcomes,
            Nearby nearby) {

        public Seen {
            items = List.copyOf(items);
            stories = List.copyOf(stories);
            main = Collections.unmodifiableMap(new LinkedHashMap<>(main));
        }
    }

    /**
     * One failure item, before and with the findings, and what moved it.
     *
     * @param yours whether the chance now is the user's own
     */
    public record Item(String id, String system, String name, String caution, double before, double now,
            boolean yours, List<Pull> pulls) {

        public Item {
            pulls = List.copyOf(pulls);
        }

        Item at(double chance, boolean byUser) {
            return new Item(id, system, name, caution, before, chance, byUser, pulls);
        }
    }

    /**
     * What one finding does to one item.
     *
     * @param seen what was seen, or said
     * @param seller whether it is only the seller's word
     * @param logRatio natural logarithm of how many times likelier the finding is with the item failed
     */
    public record Pull(String finding, Sight seen, boolean seller, double logRatio) {}

    /** One complete explanation: these have failed together and the rest is sound. */
    public record Together(List<String> failed, double probability) {

        public Together {
            failed = List.copyOf(failed);
        }
    }
}
