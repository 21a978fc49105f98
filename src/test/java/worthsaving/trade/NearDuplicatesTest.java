package worthsaving.trade;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import worthsaving.catalog.FindingKind;
import worthsaving.catalog.FindingLink;
import worthsaving.diagnosis.FailureNetwork;
import worthsaving.vehicle.Exposure;

/** Two findings of one cause raise it, but alone they do not settle it. */
class NearDuplicatesTest {

    static Stream<CSVRecord> pairs() throws IOException {
        return Resources.rows(Resources.TRADE.resolve("near_duplicates.csv")).stream();
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void two_views_of_one_thing_are_not_certainty(CSVRecord row) {
        TradeCar car = new TradeCar(row.get("car"), 10, 120_000);

        double prior = chance(car, "", row);
        double one = Math.max(chance(car, "+" + row.get("first"), row), chance(car, "+" + row.get("second"), row));
        double both = chance(car, "+" + row.get("first") + " +" + row.get("second"), row);

        assertThat(one).isGreaterThan(prior);
        assertThat(both).isGreaterThan(prior).isLessThanOrEqualTo(Double.parseDouble(row.get("at_most")));
    }

    /** Only what was seen with the part opened up may be as good as certain. */
    @Test
    void no_two_findings_alone_make_an_item_certain() {
        FailureNetwork network =
                new TradeCar("PETROL_TURBO CHAIN AUTOMATIC FRONT", 10, 120_000).network(Exposure.UNKNOWN);
        Set<String> shown = TradeCar.CATALOGUE.findingLinks().stream()
                .filter(l -> network.items().contains(l.item()))
                .map(FindingLink::finding)
                .collect(Collectors.toSet());
        List<String> findings = TradeCar.CATALOGUE.findings().stream()
                .filter(f -> f.stage() != FindingKind.Stage.OPENED_UP && shown.contains(f.id()))
                .map(FindingKind::id)
                .toList();
        List<String> certain = new ArrayList<>();
        for (int i = 1; i < findings.size(); i++) {
            for (String other : findings.subList(0, i)) {
                network.diagnose(TradeCar.evidence("+" + findings.get(i) + " +" + other)).beliefs().stream()
                        .filter(b -> b.posterior().value() > 0.995)
                        .forEach(b -> certain.add(b + " after " + other));
            }
        }
        assertThat(certain).isEmpty();
    }

    private static double chance(TradeCar car, String evidence, CSVRecord row) {
        return car.diagnose(evidence, "").belief(row.get("item")).posterior().value();
    }
}
