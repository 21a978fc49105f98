package worthsaving;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Every library on the class path is listed in docs/licences.md with a licence that its use allows. */
class LicencesTest {

    private static final Path LIST = Path.of("docs", "licences.md");
    private static final Pattern ROW = Pattern.compile("\\| `([^`]+)` \\| [\\w.-]+ \\| ([^|]+) \\|");
    private static final Pattern JAR = Pattern.compile("(.+?)-\\d[\\w.-]*\\.jar");
    /** Free Software Foundation, Various Licenses and Comments about Them: compatible with GPL version 3. */
    private static final Set<String> WITH_GPL_3 = Set.of("Apache-2.0", "BSD-3-Clause", "MIT", "GPL-3.0",
            "GPL-2.0 with Classpath exception");
    private static final Set<String> NOT_HANDED_ON = Set.of("EPL-2.0", "EUPL-1.1");
    /** Comes with the test runner, not with the project. */
    private static final Pattern RUNNER = Pattern.compile("surefire.*"
            + "|junit-platform-launcher|idea_rt|.*pitest.*|jmh-.*|jopt-simple"
            + "|commons-math3|org\\.jacoco\\.agent.*");

    private static Map<String, String> listed(String from, String to) throws IOException {
        String text = Files.readString(LIST);
        String part = text.substring(text.indexOf(from), to.isEmpty() ? text.length() : text.indexOf(to));
        Map<String, String> licences = new TreeMap<>();
        Matcher row = ROW.matcher(part);
        while (row.find()) {
            licences.put(row.group(1), row.group(2).strip());
        }
        return licences;
    }

    private static Map<String, String> shipped() throws IOException {
        return listed("## Shipped", "## Used by the tests");
    }

    private static Map<String, String> tests() throws IOException {
        return listed("## Used by the tests", "");
    }

    private static Set<String> libraries() {
        return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                .map(p -> Path.of(p).getFileName().toString())
                .map(JAR::matcher)
                .filter(Matcher::matches)
                .map(m -> m.group(1))
                .filter(name -> !RUNNER.matcher(name).matches())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void every_library_is_listed() throws IOException {
        assertThat(libraries()).as("the class path was seen").contains("jsoup", "picocli", "assertj-core");
        Set<String> known = new TreeSet<>(shipped().keySet());
        known.addAll(tests().keySet());
        assertThat(known).as("look at its licence, then list it in " + LIST).containsAll(libraries());
    }

    @Test
    void what_is_shipped_goes_with_gpl_3() throws IOException {
        assertThat(shipped()).isNotEmpty().allSatisfy((library, licence) ->
                assertThat(WITH_GPL_3).as(library).contains(licence));
        assertThat(tests()).isNotEmpty().allSatisfy((library, licence) ->
                assertThat(WITH_GPL_3.contains(licence) || NOT_HANDED_ON.contains(licence)).as(library).isTrue());
    }

    /** What the build lays beside the program file, where it has been built. */
    @Test
    void nothing_for_tests_only_is_shipped() throws IOException {
        Path lib = Path.of("target", "lib");
        Set<String> beside = new TreeSet<>();
        if (Files.isDirectory(lib)) {
            try (var files = Files.list(lib)) {
                files.map(f -> JAR.matcher(f.getFileName().toString())).filter(Matcher::matches)
                        .forEach(m -> beside.add(m.group(1)));
            }
        }
        assertThat(shipped().keySet()).containsAll(beside).doesNotContainAnyElementsOf(tests().keySet());
    }
}
