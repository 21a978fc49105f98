package worthsaving.deal;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import worthsaving.deal.Allotment.Run;
import worthsaving.repair.RepairWork;
import worthsaving.repair.WorkParts;

/** Makes the plans of one car ready, and draws them part by part. What many plans share is made ready once. */
final class PlanDraws {

    private final Labour labour;
    private final QuasiPoints points;
    private final PertTable pert;
    private final Map<WorkParts, DrawnParts> parts = new HashMap<>();

    PlanDraws(Labour labour, QuasiPoints points, PertTable pert) {
        this.labour = labour;
        this.points = points;
        this.pert = pert;
    }

    PlanDraw of(RepairWork work) {
        return new PlanDraw(work,
                parts.computeIfAbsent(work.parts(), p -> new DrawnParts(p, labour, points, pert)));
    }

    /**
     * Repairs of all runs, part by part rather than point by point: the quantiles of a part are then read while
     * they are at hand.
     *
     * @param plans by run
     */
    RepairDraws draw(List<Run> runs, List<Optional<PlanDraw>> plans, int atoms) {
        RepairDraws drawn = RepairDraws.ofSize(atoms);
        Map<DrawnParts, RepairColumns> columns = new LinkedHashMap<>(); // in order of the runs
        for (int r = 0; r < runs.size(); r++) {
            Run run = runs.get(r);
            plans.get(r).ifPresent(plan -> columns.computeIfAbsent(plan.parts(), p -> new RepairColumns(p, atoms))
                    .add(plan, run.from(), run.to()));
        }
        columns.values().forEach(part -> part.draw(drawn));
        return drawn;
    }
}
