package worthsaving.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import worthsaving.casebook.Access;
import worthsaving.casebook.CaseFile;
import worthsaving.casebook.Casebook;
import worthsaving.casebook.Edit;
import worthsaving.casebook.Opening;
import worthsaving.casebook.Saving;
import worthsaving.casebook.Trouble;
import worthsaving.shell.CasebookPath;

/** Which casebook a command works on. */
final class CasebookFile {

    @Option(names = "--casebook", paramLabel = "FILE",
            description = "The casebook (default: casebook.db in the folder worthsaving of your data folder).")
    private Path file;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    PrintWriter out() {
        return spec.commandLine().getOut();
    }

    PrintWriter err() {
        return spec.commandLine().getErr();
    }

    /** The file named, or the usual one in the user's data folder. */
    Path path() {
        return file != null ? file : CasebookPath.usual();
    }

    /** @throws UserError when it cannot be opened */
    Casebook forReading() {
        return forReading(path(), err());
    }

    /** @throws UserError when it cannot be opened */
    static Casebook forReading(Path path, PrintWriter err) {
        Opening opening = Casebook.open(path, Access.READ);
        if (opening instanceof Opening.ReadOnly readOnly) {
            err.println("Note: " + words(readOnly.why()));
            return readOnly.casebook();
        }
        return opened(opening, err);
    }

    /** @throws UserError when it cannot be written */
    Casebook forWriting() throws IOException {
        if (file == null) {
            Files.createDirectories(path().getParent());
        }
        Opening opening = Casebook.open(path(), Access.WRITE);
        if (opening instanceof Opening.ReadOnly readOnly) {
            readOnly.casebook().close();
            throw new UserError(ExitCode.FILE_UNUSABLE, words(readOnly.why()));
        }
        return opened(opening, err());
    }

    private static Casebook opened(Opening opening, PrintWriter err) {
        if (opening instanceof Opening.Refused refused) {
            throw new UserError(ExitCode.FILE_UNUSABLE, words(refused.why()));
        }
        Opening.Opened opened = (Opening.Opened) opening;
        opened.notes().forEach(note -> err.println("Note: " + note));
        return opened.casebook();
    }

    /** Opens, carries one edit out and says so. */
    int keep(Edit edit) throws IOException {
        try (Casebook book = forWriting()) {
            return told(book.save(edit));
        }
    }

    /**
     * Says what was kept.
     *
     * @throws UserError when nothing was
     */
    int told(Saving saving) {
        if (saving instanceof Saving.Failed failed) {
            throw new UserError(ExitCode.USAGE, words(failed.why()));
        }
        out().println("Kept: " + ((Saving.Done) saving).edited().label());
        return ExitCode.OK;
    }

    /** @throws UserError when there is none of that id */
    static CaseFile caseOf(Casebook book, String id) {
        return book.caseOf(id).orElseThrow(() -> new UserError(ExitCode.USAGE,
                "There is no case " + id + "; see them with: worthsaving casebook list"));
    }

    private static String words(Trouble trouble) {
        return trouble.reason() + "; " + trouble.mend();
    }
}
