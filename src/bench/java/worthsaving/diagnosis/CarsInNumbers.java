package worthsaving.diagnosis;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FindingKind;
import worthsaving.catalog.ShippedCatalogue;
import worthsaving.deal.Term;
import worthsaving.diagnosis.inference.NoisyOr;
import worthsaving.quantity.Distribution;
import worthsaving.quantity.Range;
import worthsaving.quantity.Seed;
import worthsaving.ranking.JudgeSettings;
import worthsaving.ranking.SampleLot;
import worthsaving.repair.RepairPlan;
import worthsaving.repair.RepairPlanner;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.Powertrain.Engine;

/**
 * Writes the cars of the sample lot as bare numbers for judgement.py: the failure network, what was seen, each item's
 * own job and the money lines at their means. Cars whose engine is not known are left out. Run main in the project's
 * folder; the argument is the file to write.
 */
public final class CarsInNumbers {

    private static final LocalDate DAY = LocalDate.of(2025, 11, 25);
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final Catalogue catalogue = ShippedCatalogue.load();
    private final JudgeSettings settings = JudgeSettings.usual(catalogue, Seed.DEFAULT);
    private final RepairPlanner planner = new RepairPlanner(catalogue, settings.workshop());

    private CarsInNumbers() {}

    public static void main(String[] args) throws IOException {
        CarsInNumbers cars = new CarsInNumbers();
        List<String> lines = new ArrayList<>();
        for (Listing listing : SampleLot.read(cars.catalogue)) {
            if (listing.vehicle().powertrain().engine().get().isPresent()) {
                lines.add(cars.car(listing).toString());
            }
        }
        Files.write(Path.of(args[0]), lines);
        System.out.println(lines.size() + " cars written");
    }

    private ObjectNode car(Listing listing) {
        Engine engine = listing.vehicle().powertrain().engine().get().get();
        Witnesses witnesses = new Witnesses(catalogue, settings.trust());
        FailureModel model = FailureModel.of(catalogue,
                new PowertrainBits(engine, listing.vehicle().powertrain(), PowertrainShares.USUAL), listing.exposure(),
                CarAge.of(listing.vehicle(), DAY), witnesses.unmentioned(listing));
        Evidence evidence = witnesses.evidence(listing.observations());
        ObjectNode car = MAPPER.createObjectNode();
        car.put("id", listing.id());
        ArrayNode order = car.putArray("order");
        IntStream.of(model.causesFirst()).forEach(order::add);
        ArrayNode items = car.putArray("items");
        for (int i = 0; i < model.itemCount(); i++) {
            ObjectNode item = or(items.addObject(), model.failures().get(i));
            Likelihood seen = evidence.items().getOrDefault(model.items().get(i), Likelihood.NOTHING);
            item.put("if_failed", seen.ifTrue()).put("if_sound", seen.ifFalse());
            job(item.putObject("job"), model.items().get(i));
        }
        ArrayNode findings = car.putArray("findings");
        for (FindingKind kind : catalogue.findings()) {
            ObjectNode finding = or(findings.addObject(), model.finding(kind.id()));
            Likelihood seen = evidence.findings().get(kind.id());
            if (seen != null) {
                finding.put("if_true", seen.ifTrue()).put("if_false", seen.ifFalse());
            }
        }
        ArrayNode silences = car.putArray("silences");
        model.silences().forEach(silence -> or(silences.addObject(), silence));
        Distribution value = SampleLot.byAge().forecast(listing.vehicle(), listing.seen()).saleValue();
        ArrayNode quantiles = car.putArray("value");
        IntStream.range(0, 257).forEach(k -> quantiles.add(value.quantile((k + 0.5) / 257)));
        ObjectNode terms = car.putObject("terms");
        for (Term term : Term.values()) {
            range(terms, term.name(), settings.terms().get(term));
        }
        car.put("rate", settings.workshop().worker().hourly().amount());
        car.put("target", settings.rule().targetProfit().amount());
        car.put("most_chance_of_loss", settings.rule().mostChanceOfLoss().value());
        return car;
    }

    private static ObjectNode or(ObjectNode node, NoisyOr or) {
        node.put("leak", or.leak());
        ArrayNode causes = node.putArray("causes");
        IntStream.of(or.causes()).forEach(causes::add);
        ArrayNode chances = node.putArray("chances");
        for (double chance : or.chances()) {
            chances.add(chance);
        }
        return node;
    }

    private void job(ObjectNode node, String item) {
        RepairPlan plan = planner.plan(java.util.Set.of(item));
        RepairPlan.Job job = plan.jobs().get(0);
        range(node, "parts", job.parts().amount());
        range(node, "consumables", job.consumables().amount());
        range(node, "hours", job.hours().hours());
        ObjectNode access = node.putObject("access");
        for (RepairPlan.PaidStep step : plan.access()) {
            range(access, step.id(), step.hours().hours());
        }
        ObjectNode tools = node.putObject("tools");
        for (Map.Entry<String, Double> tool : plan.toolsToBuy().stream()
                .map(t -> Map.entry(t.tool(), t.price().mean().amount())).toList()) {
            tools.put(tool.getKey(), tool.getValue());
        }
    }

    private static void range(ObjectNode node, String name, Range range) {
        node.putArray(name).add(range.low()).add(range.mode()).add(range.high());
    }
}
