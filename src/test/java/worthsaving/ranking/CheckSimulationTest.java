package worthsaving.ranking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.ShippedCatalogue;
import worthsaving.quantity.Seed;
import worthsaving.ranking.CheckSimulation.Car;
import worthsaving.ranking.CheckSimulation.Result;

/** A few simulated cars: what holds for each of them. Averages over 1,000 are in docs/next-check.md. */
class CheckSimulationTest {

    private static final Catalogue CATALOGUE = ShippedCatalogue.load();
    private static final CheckSimulation SIMULATION = new CheckSimulation(CATALOGUE, Seed.DEFAULT);
    private static final List<Car> CARS = IntStream.range(0, 12).mapToObj(SIMULATION::car).toList();

    private static Result inspect(CheckSimulation.Inspector inspector, Car car) {
        return inspector.inspect(car, new SplittableRandom(7));
    }

    @Test
    void nobody_does_better_than_knowing_the_truth() {
        for (Car car : CARS) {
            double most = inspect(SIMULATION.clairvoyant(), car).profit();
            for (CheckSimulation.Inspector i : List.of(SIMULATION.nextCheck(true), SIMULATION.nextCheck(false),
                    SIMULATION.withoutLooking(), SIMULATION.checklist(List.of(0, 1, 2)))) {
                Result result = inspect(i, car);
                assertThat(result.profit() + result.paid()).isLessThanOrEqualTo(most + 1e-6);
            }
        }
    }

    @Test
    void the_same_number_is_the_same_car() {
        Car again = new CheckSimulation(CATALOGUE, Seed.DEFAULT).car(3);
        assertThat(again.weights()).containsExactly(CARS.get(3).weights(), within(0.0));
        assertThat(again.truth()).isEqualTo(CARS.get(3).truth());
        assertThat(again.present()).containsExactly(CARS.get(3).present());
    }

    @Test
    void looking_is_paid_for_and_stops() {
        int made = 0;
        for (Car car : CARS) {
            Result next = inspect(SIMULATION.nextCheck(true), car);
            Result random = inspect(SIMULATION.atRandom(SIMULATION.nextCheck(true)), car);
            assertThat(random.checks()).isEqualTo(next.checks()).isLessThanOrEqualTo(30);
            assertThat(next.paid() > 0).isEqualTo(next.checks() > 0);
            made += next.checks();
        }
        assertThat(made).isPositive();
    }
}
