package worthsaving.desktop.car;

import java.util.List;
import javafx.geometry.HPos;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.repair.Quote;
import worthsaving.repair.Quote.Line;
import worthsaving.repair.Quote.Stage;
import worthsaving.repair.RepairPlan;
import worthsaving.repair.RepairPlan.Job;

/** The repair plan for what has more likely failed than not: the jobs, and the way there paid once. */
final class PlanView extends VBox {

    private final Button why;

    PlanView(WhyPane pane) {
        super(10);
        this.why = pane.button(Why.Topic.COST, "", Texts.of("why.cost.name"));
        getStyleClass().add("tab-page");
        setId("plan");
    }

    void show(CarPicture.Seen seen) {
        getChildren().clear();
        getChildren().add(Words.wrapped(Texts.of("plan.title"), "subheading"));
        if (seen.quote().isEmpty() || seen.appraisal().likelyPlan().isEmpty()) {
            getChildren().add(Words.wrapped(Texts.of("plan.unmendable")));
            return;
        }
        RepairPlan plan = seen.appraisal().likelyPlan().get();
        Quote quote = seen.quote().get();
        if (plan.jobs().isEmpty()) {
            getChildren().add(Words.wrapped(Texts.of("plan.nothing")));
            return;
        }
        Label sum = Words.wrapped(Texts.of("plan.sum", Figures.money(quote.mean()),
                Figures.hours(quote.hours().value()), Figures.money(quote.hourly())));
        HBox row = new HBox(4, sum, why);
        row.setAlignment(Pos.CENTER_LEFT);
        getChildren().add(row);
        double saved = quote.hoursSaved().value();
        if (saved > 0.05) {
            getChildren().add(Words.wrapped(Texts.of("plan.saved", Figures.hours(saved)), "good-news"));
        }
        getChildren().addAll(jobs(plan, quote), access(plan, quote));
        if (!plan.toolsToBuy().isEmpty()) {
            getChildren().add(tools(plan));
        }
    }

    private static GridPane jobs(RepairPlan plan, Quote quote) {
        GridPane grid = grid("plan.job", "plan.part", "plan.price", "plan.extras", "plan.hours", "plan.success");
        for (int i = 0; i < plan.jobs().size(); i++) {
            Job job = plan.jobs().get(i);
            int row = i + 1;
            grid.add(Words.whole(Integer.toString(row), "number-mark"), 0, row);
            grid.add(Words.wrapped(job.name(), "name-column"), 1, row);
            grid.add(Words.whole(Texts.of("source", job.partSource())), 2, row);
            right(grid, Figures.money(job.parts()), 3, row);
            right(grid, Figures.money(job.consumables()), 4, row);
            right(grid, hours(quote, job.id()), 5, row);
            right(grid, Figures.percent(job.success().value()), 6, row);
        }
        return grid;
    }

    private static String hours(Quote quote, String job) {
        return quote.lines().stream()
                .filter(l -> l.stage() == Stage.JOB && l.id().equals(job))
                .map(l -> Figures.hours(l.hours().mean()))
                .findFirst().orElse("");
    }

    /** A row per step, a column per job; a dot where the job needs the step, paid once however many dots. */
    private static VBox access(RepairPlan plan, Quote quote) {
        List<Line> steps = quote.lines().stream().filter(l -> l.stage() == Stage.ACCESS).toList();
        if (steps.isEmpty()) {
            return new VBox(Words.wrapped(Texts.of("plan.no_access"), "soft"));
        }
        GridPane grid = new GridPane();
        grid.setHgap(14);
        grid.setVgap(4);
        int jobs = plan.jobs().size();
        grid.add(Words.whole(Texts.of("plan.step"), "soft"), 0, 0);
        for (int j = 0; j < jobs; j++) {
            Label number = Words.explained(Words.whole(Integer.toString(j + 1), "number-mark"),
                    plan.jobs().get(j).name());
            GridPane.setHalignment(number, HPos.CENTER);
            grid.add(number, 1 + j, 0);
        }
        right(grid, Texts.of("plan.hours"), 1 + jobs, 0);
        grid.add(Words.whole(Texts.of("plan.paid"), "soft"), 2 + jobs, 0);
        for (int s = 0; s < steps.size(); s++) {
            Line step = steps.get(s);
            grid.add(Words.wrapped(step.name(), "name-column"), 0, s + 1);
            for (int j = 0; j < jobs; j++) {
                boolean needed = step.neededBy().contains(plan.jobs().get(j).id());
                Label dot = Words.plain(needed ? "\u25cf" : "\u00b7", needed ? "dot" : "soft");
                GridPane.setHalignment(dot, HPos.CENTER);
                grid.add(dot, 1 + j, s + 1);
            }
            right(grid, Figures.hours(step.hours().mean()), 1 + jobs, s + 1);
            int users = step.neededBy().size();
            grid.add(Words.whole(users > 1 ? Texts.of("plan.once", users) : Texts.of("plan.single"),
                    users > 1 ? "good-news" : "soft"), 2 + jobs, s + 1);
        }
        return new VBox(4, Words.explained(Words.plain(Texts.of("plan.access"), "subheading"),
                Texts.of("plan.access.why")), grid);
    }

    private static VBox tools(RepairPlan plan) {
        VBox box = new VBox(2, Words.plain(Texts.of("plan.tools"), "subheading"));
        plan.toolsToBuy().forEach(t -> box.getChildren().add(
                Words.wrapped(t.name() + ": " + Figures.money(t.price()))));
        return box;
    }

    private static GridPane grid(String... heads) {
        GridPane grid = new GridPane();
        grid.setHgap(14);
        grid.setVgap(4);
        for (int i = 0; i < heads.length; i++) {
            Label head = Words.explained(Words.whole(Texts.of(heads[i]), "soft"),
                    Texts.of(heads[i] + ".why"));
            grid.add(head, i + 1, 0);
            GridPane.setHalignment(head, i < 2 ? HPos.LEFT : HPos.RIGHT);
        }
        return grid;
    }

    private static void right(GridPane grid, String text, int column, int row) {
        Label label = Words.whole(text);
        GridPane.setHalignment(label, HPos.RIGHT);
        grid.add(label, column, row);
    }
}
