package worthsaving.trade;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import worthsaving.diagnosis.Diagnosis;

/**
 * Statements of the trade, each tried for direction and size: src/test/resources/trade/statements.csv.
 * Common practice, no source.
 */
class TradeSenseTest {

    record Statement(
            String no, TradeCar car, String before, String added, String exposureBefore, String exposure, String item,
            String measure, double low, double high, String because) {

        static Statement of(CSVRecord row) {
            return new Statement(
                    row.get("no"),
                    new TradeCar(row.get("car"), number(row, "years"), number(row, "miles")),
                    row.get("before"),
                    row.get("added"),
                    row.get("exposure_before"),
                    row.get("exposure"),
                    row.get("item"),
                    row.get("measure"),
                    number(row, "low"),
                    number(row, "high"),
                    row.get("because"));
        }

        private static double number(CSVRecord row, String column) {
            return row.get(column).isEmpty() ? Double.NaN : Double.parseDouble(row.get(column));
        }

        double chanceBefore() {
            return chance(car.diagnose(before, exposureBefore));
        }

        double chanceAfter() {
            return chance(car.diagnose(before + " " + added, exposure));
        }

        private double chance(Diagnosis diagnosis) {
            return diagnosis.belief(item).posterior().value();
        }

        @Override
        public String toString() {
            return no + " " + item + ": " + because;
        }
    }

    static Stream<Statement> statements() throws IOException {
        return Resources.rows(Resources.TRADE.resolve("statements.csv")).stream().map(Statement::of);
    }

    @ParameterizedTest
    @MethodSource("statements")
    void the_network_agrees_with_the_trade(Statement s) {
        switch (s.measure()) {
            case "times" -> assertThat(s.chanceAfter() / s.chanceBefore())
                    .as("%s: %.4f after %.4f", s, s.chanceAfter(), s.chanceBefore())
                    .isBetween(s.low(), s.high());
            case "chance" -> assertThat(s.chanceAfter()).as(s.toString()).isBetween(s.low(), s.high());
            case "none" -> assertThat(s.car().diagnose(s.before() + " " + s.added(), s.exposure()).network().items())
                    .as(s.toString())
                    .isNotEmpty()
                    .doesNotContain(s.item());
            default -> throw new IllegalArgumentException(s.no() + ": measure " + s.measure());
        }
    }

    @Test
    void statements_can_fail() throws IOException {
        assertThat(statements()).hasSizeGreaterThanOrEqualTo(45);
        assertThat(statements().filter(s -> !s.measure().equals("none"))).allSatisfy(s -> {
            assertThat(s.low()).as(s.toString()).isLessThan(s.high());
            assertThat(s.measure().equals("times") || s.low() > 0 || s.high() < 0.5).as(s.toString()).isTrue();
        });
    }
}
