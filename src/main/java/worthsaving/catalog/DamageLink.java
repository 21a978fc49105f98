package worthsaving.catalog;

import java.util.Optional;
import worthsaving.quantity.Probability;
import worthsaving.quantity.Range;
import worthsaving.quantity.Source;
import worthsaving.vehicle.Exposure;

/**
 * Secondary damage: the chance that a failed cause has by now killed another item.
 *
 * @param chance range of the usual figure, exposure unknown
 * @param hazard the state in which running on matters, if any
 * @param ifStopped the figure when the car was stopped at once
 * @param ifDrivenOn the figure when it was driven on
 */
public record DamageLink(
        String cause,
        String effect,
        Range chance,
        Optional<Exposure.Hazard> hazard,
        Probability ifStopped,
        Probability ifDrivenOn,
        Source source) {

    public Probability chance(Exposure exposure) {
        return switch (hazard.map(exposure::level).orElse(Exposure.Level.UNKNOWN)) {
            case STOPPED_AT_ONCE -> ifStopped;
            case DRIVEN_ON -> ifDrivenOn;
            case UNKNOWN -> Probability.of(chance.mode());
        };
    }
}
