package worthsaving.cli;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Finds the folder that holds the project's {@code shared/} and {@code models/}: where system property
 * {@value #PROPERTY} points, else above the program file, else above the working directory.
 */
final class Resources {

    static final String PROPERTY = "worthsaving.home";

    private static final Path MARK = Path.of("shared", "catalogue");

    private final Path home;

    private Resources(Path home) {
        this.home = home;
    }

    /** @throws UserError saying where it was looked for */
    static Resources find() {
        String set = System.getProperty(PROPERTY);
        List<Path> starts = new ArrayList<>();
        if (set != null) {
            starts.add(Path.of(set).toAbsolutePath());
        } else {
            programFolder().ifPresent(starts::add);
            starts.add(Path.of("").toAbsolutePath());
        }
        for (Path start : starts) {
            for (Path folder = start; folder != null; folder = set == null ? folder.getParent() : null) {
                if (Files.isDirectory(folder.resolve(MARK))) {
                    return new Resources(folder);
                }
            }
        }
        throw new UserError(ExitCode.INSTALLATION_FAULTY, "The folder " + MARK + " is nowhere in or above "
                + starts.stream().map(Path::toString).collect(Collectors.joining(" or "))
                + "; run from the project folder, or set -D" + PROPERTY + "=FOLDER");
    }

    private static Optional<Path> programFolder() {
        try {
            return Optional.ofNullable(Resources.class.getProtectionDomain().getCodeSource())
                    .map(s -> Path.of(URI.create(s.getLocation().toString())).getParent());
        } catch (IllegalArgumentException notAFile) {
            return Optional.empty();
        }
    }

    Path path(String relative) {
        return home.resolve(relative);
    }

    /** A file of the project as UTF-8 text. */
    Reader reader(String relative) {
        return reader(path(relative));
    }

    static Reader reader(Path file) {
        try {
            return Files.newBufferedReader(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
