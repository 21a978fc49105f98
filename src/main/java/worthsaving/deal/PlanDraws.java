package worthsaving.deal;

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
    /** In order of appearance, which fixes the order of sums. */
    private final Map<WorkParts, DrawnParts> parts = new LinkedHashMap<>();

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
        for (DrawnParts shared : parts.values()) {
            RepairColumns columns = new RepairColumns(shared, atoms);
            for (int r = 0; r < runs.size(); r++) {
                if (plans.get(r).isPresent() && plans.get(r).get().parts() == shared) {
                    columns.add(plans.get(r).get(), runs.get(r).from(), runs.get(r).to());
                }
            }
            columns.draw(drawn);
        }
        return drawn;
    }
}
