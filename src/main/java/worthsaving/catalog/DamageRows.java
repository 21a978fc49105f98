package worthsaving.catalog;

import java.util.List;
import java.util.Optional;
import worthsaving.quantity.Probability;
import worthsaving.quantity.Range;
import worthsaving.vehicle.Exposure;

/** Rows of damage.csv. */
final class DamageRows {

    static final String FILE = "damage.csv";
    static final List<String> COLUMNS = List.of(
            "cause", "effect", "low", "mode", "high", "hazard", "if_stopped", "if_driven_on", "label", "source");

    private DamageRows() {}

    static DamageLink read(Row row, Ids items) {
        Range chance = row.probabilityRange("");
        Optional<Exposure.Hazard> hazard = row.text("hazard").isEmpty()
                ? Optional.empty()
                : Optional.of(row.choice("hazard", Exposure.Hazard.class));
        Probability usual = Probability.of(Math.min(1, chance.mode()));
        Probability stopped = usual;
        Probability drivenOn = usual;
        if (hazard.isPresent()) {
            stopped = row.probability("if_stopped");
            drivenOn = row.probability("if_driven_on");
            if (stopped.compareTo(usual) > 0 || drivenOn.compareTo(usual) < 0) {
                row.fault(
                        "if_stopped",
                        "driving on cannot make damage less likely: if_stopped may not exceed mode, nor mode"
                                + " if_driven_on");
            }
        } else if (!row.text("if_stopped").isEmpty() || !row.text("if_driven_on").isEmpty()) {
            row.fault("hazard", "name the hazard that if_stopped and if_driven_on depend on, or leave all three empty");
        }
        return new DamageLink(
                items.one(row, "cause"), items.one(row, "effect"), chance, hazard, stopped, drivenOn, row.source());
    }
}
