package worthsaving.trade;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
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

    /** Every pair that shares a cause; only what was seen with the part opened up may be as good as certain. */
    @Test
    void no_two_findings_of_one_cause_make_it_certain() {
        FailureNetwork network =
                new TradeCar("PETROL_TURBO CHAIN AUTOMATIC FRONT", 10, 120_000).network(Exposure.UNKNOWN);
        Set<String> opened = TradeCar.CATALOGUE.findings().stream()
                .filter(f -> f.stage() == FindingKind.Stage.OPENED_UP)
                .map(FindingKind::id)
                .collect(Collectors.toSet());
        Map<String, List<String>> findingsByItem = TradeCar.CATALOGUE.findingLinks().stream()
                .filter(l -> network.items().contains(l.item()) && !opened.contains(l.finding()))
                .collect(Collectors.groupingBy(
                        FindingLink::item, Collectors.mapping(FindingLink::finding, Collectors.toList())));
        Set<String> pairs = new TreeSet<>();
        findingsByItem.values().forEach(findings -> findings.forEach(first -> findings.stream()
                .filter(second -> first.compareTo(second) < 0)
                .forEach(second -> pairs.add("+" + first + " +" + second))));

        assertThat(pairs).hasSizeGreaterThan(1000).allSatisfy(pair -> assertThat(
                        network.diagnose(TradeCar.evidence(pair)).beliefs())
                .noneMatch(b -> b.posterior().value() > 0.995));
    }

    private static double chance(TradeCar car, String evidence, CSVRecord row) {
        return car.diagnose(evidence, "").belief(row.get("item")).posterior().value();
    }
}
