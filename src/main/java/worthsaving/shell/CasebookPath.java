package worthsaving.shell;

import java.nio.file.Path;
import java.util.Map;
import java.util.Properties;

/** Where the casebook lies when no file is named: the same place for the command line and the window. */
public final class CasebookPath {

    /** System property that names another file. */
    public static final String PROPERTY = "worthsaving.casebook";

    private CasebookPath() {}

    /** The file that {@value #PROPERTY} names, else {@code worthsaving/casebook.db} in the user's data folder. */
    public static Path usual() {
        return of(System.getProperties(), System.getenv());
    }

    static Path of(Properties properties, Map<String, String> environment) {
        String named = properties.getProperty(PROPERTY);
        return named != null && !named.isBlank()
                ? Path.of(named)
                : dataFolder(properties, environment).resolve("worthsaving").resolve("casebook.db");
    }

    /** As the XDG Base Directory Specification says, or as Windows does. */
    private static Path dataFolder(Properties properties, Map<String, String> environment) {
        for (String name : new String[] {"XDG_DATA_HOME", "LOCALAPPDATA"}) {
            String folder = environment.get(name);
            if (folder != null && Path.of(folder).isAbsolute()) {
                return Path.of(folder);
            }
        }
        return Path.of(properties.getProperty("user.home"), ".local", "share");
    }
}
