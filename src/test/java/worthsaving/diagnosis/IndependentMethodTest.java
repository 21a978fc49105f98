package worthsaving.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.ShippedCatalogue;

/**
 * The shipped catalogue against src/bench/diagnosis/reference.py, a second method written from the
 * definitions (signed sums over subsets of the findings seen, in 80-bit numbers). The number of cars can
 * be set by the system property worthsaving.reference.cars.
 */
class IndependentMethodTest {

    private static final String SCRIPT = "src/bench/diagnosis/reference.py";
    private static final double TOLERANCE = 1e-9;

    private static boolean pythonCanRunIt() throws InterruptedException {
        try {
            return new ProcessBuilder("python3", "-c", "import numpy").start().waitFor() == 0;
        } catch (IOException e) {
            return false;
        }
    }

    @Test
    void same_posteriors_for_random_cars() throws IOException, InterruptedException {
        assumeTrue(pythonCanRunIt(), "python3 with numpy is not there: the independent method was not compared");
        String cars = System.getProperty("worthsaving.reference.cars", "6");
        Process process = new ProcessBuilder("python3", SCRIPT, "--cars", cars)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        List<String> lines = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                .lines()
                .toList();
        assertThat(process.waitFor()).isZero();
        assertThat(lines).hasSize(Integer.parseInt(cars));
        Catalogue catalogue = ShippedCatalogue.load();
        for (String line : lines) {
            compare(catalogue, new ObjectMapper().readTree(line));
        }
    }

    private static void compare(Catalogue catalogue, JsonNode car) {
        Diagnosis diagnosis = ReferenceCar.network(catalogue, car).diagnose(ReferenceCar.evidence(car));

        assertThat(diagnosis.error()).isZero();
        assertThat(diagnosis.logEvidence()).isCloseTo(car.get("logEvidence").asDouble(), within(TOLERANCE));
        assertThat(diagnosis.beliefs()).hasSize(car.get("posteriors").size());
        for (Belief belief : diagnosis.beliefs()) {
            assertThat(belief.posterior().value())
                    .as(belief.item())
                    .isCloseTo(car.get("posteriors").get(belief.item()).asDouble(), within(TOLERANCE));
        }
    }
}
