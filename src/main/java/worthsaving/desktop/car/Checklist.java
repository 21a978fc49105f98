package worthsaving.desktop.car;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import worthsaving.catalog.FindingKind;
import worthsaving.catalog.FindingKind.Stage;
import worthsaving.vehicle.Observation.Sight;
import worthsaving.vehicle.Observation.Witness;

/** The findings of the catalogue by how one meets them, narrowed by words. */
final class Checklist {

    private final Map<Stage, List<FindingKind>> byStage = new EnumMap<>(Stage.class);

    Checklist(List<FindingKind> findings) {
        for (Stage stage : Stage.values()) {
            byStage.put(stage, findings.stream().filter(f -> f.stage() == stage).toList());
        }
    }

    /** Findings of a stage whose name, question, id or codes hold all the words. */
    List<FindingKind> matching(Stage stage, String words) {
        List<String> all = Arrays.asList(words.toLowerCase(Locale.ROOT).strip().split("\\s+"));
        return byStage.get(stage).stream()
                .filter(f -> all.stream().allMatch(text(f)::contains))
                .toList();
    }

    /** How many of a stage have been looked at, or are claimed by the seller. */
    long known(Stage stage, Scenario scenario) {
        return byStage.get(stage).stream()
                .filter(f -> scenario.sight(f.id(), Witness.OWN_EYES) != Sight.NOT_LOOKED_AT
                        || scenario.sight(f.id(), Witness.SELLER) != Sight.NOT_LOOKED_AT)
                .count();
    }

    int size(Stage stage) {
        return byStage.get(stage).size();
    }

    private static String text(FindingKind f) {
        return (f.name() + '\n' + f.question() + '\n' + f.id() + '\n' + f.codes()).toLowerCase(Locale.ROOT);
    }
}
