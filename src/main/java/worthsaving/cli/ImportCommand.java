package worthsaving.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import worthsaving.casebook.Casebook;
import worthsaving.casebook.Edit;
import worthsaving.casebook.JournalEntry;
import worthsaving.quantity.Money;
import worthsaving.teardown.Entry;
import worthsaving.teardown.JournalReader;

/** Takes a teardown journal into the casebook. */
@Command(name = "import", description = "Takes a teardown journal (columns stage, kind, what, value, when) into the journal "
        + "of a case, as one edit. Lines that are there already are left out, bad ones told; a line without a day is of "
        + "today. Money in US dollars.", mixinStandardHelpOptions = true)
final class ImportCommand implements Callable<Integer> {

    @Mixin
    private CasebookFile casebook;

    @Parameters(index = "0", paramLabel = "ID", description = "Id of the case.")
    private String id;

    @Parameters(index = "1", paramLabel = "FILE", description = "The journal's table.")
    private Path file;

    @Override
    public Integer call() throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new UserError(ExitCode.FILE_UNUSABLE, "There is no file " + file);
        }
        JournalReader.Reading reading = JournalFile.read(file, CatalogueFiles.load(Resources.find()), Money.USD);
        reading.faults().forEach(casebook.err()::println);
        try (Casebook book = casebook.forWriting()) {
            List<Entry> there = new ArrayList<>(CasebookFile.caseOf(book, id).teardown().entries());
            List<Edit> writing = new ArrayList<>();
            for (Entry line : reading.journal().entries()) {
                JournalEntry entry = JournalEntry.of(line, LocalDate.now(), ZoneId.systemDefault());
                if (!there.remove(entry.line(ZoneId.systemDefault()))) {
                    writing.add(new Edit.Write(id, entry));
                }
            }
            int left = reading.journal().entries().size() - writing.size();
            if (left > 0) {
                casebook.err().println(left + (left == 1 ? " line is" : " lines are")
                        + " in the journal already and left out");
            }
            if (!writing.isEmpty()) {
                casebook.told(book.save(new Edit.Several(String.format(Locale.ROOT, "import %d %s from %s into the journal of %s",
                        writing.size(), writing.size() == 1 ? "line" : "lines", file.getFileName(), id), writing)));
            }
        }
        return reading.faults().isEmpty() ? ExitCode.OK : ExitCode.SOME_ROWS_REFUSED;
    }
}
