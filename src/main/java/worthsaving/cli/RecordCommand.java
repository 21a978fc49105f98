package worthsaving.cli;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import worthsaving.casebook.Casebook;
import worthsaving.deal.DealTerms;
import worthsaving.ranking.JudgeSettings;
import worthsaving.record.FinishedCar;
import worthsaving.record.Learning;
import worthsaving.record.TrackRecord;
import worthsaving.report.RecordReport;

/** Forecast against what came. */
@Command(name = "record", description = "Compares the forecasts of finished cars with what came of them, and shows what they "
        + "teach.", mixinStandardHelpOptions = true)
final class RecordCommand implements Callable<Integer> {

    @ParentCommand
    private CasebookCommand parent;

    @Mixin
    private CasebookFile casebook;

    @Option(names = "--json", description = "Print results as JSON, for scripts.")
    private boolean json;

    @Override
    public Integer call() throws IOException {
        DealTerms terms = JudgeSettings.usual(CatalogueFiles.load(Resources.find()), parent.seed()).terms();
        try (Casebook book = casebook.forReading()) {
            List<FinishedCar> cars = book.finished();
            RecordReport report = new RecordReport(TrackRecord.of(cars, parent.seed()),
                    Learning.of(cars, terms, LearningCommand.settings(book)));
            if (json) {
                report.json(casebook.out());
            } else {
                report.text(casebook.out());
            }
        }
        return ExitCode.OK;
    }
}
