package worthsaving.desktop.car;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import worthsaving.catalog.FindingKind;
import worthsaving.catalog.FindingKind.Stage;
import worthsaving.vehicle.Observation.Sight;

class ChecklistTest {

    private final Checklist checklist = new Checklist(Cars.GROUND.catalogue().findings());

    @Test
    void every_finding_of_the_catalogue_stands_in_one_stage() {
        int sum = Stream.of(Stage.values()).mapToInt(checklist::size).sum();
        assertThat(sum).isEqualTo(Cars.GROUND.catalogue().findings().size());
    }

    @Test
    void words_and_trouble_codes_find_a_finding() {
        assertThat(checklist.matching(Stage.ADVERT, "HEATS  over")).extracting(FindingKind::id).contains("OVERHEATS");
        assertThat(checklist.matching(Stage.ADVERT, "p0217")).extracting(FindingKind::id).containsExactly("OVERHEATS");
        assertThat(checklist.matching(Stage.ADVERT, "no such thing")).isEmpty();
        assertThat(checklist.matching(Stage.ADVERT, "")).hasSize(checklist.size(Stage.ADVERT));
    }

    @Test
    void what_was_looked_at_is_counted() {
        Scenario scenario = Scenario.of(Cars.overheated());
        assertThat(checklist.known(Stage.ADVERT, scenario)).isEqualTo(1);
        assertThat(checklist.known(Stage.ADVERT, scenario.seen("KNOCKS", Sight.UNSURE))).isEqualTo(2);
        assertThat(checklist.known(Stage.ADVERT, scenario.seen("OVERHEATS", Sight.NOT_LOOKED_AT))).isZero();
    }
}
