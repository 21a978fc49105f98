package worthsaving.inspection;

import java.util.EnumSet;
import java.util.Objects;
import java.util.Set;
import worthsaving.catalog.FindingKind.Leave;
import worthsaving.catalog.FindingKind.Stage;
import worthsaving.quantity.Money;

/**
 * Which checks can be made and what they cost.
 *
 * @param stages stages that can be reached before the price is paid
 * @param leaves how far the seller must be willing for a check to count
 * @param damaging whether checks that can hurt the car are allowed
 * @param ownedTools ids of tools at hand; the price of another is part of what the check costs
 * @param hourly what an hour of looking is worth
 */
public record CheckSettings(
        Set<Stage> stages, Set<Leave> leaves, boolean damaging, Set<String> ownedTools, Money hourly) {

    public CheckSettings {
        stages = Set.copyOf(stages);
        leaves = Set.copyOf(leaves);
        ownedTools = Set.copyOf(ownedTools);
        Objects.requireNonNull(hourly, "hourly");
    }

    /** Before buying: everything short of opening up that a seller may allow, nothing that does damage. */
    public static CheckSettings beforeBuying(Set<String> ownedTools, Money hourly) {
        return new CheckSettings(EnumSet.complementOf(EnumSet.of(Stage.OPENED_UP)),
                EnumSet.complementOf(EnumSet.of(Leave.AFTER_PURCHASE)), false, ownedTools, hourly);
    }

    public CheckSettings withDamaging(boolean allowed) {
        return new CheckSettings(stages, leaves, allowed, ownedTools, hourly);
    }
}
