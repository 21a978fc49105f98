package worthsaving.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import worthsaving.catalog.Catalogue;
import worthsaving.intake.advert.AdvertReader;
import worthsaving.intake.advert.AdvertReading;
import worthsaving.intake.advert.Vocabulary;
import worthsaving.intake.advert.VocabularyException;
import worthsaving.ranking.Appraisal;
import worthsaving.ranking.Judge;
import worthsaving.report.AdvertReport;
import worthsaving.report.CaseReport;

/** Reads one pasted advert and judges the car. */
@Command(
        name = "advert",
        description = "Reads the text of one advert, shows what was read and from which words, and judges the car.",
        mixinStandardHelpOptions = true)
final class AdvertCommand implements Callable<Integer> {

    private static final String FOLDER = "shared/vocabulary/";
    private static final int MOST_BYTES = 4 * AdvertReader.MOST_CHARACTERS;

    @ParentCommand
    private Main main;

    @Parameters(paramLabel = "FILE", arity = "0..1", description = "Text file; without one the advert is read from "
            + "standard input.")
    private Path file;

    @Mixin
    private JudgeOptions options;

    @Option(names = "--today", paramLabel = "DATE", description = "Day that ages are counted to (default: today).")
    private LocalDate today = LocalDate.now();

    @Option(names = "--read-only", description = "Show what was read and judge nothing.")
    private boolean readOnly;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        Resources resources = Resources.find();
        PrintWriter out = spec.commandLine().getOut();
        AdvertReading reading = new AdvertReader(vocabulary(resources)).read(text(), today);
        new AdvertReport(reading).text(out);
        if (readOnly) {
            return ExitCode.OK;
        }
        Catalogue asWritten = CatalogueFiles.load(resources);
        MarketGround ground = options.market(resources, today);
        Catalogue catalogue = ground.in(asWritten);
        Judge judge = new Judge(catalogue, ground.valuer()::forecast, options.settings(catalogue, main.seed()));
        Appraisal appraisal = JudgingInput.appraisal(judge.judge(reading.toListing("advert", "the advert")), "It");
        out.println();
        out.println(ground.note(asWritten));
        new CaseReport(appraisal, catalogue).summary(out);
        return ExitCode.OK;
    }

    private static Vocabulary vocabulary(Resources resources) {
        try {
            return Vocabulary.read(name -> resources.reader(FOLDER + name));
        } catch (VocabularyException e) {
            throw new UserError(ExitCode.INSTALLATION_FAULTY, e.getMessage());
        }
    }

    private String text() throws IOException {
        if (file == null) {
            return new String(System.in.readNBytes(MOST_BYTES), StandardCharsets.UTF_8);
        }
        if (!Files.isRegularFile(file)) {
            throw new UserError(ExitCode.FILE_UNUSABLE, "There is no file " + file);
        }
        try (InputStream in = Files.newInputStream(file)) {
            return new String(in.readNBytes(MOST_BYTES), StandardCharsets.UTF_8);
        }
    }
}
