package worthsaving.valuation;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.zip.CRC32;

/**
 * Keeping of price models as JSON with a version and, as last field, the CRC-32 of all text before it. Nothing
 * but numbers, words and lists is read: no class names, no code.
 */
final class PriceModelJson {

    private static final String FORMAT = "worthsaving price model";
    private static final int VERSION = 4;

    /** Without a Gaussian process, and without further columns either: what earlier programs read too. */
    private static final int COLUMNS_VERSION = 3;
    private static final int PLAIN_VERSION = 2;
    private static final int MOST_CHARACTERS = 64 << 20;
    private static final String CHECKSUM = ",\n\"crc32\":";
    private static final ObjectMapper JSON = new ObjectMapper();

    private PriceModelJson() {}

    static void write(PriceModel model, Writer writer) throws IOException {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = new JsonFactory().createGenerator(text)) {
            out.writeStartObject();
            out.writeStringField("format", FORMAT);
            out.writeNumberField("version", version(model.point));
            out.writeFieldName("card");
            CardJson.write(model.card(), out);
            writePoint(model.point, out);
            out.writeObjectFieldStart("spread");
            writeTrees("down", model.spread.down(), out);
            writeTrees("up", model.spread.up(), out);
            numbers("edges", model.spread.edges(), out);
            out.writeArrayFieldStart("ranks");
            for (double[] band : model.spread.ranks()) {
                numbers(band, out);
            }
            out.writeEndArray();
            out.writeEndObject();
            Guard guard = model.guard;
            numbers("guard", new double[] {guard.oldest(), guard.farthest(), guard.makeSpread(), guard.modelSpread(),
                guard.fewRows()}, out);
            writeTypical(model.typical, out);
            writeUsual(model.usual, out);
            out.writeEndObject();
        }
        String body = text.toString();
        String open = body.substring(0, body.length() - 1);
        writer.append(open).append(CHECKSUM).append(Long.toString(crc(open))).append("}\n");
    }

    private static int version(PointModel point) {
        if (point.process().fitted()) {
            return VERSION;
        }
        return point.encoder().features().isEmpty() ? PLAIN_VERSION : COLUMNS_VERSION;
    }

    private static void writePoint(PointModel point, JsonGenerator out) throws IOException {
        writeLevels("makes", point.encoder().makes(), out);
        writeLevels("models", point.encoder().models(), out);
        if (!point.encoder().features().isEmpty()) {
            out.writeObjectFieldStart("features");
            for (Map.Entry<String, SortedMap<String, Encoder.Level>> feature : point.encoder().features().entrySet()) {
                writeLevels(feature.getKey(), feature.getValue(), out);
            }
            out.writeEndObject();
        }
        writeWords(point.encoder().words(), out);
        out.writeArrayFieldStart("columns");
        for (String name : point.hedonic().design().names()) {
            out.writeString(name);
        }
        out.writeEndArray();
        numbers("coefficients", point.hedonic().coefficients(), out);
        for (Ensemble e : Ensemble.ALL) {
            writeTrees(e.key(), point.trees().get(e.ordinal()), out);
        }
        boolean process = point.process().fitted();
        numbers("weights", process ? point.weights() : Arrays.copyOf(point.weights(), PointModel.PROCESS), out);
        if (process) {
            ProcessJson.write(point.process(), out);
        }
        numbers("center", new double[] {point.center()}, out);
    }

    /** Lists of words in the order of their codes; {@link ModelParts#codes} reads them. */
    static void writeWords(List<Map<String, Integer>> all, JsonGenerator out) throws IOException {
        out.writeArrayFieldStart("words");
        for (Map<String, Integer> words : all) {
            out.writeStartArray();
            for (String word : ModelParts.inOrder(words)) {
                out.writeString(word);
            }
            out.writeEndArray();
        }
        out.writeEndArray();
    }

    private static void writeLevels(String name, Map<String, Encoder.Level> levels, JsonGenerator out)
            throws IOException {
        out.writeObjectFieldStart(name);
        for (Map.Entry<String, Encoder.Level> entry : levels.entrySet()) {
            Encoder.Level l = entry.getValue();
            numbers(entry.getKey(), new double[] {l.rows(), l.level(), l.whenNew(), l.loss()}, out);
        }
        out.writeEndObject();
    }

    private static void writeTrees(String name, TreeEnsemble trees, JsonGenerator out) throws IOException {
        out.writeRaw('\n');
        out.writeObjectFieldStart(name);
        out.writeFieldName("shape");
        out.writeArray(trees.shape(), 0, trees.shape().length);
        out.writeArrayFieldStart("values");
        for (float v : trees.values()) {
            out.writeNumber(Numerals.shortest(v));
        }
        out.writeEndArray();
        out.writeArrayFieldStart("sets");
        for (long[] set : trees.sets()) {
            out.writeString(Numerals.hex(set));
        }
        out.writeEndArray();
        out.writeEndObject();
    }

    private static void writeTypical(CarFacts car, JsonGenerator out) throws IOException {
        out.writeObjectFieldStart("typical");
        out.writeArrayFieldStart("words");
        for (String word : List.of(car.make(), car.model(), car.condition(), car.fuel(), car.gearbox(), car.body(),
                car.drive(), car.title())) {
            out.writeString(word);
        }
        out.writeEndArray();
        numbers("numbers", new double[] {car.year(), car.age(), car.miles(), car.cylinders(), car.litres(), car.power(),
            car.damage(), car.day()}, out);
        if (!car.features().isEmpty()) {
            out.writeObjectFieldStart("features");
            for (Map.Entry<String, String> feature : car.features().entrySet()) {
                out.writeStringField(feature.getKey(), feature.getValue());
            }
            out.writeEndObject();
        }
        out.writeEndObject();
    }

    private static void writeUsual(UsualFacts usual, JsonGenerator out) throws IOException {
        out.writeObjectFieldStart("usual");
        for (Map.Entry<String, UsualFacts.Usual> entry : usual.byName().entrySet()) {
            UsualFacts.Usual u = entry.getValue();
            out.writeArrayFieldStart(entry.getKey());
            out.writeString(u.fuel());
            out.writeString(u.gearbox());
            out.writeString(u.body());
            numbers(new double[] {u.cylinders(), u.litres(), u.power()}, out);
            out.writeEndArray();
        }
        out.writeEndObject();
    }

    static void numbers(String name, double[] values, JsonGenerator out) throws IOException {
        out.writeFieldName(name);
        numbers(values, out);
    }

    /** Finite numbers as such, the others as null. */
    static void numbers(double[] values, JsonGenerator out) throws IOException {
        out.writeStartArray();
        for (double v : values) {
            if (Double.isFinite(v)) {
                out.writeNumber(Numerals.shortest(v));
            } else {
                out.writeNull();
            }
        }
        out.writeEndArray();
    }

    private static long crc(String text) {
        CRC32 crc = new CRC32();
        crc.update(text.getBytes(StandardCharsets.UTF_8));
        return crc.getValue();
    }

    static PriceModel read(Reader reader, String name) throws IOException {
        String text = slurp(reader, name);
        int end = text.lastIndexOf(CHECKSUM);
        JsonNode root;
        try {
            root = JSON.readTree(text);
        } catch (JsonProcessingException e) {
            throw fault(name, "is damaged or no price model: not JSON at line " + e.getLocation().getLineNr()
                    + ", column " + e.getLocation().getColumnNr(), e);
        }
        if (root == null || !FORMAT.equals(root.path("format").asText())) {
            throw fault(name, "is no price model", null);
        }
        if (root.path("version").asInt() > VERSION) {
            throw fault(name, "was written by a newer version (format " + root.path("version").asInt()
                    + ", this one reads " + VERSION + "): update the program", null);
        }
        if (root.path("version").asInt() < PLAIN_VERSION) {
            throw fault(name, "was written by an older version (format " + root.path("version").asInt()
                    + ", this one reads " + VERSION + ")", null);
        }
        if (end < 0 || root.path("crc32").asLong(-1) != crc(text.substring(0, end))) {
            throw fault(name, "is damaged: its checksum does not match its content", null);
        }
        try {
            return ModelParts.model(root);
        } catch (IllegalArgumentException | IndexOutOfBoundsException | NullPointerException e) {
            throw fault(name, "is damaged: " + e.getMessage(), e);
        }
    }

    private static ModelFormatException fault(String name, String what, Exception cause) {
        return new ModelFormatException(name + " " + what + ". Fit the model again or take a good copy.", cause);
    }

    private static String slurp(Reader reader, String name) throws IOException {
        StringBuilder text = new StringBuilder();
        char[] buffer = new char[1 << 16];
        for (int n = reader.read(buffer); n >= 0; n = reader.read(buffer)) {
            text.append(buffer, 0, n);
            if (text.length() > MOST_CHARACTERS) {
                throw fault(name, "is too large for a price model", null);
            }
        }
        return text.toString();
    }
}
