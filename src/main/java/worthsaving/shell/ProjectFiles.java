package worthsaving.shell;

import java.io.Reader;

/** The project's own files as text. */
@FunctionalInterface
public interface ProjectFiles {

    /**
     * @param relative path from the project's folder, such as {@code shared/market/markets.csv}
     * @throws java.io.UncheckedIOException when it cannot be opened
     */
    Reader reader(String relative);
}
