package worthsaving.cli;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import worthsaving.intake.PlainText;
import worthsaving.intake.ScanReport;

/** Texts that people saved, in whatever encoding. */
final class TextFiles {

    private static final int MOST = ScanReport.MOST_CHARACTERS;

    private TextFiles() {}

    /**
     * @param file null for standard input
     * @throws UserError when there is none, or it is no text
     */
    static String read(Path file) throws IOException {
        if (file != null && !Files.isRegularFile(file)) {
            throw new UserError(ExitCode.FILE_UNUSABLE, "There is no file " + file);
        }
        PlainText text;
        if (file == null) {
            text = PlainText.read(System.in, MOST);
        } else {
            try (InputStream in = new BufferedInputStream(Files.newInputStream(file))) {
                text = PlainText.read(in, MOST);
            }
        }
        text.notText().ifPresent(what -> {
            throw new UserError(ExitCode.FILE_UNUSABLE, (file == null ? "The input" : file) + " is " + what
                    + ", not a text; save it as text and give that file");
        });
        return text.text();
    }
}
