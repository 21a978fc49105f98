package worthsaving.valuation;

import static worthsaving.valuation.ModelParts.need;
import static worthsaving.valuation.ModelParts.words;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** The model card within the model's JSON. */
final class CardJson {

    private CardJson() {}

    static void write(ModelCard card, JsonGenerator out) throws IOException {
        out.writeStartObject();
        out.writeStringField("name", card.name());
        out.writeStringField("market", card.market());
        out.writeStringField("currency", card.currency());
        out.writeStringField("priceKind", card.priceKind());
        out.writeStringField("source", card.source());
        out.writeStringField("licence", card.licence());
        out.writeStringField("firstDay", card.firstDay().toString());
        out.writeStringField("lastDay", card.lastDay().toString());
        out.writeNumberField("rows", card.rows());
        out.writeNumberField("makes", card.makes());
        out.writeNumberField("models", card.models());
        out.writeNumberField("seed", card.seed());
        strings("cleaning", card.cleaning(), out);
        strings("limits", card.limits(), out);
        out.writeArrayFieldStart("candidates");
        for (ModelCard.Candidate c : card.candidates()) {
            out.writeStartObject();
            out.writeStringField("name", c.name());
            PriceModelJson.numbers("figures",
                    new double[] {c.medianError(), c.meanError(), c.rSquared(), c.weight()}, out);
            out.writeEndObject();
        }
        out.writeEndArray();
        out.writeArrayFieldStart("bands");
        for (ModelCard.Band b : card.bands()) {
            out.writeStartObject();
            PriceModelJson.numbers("figures", new double[] {b.upTo(), b.rows(), b.coverage(), b.width()}, out);
            out.writeEndObject();
        }
        out.writeEndArray();
        out.writeEndObject();
    }

    private static void strings(String name, List<String> texts, JsonGenerator out) throws IOException {
        out.writeArrayFieldStart(name);
        for (String text : texts) {
            out.writeString(text);
        }
        out.writeEndArray();
    }

    static ModelCard read(JsonNode node) {
        List<ModelCard.Candidate> candidates = new ArrayList<>();
        for (JsonNode c : need(node, "candidates")) {
            double[] f = ModelParts.numbers(need(c, "figures"), 4);
            candidates.add(new ModelCard.Candidate(need(c, "name").asText(), f[0], f[1], f[2], f[3]));
        }
        List<ModelCard.Band> bands = new ArrayList<>();
        for (JsonNode b : need(node, "bands")) {
            double[] f = ModelParts.numbers(need(b, "figures"), 4);
            double upTo = Double.isNaN(f[0]) ? Double.POSITIVE_INFINITY : f[0];
            bands.add(new ModelCard.Band(upTo, (long) f[1], f[2], f[3]));
        }
        return new ModelCard(
                need(node, "name").asText(),
                need(node, "market").asText(),
                need(node, "currency").asText(),
                need(node, "priceKind").asText(),
                need(node, "source").asText(),
                need(node, "licence").asText(),
                LocalDate.parse(need(node, "firstDay").asText()),
                LocalDate.parse(need(node, "lastDay").asText()),
                need(node, "rows").asLong(),
                need(node, "makes").asInt(),
                need(node, "models").asInt(),
                words(need(node, "cleaning")),
                candidates,
                bands,
                need(node, "seed").asLong(),
                words(need(node, "limits")));
    }
}
