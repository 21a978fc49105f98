package worthsaving.diagnosis;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.ShippedCatalogue;
import worthsaving.diagnosis.inference.BucketTree;
import worthsaving.vehicle.Powertrain.Engine;

/**
 * All posteriors of the shipped catalogue after twenty findings, one car after another. The cars come
 * from a file that reference.py wrote; its own time is printed by itself.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 3)
@Measurement(iterations = 6, time = 5)
@Fork(1)
public class DiagnosisBench {

    /** Files of cars in target/diagnosis-bench. */
    @Param({"narrow", "any"})
    public String cars;

    private record Car(FailureNetwork network, FailureModel model, Evidence evidence, JsonNode expected) {}

    private final List<Car> lot = new ArrayList<>();
    private int next;

    @Setup(Level.Trial)
    public void read() throws IOException {
        Catalogue catalogue = ShippedCatalogue.load();
        ObjectMapper mapper = new ObjectMapper();
        for (String line : Files.readAllLines(Path.of("target", "diagnosis-bench", cars + ".jsonl"))) {
            JsonNode json = mapper.readTree(line);
            FailureNetwork network = ReferenceCar.network(catalogue, json);
            lot.add(new Car(network, model(catalogue, json), ReferenceCar.evidence(json), json.get("posteriors")));
        }
    }

    private static FailureModel model(Catalogue catalogue, JsonNode json) {
        Engine engine = Engine.valueOf(json.get("powertrain").get("engine").asText());
        PowertrainBits powertrain = new PowertrainBits(
                engine, ReferenceCar.vehicle(json).powertrain(), PowertrainShares.USUAL);
        CarAge age = CarAge.of(ReferenceCar.vehicle(json), LocalDate.of(2026, 1, 1));
        return FailureModel.of(catalogue, powertrain, ReferenceCar.exposure(json), age, Map.of());
    }

    private Car car() {
        next = (next + 1) % lot.size();
        return lot.get(next);
    }

    @Benchmark
    public double full_update() {
        Car car = car();
        double sum = 0;
        for (Belief belief : car.network().diagnose(car.evidence()).beliefs()) {
            sum += belief.posterior().value();
        }
        return sum;
    }

    /** The same tree without OR variables: full tables for what was seen present, up to twelve causes. */
    @Benchmark
    public double full_tables_one_pass() {
        Car car = car();
        return ExactPosterior.of(car.model(), car.evidence(), 12, BucketTree.WIDTH_GUARD + 2)
                .orElseThrow()
                .marginal(0);
    }

    @Benchmark
    public double plain_elimination() {
        Car car = car();
        return new PlainElimination(car.model(), car.evidence()).posteriors()[0];
    }

    /** Says how far the three agree, so that the times are of the same answers. */
    public static void main(String[] args) throws IOException {
        for (String file : args) {
            DiagnosisBench bench = new DiagnosisBench();
            bench.cars = file;
            bench.read();
            double plain = 0;
            double script = 0;
            for (Car car : bench.lot) {
                Map<String, Integer> numbers = car.model().indexOf();
                double[] textbook = file.equals("any")
                        ? null
                        : new PlainElimination(car.model(), car.evidence()).posteriors();
                for (Belief belief : car.network().diagnose(car.evidence()).beliefs()) {
                    double p = belief.posterior().value();
                    script = Math.max(script, Math.abs(p - car.expected().get(belief.item()).asDouble()));
                    if (textbook != null) {
                        plain = Math.max(plain, Math.abs(p - textbook[numbers.get(belief.item())]));
                    }
                }
            }
            System.out.printf("%s: %d cars, largest difference to the script %.1e, to plain elimination %.1e%n",
                    file, bench.lot.size(), script, plain);
        }
    }
}
