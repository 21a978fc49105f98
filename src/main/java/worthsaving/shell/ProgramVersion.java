package worthsaving.shell;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The version that the build wrote into the program file. */
public final class ProgramVersion {

    private static final String FILE = "/META-INF/maven/worthsaving/worthsaving/pom.properties";

    private ProgramVersion() {}

    /** Such as {@code "worthsaving 1.0"}. */
    public static String text() {
        Properties properties = new Properties();
        try (InputStream in = ProgramVersion.class.getResourceAsStream(FILE)) {
            if (in != null) {
                properties.load(in);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return "worthsaving " + properties.getProperty("version", "(not packaged)");
    }
}
