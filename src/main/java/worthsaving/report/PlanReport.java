package worthsaving.report;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import worthsaving.repair.RepairPlan;
import worthsaving.repair.SourceOffer;

/**
 * The likely repair: jobs, access paid once, tools to buy, and where the parts can come from.
 *
 * @param plan empty when nothing allowed mends it
 * @param whyNone then what stands in the way and what would mend that, when known
 * @param sources by item, those not taken too; none where they are not asked for
 */
public record PlanReport(Optional<RepairPlan> plan, Map<String, List<SourceOffer>> sources,
        Optional<String> whyNone) {

    void text(Prose out) throws IOException {
        if (plan.isEmpty()) {
            out.say(whyNone.orElse("Nothing that is allowed mends it."));
            return;
        }
        RepairPlan repair = plan.get();
        TextTable table = new TextTable().left("job or access", 64).right("parts").right("fluids, seals, bolts")
                .right("hours");
        for (RepairPlan.Job job : repair.jobs()) {
            table.row(job.name() + " (" + words(job.partSource()) + ")", Words.range(job.parts().amount()),
                    Words.range(job.consumables().amount()), Words.hours(job.hours().mean().value()));
        }
        for (RepairPlan.PaidStep step : repair.access()) {
            table.row("  access, paid once: " + step.name(), "", "", Words.hours(step.hours().mean().value()));
        }
        for (RepairPlan.Purchase tool : repair.toolsToBuy()) {
            table.row("  tool to buy: " + tool.name(), Words.range(tool.price().amount()), "", "");
        }
        out.table(table);
        out.say("Together " + Words.whole(repair.meanCost()) + " and " + Words.hours(repair.meanHours().value())
                + " hours; as separate jobs " + Words.hours(repair.separateHours().value()) + " hours, "
                + Words.hours(repair.hoursSaved().value()) + " saved. Set aside for jobs done again: "
                + Words.whole(repair.comebackReserve()) + ".");
        offers(out, repair);
    }

    private void offers(Prose out, RepairPlan repair) throws IOException {
        if (sources.isEmpty()) {
            return;
        }
        out.title("Where its parts can come from");
        TextTable table = new TextTable().left("part of", 50).left("source").right("price").right("again in a year")
                .right("days").right("with that").left("");
        for (RepairPlan.Job job : repair.jobs()) {
            for (SourceOffer offer : sources.getOrDefault(job.id(), List.of())) {
                table.row(job.name(), words(offer.source()), Words.range(offer.price().amount()),
                        Words.percent(offer.comeback().mean()), Words.range(offer.days()),
                        Words.whole(offer.expectedCost()),
                        offer.chosen() ? "taken" : offer.allowed() ? "" : "not allowed");
            }
        }
        out.table(table);
    }

    void json(JsonReport json) throws IOException {
        json.beginList("repair");
        for (RepairPlan.Job job : plan.map(RepairPlan::jobs).orElse(List.of())) {
            Map<String, Object> f = new LinkedHashMap<>();
            f.put("job", job.id());
            f.put("part_source", words(job.partSource()));
            f.put("parts", job.parts().mean().amount());
            f.put("consumables", job.consumables().mean().amount());
            f.put("hours", job.hours().mean().value());
            f.put("comeback", job.comeback().value());
            json.element(f);
        }
        json.endList();
    }

    private static String words(Enum<?> name) {
        return name.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
