package worthsaving.cli;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import worthsaving.casebook.CasebookException;
import worthsaving.quantity.Seed;
import worthsaving.report.Words;
import worthsaving.shell.FaultyInstallation;
import worthsaving.shell.ProgramVersion;

/** The command line. Results go to standard output, progress and errors to standard error. */
@Command(
        name = "worthsaving",
        description = "Judges, before money is spent, whether a mechanically written-off car is worth saving. "
                + Words.ESTIMATES,
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        subcommands = {RankCommand.class, ScoreCommand.class, ChooseCommand.class, JudgeCommand.class, JudgeCommand.Explain.class,
            RescueCommand.class, QuoteCommand.class, SheetCommand.class, TeardownCommand.class,
            FitCommand.class, FitCommand.Report.class, AdvertCommand.class, LotCommand.class, CodesCommand.class,
            CatalogueCommand.class, MoneyCommand.class, CasebookCommand.class},
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:all done",
            "1:results printed, but some rows were refused",
            "2:wrong usage",
            "3:a file cannot be read or written, or is no table of listings",
            "4:the catalogue, a price model or the installation is faulty",
            "70:an error of the program itself"
        })
public final class Main {

    @Option(
            names = "--seed",
            paramLabel = "NUMBER",
            scope = ScopeType.INHERIT,
            description = "Seed of everything random; the same seed and inputs give the same numbers "
                    + "(default: ${DEFAULT-VALUE}).")
    private long seed = Seed.DEFAULT.value();

    public static void main(String[] args) {
        PrintWriter out = new PrintWriter(new OutputStreamWriter(System.out, StandardCharsets.UTF_8));
        PrintWriter err = new PrintWriter(new OutputStreamWriter(System.err, StandardCharsets.UTF_8), true);
        int code = run(out, err, args);
        if (out.checkError() || System.out.checkError()) {
            err.println("The results could not all be written; is the drive full?");
            code = code == ExitCode.OK ? ExitCode.FILE_UNUSABLE : code;
        }
        System.exit(code);
    }

    /** Runs one command and gives its exit code; never throws. */
    static int run(PrintWriter out, PrintWriter err, String... args) {
        CommandLine commandLine = new CommandLine(new Main())
                .setOut(out)
                .setErr(err)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setParameterExceptionHandler((e, given) -> {
                    err.println(e.getMessage());
                    err.println("See: " + e.getCommandLine().getCommandSpec().qualifiedName() + " --help");
                    return ExitCode.USAGE;
                })
                .setExecutionExceptionHandler((e, failed, parsed) -> report(e, err));
        try {
            return commandLine.execute(args);
        } catch (StackOverflowError | OutOfMemoryError e) {
            return report(e, err);
        } finally {
            out.flush();
            err.flush();
        }
    }

    Seed seed() {
        return new Seed(seed);
    }

    private static int report(Throwable error, PrintWriter err) {
        if (error instanceof UserError mendable) {
            err.println(mendable.getMessage());
            return mendable.exitCode();
        }
        if (error instanceof FaultyInstallation faulty) {
            err.println(faulty.getMessage());
            return ExitCode.INSTALLATION_FAULTY;
        }
        if (error instanceof CasebookException casebook) {
            err.println(casebook.getMessage());
            return ExitCode.FILE_UNUSABLE;
        }
        if (error instanceof UncheckedIOException unchecked) {
            return report(unchecked.getCause(), err);
        }
        if (error instanceof IOException failed) {
            err.println(told(failed));
            return ExitCode.FILE_UNUSABLE;
        }
        err.println("This is an error of the program itself, not of your input: " + error);
        err.println("Please report it with the command you gave; -Dworthsaving.trace=true shows where it happened.");
        if (Boolean.getBoolean("worthsaving.trace")) {
            error.printStackTrace(err);
        }
        return ExitCode.INTERNAL_ERROR;
    }

    private static String told(IOException error) {
        if (error instanceof NoSuchFileException) {
            return "There is no file " + error.getMessage();
        }
        if (error instanceof AccessDeniedException) {
            return "The file " + error.getMessage() + " may not be used; see its permissions";
        }
        return "A file cannot be read or written: " + error.getMessage();
    }

    /** The version that the build wrote into the program file. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {ProgramVersion.text()};
        }
    }
}
