package worthsaving.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.csv.CSVRecord;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.catalog.Applicability;
import worthsaving.diagnosis.Diagnosis;
import worthsaving.diagnosis.PowertrainShares;
import worthsaving.vehicle.Powertrain.Engine;

/**
 * The chance, by exact inference, of finding an item failed on a car nothing is known of but age and
 * mileage, beside the answers the onsets were fitted to (src/bench/onset/points.csv): expert estimates
 * that hold secondary damage already.
 */
class MarginalsTest {

    /** Shape of the law, correlated causes and floors together; far less than the doubt on the answers. */
    @ParameterizedTest
    @CsvSource({"p6, 6, 60000, 0.30, 0.01", "p10, 10, 120000, 0.20, 0.01", "p15, 15, 180000, 0.30, 0.015"})
    void items_are_as_frequent_as_the_trade_says(
            String column, int years, double miles, double share, double least)
            throws IOException {
        Diagnosis nothingKnown = new TradeCar("", years, miles).diagnose("", "");
        Set<String> met = new HashSet<>();
        SoftAssertions soft = new SoftAssertions();
        for (CSVRecord row : points()) {
            String item = row.get("item");
            double asked = Double.parseDouble(row.get(column));
            double reached = nothingKnown.belief(item).prior().value()
                    / existing(TradeCar.CATALOGUE.itemsById().get(item).applies());
            soft.assertThat(reached).as(item).isCloseTo(asked, within(Math.max(least, share * asked)));
            met.add(item);
        }
        soft.assertThat(met).isEqualTo(TradeCar.CATALOGUE.itemsById().keySet());
        soft.assertAll();
    }

    /**
     * The answers are one figure for every car that has the part. Powertrains stray from it where a cause is
     * missing: no guides on a belt car that would block the pickup, no alternator on an electric car that
     * would ruin the battery.
     */
    @ParameterizedTest
    @ValueSource(strings = {
        "PETROL CHAIN AUTOMATIC FRONT", "PETROL BELT MANUAL REAR", "PETROL_TURBO CHAIN DUAL_CLUTCH ALL",
        "PETROL_TURBO BELT AUTOMATIC FRONT", "DIESEL BELT AUTOMATIC ALL", "DIESEL CHAIN MANUAL FRONT",
        "HYBRID CHAIN ELECTRIC_DRIVE FRONT", "PETROL CHAIN CVT FRONT", "ELECTRIC ELECTRIC_DRIVE FRONT"
    })
    void no_powertrain_strays_far_from_the_answers(String words) throws IOException {
        Diagnosis car = new TradeCar(words, 10, 120_000).diagnose("", "");
        SoftAssertions soft = new SoftAssertions();
        for (CSVRecord row : points()) {
            if (car.network().items().contains(row.get("item"))) {
                double asked = Double.parseDouble(row.get("p10"));
                soft.assertThat(car.belief(row.get("item")).prior().value())
                        .as(row.get("item"))
                        .isCloseTo(asked, within(Math.max(0.03, 0.3 * asked)));
            }
        }
        soft.assertAll();
    }

    /** Cars without complaint, ten years old: how many of them stand in a state that sells them to a flipper. */
    @ParameterizedTest
    @CsvSource({
        "PETROL CHAIN AUTOMATIC FRONT, NO_CRANK, 0.02, 0.06",
        "PETROL BELT MANUAL FRONT, NO_CRANK, 0.02, 0.06",
        "DIESEL BELT AUTOMATIC REAR, NO_CRANK, 0.02, 0.06",
        "PETROL CHAIN AUTOMATIC FRONT, CRANKS_NO_START, 0.02, 0.06",
        "PETROL BELT MANUAL FRONT, CRANKS_NO_START, 0.02, 0.07",
        "DIESEL BELT AUTOMATIC REAR, CRANKS_NO_START, 0.02, 0.10",
        "PETROL_TURBO CHAIN AUTOMATIC FRONT, KNOCKS, 0.02, 0.08",
        "PETROL CHAIN AUTOMATIC FRONT, OVERHEATS, 0.02, 0.07",
        "PETROL CHAIN AUTOMATIC FRONT, WILL_NOT_MOVE, 0.01, 0.05",
        "PETROL CHAIN CVT FRONT, WILL_NOT_MOVE, 0.01, 0.05",
        "PETROL CHAIN MANUAL FRONT, WILL_NOT_MOVE, 0.01, 0.05",
        "HYBRID CHAIN ELECTRIC_DRIVE FRONT, HYBRID_NOT_READY, 0.03, 0.12",
        "ELECTRIC ELECTRIC_DRIVE FRONT, HYBRID_NOT_READY, 0.03, 0.12",
        "PETROL CHAIN AUTOMATIC FRONT, STALLED_DRIVING, 0.01, 0.05"
    })
    void few_cars_stand_still(String words, String finding, double low, double high) {
        Diagnosis car = new TradeCar(words, 10, 120_000).diagnose("", "");

        assertThat(car.predictive(finding).value()).isBetween(low, high);
    }

    static double existing(Applicability applies) {
        PowertrainShares shares = PowertrainShares.USUAL;
        double engines = 0;
        for (Engine engine : applies.engines()) {
            engines += shares.engines().get(engine)
                    * applies.gearboxes().stream()
                            .mapToDouble(g -> shares.gearboxes().get(engine).getOrDefault(g, 0.0))
                            .sum();
        }
        return engines
                * applies.timings().stream().mapToDouble(shares.timings()::get).sum()
                * applies.drives().stream().mapToDouble(shares.drives()::get).sum();
    }

    static List<CSVRecord> points() throws IOException {
        return Resources.rows(Path.of("src", "bench", "onset", "points.csv"));
    }
}
