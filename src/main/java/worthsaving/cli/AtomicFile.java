package worthsaving.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** A file that is either wholly written or left as it was. */
final class AtomicFile {

    private AtomicFile() {}

    /** Writes the content of a file. */
    interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    static void write(Path file, Content content) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        if (!Files.isDirectory(folder)) {
            throw new UserError(ExitCode.FILE_UNUSABLE, "There is no folder " + folder);
        }
        Path draft = folder.resolve("." + file.getFileName() + ".part");
        try {
            try (OutputStream out = Files.newOutputStream(draft)) {
                content.writeTo(out);
            }
            try {
                Files.move(draft, file, StandardCopyOption.ATOMIC_MOVE);
            } catch (AtomicMoveNotSupportedException e) {
                Files.move(draft, file, StandardCopyOption.REPLACE_EXISTING);
            }
        } finally {
            Files.deleteIfExists(draft);
        }
    }

    static Writer utf8(OutputStream out) {
        return new OutputStreamWriter(out, StandardCharsets.UTF_8);
    }
}
