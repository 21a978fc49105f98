package worthsaving.desktop.lot;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import worthsaving.desktop.Ground;
import worthsaving.desktop.Texts;
import worthsaving.intake.IntakeSettings;
import worthsaving.intake.ListingReader;
import worthsaving.intake.LotSummary;
import worthsaving.intake.Vocabulary;
import worthsaving.vehicle.Listing;

/**
 * A table of listings as it was read.
 *
 * @param title name of the table
 * @param problems rows left out and fields not understood, in the order of the file
 * @param header header line of the table, for handing refused rows back
 * @param refusedRows rows of the table as they stood in it
 */
record TableReading(String title, List<Listing> listings, List<Problem> problems, String header, List<String> refusedRows) {

    static final TableReading NONE = new TableReading("", List.of(), List.of(), "", List.of());

    /** @throws UnreadableTable when nothing of it could be used */
    static TableReading of(Path table, Ground ground, BooleanSupplier cancelled) {
        TableSink sink = new TableSink(cancelled);
        LotSummary summary = read(table, ground, sink);
        if (summary.cancelled()) {
            throw new CancellationException("reading was cancelled");
        }
        if (!summary.readable()) {
            throw new UnreadableTable(sink.problems());
        }
        return new TableReading(summary.source(), sink.listings(), sink.problems(), sink.header(), sink.refusedRows());
    }

    private static LotSummary read(Path table, Ground ground, TableSink sink) {
        ListingReader reader = new ListingReader(
                Vocabulary.of(ground.catalogue(), ground.makes(), ground.adverts().codes()),
                IntakeSettings.american(ground.today()));
        try (InputStream in = Files.newInputStream(table)) {
            return reader.read(in, table.getFileName().toString(), sink);
        } catch (IOException e) {
            throw new UnreadableTable(List.of(new Problem(table.toString(), Texts.of("problem.file_refused"),
                    Texts.of("problem.unreadable"), Texts.of("problem.unreadable.mend"))));
        }
    }

    /** Nothing of the table could be used. */
    static final class UnreadableTable extends RuntimeException {
        private final transient List<Problem> problems;

        UnreadableTable(List<Problem> problems) {
            super(problems.isEmpty() ? "" : problems.get(0).what());
            this.problems = List.copyOf(problems);
        }

        List<Problem> problems() {
            return problems;
        }
    }
}
