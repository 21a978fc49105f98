package worthsaving.repair;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import worthsaving.quantity.MoneyRange;
import worthsaving.quantity.Range;
import worthsaving.repair.JobTable.Entry;
import worthsaving.repair.Quote.Line;
import worthsaving.repair.Quote.Stage;
import worthsaving.repair.RepairPlan.Job;
import worthsaving.repair.RepairPlan.PaidStep;

/** Writes a quote for a plan of the same catalogue and workshop. */
final class QuoteWriter {

    private static final Range NO_HOURS = Range.exactly(0);

    private final JobTable table;

    QuoteWriter(JobTable table) {
        this.table = table;
    }

    Quote write(RepairPlan plan) {
        List<Entry> entries = plan.jobs().stream().map(job -> table.entry(job.id())).toList();
        List<Line> lines = new ArrayList<>();
        for (PaidStep step : plan.access()) {
            int index = table.access.indexOf(step.id());
            lines.add(labour(Stage.ACCESS, step.id(), step.name(), step.hours().hours(),
                    users(entries, entry -> entry.access().get(index))));
        }
        for (Job job : plan.jobs()) {
            lines.add(labour(Stage.JOB, job.id(), job.name(), job.hours().hours(), List.of(job.id())));
        }
        for (Job job : plan.jobs()) {
            buy(lines, Stage.PART, job, job.parts());
        }
        for (Job job : plan.jobs()) {
            buy(lines, Stage.CONSUMABLES, job, job.consumables());
        }
        plan.toolsToBuy().forEach(tool -> lines.add(new Line(Stage.TOOL, tool.tool(), tool.name(), NO_HOURS,
                tool.price(), users(entries, entry -> table.needs(entry, tool.tool())))));
        return new Quote(lines, table.shop.worker().hourly(), plan.meanHours(), plan.hoursSaved());
    }

    private Line labour(Stage stage, String id, String name, Range book, List<String> neededBy) {
        Range hours = book.times(table.shop.worker().factor(id));
        MoneyRange amount = new MoneyRange(hours.times(table.rate), table.shop.currency());
        return new Line(stage, id, name, hours, amount, neededBy);
    }

    /** Parts are shown even when they cost nothing; consumables only when there are some. */
    private static void buy(List<Line> lines, Stage stage, Job job, MoneyRange price) {
        if (stage == Stage.PART || price.amount().high() > 0) {
            lines.add(new Line(stage, job.id(), job.name(), NO_HOURS, price, List.of(job.id())));
        }
    }

    private static List<String> users(List<Entry> entries, Predicate<Entry> uses) {
        return entries.stream().filter(uses).map(entry -> entry.job().id()).toList();
    }
}
