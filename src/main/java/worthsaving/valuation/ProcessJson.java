package worthsaving.valuation;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * The part "process" of a saved price model: how facts become coordinates, what each weighs, and for every car of the
 * data its numbers, the places of its words in the lists, and its pull.
 */
final class ProcessJson {

    private ProcessJson() {}

    static void write(GaussianProcess process, JsonGenerator out) throws IOException {
        FactSpace space = process.space();
        out.writeRaw('\n');
        out.writeObjectFieldStart("process");
        PriceModelJson.numbers("center", space.center(), out);
        PriceModelJson.numbers("scale", space.scale(), out);
        out.writeArrayFieldStart("features");
        for (String name : space.features()) {
            out.writeString(name);
        }
        out.writeEndArray();
        PriceModelJson.writeWords(space.words(), out);
        PriceModelJson.numbers("weight", process.likeness().weight(), out);
        PriceModelJson.numbers("noise", new double[] {process.likeness().noise()}, out);
        PriceModelJson.numbers("pull", process.pull(), out);
        out.writeArrayFieldStart("cars");
        for (FactSpace.Point car : process.points()) {
            out.writeStartArray();
            PriceModelJson.numbers(car.numbers(), out);
            out.writeArray(car.codes(), 0, car.codes().length);
            out.writeEndArray();
        }
        out.writeEndArray();
        out.writeEndObject();
    }

    /** @throws IllegalArgumentException naming what is missing or does not fit */
    static GaussianProcess read(JsonNode node) {
        List<Map<String, Integer>> words = ModelParts.codes(node);
        FactSpace space = new FactSpace(
                ModelParts.numbers(ModelParts.need(node, "center"), FactSpace.NUMBERS.size()),
                ModelParts.numbers(ModelParts.need(node, "scale"), FactSpace.NUMBERS.size()),
                words,
                ModelParts.words(ModelParts.need(node, "features")));
        Likeness likeness = new Likeness(
                ModelParts.numbers(ModelParts.need(node, "weight"), space.facts()),
                ModelParts.numbers(ModelParts.need(node, "noise"), 1)[0]);
        JsonNode cars = ModelParts.need(node, "cars");
        List<FactSpace.Point> points = new ArrayList<>();
        for (JsonNode car : cars) {
            points.add(new FactSpace.Point(
                    ModelParts.numbers(car.path(0), FactSpace.NUMBERS.size()), codes(car.path(1), words.size())));
        }
        return new GaussianProcess(space, likeness, points,
                ModelParts.numbers(ModelParts.need(node, "pull"), points.size()));
    }

    private static int[] codes(JsonNode node, int count) {
        return Arrays.stream(ModelParts.numbers(node, count)).mapToInt(v -> (int) v).toArray();
    }
}
