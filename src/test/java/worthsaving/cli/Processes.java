package worthsaving.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** Runs a main class in a Java process of its own. */
final class Processes {

    /** What it ended with and what it said; code -1 when it had to be stopped. */
    record Ended(int code, String out, String err) {}

    private static final long MOST_MINUTES = 5;

    private Processes() {}

    /**
     * @param options of the virtual machine
     * @param environment to be set; an empty value takes a variable away
     */
    static Ended java(Path folder, List<String> options, Map<String, String> environment, String main, String... arguments)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:TieredStopAtLevel=1"));
        command.addAll(options);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), main));
        command.addAll(List.of(arguments));
        return run(folder, Files.createTempFile(folder, "out", ".txt"), command, environment);
    }

    /** With standard output to a file. */
    static Ended java(Path folder, Path out, String main, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:TieredStopAtLevel=1",
                "-cp", System.getProperty("java.class.path"), main));
        command.addAll(List.of(arguments));
        return run(folder, out, command, Map.of());
    }

    private static Ended run(Path folder, Path out, List<String> command, Map<String, String> environment)
            throws IOException, InterruptedException {
        Path err = Files.createTempFile(folder, "err", ".txt");
        ProcessBuilder builder = new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
        environment.forEach((name, value) -> {
            if (value.isEmpty()) {
                builder.environment().remove(name);
            } else {
                builder.environment().put(name, value);
            }
        });
        Process process = builder.start();
        boolean ended = process.waitFor(MOST_MINUTES, TimeUnit.MINUTES);
        if (!ended) {
            process.destroyForcibly().waitFor();
        }
        return new Ended(ended ? process.exitValue() : -1, Files.isRegularFile(out) ? Files.readString(out) : "",
                Files.readString(err));
    }
}
