package worthsaving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;

/** Holds figures to those of a file; {@code -Dworthsaving.renew=true} writes the file anew instead. */
public final class HeldFigures {

    private static final double TOLERANCE = 1e-9;
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.\\d+)?(?:E-?\\d+)?");

    private HeldFigures() {}

    /** Lines of cells parted by commas: text must be equal, numbers to a relative 1e-9, below one absolute. */
    public static void compare(Path file, List<String> now) throws IOException {
        boolean renew = Boolean.getBoolean("worthsaving.renew");
        if (renew) {
            Files.writeString(file, String.join("\n", now) + "\n");
        }
        assumeFalse(renew, "figures renewed, nothing compared");
        List<String> then = Files.readAllLines(file);
        assertThat(now).hasSameSizeAs(then);
        for (int i = 0; i < now.size(); i++) {
            same(now.get(i), then.get(i));
        }
    }

    private static void same(String now, String then) {
        String[] mine = now.split(",");
        String[] old = then.split(",");
        assertThat(mine).as(then).hasSameSizeAs(old);
        for (int k = 0; k < old.length; k++) {
            if (NUMBER.matcher(old[k]).matches()) {
                double was = Double.parseDouble(old[k]);
                assertThat(Double.parseDouble(mine[k])).as("cell %d of %s", k + 1, then)
                        .isCloseTo(was, within(TOLERANCE * Math.max(1, Math.abs(was))));
            } else {
                assertThat(mine[k]).as("cell %d of %s", k + 1, then).isEqualTo(old[k]);
            }
        }
    }
}
