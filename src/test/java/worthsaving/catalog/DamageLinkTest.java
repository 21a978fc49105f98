package worthsaving.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import worthsaving.quantity.Probability;
import worthsaving.quantity.Range;
import worthsaving.quantity.Source;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Exposure.Hazard;
import worthsaving.vehicle.Exposure.Level;

class DamageLinkTest {

    private static DamageLink link(Hazard hazard) {
        return new DamageLink(
                "PICKUP",
                "BEARING",
                new Range(0.2, 0.3, 0.5),
                Optional.ofNullable(hazard),
                Probability.of(0.05),
                Probability.of(0.7),
                Source.guess("invented"));
    }

    @Test
    void depends_on_how_long_it_was_driven_in_its_own_hazard() {
        DamageLink link = link(Hazard.LOW_OIL_PRESSURE);

        assertThat(link.chance(new Exposure(Map.of(Hazard.LOW_OIL_PRESSURE, Level.STOPPED_AT_ONCE))))
                .isEqualTo(Probability.of(0.05));
        assertThat(link.chance(new Exposure(Map.of(Hazard.LOW_OIL_PRESSURE, Level.DRIVEN_ON))))
                .isEqualTo(Probability.of(0.7));
        assertThat(link.chance(Exposure.UNKNOWN)).isEqualTo(Probability.of(0.3));
        assertThat(link.chance(new Exposure(Map.of(Hazard.OVERHEATING, Level.DRIVEN_ON))))
                .isEqualTo(Probability.of(0.3));
    }

    @Test
    void without_a_hazard_exposure_changes_nothing() {
        assertThat(link(null).chance(new Exposure(Map.of(Hazard.LOW_OIL_PRESSURE, Level.DRIVEN_ON))))
                .isEqualTo(Probability.of(0.3));
    }

    @Test
    void shipped_links_do_more_damage_the_longer_it_is_driven() {
        assertThat(ShippedCatalogue.load().damage().stream().filter(d -> d.hazard().isPresent()))
                .isNotEmpty()
                .allSatisfy(d -> assertThat(d.chance().mode())
                        .as(d.cause() + " > " + d.effect())
                        .isGreaterThan(d.ifStopped().value())
                        .isLessThan(d.ifDrivenOn().value()));
    }
}
