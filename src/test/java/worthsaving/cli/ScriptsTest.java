package worthsaving.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The scripts on machines that lack things, played with stand-ins for java, Maven and apt-get. */
class ScriptsTest {

    private static final List<String> TOOLS = List.of(
            "bash", "dirname", "readlink", "find", "grep", "id", "env", "touch", "mkdir", "cat", "chmod");

    @TempDir
    private Path folder;

    private Path bin;
    private Path project;

    private record Result(int code, String out, String err) {}

    @BeforeEach
    void bare_machine() throws IOException {
        assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "the scripts are for bash");
        bin = Files.createDirectories(folder.resolve("bin"));
        for (String tool : TOOLS) {
            Path real = Stream.of("/usr/bin", "/bin").map(d -> Path.of(d, tool)).filter(Files::exists).findFirst()
                    .orElseThrow(() -> new IOException("no " + tool));
            Path wrapper = Files.writeString(bin.resolve(tool), "#!/bin/bash\nexec " + real + " \"$@\"\n");
            assertThat(wrapper.toFile().setExecutable(true)).isTrue();
        }
        project = Files.createDirectories(folder.resolve("a project"));
        Files.createDirectories(project.resolve(".ci"));
        Files.createDirectories(project.resolve("src/main"));
        Files.writeString(project.resolve("pom.xml"), "<project/>");
        for (String script : List.of("worthsaving", "check", ".ci/run", ".ci/setup.sh")) {
            Files.copy(Path.of(script), project.resolve(script), StandardCopyOption.COPY_ATTRIBUTES);
        }
    }

    @Test
    void names_the_packages_where_nothing_can_be_installed() throws Exception {
        Result result = run("worthsaving");

        assertThat(result.code()).isEqualTo(1);
        assertThat(result.out()).isEmpty();
        assertThat(result.err()).contains("apt-get install -y --no-install-recommends default-jdk-headless maven");
    }

    @Test
    void installs_builds_and_ranks_the_sample_lot() throws Exception {
        machineWithApt("25.0.1");
        Result result = run("worthsaving");

        assertThat(result.err()).contains("apt-get -q install -y --no-install-recommends default-jdk-headless maven");
        assertThat(result.out()).contains("--enable-native-access=ALL-UNNAMED", "worthsaving.cli.Main rank ",
                "a project/shared/samples/lot.csv").doesNotContain("Building");
        assertThat(result.code()).isZero();
    }

    @Test
    void builds_only_when_a_source_is_newer() throws Exception {
        machineWithApt("17.0.15");
        assertThat(run("worthsaving", "--version").err()).contains("Building");
        Result again = run("worthsaving", "lot", "check", "my lot.csv");

        assertThat(again.err()).isEmpty();
        assertThat(again.out()).contains("worthsaving.cli.Main lot check my lot.csv")
                .doesNotContain("enable-native-access");
        Files.writeString(project.resolve("src/main/New.java"), "class New {}");
        Files.setLastModifiedTime(project.resolve("src/main/New.java"),
                FileTime.fromMillis(System.currentTimeMillis() + 5_000));
        assertThat(run("worthsaving", "--version").err()).contains("Building");
    }

    @Test
    void check_hands_its_options_and_those_of_the_environment_to_maven() throws Exception {
        machineWithApt("17.0.15");

        assertThat(run("check", "-Dtest=AmountTest").out())
                .contains("mvn -B -Dstyle.color=never -Dmaven.repo.local=/nowhere -Plooks verify -Dtest=AmountTest");
        assertThat(run(".ci/run").out()).contains(" verify");
    }

    @Test
    void an_old_java_is_refused_with_its_version() throws Exception {
        machineWithApt("11.0.2");
        Result result = run("check");

        assertThat(result.code()).isEqualTo(1);
        assertThat(result.err()).contains("version 17 or newer is needed", "'11'");
    }

    /** An apt-get that "installs" a java of some version and a Maven, and a user who may run it. */
    private void machineWithApt(String java) throws IOException {
        String version = "echo 'openjdk version \"" + java + "\"' >&2";
        tool("java", "if [[ $1 == -version ]]; then " + version + "; else echo \"java $*\"; fi");
        Files.move(bin.resolve("java"), folder.resolve("java"));
        tool("mvn", "echo \"mvn $*\"; mkdir -p target/lib; touch target/worthsaving.jar");
        Files.move(bin.resolve("mvn"), folder.resolve("mvn"));
        tool("sudo", "while [[ $1 == -n || $1 == *=* ]]; do shift; done; [[ $1 == true ]] || \"$@\"");
        tool("apt-get", "echo \"apt-get $*\"; cat '" + folder + "/java' > '" + bin + "/java'; cat '" + folder
                + "/mvn' > '" + bin + "/mvn'; cat '" + folder + "/java' > '" + bin + "/javac'; chmod +x '" + bin
                + "/java' '" + bin + "/javac' '" + bin + "/mvn'");
    }

    private void tool(String name, String body) throws IOException {
        Path file = Files.writeString(bin.resolve(name), "#!/bin/bash\n" + body + "\n");
        assertThat(file.toFile().setExecutable(true)).isTrue();
    }

    private Result run(String script, String... args) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of("/bin/bash", project.resolve(script).toString()));
        command.addAll(List.of(args));
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile())
                .redirectOutput(out.toFile()).redirectError(err.toFile());
        builder.environment().clear();
        builder.environment().put("PATH", bin.toString());
        builder.environment().put("MAVEN_ARGS", "-Dmaven.repo.local=/nowhere");
        Process process = builder.start();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        return new Result(process.exitValue(), Files.readString(out, StandardCharsets.UTF_8),
                Files.readString(err, StandardCharsets.UTF_8));
    }
}
