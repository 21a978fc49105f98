package worthsaving.desktop.car;

import java.util.function.Consumer;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import worthsaving.desktop.Figures;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.ranking.Appraisal;

/** What may come of it, why, what would change it, and what to look at next. */
final class DecisionView extends VBox {

    private static final int CHECKS = 6;

    private final OutcomeChart chart = new OutcomeChart();
    private final Label title = Words.wrapped("", "subheading");
    private final Label checksTitle = Words.plain("", "subheading");
    private final Sentences reasons = new Sentences(Texts.of("decision.reasons"));
    private final Sentences changes = new Sentences(Texts.of("decision.changes"));
    private final NextCheckTable checks;

    DecisionView(Consumer<String> onSeek, WhyPane why) {
        super(10);
        getStyleClass().add("tab-page");
        checks = new NextCheckTable(CHECKS, onSeek);
        VBox.setVgrow(chart, Priority.SOMETIMES);
        getChildren().addAll(Words.explained(title, Texts.of("chart.explain")), chart, new VBox(3, reasons, changes),
                new HBox(4, Words.explained(checksTitle, Texts.of("checks.why")),
                        why.button(Why.Topic.CHECK, "", Texts.of("why.check.name"))), checks);
    }

    void show(CarPicture.Seen seen) {
        Appraisal appraisal = seen.appraisal();
        title.setText(Texts.of("chart.title", seen.shown().label(), Figures.money(appraisal.assessment().price())));
        chart.show(seen.outcomes(), appraisal.assessment().price().currency().getCurrencyCode());
        reasons.show(appraisal.verdict().reasons());
        changes.show(appraisal.verdict().wouldChange());
        checksTitle.setText(Texts.of("checks.title", Figures.money(appraisal.checkedAt())));
        checks.show(appraisal.checks());
    }
}
