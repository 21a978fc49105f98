package worthsaving.casebook;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;

/** A process of its own that writes into a casebook and prints the number of every edit once it is kept. */
final class Child implements AutoCloseable {

    /** Writes once and then waits. */
    static final String HOLD = "hold";
    /** Writes until it is killed or its parent is gone; followed by a seed. */
    static final String WRITE = "write";

    private final Process process;
    private final BufferedReader out;

    private Child(Process process) {
        this.process = process;
        this.out = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.US_ASCII));
    }

    static Child start(Path file, String... what) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xshare:auto", "-Xmx128m",
                "-Djava.io.tmpdir=" + System.getProperty("java.io.tmpdir"),
                "-cp", System.getProperty("java.class.path"), Child.class.getName(), file.toString()));
        command.addAll(List.of(what));
        return new Child(new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start());
    }

    public static void main(String[] args) throws InterruptedException {
        try (Casebook book = Cases.open(Path.of(args[0]))) {
            if (args[1].equals(HOLD)) {
                System.out.println(Cases.keep(book.save(new Edit.AddCase(Cases.listing("A")))).number());
                Thread.sleep(TimeUnit.MINUTES.toMillis(5));
            }
            SplittableRandom random = new SplittableRandom(Long.parseLong(args[2]));
            // In one write, so that a kill never cuts a number in two; until nobody listens any more.
            while (!System.out.checkError()) {
                System.out.print(one(book, random).number() + "\n");
            }
        }
    }

    /** Mostly edits, now and then undone or done again. */
    private static Edited one(Casebook book, SplittableRandom random) {
        int choice = random.nextInt(10);
        if (choice == 0 && book.toUndo().isPresent()) {
            return Cases.keep(book.undo());
        }
        if (choice == 1 && book.toRedo().isPresent()) {
            return Cases.keep(book.redo());
        }
        return Cases.keep(book.save(Cases.edit(book, random)));
    }

    /** Until it is gone, and its lock with it. */
    void waitFor() throws InterruptedException {
        process.waitFor();
    }

    long pid() {
        return process.pid();
    }

    /** Waits for the next edit to be kept. */
    long nextNumber() throws IOException {
        String line = out.readLine();
        if (line == null) {
            throw new IOException("the child ended early");
        }
        return Long.parseLong(line);
    }

    /** Kills it without warning and gives the numbers printed that had not been read yet. */
    List<Long> kill() throws IOException {
        // By its handle: the process object would close its output as well, with numbers still in it.
        process.toHandle().destroyForcibly();
        List<Long> numbers = new ArrayList<>();
        for (String line = out.readLine(); line != null; line = out.readLine()) {
            numbers.add(Long.parseLong(line));
        }
        return numbers;
    }

    @Override
    public void close() {
        process.destroyForcibly();
        try {
            out.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
