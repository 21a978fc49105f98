package worthsaving.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import worthsaving.casebook.Casebook;
import worthsaving.casebook.PhotoFile;
import worthsaving.catalog.Catalogue;
import worthsaving.ranking.Appraisal;
import worthsaving.ranking.Judge;
import worthsaving.ranking.JudgeSettings;
import worthsaving.ranking.Rescuer;
import worthsaving.ranking.ValueSource;
import worthsaving.report.sheet.Audience;
import worthsaving.report.sheet.DecisionSheet;
import worthsaving.report.sheet.FlipperSheet;
import worthsaving.report.sheet.HtmlSheet;
import worthsaving.report.sheet.OwnerSheet;
import worthsaving.report.sheet.PdfSheet;
import worthsaving.report.sheet.PhotoReading;
import worthsaving.report.sheet.SheetSettings;
import worthsaving.report.sheet.WorkshopSheet;
import worthsaving.shell.PhotoToShow;
import worthsaving.vehicle.Listing;

/** One car on one page. */
@Command(
        name = "sheet",
        description = "Writes a decision sheet of one listing, one page of PDF or HTML: for whoever may buy it to resell"
                + " it (flipper), for its owner, or as a workshop's quote.",
        mixinStandardHelpOptions = true)
final class SheetCommand implements Callable<Integer> {

    @ParentCommand
    private Main main;

    @Mixin
    private OneListing one;

    @Mixin
    private RescueOptions owner;

    @Mixin
    private QuoteOptions workshop;

    @Option(names = "--for", paramLabel = "WHOM", defaultValue = "flipper",
            description = "${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE}).")
    private Audience audience;

    @Option(names = "--to", paramLabel = "FILE", required = true,
            description = "File to write; its name ends in .pdf or .html.")
    private Path to;

    @Option(names = "--photo", paramLabel = "FILE",
            description = "JPEG or PNG to show; may be given several times. Place and time in it are left out.")
    private List<Path> photos = List.of();

    @Option(names = "--journal", description = "Show the newest photos in the journal of the case of the same id too.")
    private boolean journal;

    @Mixin
    private CasebookFile casebook;

    @Option(names = "--paper", paramLabel = "SIZE", defaultValue = "letter",
            description = "Paper of a PDF, ${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE}).")
    private PdfSheet.Paper paper;

    @Mixin
    private VinOption vin;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        String name = to.getFileName().toString().toLowerCase(Locale.ROOT);
        boolean pdf = name.endsWith(".pdf");
        if (!pdf && !name.endsWith(".html") && !name.endsWith(".htm")) {
            throw new UserError(ExitCode.USAGE, "--to must name a .pdf or an .html file, not " + to);
        }
        JudgingInput.Opened opened = one.open(spec.commandLine().getErr());
        Listing listing = one.in(opened);
        DecisionSheet sheet = sheet(opened, listing).withPhotos(readings(listing.id()));
        AtomicFile.write(to, out -> {
            if (pdf) {
                PdfSheet.write(sheet, paper, out);
            } else {
                html(sheet, out);
            }
        });
        spec.commandLine().getErr().println("Written: " + to);
        return ExitCode.OK;
    }

    private static void html(DecisionSheet sheet, OutputStream out) throws IOException {
        Writer writer = AtomicFile.utf8(out);
        HtmlSheet.write(sheet, writer);
        writer.flush();
    }

    private DecisionSheet sheet(JudgingInput.Opened opened, Listing listing) throws IOException {
        Catalogue catalogue = opened.catalogue();
        ValueSource values = opened.valuer()::forecastWithoutReasons;
        JudgeSettings settings = one.settings(catalogue, main.seed());
        Appraisal appraisal = JudgingInput.appraisal(
                new Judge(catalogue, values, settings).judge(listing), listing.id());
        SheetSettings about = new SheetSettings(one.today(), vin.guard());
        return switch (audience) {
            case FLIPPER -> FlipperSheet.of(appraisal, catalogue, about);
            case OWNER -> OwnerSheet.of(new Rescuer(catalogue, values, settings).compare(appraisal,
                    owner.terms(opened.lot(), listing, catalogue.currency())), catalogue, about);
            case WORKSHOP -> WorkshopSheet.of(
                    appraisal, workshop.write(appraisal, catalogue, settings), catalogue, about);
        };
    }

    /** Those named, then those of the journal. */
    private List<PhotoReading> readings(String id) {
        PrintWriter err = spec.commandLine().getErr();
        List<PhotoToShow> all = new ArrayList<>(photos.stream().map(PhotoToShow::new).toList());
        if (journal) {
            try (Casebook book = casebook.forReading()) {
                CasebookFile.caseOf(book, id).newestPhotos(PdfSheet.MOST_PHOTOS).forEach(photo ->
                        all.add(new PhotoToShow(PhotoFile.place(photo, casebook.path()), photo.title())));
            }
        }
        List<PhotoReading> readings = new ArrayList<>();
        for (PhotoToShow photo : all) {
            PhotoReading reading = photo.read();
            if (reading instanceof PhotoReading.Named named) {
                err.println("Not shown: " + named.words());
            }
            readings.add(reading);
        }
        return readings;
    }
}
