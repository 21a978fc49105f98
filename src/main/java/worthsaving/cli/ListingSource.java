package worthsaving.cli;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import worthsaving.catalog.Catalogue;
import worthsaving.intake.IntakeFault;
import worthsaving.intake.IntakeSettings;
import worthsaving.intake.ListingReader;
import worthsaving.intake.LotEntry;
import worthsaving.intake.LotSink;
import worthsaving.intake.LotSummary;
import worthsaving.intake.RefusedRow;
import worthsaving.intake.Vocabulary;
import worthsaving.quantity.Distance;
import worthsaving.shell.MarketGround;

/** The table of listings that a command is given, and what to take for granted in it. */
final class ListingSource {

    private enum Unit { MI, KM }

    private static final long SPEAK_EVERY = TimeUnit.SECONDS.toNanos(2);

    @Parameters(paramLabel = "FILE", description = "Table of listings: CSV with comma, semicolon, tab or bar; "
            + "- for standard input.")
    private Path file;

    @Option(names = "--currency", paramLabel = "CODE", description = "Currency of prices without one "
            + "(default: that of the price model's market, USD for lot check).")
    private String currency;

    @Option(names = "--unit", paramLabel = "mi|km", description = "Unit of odometers without one (default: that of the market).")
    private Unit unit;

    @Option(
            names = "--today",
            paramLabel = "DATE",
            converter = Day.class,
            description = "Day that ages are counted to (default: today).")
    private LocalDate today = LocalDate.now();

    @Mixin
    private ColumnOptions columns = new ColumnOptions();

    /** For picocli, which fills the fields. */
    ListingSource() {}

    ListingSource(Path file, LocalDate today) {
        this.file = file;
        this.today = today;
    }

    Path file() {
        return file;
    }

    LocalDate today() {
        return today;
    }

    IntakeSettings settings(IntakeSettings usual) {
        return new IntakeSettings(
                today,
                currency == null ? usual.currency() : MatchOptions.currency(currency),
                unit == null ? usual.odometerUnit()
                        : unit == Unit.KM ? Distance.Unit.KILOMETRES : Distance.Unit.MILES);
    }

    private boolean standardInput() {
        return file.toString().equals("-");
    }

    /** @throws UserError when there is no such file */
    void mustBeThere() {
        if (standardInput()) {
            return;
        }
        if (!Files.exists(file)) {
            throw new UserError(ExitCode.FILE_UNUSABLE, "There is no file " + file);
        }
        if (Files.isDirectory(file)) {
            throw new UserError(ExitCode.FILE_UNUSABLE, file + " is a folder; give a file");
        }
    }

    /** Reads the file into a sink, telling of progress when it takes long. */
    LotSummary read(Vocabulary vocabulary, LotSink sink, PrintWriter err) throws IOException {
        return read(vocabulary, IntakeSettings.american(today), sink, err);
    }

    private LotSummary read(Vocabulary vocabulary, IntakeSettings usual, LotSink sink, PrintWriter err)
            throws IOException {
        mustBeThere();
        try (InputStream in = new BufferedInputStream(standardInput() ? System.in : Files.newInputStream(file))) {
            LotSink speaking = new Speaking(sink, err, standardInput() ? 0 : Files.size(file));
            LotSummary summary = new ListingReader(vocabulary, settings(usual), columns.told(err))
                    .read(in, file.getFileName().toString(), speaking);
            columns.remember(summary, err);
            return summary;
        }
    }

    /**
     * Reads the file into memory up to a limit, telling of every fault on the way.
     *
     * @throws UserError when it is no table of listings; why has then been told
     */
    ReadLot lot(Resources resources, Catalogue catalogue, MarketGround ground, int most, PrintWriter err)
            throws IOException {
        ReadLot lot = new ReadLot(err, most);
        read(resources, catalogue, ground, lot, err);
        return lot;
    }

    /**
     * Reads the file into a sink of whatever size, telling of every fault on the way.
     *
     * @throws UserError when it is no table of listings; why has then been told
     */
    void read(Resources resources, Catalogue catalogue, MarketGround ground, FaultTeller sink, PrintWriter err)
            throws IOException {
        IntakeSettings usual = new IntakeSettings(today, ground.market().currency(), ground.market().odometer());
        LotSummary summary = read(
                VocabularyFiles.ofTables(resources, catalogue, ground.valuer().model().makes()), usual, sink, err);
        sink.end();
        if (!summary.readable()) {
            throw new UserError(ExitCode.FILE_UNUSABLE, file + " holds no listings that can be read");
        }
    }

    /** Passes everything on and reports progress every other second. */
    private static final class Speaking implements LotSink {
        private final LotSink sink;
        private final PrintWriter err;
        private final long size;
        private long spoken = System.nanoTime();

        private Speaking(LotSink sink, PrintWriter err, long size) {
            this.sink = sink;
            this.err = err;
            this.size = size;
        }

        @Override
        public void header(String text) {
            sink.header(text);
        }

        @Override
        public void columns(List<String> names) {
            sink.columns(names);
        }

        @Override
        public void good(LotEntry entry) {
            sink.good(entry);
        }

        @Override
        public void refused(RefusedRow row) {
            sink.refused(row);
        }

        @Override
        public void warning(IntakeFault fault) {
            sink.warning(fault);
        }

        @Override
        public boolean goOn(long rows, long characters) {
            if (System.nanoTime() - spoken > SPEAK_EVERY) {
                spoken = System.nanoTime();
                String share = size > 0 ? String.format(Locale.ROOT, ", %.0f %%", 100.0 * characters / size) : "";
                err.printf(Locale.ROOT, "%,d rows read%s%n", rows, share);
            }
            return sink.goOn(rows, characters);
        }
    }
}
