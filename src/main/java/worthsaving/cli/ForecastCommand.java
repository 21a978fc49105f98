package worthsaving.cli;

import java.io.IOException;
import java.time.Instant;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import worthsaving.casebook.CaseFile;
import worthsaving.casebook.Casebook;
import worthsaving.casebook.Edit;
import worthsaving.casebook.Forecast;
import worthsaving.catalog.Catalogue;
import worthsaving.ranking.Appraisal;
import worthsaving.ranking.Judge;
import worthsaving.ranking.JudgeSettings;
import worthsaving.record.ItemLesson;
import worthsaving.record.Learning;
import worthsaving.report.CaseReport;
import worthsaving.shell.ProgramVersion;

/** Judges a case by all that is known of it, with the lessons of finished cars, and keeps the forecast. */
@Command(name = "forecast", description = "Judges a case by its evidence and journal, with what your finished cars taught, "
        + "and keeps the forecast to be compared with what comes.", mixinStandardHelpOptions = true)
final class ForecastCommand implements Callable<Integer> {

    @ParentCommand
    private CasebookCommand parent;

    @Mixin
    private CasebookFile casebook;

    @Mixin
    private JudgeOptions options;

    @Parameters(paramLabel = "ID", description = "Id of the case.")
    private String id;

    @Override
    public Integer call() throws IOException {
        Resources resources = Resources.find();
        MarketGround ground = options.market(resources);
        Catalogue catalogue = ground.in(CatalogueFiles.load(resources));
        JudgeSettings settings = options.settings(catalogue, parent.seed());
        try (Casebook book = casebook.forWriting()) {
            CaseFile of = CasebookFile.caseOf(book, id);
            Learning learning = Learning.of(book.finished(), settings.terms(), LearningCommand.settings(book));
            Judge judge = new Judge(learning.applyTo(catalogue), ground.valuer()::forecast,
                    settings.withTerms(learning.applyTo(settings.terms())));
            Appraisal appraisal = JudgingInput.appraisal(judge.judge(of.asKnown()), id);
            new CaseReport(appraisal, catalogue).summary(casebook.out());
            casebook.out().println();
            learning.lessons().stream().filter(l -> l.on() && l.cars() > 0)
                    .forEach(l -> casebook.out().println("Your record, " + l.words()));
            learning.items().stream().filter(ItemLesson::on)
                    .forEach(l -> casebook.out().println("Your record, " + l.words()));
            return casebook.told(book.save(new Edit.Keep(id, Forecast.of(appraisal, catalogue.version(),
                    ProgramVersion.text(), Instant.now()))));
        }
    }
}
