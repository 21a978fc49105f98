package worthsaving.teardown;

import java.util.Objects;
import java.util.Optional;
import worthsaving.quantity.Money;

/**
 * A car taken apart for its owner: what stands on the bill, and what is left of the amount agreed.
 *
 * @param labour hours so far at the workshop's rate
 * @param receipts parts and material of the journal
 * @param agreed most that the owner agreed to for the whole job, where there is such an agreement
 */
public record OwnerJob(Money labour, Money receipts, Optional<Money> agreed) {

    public OwnerJob {
        Objects.requireNonNull(agreed, "agreed");
        agreed.ifPresent(a -> a.compareTo(labour)); // refuses another currency
    }

    /** @param rate the workshop's hour */
    public static OwnerJob of(Journal journal, Money rate, Optional<Money> agreed) {
        return new OwnerJob(journal.hours().at(rate), journal.paid(Money.zero(rate.currency())), agreed);
    }

    public Money billed() {
        return labour.plus(receipts);
    }

    /** What may still be put on the bill without another call; below zero when it is passed. */
    public Optional<Money> left() {
        return agreed.map(a -> a.minus(billed()));
    }
}
