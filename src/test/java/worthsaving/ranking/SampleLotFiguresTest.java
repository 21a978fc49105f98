package worthsaving.ranking;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import worthsaving.HeldFigures;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.ShippedCatalogue;
import worthsaving.deal.Assessment;
import worthsaving.deal.PatternProfit;
import worthsaving.deal.WayOut;
import worthsaving.deal.WayResult;
import worthsaving.inspection.CheckValue;
import worthsaving.quantity.Money;
import worthsaving.quantity.Seed;
import worthsaving.repair.RepairPlan;

/**
 * Figures of the sample lot as they were computed before anything was made faster, at {@link Seed#DEFAULT}:
 * making it faster must not move them. They are the program's own and prove nothing about the outside. A
 * change of the catalogue or of a formula moves them rightly: then renew the file by
 * {@code mvn -Dtest=SampleLotFiguresTest -Dworthsaving.renew=true test} and commit it with that change.
 */
class SampleLotFiguresTest {

    private static final Path FILE = Path.of("src", "test", "resources", "ranking", "lot_figures.csv");
    private static final String HEADER = "id,profit,loss,worst,days,most,hours,cash,stopping,knowing,repairing,"
            + "plan,profits,checks";

    @Test
    void a_lot_judged_faster_comes_to_the_same_figures() throws IOException {
        Catalogue catalogue = ShippedCatalogue.load();
        Judge judge = new Judge(catalogue, SampleLot.byAge(), JudgeSettings.usual(catalogue, Seed.DEFAULT));
        List<String> now = SampleLot.read(catalogue).parallelStream().map(l -> line(judge.judge(l))).toList();
        assertThat(now).hasSize(25);
        HeldFigures.compare(FILE, Stream.concat(Stream.of(HEADER), now.stream()).toList());
    }

    private static String line(Judged judged) {
        Appraisal done = ((Judged.Done) judged).appraisal();
        Assessment a = done.assessment();
        WayResult repair = a.way(WayOut.REPAIR_AND_SELL);
        double[] figures = {
            a.bestWay().expectedProfit(),
            repair.chanceOfLoss(),
            repair.meanOfWorstTwentieth(),
            repair.days().mean(),
            a.mostToPay().limit().map(Money::amount).orElse(-1.0),
            repair.ownHours().value(),
            repair.cashOut().mean(),
            a.chanceOfStopping(),
            a.valueOfKnowing().amount(),
            repair.expectedProfit(),
            done.likelyPlan().map(RepairPlan::expectedCost).map(Money::amount).orElse(-1.0),
            profits(a.patternProfits()),
            checks(done.checks())
        };
        StringBuilder line = new StringBuilder(done.listing().id());
        for (double figure : figures) {
            line.append(',').append(figure);
        }
        return line.toString();
    }

    /** Each pattern by its own weight, so that two that trade places are noticed. */
    private static double profits(List<PatternProfit> all) {
        return IntStream.range(0, all.size())
                .mapToDouble(i -> Math.cos(i) * all.get(i).weight() * all.get(i).profit()[0]
                        + all.get(i).pattern().cardinality() * all.get(i).weight())
                .sum();
    }

    private static double checks(List<CheckValue> all) {
        return all.stream()
                .mapToDouble(c -> c.gross().amount() + c.chancePresent().value() + c.net().amount() / 100
                        + c.profitIfPresent().amount() / 1_000 + c.profitIfAbsent().amount() / 1_000)
                .sum();
    }
}
