package worthsaving.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Option;
import worthsaving.intake.ColumnChoice;
import worthsaving.intake.ColumnMemory;
import worthsaving.intake.LotSummary;
import worthsaving.intake.TableColumns;

/** What the user says of the columns of a table; it is kept in the settings folder for the next table of that source. */
final class ColumnOptions {

    /** Folder of the settings, in place of the usual one. */
    static final String FOLDER = "worthsaving.config";

    private static final String FILE = "columns.csv";

    @Option(names = "--column", paramLabel = "FIELD=COLUMN", description = "Take a column for a field whatever it is "
            + "called, such as price=Asking; remembered for tables with the same header.")
    private Map<String, String> columns = new LinkedHashMap<>();

    @Option(names = "--ignore", paramLabel = "COLUMN", description = "Leave a column alone; remembered likewise.")
    private List<String> ignored = List.of();

    TableColumns told(PrintWriter err) {
        ColumnChoice now = columns.isEmpty() && ignored.isEmpty()
                ? ColumnChoice.NONE : ColumnChoice.told(columns, ignored);
        return new TableColumns(memory(err), now);
    }

    /** Keeps what was told now, beside what was remembered of the same header. */
    void remember(LotSummary summary, PrintWriter err) {
        if (!summary.readable() || columns.isEmpty() && ignored.isEmpty()) {
            return;
        }
        ColumnMemory memory = memory(err);
        Map<String, String> all = new LinkedHashMap<>(memory.of(summary.header())
                .map(ColumnChoice::headersByField).orElse(Map.of()));
        all.values().removeIf(columns.values()::contains);
        all.putAll(columns);
        all.values().removeAll(ignored);
        Path file = folder().resolve(FILE);
        try {
            Files.createDirectories(file.getParent());
            AtomicFile.write(file, out -> {
                Writer text = AtomicFile.utf8(out);
                memory.with(summary.header(), ColumnChoice.told(all, ignored)).write(text);
                text.flush();
            });
            err.println("The columns are remembered in " + file);
        } catch (IOException e) {
            err.println("The columns could not be remembered in " + file + ": " + e.getMessage());
        }
    }

    private static ColumnMemory memory(PrintWriter err) {
        Path file = folder().resolve(FILE);
        if (!Files.isRegularFile(file)) {
            return ColumnMemory.empty();
        }
        try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            return ColumnMemory.read(in);
        } catch (IOException e) {
            err.println(file + " is passed over: " + e.getMessage());
            return ColumnMemory.empty();
        }
    }

    private static Path folder() {
        String set = System.getProperty(FOLDER);
        if (set != null) {
            return Path.of(set);
        }
        String windows = System.getenv("APPDATA");
        String linux = System.getenv("XDG_CONFIG_HOME");
        Path base = windows != null && !windows.isBlank() ? Path.of(windows)
                : linux != null && !linux.isBlank() ? Path.of(linux)
                        : Path.of(System.getProperty("user.home"), ".config");
        return base.resolve("worthsaving");
    }
}
